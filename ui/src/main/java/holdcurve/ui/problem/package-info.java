/** What is handed over when something went wrong: the job, what happened, the version. */
package holdcurve.ui.problem;
