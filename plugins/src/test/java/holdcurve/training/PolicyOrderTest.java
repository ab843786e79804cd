package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.inference.ranking.RankingService;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Ten ways to work at a car, and what each scores. The evidence is stored; {@code -Dpolicies=rank}
 * ranks it anew and writes it.
 */
class PolicyOrderTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();
  private static final String CHECK_VALVE = "check-valve-seat@check-valve";
  private static final List<String> CARS =
      List.of("long-cranking", "second-opinion", "two-bills", "weekend-car");
  private static final List<String> SENSIBLE =
      List.of("hold", "look-at-joints", "clamp-feed-hose+return-hose");

  private static final String BLIND_LUCK = "Blind guess, and lucky";
  private static final String BLIND = "Blind guess, and wrong";
  private static final String PRIOR = "No test, usual odds";
  private static final String VALVE = "One hold, then always the check valve";
  private static final String ONE = "One hold, honest odds";
  private static final String NO_IDEA = "Three sensible tests, then even odds";
  private static final String NEAR = "Three sensible tests, the runner-up named";
  private static final String HONEST = "Three sensible tests, honest odds";
  private static final String ALL = "Every test there is, honest odds";
  private static final String PLAN = "The plan followed, honest odds";

  private static final Map<String, Map<String, Double>> POINTS = new LinkedHashMap<>();
  private static StoredEvidence evidence;

  /** What a policy says in the end. */
  private record Said(StatedOdds odds, String repaired) {}

  @BeforeAll
  static void scoreAll() throws IOException {
    boolean rank = "rank".equals(System.getProperty("policies"));
    evidence =
        rank
            ? new StoredEvidence(new RankedEvidence(new RankingService(CATALOGUE), CATALOGUE))
            : StoredEvidence.read();
    for (String car : CARS) {
      scoreCar(car);
    }
    if (rank) {
      evidence.write();
    }
  }

  private static void scoreCar(String car) {
    add(car, BLIND_LUCK, List.of(), s -> sure(s, s.car().truth()));
    add(car, BLIND, List.of(), s -> sure(s, blunder(s)));
    add(car, PRIOR, List.of(), PolicyOrderTest::honest);
    add(car, VALVE, List.of("hold"), s -> sure(s, CHECK_VALVE));
    add(car, ONE, List.of("hold"), PolicyOrderTest::honest);
    add(car, NO_IDEA, SENSIBLE, s -> new Said(s.even(), leading(s, 0)));
    add(car, NEAR, SENSIBLE, PolicyOrderTest::runnerUp);
    add(car, HONEST, SENSIBLE, PolicyOrderTest::honest);
    add(car, ALL, null, PolicyOrderTest::honest);
    TrainingSession session = session(car);
    follow(session);
    POINTS
        .computeIfAbsent(PLAN, k -> new LinkedHashMap<>())
        .put(car, score(session, honest(session)));
  }

  private static TrainingSession session(String car) {
    return new TrainingSession(
        ShippedExercises.read(ShippedExercises.FOLDER.resolve(car + ".exercise.json")), CATALOGUE);
  }

  private static void add(
      String car, String policy, List<String> steps, Function<TrainingSession, Said> answer) {
    TrainingSession session = session(car);
    List<Step> all = session.exercise().steps();
    List<Step> chosen =
        steps == null ? all : steps.stream().map(id -> Steps.byId(all, id)).toList();
    chosen.stream().filter(session::hasTimeFor).forEach(step -> session.take(step, session.even()));
    POINTS
        .computeIfAbsent(policy, k -> new LinkedHashMap<>())
        .put(car, score(session, answer.apply(session)));
  }

  private static void follow(TrainingSession session) {
    session.take(Steps.byId(session.exercise().steps(), "hold"), session.even());
    Optional<Step> next = next(session);
    while (next.isPresent()) {
      session.take(next.get(), session.even());
      next = next(session);
    }
  }

  private static Optional<Step> next(TrainingSession session) {
    return known(session).worth().stream()
        .filter(one -> one.bits() >= StepWorth.WORTHWHILE)
        .map(Evidence.Worth::step)
        .filter(session::hasTimeFor)
        .findFirst();
  }

  private static Evidence known(TrainingSession session) {
    return evidence.after(session, session.taken().size(), Progress.NONE);
  }

  private static String leading(TrainingSession session, int place) {
    AnswerClasses classes = AnswerClasses.of(session.exercise(), CATALOGUE);
    return classes.of(known(session).odds()).shares().entrySet().stream()
        .sorted(Map.Entry.<String, Double>comparingByValue(Comparator.reverseOrder()))
        .skip(place)
        .findFirst()
        .orElseThrow()
        .getKey();
  }

  private static Said sure(TrainingSession session, String answer) {
    return new Said(session.belief(Map.of(answer, 1.0)), answer);
  }

  private static String blunder(TrainingSession session) {
    Set<String> right = AnswerClasses.of(session.exercise(), CATALOGUE).with(session.car().truth());
    return session.answers().stream()
        .map(PossibleAnswers.Suspicion::id)
        .filter(id -> !right.contains(id) && !session.car().truth().contains(id))
        .findFirst()
        .orElseThrow();
  }

  private static Said honest(TrainingSession session) {
    return new Said(known(session).odds(), leading(session, 0));
  }

  /** A reasoned near miss: the odds of first and second exchanged. */
  private static Said runnerUp(TrainingSession session) {
    AnswerClasses classes = AnswerClasses.of(session.exercise(), CATALOGUE);
    Map<String, Double> shares = new LinkedHashMap<>(classes.of(known(session).odds()).shares());
    String first = leading(session, 0);
    String second = leading(session, 1);
    double best = shares.get(first);
    shares.put(first, Math.min(0.45, best));
    shares.put(second, shares.get(second) + best - shares.get(first));
    return new Said(new StatedOdds(shares), second);
  }

  private static double score(TrainingSession session, Said said) {
    Debrief debrief = new Debriefing(evidence, CATALOGUE).of(session, said.odds(), Progress.NONE);
    RepairChoice choice = RepairChoice.of(session, said.repaired());
    List<String> faults = RepairChoice.faults(said.repaired());
    List<RepairChoice.Option> done =
        choice.options().stream().filter(option -> option.curesAny(faults)).toList();
    return debrief.repaired(choice.judge(done, debrief)).score().total();
  }

  @Test
  void tableOfPolicies() throws IOException {
    String table = table();
    Path target = Path.of("target", "practice-policies.md");
    Files.createDirectories(target.getParent());
    Files.writeString(target, table);
    Path docs =
        Path.of(System.getProperty("holdcurve.root", ".."), "sim-core/docs/practice-score.md");
    assertTrue(
        Files.readString(docs).contains(table),
        "the table in " + docs + " differs from the one in " + target.toAbsolutePath());
  }

  private static String table() {
    List<String> lines = new ArrayList<>();
    lines.add("| policy | " + String.join(" | ", CARS) + " | mean |");
    lines.add("|---|" + "---|".repeat(CARS.size() + 1));
    POINTS.entrySet().stream()
        .sorted(Comparator.comparingDouble(one -> -mean(one.getKey())))
        .forEach(
            one ->
                lines.add(
                    "| "
                        + one.getKey()
                        + " | "
                        + CARS.stream()
                            .map(car -> points(one.getValue().get(car)))
                            .collect(Collectors.joining(" | "))
                        + " | "
                        + points(mean(one.getKey()))
                        + " |"));
    return String.join("\n", lines) + "\n";
  }

  private static String points(double value) {
    return String.format(Locale.ROOT, "%.0f", value);
  }

  private static double mean(String policy) {
    return POINTS.get(policy).values().stream().mapToDouble(v -> v).average().orElseThrow();
  }

  @Test
  void thereAreTen() {
    assertEquals(10, POINTS.size());
  }

  /** At the sound car naming a fault is no near miss: the tests speak against it. */
  @Test
  void luckScoresBelowAReasonedNearMiss() {
    for (String blind : List.of(BLIND_LUCK, BLIND, PRIOR, VALVE)) {
      CARS.stream()
          .filter(car -> !car.equals("weekend-car"))
          .forEach(car -> above(NEAR, blind, car));
      assertTrue(mean(NEAR) > mean(blind) + 10, PolicyOrderTest::table);
      assertTrue(POINTS.get(blind).values().stream().allMatch(p -> p < 10), PolicyOrderTest::table);
    }
  }

  @Test
  void honestOddsScoreBestAtEveryCar() {
    for (String car : CARS) {
      above(HONEST, NEAR, car);
      above(HONEST, NO_IDEA, car);
    }
  }

  /** At a sound car the first hold says it all, and more tests are needless. */
  @Test
  void moreTestsPayWhereSomethingIsWrong() {
    CARS.stream().filter(car -> !car.equals("weekend-car")).forEach(car -> above(HONEST, ONE, car));
    above(ONE, HONEST, "weekend-car");
  }

  @Test
  void onAverageThePlanIsBestAndEveryTestThereIsIsNot() {
    for (String other : POINTS.keySet()) {
      assertTrue(other.equals(PLAN) || mean(PLAN) > mean(other), other + table());
    }
    assertTrue(mean(BLIND_LUCK) < 15, table());
  }

  private static void above(String better, String worse, String car) {
    double more = POINTS.get(better).get(car);
    double less = POINTS.get(worse).get(car);
    assertTrue(more > less, () -> car + ": '" + better + "' against '" + worse + "'\n" + table());
  }
}
