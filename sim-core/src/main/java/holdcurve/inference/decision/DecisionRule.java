package holdcurve.inference.decision;

import holdcurve.common.caution.Caution;
import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.common.number.Chance;
import holdcurve.inference.answer.Diagnosis;
import holdcurve.inference.answer.NextStep;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.answer.SuspectGroup;
import holdcurve.inference.answer.Verdict;
import holdcurve.inference.answer.Verdict.Kind;
import holdcurve.inference.explain.PredictiveCheck;
import holdcurve.inference.finding.FindingFacts;
import holdcurve.inference.posterior.EvaluatedHypothesis;
import holdcurve.inference.runup.RunningPressure;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.job.OutlierScreen;
import holdcurve.record.job.PassMark;
import holdcurve.record.job.Timeline;
import holdcurve.record.job.WorkedOn;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * From probabilities, findings and readings to one answer and one thing to do. What a person saw
 * comes first, then what no circuit does, then what the readings earn: an accusation costs a part,
 * and a circuit that isn't proved sound is never called so.
 */
public final class DecisionRule {
  /** Probability from which a circuit is called sound [-]. */
  private static final double SOUND = 0.8;

  /** Probability from which something is said to leak [-]. */
  private static final double ACCUSED = 0.9;

  /** Probability of one cause from which its repair is advised instead of another test [-]. */
  private static final double WORTH_REPAIR = 0.7;

  /** Readings that a hold needs at least to prove anything. */
  private static final int LEAST_READINGS = 5;

  /** A rise of the needle that rounding doesn't explain, in steps of the gauge [-]. */
  private static final double RISE = 2;

  private static final String LEAK_AT = "leak at ";

  /** What the readings come to. */
  public record Evidence(
      List<Suspect> suspects,
      List<SuspectGroup> groups,
      List<EvaluatedHypothesis> evaluated,
      PredictiveCheck misfit,
      Supplier<Message> soundFall,
      Supplier<NextStep> nextTest) {}

  private final Job job;
  private final Evidence evidence;
  private final FindingFacts facts;
  private final List<PassMark> marks;
  private final List<RunningPressure> running;
  private final double sound;

  public DecisionRule(Job job, Evidence evidence) {
    this.job = job;
    this.evidence = evidence;
    facts = FindingFacts.of(job);
    marks = PassMark.of(job);
    running = RunningPressure.of(job);
    sound = probability(Suspect.NONE);
  }

  /** A verdict with what to do. */
  private record Answer(Verdict verdict, NextStep next) {
    static Answer of(Kind kind, Message words, NextStep next) {
      return new Answer(new Verdict(kind, words), next);
    }
  }

  public Diagnosis diagnosis() {
    Answer answer =
        unproved()
            .or(this::contradiction)
            .or(this::wet)
            .or(this::thinHose)
            .or(this::neverReached)
            .or(this::unexplained)
            .orElseGet(() -> sound >= SOUND ? soundAnswer() : faultAnswer());
    List<Message> reasons = new ArrayList<>();
    if (sound >= SOUND) {
      reasons.add(evidence.soundFall().get());
    }
    return new Diagnosis(
        answer.verdict(),
        answer.next(),
        sound,
        reasons,
        marks,
        yardsticks(),
        new Assumptions(job).sentences());
  }

  private Optional<Answer> unproved() {
    return Timeline.unproved(job)
        .map(
            repair ->
                Answer.of(
                    Kind.OPEN,
                    Message.plain(Timeline.holdAgain(repair)),
                    NextStep.test(
                        "hold",
                        Message.plain("Prime, stop the pump, and read the gauge for ten minutes."),
                        Caution.PETROL,
                        Caution.BRIDGED_PUMP)));
  }

  private Optional<Answer> contradiction() {
    return facts.contradictions().stream()
        .findFirst()
        .map(
            pair ->
                Answer.of(
                    Kind.OPEN,
                    Message.of(
                        "Two findings contradict each other: %s. Neither was used.",
                        pair.message()),
                    NextStep.ask(
                        Message.plain(
                            "Wipe every joint dry, prime, and look again. Then correct the finding"
                                + " that is wrong. Do not start the engine before."),
                        Caution.PETROL,
                        Caution.BRIDGED_PUMP,
                        Caution.COLD_LAMP,
                        Caution.DRY_FIRST)));
  }

  private Optional<Answer> wet() {
    return facts.wetJoints().stream()
        .filter(joint -> !joint.disputed())
        .max((a, b) -> Boolean.compare(a.wiped(), b.wiped()))
        .map(this::wet);
  }

