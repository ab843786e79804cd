/** What the gauge shows after the pump stop, fast enough to be asked thousands of times. */
package holdcurve.physics.hold;
