/** Words in which pressures are still quantities, to be written in the unit that a reader wants. */
package holdcurve.common.message;