  private Answer wet(FindingFacts.WetJoint joint) {
    double there = pointedAt(joint.look());
    Message why = Message.of("%s", Chance.words(there));
    if (joint.wiped()) {
      return Answer.of(
          Kind.LEAK,
          Message.of("Petrol is outside at the %s: it leaks there (%s).", joint.name(), why),
          NextStep.repair(
              Message.of(
                  "Make good the joint at the %s. Do not start the engine until it stays dry. Then"
                      + " hold again.",
                  joint.name())));
    }
    return Answer.of(
        there >= ACCUSED ? Kind.LEAK : Kind.OPEN,
        Message.of(
            "Petrol is outside at the %s. It leaks there (%s), or fuel was spilt.",
            joint.name(), why),
        NextStep.test(
            "look-at-joints",
            Message.of(
                "Wipe the %s dry, prime, and look again. Do not start the engine until it stays"
                    + " dry.",
                joint.name()),
            Caution.PETROL,
            Caution.DRY_FIRST,
            Caution.BRIDGED_PUMP,
            Caution.COLD_LAMP));
  }

  private Optional<Answer> thinHose() {
    return facts
        .fuelInThinHose()
        .map(
            look ->
                Answer.of(
                    Kind.LEAK,
                    Message.of(
                        "Petrol is in the regulator's thin hose: its diaphragm leaks (%s).",
                        Chance.words(pointedAt(look))),
                    NextStep.repair(
                        Message.plain(
                            "Renew the regulator. Do not start the engine before: petrol runs into"
                                + " its intake."))));
  }

  /** Probability of all explanations with a fault that a finding points at [-]. */
  private double pointedAt(Finding finding) {
    return evidence.evaluated().stream()
        .filter(
            evaluated ->
                evaluated.hypothesis().members().stream()
                    .anyMatch(
                        m ->
                            facts.pointsAt(finding, m.fault()).stream()
                                .anyMatch(at -> at.site().id().equals(m.site().id()))))
        .mapToDouble(evaluated -> probability(evaluated.hypothesis().id()))
        .sum();
  }

  /** A pump that doesn't bring the circuit to its set pressure, where the readings don't fit. */
  private Optional<Answer> neverReached() {
    if (sound < SOUND && evidence.misfit().where().isPresent()) {
      return low()
          .filter(
              r ->
                  job.tests().get(r.test()).log().hold().get(0).pressure()
                      < r.set() - r.tolerance())
          .map(
              r ->
                  notReached(
                      "The pump brought it to %s only; the set pressure is %s.", Kind.FAULT, r));
    }
    return Optional.empty();
  }

  private Optional<RunningPressure> low() {
    return running.stream().filter(r -> !r.isReached()).findFirst();
  }

  private static Answer notReached(String words, Kind kind, RunningPressure low) {
    return Answer.of(
        kind,
        Message.of(words, Message.pressure(low.pressure()), Message.pressure(low.set())),
        NextStep.repair(
            Message.plain(
                "Measure what the pump delivers. Then look at the filter and the regulator.")));
  }

  private Optional<Answer> unexplained() {
    return evidence
        .misfit()
        .where()
        .map(
            where ->
                Answer.of(
                    Kind.UNEXPLAINED,
                    Message.of("No listed fault explains this: %s fits no circuit.", where),
                    NextStep.test(
                        "hold",
                        Message.plain(
                            "Check the gauge, its joint, the clamps and the circuit description."
                                + " Then hold again."),
                        Caution.PETROL,
                        Caution.BRIDGED_PUMP)));
  }

