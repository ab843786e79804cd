/** Text files as people and their programs write them: encodings, sizes, what is no text at all. */
package holdcurve.common.text;
