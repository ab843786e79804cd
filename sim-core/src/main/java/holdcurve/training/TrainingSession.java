package holdcurve.training;

import holdcurve.common.input.Require;
import holdcurve.fault.FaultCatalogue;
import holdcurve.record.finding.Finding;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One learner at one car. Not safe for use by several threads at once. */
public final class TrainingSession {
  /**
   * Steps at one car, so that every debrief has an end: each costs a ranking and a plan, some ten
   * seconds at most.
   */
  public static final int MOST_STEPS = 12;

  /** Readings of one hold, for the same reason. */
  public static final int MOST_READINGS = 60;

  /** Readings that a hold needs before anything can be made of it. */
  public static final int FEWEST_READINGS = 2;

  /**
   * A step with what came of it.
   *
   * @param before what the learner expected before it
   * @param hold readings, if it was a hold
   * @param found what was seen or counted, if it wasn't
   */
  public record Taken(Step step, StatedOdds before, Optional<HoldTest> hold, List<Finding> found) {}

  private final Exercise exercise;
  private final TrainingCar car;
  private final List<PossibleAnswers.Suspicion> answers;
  private final List<Taken> taken = new ArrayList<>();

  public TrainingSession(Exercise exercise, FaultCatalogue catalogue) {
    this.exercise = exercise;
    this.car = new TrainingCar(exercise, catalogue);
    this.answers = PossibleAnswers.of(exercise.circuit(), catalogue);
  }

  public Exercise exercise() {
    return exercise;
  }

  /** The car; asked for what its gauge shows while a hold goes on. */
  public TrainingCar car() {
    return car;
  }

  /** What can be named as the answer. */
  public List<PossibleAnswers.Suspicion> answers() {
    return answers;
  }

  /** The belief of one who knows nothing. */
  public StatedOdds even() {
    return StatedOdds.even(answers.stream().map(PossibleAnswers.Suspicion::id).toList());
  }

  /**
   * @param stated answer → probability [-]; the rest is spread evenly over the other answers
   */
  public StatedOdds belief(Map<String, Double> stated) {
    return StatedOdds.of(answers.stream().map(PossibleAnswers.Suspicion::id).toList(), stated);
  }

  /** What has been done so far. */
  public List<Taken> taken() {
    return List.copyOf(taken);
  }

  /** Time spent [min]. */
  public double used() {
    return taken.stream().mapToDouble(t -> t.step().minutes()).sum();
  }

  /** Whether there is time for a step, and it isn't one too many. */
  public boolean hasTimeFor(Step step) {
    return taken.size() < MOST_STEPS && used() + step.minutes() <= exercise.minutes() + 1e-9;
  }

  /**
   * Does a step.
   *
   * @param before what the learner expects
   * @throws IllegalStateException if there is no time for it
   */
  public Taken take(Step step, StatedOdds before) {
    if (!hasTimeFor(step)) {
      throw new IllegalStateException(
          "'" + step.words() + "' takes longer than the time that is left");
    }
    int place = taken.size();
    Optional<HoldTest> hold =
        step instanceof Step.Hold h ? Optional.of(car.hold(h, place)) : Optional.empty();
    Taken done = new Taken(step, before, hold, car.find(step, place));
    taken.add(done);
    return done;
  }

  /**
   * Puts what the learner read in the last hold in the place of what a practised eye would have.
   *
   * @param readings in the order of their times
   * @throws IllegalArgumentException if they are too few or too many
   */
  public Taken read(List<Reading> readings) {
    Require.within(readings.size(), FEWEST_READINGS, MOST_READINGS, "readings of a hold", "-");
    Taken last = taken.get(taken.size() - 1);
    HoldTest hold = last.hold().orElseThrow();
    Taken read =
        new Taken(
            last.step(),
            last.before(),
            Optional.of(
                new HoldTest(
                    hold.id(),
                    hold.clamped(),
                    hold.clampTime(),
                    hold.primeTime(),
                    hold.fuelTemperature(),
                    new GaugeLog("learner", readings, 0),
                    hold.date(),
                    hold.notes())),
            last.found());
    taken.set(taken.size() - 1, read);
    return read;
  }

  /** The evidence after so many steps, as a job. */
  public Job job(int steps) {
    List<HoldTest> tests = new ArrayList<>();
    List<Finding> found = new ArrayList<>();
    for (Taken one : taken.subList(0, steps)) {
      one.hold().ifPresent(tests::add);
      found.addAll(one.found());
    }
    return new Job(
            exercise.title(), exercise.circuit(), exercise.gauge(), tests, Map.of(), List.of())
        .withFindings(found);
  }
}