  private Answer soundAnswer() {
    Optional<PassMark> failed =
        marks.stream().filter(m -> m.outcome() == PassMark.Outcome.FAILS).findFirst();
    if (failed.isPresent()) {
      return Answer.of(
          Kind.OPEN,
          Message.of(
              "No fault is likeliest (%s).%s Cooling fuel or a late regulator can explain it.",
              Chance.words(sound), fallsShort()),
          thermometer());
    }
    if (job.tests().stream().allMatch(this::isShort)) {
      return Answer.of(
          Kind.OPEN,
          Message.of(
              "No fault seen so far (%s), but the hold was too short to prove it.",
              Chance.words(sound)),
          NextStep.test(
              "hold",
              Message.of(
                  "Prime again and read the gauge for at least %.0f minutes, five times or more.",
                  Math.ceil(job.upkeep().pass().time() / 60)),
              Caution.PETROL,
              Caution.BRIDGED_PUMP));
    }
    if (job.tests().stream().anyMatch(this::rises)) {
      return Answer.of(
          Kind.OPEN,
          Message.of(
              "The needle rose: the fuel warmed up, or a clamp went on late. That can hide a small"
                  + " leak (no fault: %s).",
              Chance.words(sound)),
          thermometer());
    }
    Optional<RunningPressure> low = low();
    if (low.isPresent()) {
      return notReached(
          "It holds, but the pump brought it to %s only; the set pressure is %s.",
          Kind.OPEN, low.get());
    }
    return Answer.of(
        Kind.SOUND,
        Message.of(
            "No fault found (%s).%s",
            Chance.words(sound),
            marks.stream()
                .findFirst()
                .map(m -> Message.of(" %s", mark(m)))
                .orElse(Message.plain(""))),
        new NextStep(
            NextStep.Kind.NONE,
            "",
            Message.plain(
                "Nothing needs repair. "
                    + (everyJointDry()
                        ? "Put the relay back."
                        : "Prime, look at every joint with a cold lamp, then put the relay back.")),
            List.of(Caution.PETROL, Caution.COLD_LAMP, Caution.DRY_FIRST)));
  }

  private boolean everyJointDry() {
    return job.findings().stream()
        .anyMatch(found -> found instanceof JointLook look && look.part().isEmpty() && !look.wet());
  }

  private static NextStep thermometer() {
    return NextStep.test(
        "log-temperature",
        Message.plain(
            "Let the car stand until all is at one temperature. Hold again with a thermometer."),
        Caution.PETROL,
        Caution.BRIDGED_PUMP);
  }

  private boolean isShort(HoldTest test) {
    return test.log().holdSpan() < job.upkeep().pass().time() - 1
        || test.log().hold().size() < LEAST_READINGS;
  }

  /** Whether the needle rises in a hold without a thermometer. */
  private boolean rises(HoldTest test) {
    if (test.log().hasTemperature()) {
      return false;
    }
    double least = Double.POSITIVE_INFINITY;
    double rise = 0;
    for (Reading reading : OutlierScreen.trusted(test.log().hold(), job.gauge())) {
      least = Math.min(least, reading.pressure());
      rise = Math.max(rise, reading.pressure() - least);
    }
    return rise > RISE * job.gauge().resolution() * 1.001;
  }

  private Answer faultAnswer() {
    Suspect first = evidence.suspects().get(0);
    Suspect fault = evidence.suspects().stream().filter(s -> !s.isNone()).findFirst().orElse(first);
    NextStep next = fault.probability() >= WORTH_REPAIR ? repair(fault) : evidence.nextTest().get();
    String leaking = (afterRepair() ? "Still leaking" : "Leaking");
    String faulty = (afterRepair() ? "Still faulty" : "Faulty");
    if (!first.isNone() && first.probability() >= ACCUSED) {
      return Answer.of(
          kind(first),
          Message.of(
              "%s: %s (%s)%s.%s",
              leaks(first) ? leaking : faulty,
              lower(first.name()),
              Chance.words(first.probability()),
              sized(first),
              leaks(first) ? fallsShort() : Message.of("%s%s", whileRunning(), fallsShort())),
          next);
    }
    Optional<SuspectGroup> group =
        evidence.groups().stream().max((a, b) -> Double.compare(a.probability(), b.probability()));
    if (group.isPresent() && group.get().probability() >= ACCUSED) {
      return Answer.of(
          kind(fault),
          Message.of(
              "%s. %s causes fit these tests; likeliest: %s (%s).%s",
              leaks(fault) ? leaking : faulty,
              count(group.get().suspects().size()),
              lower(fault.name()),
              Chance.words(fault.probability()),
              fallsShort()),
          next);
    }
    if (1 - sound >= ACCUSED) {
      return Answer.of(
          Kind.OPEN,
          Message.of(
              "%s (%s), but these tests do not show where. Likeliest: %s (%s).%s",
              leaks(fault) ? leaking : faulty,
              Chance.words(1 - sound),
              lower(fault.name()),
              Chance.words(fault.probability()),
              fallsShort()),
          next);
    }
    return Answer.of(
        Kind.OPEN,
        Message.of(
            "Not settled: no fault (%s), or %s (%s).%s",
            Chance.words(sound),
            leaks(fault) ? "a leak" : lower(fault.name()),
            Chance.words(1 - sound),
            fallsShort()),
        next);
  }

  /** What the gauge showed with the pump running, where that is out of line; a space before it. */
  private Message whileRunning() {
    return running.stream()
        .filter(r -> r.isExceeded() || !r.isReached())
        .findFirst()
        .map(r -> Message.of(" %s", running(r)))
        .orElse(Message.plain(""));
  }

