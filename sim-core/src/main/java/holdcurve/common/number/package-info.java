/** Numbers as people read them. */
package holdcurve.common.number;
