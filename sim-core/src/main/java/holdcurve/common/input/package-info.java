/** What is said of a value that can't be used: by a programmer, or by a person with a file. */
package holdcurve.common.input;
