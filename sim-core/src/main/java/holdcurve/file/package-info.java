/**
 * All published file formats, read and written: circuits, jobs, logs, rankings, plans, exercises,
 * bench sheets. The top storey of the module: it may use every other, and none uses it.
 */
package holdcurve.file;
