/**
 * What every storey may use: input errors, messages with units, numbers in words, text files,
 * cautions, work on several threads. Uses nothing of the other storeys.
 */
package holdcurve.common;
