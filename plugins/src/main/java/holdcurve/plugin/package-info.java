/** The leak faults that come with the program, one class each. */
package holdcurve.plugin;
