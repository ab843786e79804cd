/** The proof of a repair: does the circuit hold as it should, and as it used to? */
package holdcurve.advice.check;
