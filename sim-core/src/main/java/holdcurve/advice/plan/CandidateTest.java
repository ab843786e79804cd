package holdcurve.advice.plan;

/** A test that can be done on this circuit. */
interface CandidateTest {
  Procedure procedure();

  /**
   * What it is worth now.
   *
   * @param seed of the random numbers; the same seed gives the same answer
   */
  PlannedTest predicted(OpenHypotheses futures, Separation separation, long seed);
}
