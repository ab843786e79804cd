/** Long work: on several threads, with progress, stopped when nobody wants it any more. */
package holdcurve.common.work;
