package holdcurve.casebook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.ObjectMapper;
import holdcurve.common.work.Progress;
import holdcurve.fault.FaultCatalogue;
import holdcurve.file.JobReader;
import holdcurve.file.RatesFile;
import holdcurve.inference.answer.Ranking;
import holdcurve.inference.answer.Suspect;
import holdcurve.inference.prior.FaultPriors;
import holdcurve.inference.ranking.RankingService;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import org.apache.commons.math3.analysis.integration.SimpsonIntegrator;
import org.apache.commons.math3.distribution.GammaDistribution;
import org.apache.commons.math3.distribution.PoissonDistribution;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Rates from counted cases, and what they do to a ranking. */
class LearnedRatesTest {
  private static final FaultCatalogue CATALOGUE = FaultCatalogue.load();
  private static final FaultPriors SHIPPED = FaultPriors.shipped();

  @TempDir private Path folder;

  /** Bayes' rule by numbers: a Gamma prior of the shipped mean, Poisson counts. */
  @Test
  void thePosteriorMeanIsThatOfGammaAndPoisson() {
    double rate = 0.036;
    double weight = 8;
    double exposure = 150;
    int cases = 9;
    GammaDistribution prior = new GammaDistribution(weight, rate / weight);
    SimpsonIntegrator simpson = new SimpsonIntegrator(1e-9, 1e-12, 8, 40);
    double all =
        simpson.integrate(
            1_000_000,
            r -> prior.density(r) * new PoissonDistribution(r * exposure).probability(cases),
            1e-6,
            0.5);
    double mean =
        simpson.integrate(
                1_000_000,
                r ->
                    r * prior.density(r) * new PoissonDistribution(r * exposure).probability(cases),
                1e-6,
                0.5)
            / all;
    assertEquals(mean, LearnedRates.posteriorMean(rate, weight, cases, exposure), 1e-6);
  }

  @Test
  void withoutCasesTheShippedRatesStand() {
    LearnedRates.of(CATALOGUE, SHIPPED, Map.of())
        .rates()
        .forEach(rate -> assertEquals(rate.shipped(), rate.learned(), 1e-12, rate.fault()));
  }

  @Test
  void casesAsTheShippedRatesHaveThemChangeNothing() {
    Map<String, Integer> counts = new HashMap<>();
    CATALOGUE.faults().stream()
        .filter(fault -> fault.showsInHold())
        .forEach(
            f ->
                counts.put(
                    f.id(), (int) Math.round(1e6 * SHIPPED.odds(f.id(), f.prevalence(), 1))));
    LearnedRates.of(CATALOGUE, SHIPPED, counts)
        .rates()
        .forEach(rate -> assertEquals(1, rate.learned() / rate.shipped(), 0.04, rate.fault()));
  }

  /** Nobody may have looked for a weak pump. */
  @Test
  void holdsSayNothingOfFaultsThatOnlyARunningPumpShows() {
    LearnedRates learned = LearnedRates.of(CATALOGUE, SHIPPED, Map.of("check-valve-seat", 30));
    Map<String, Double> rates = learned.learned();
    assertEquals(SHIPPED.rate("weak-pump", 1), rates.get("weak-pump"), 1e-12);
    assertTrue(rates.get("check-valve-seat") > 2 * SHIPPED.rate("check-valve-seat", 1));
    assertTrue(rates.get("injector-tip") < SHIPPED.rate("injector-tip", 1));
    assertEquals(30, learned.cases());
  }

  @Test
  void anotherGarageReadsWhatOneExported() throws IOException {
    LearnedRates learned = LearnedRates.of(CATALOGUE, SHIPPED, Map.of("check-valve-seat", 30));
    Path file = folder.resolve("rates.json");
    Files.writeString(file, RatesFile.json(learned));
    Map<String, Double> read = RatesFile.read(file);
    learned.learned().forEach((fault, rate) -> assertEquals(rate, read.get(fault), 1e-3 * rate));
    assertEquals(
        30, new ObjectMapper().readTree(file.toFile()).at("/rates/check-valve-seat/cases").asInt());
  }

  /** The answer by shipped rates, told from the priors' ratio, is the one that is ranked. */
  @Test
  void theRankingSaysWhatTheShippedRatesWouldHaveSaid() {
    Job job =
        JobReader.read(
            Path.of(System.getProperty("holdcurve.root", ".."), "scenarios/check-valve.job.json"));
    FaultPriors own =
        SHIPPED.withRates(
            LearnedRates.of(CATALOGUE, SHIPPED, Map.of("feed-side-joint", 25)).learned());
    Ranking mine = new RankingService(CATALOGUE, own).verdictOnly().rank(job, 1, Progress.NONE);
    Ranking usual = new RankingService(CATALOGUE).verdictOnly().rank(job, 1, Progress.NONE);
    Suspect first = usual.suspects().get(0);
    assertTrue(!mine.suspects().get(0).id().equals(first.id()), "the cases turn the order round");
    String said =
        mine.notes().stream()
            .map(Object::toString)
            .filter(n -> n.startsWith("Own"))
            .findFirst()
            .orElseThrow();
    String wanted =
        "With the shipped rates, '%s' comes first with %d %%."
            .formatted(first.name(), Math.round(100 * first.probability()));
    assertTrue(said.endsWith(wanted), said + " against " + wanted);
    assertTrue(usual.notes().stream().noneMatch(n -> n.toString().startsWith("Own")));
  }
}