  private static Message running(RunningPressure read) {
    return Message.of(
        "%s with the pump running; the set pressure is %s.",
        Message.pressure(read.pressure()), Message.pressure(read.set()));
  }

  /** With a space before it; empty where every hold passes or was too short. */
  private String fallsShort() {
    return marks.stream().anyMatch(m -> m.outcome() == PassMark.Outcome.FAILS)
        ? " The hold falls short of its limit."
        : "";
  }

  private boolean afterRepair() {
    return Timeline.isAfterRepair(job);
  }

  /** The repair of a suspect, named to the injector where drops point at one. */
  private NextStep repair(Suspect suspect) {
    return facts.drips().stream()
        .filter(drip -> drip.number().isPresent() && suspect.id().contains("@" + drip.part()))
        .findFirst()
        .map(
            drip ->
                Message.of(
                    "Clean or renew %s: it gave %d drops in %.0f min. Then hold again.",
                    injector(drip.name(), drip.number().getAsInt()), drip.drops(), drip.minutes()))
        .map(NextStep::repair)
        .orElseGet(() -> named(suspect));
  }

  private static String injector(String set, int number) {
    return set.equals("injectors") ? "injector no. " + number : "no. " + number + " of the " + set;
  }

  private NextStep named(Suspect suspect) {
    String repair = suspect.repair().strip();
    return NextStep.repair(
        Message.of(
            "%s%s%s",
            doneBefore(suspect), repair, repair.contains("hold again") ? "" : " Then hold again."));
  }

  /** What was put right there already, so that nobody renews a new part on its word alone. */
  private String doneBefore(Suspect suspect) {
    return new WorkedOn(job)
        .last(suspect.id())
        .map(
            repair ->
                "The "
                    + PartName.of(repair.part())
                    + " was worked on, "
                    + repair.date()
                    + ": first check how it was fitted. ")
        .orElse("");
  }

  private static String count(int causes) {
    String[] words = {"No", "One", "Two", "Three", "Four", "Five", "Six", "Seven", "Eight", "Nine"};
    return causes < words.length ? words[causes] : String.valueOf(causes);
  }

  private static String lower(String name) {
    return name.substring(0, 1).toLowerCase(Locale.ROOT) + name.substring(1);
  }

  private static boolean leaks(Suspect suspect) {
    return suspect.leak().isPresent();
  }

  private static Kind kind(Suspect suspect) {
    return leaks(suspect) ? Kind.LEAK : Kind.FAULT;
  }

  private double probability(String id) {
    return evidence.suspects().stream()
        .filter(s -> s.id().equals(id))
        .mapToDouble(Suspect::probability)
        .findFirst()
        .orElse(0);
  }

  /** The name of a leak's size says at which pressure it is meant: "leak at 2 bar". */
  private static Message sized(Suspect suspect) {
    return suspect
        .size()
        .filter(size -> size.isLeak() && size.name().startsWith(LEAK_AT))
        .map(
            size ->
                Message.of(
                    ", about %.2g mL/min %s",
                    size.value().middle() * 60e6,
                    Message.stated(size.name().substring(LEAK_AT.length() - 3))))
        .orElse(Message.plain(""));
  }

  /** "1.76 bar after 5 min; the limit is 1.70 bar." Empty where the hold was too short. */
  private Message mark(PassMark mark) {
    if (mark.outcome() == PassMark.Outcome.TOO_SHORT) {
      return Message.plain("");
    }
    double limit = job.upkeep().pass().pressure();
    String words =
        switch (mark.outcome()) {
          case FAILS -> "%s after %.0f min falls short of the limit, %s.";
          case WITHIN_GAUGE_ERROR ->
              "%s after %.0f min; the limit is %s. The gauge may be off by more than that.";
          default ->
              mark.reading() - limit < job.gauge().resolution() / 2
                  ? "%s after %.0f min just meets the limit, %s."
                  : "%s after %.0f min; the limit is %s.";
        };
    return Message.of(
        words,
        Message.pressure(mark.reading()),
        job.upkeep().pass().time() / 60,
        Message.pressure(limit));
  }

  private List<Message> yardsticks() {
    List<Message> said = new ArrayList<>();
    marks.stream()
        .filter(m -> m.outcome() != PassMark.Outcome.TOO_SHORT)
        .forEach(m -> said.add(Message.of("%s: %s", m.test(), mark(m))));
    running.forEach(
        r -> said.add(Message.of("%s: %s", job.tests().get(r.test()).id(), running(r))));
    return said;
  }
}
