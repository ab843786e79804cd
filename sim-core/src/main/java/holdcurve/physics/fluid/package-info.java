/**
 * Liquid properties: density, bulk moduli, thermal expansion, viscosity and vapour pressure of
 * petrol, its ethanol blends and n-heptane (the test-bench fluid). Temperatures are in kelvin and
 * pressures absolute. Outside a fluid's stated temperature range every method refuses.
 *
 * <p>Use the isothermal modulus for slow decay and the isentropic one for fast transients: they
 * differ by about a quarter.
 */
package holdcurve.physics.fluid;
