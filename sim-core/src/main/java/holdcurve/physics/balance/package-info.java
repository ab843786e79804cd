/** Where the fall of a hold went: leaks, weep, hose stretch, temperature, valves and gauge. */
package holdcurve.physics.balance;
