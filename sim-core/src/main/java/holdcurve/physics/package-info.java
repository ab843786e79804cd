/**
 * The circuit and what happens in it: fluid, flow, storage, network, hold and run. Knows no job, no
 * log and no probability, so that a circuit behaves the same whoever asks. Uses {@code common}.
 */
package holdcurve.physics;
