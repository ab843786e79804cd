package holdcurve.physics.fluid;

import holdcurve.common.input.Require;

/**
 * Petrol with 5 to 10 % ethanol splashed in. Mixing rules: volumes add (ideal mixing), so
 * compressibility and expansion add by share of volume (for the isentropic modulus this is Wood's
 * equation, A. B. Wood, A Textbook of Sound, 1930; from memory); viscosity by Arrhenius' rule, ln µ
 * by share of volume. Reid vapour pressure is that of the petrol plus 7 kPa, about the same from 5
 * to 10 % (from memory: 6 to 8 kPa).
 *
 * @param petrol the base before blending
 * @param ethanolFraction volume of ethanol at 15 °C over the sum of volumes [-], 0.05 to 0.10
 */
public record EthanolBlend(Petrol petrol, double ethanolFraction) implements Fluid {
  private static final double REID_LIFT = 7_000;
  private static final PureLiquid ETHANOL = PureLiquid.ethanol();

  public EthanolBlend {
    Require.within(ethanolFraction, 0.05, 0.10, "ethanol fraction", "-");
  }

  @Override
  public String id() {
    return "petrol-e" + Math.round(100 * ethanolFraction);
  }

  @Override
  public String name() {
    return "petrol with " + Math.round(100 * ethanolFraction) + " % ethanol";
  }

  @Override
  public String source() {
    return "petrol after EN 228, with its share of ethanol";
  }

  @Override
  public TemperatureRange validRange() {
    return petrol.validRange();
  }

  @Override
  public double density(double temperature, double pressure) {
    double ethanolMass = ethanolFraction * ETHANOL.density(VolumeCorrection.FIFTEEN_CELSIUS);
    double petrolMass = (1 - ethanolFraction) * petrol.density(VolumeCorrection.FIFTEEN_CELSIUS);
    double volume =
        ethanolMass / ETHANOL.density(temperature, pressure)
            + petrolMass / petrol.density(temperature, pressure);
    return (ethanolMass + petrolMass) / volume;
  }

  @Override
  public double bulkModulusIsothermal(double temperature, double pressure) {
    return 1
        / byVolume(
            temperature,
            1 / ETHANOL.bulkModulusIsothermal(temperature, pressure),
            1 / petrol.bulkModulusIsothermal(temperature, pressure));
  }

  @Override
  public double bulkModulusIsentropic(double temperature, double pressure) {
    return 1
        / byVolume(
            temperature,
            1 / ETHANOL.bulkModulusIsentropic(temperature, pressure),
            1 / petrol.bulkModulusIsentropic(temperature, pressure));
  }

  @Override
  public double thermalExpansion(double temperature) {
    return byVolume(
        temperature, ETHANOL.thermalExpansion(temperature), petrol.thermalExpansion(temperature));
  }

  @Override
  public double viscosity(double temperature) {
    return Math.exp(
        byVolume(
            temperature,
            Math.log(ETHANOL.viscosity(temperature)),
            Math.log(petrol.viscosity(temperature))));
  }

  @Override
  public double vapourPressure(double temperature) {
    return petrol.vapourPressureRaisedBy(REID_LIFT, temperature);
  }

  /** Mean of two values weighted with the volumes the components take at this temperature. */
  private double byVolume(double temperature, double ofEthanol, double ofPetrol) {
    double ethanol =
        ethanolFraction
            * ETHANOL.density(VolumeCorrection.FIFTEEN_CELSIUS)
            / ETHANOL.density(temperature);
    double rest =
        (1 - ethanolFraction)
            * petrol.density(VolumeCorrection.FIFTEEN_CELSIUS)
            / petrol.density(temperature);
    return (ethanol * ofEthanol + rest * ofPetrol) / (ethanol + rest);
  }
}
