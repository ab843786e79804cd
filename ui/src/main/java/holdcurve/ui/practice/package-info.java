/** Exercises in words: the talk in a terminal, and the debrief. */
package holdcurve.ui.practice;
