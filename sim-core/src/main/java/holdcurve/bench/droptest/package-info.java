/**
 * The drop-per-pulse test: pump off, one injector fired for a fixed time, the drop of the gauge
 * noted, each in turn and again. It compares injectors without taking them out.
 */
package holdcurve.bench.droptest;
