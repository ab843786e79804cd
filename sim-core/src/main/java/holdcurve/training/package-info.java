/**
 * Hidden faults to learn on: exercises, what a learner does at one, and what it was worth. Uses
 * {@code advice} and below.
 */
package holdcurve.training;
