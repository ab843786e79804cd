package holdcurve.inference.posterior;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.common.work.Progress;
import holdcurve.common.work.Workers;
import holdcurve.file.JobReader;
import holdcurve.inference.evidence.ReferenceEvidence;
import holdcurve.inference.evidence.TemperedEvidence;
import holdcurve.inference.fit.Fitted;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.inference.hypothesis.Identifiability;
import holdcurve.inference.likelihood.HypothesisModel;
import holdcurve.inference.likelihood.JobModel;
import holdcurve.inference.likelihood.WholeLikelihood;
import holdcurve.inference.prior.UnknownPriors;
import holdcurve.inference.ranking.InventedJob;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.record.job.Job;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Laplace's evidence, as a ranking takes it, against tempered sequential Monte Carlo over all
 * coordinates with every curve simulated. That takes a quarter of an hour, so its answers are kept
 * in {@code sampled_evidence.json}; {@code -Dholdcurve.sample=true} makes them anew and prints
 * them.
 */
class SampledEvidenceTest {
  private static final int PARTICLES = Integer.getInteger("holdcurve.sample.particles", 500);
  private static final int RUNS = 6;
  private static final double MOVES = 5;
  private static final JsonNode STORED =
      ReferenceEvidence.json("sampled_evidence.json").get("cases");

  /** An explanation of one hold test. */
  private record Case(Job job, boolean drips) {
    static Case of(String name) {
      String[] words = name.split(", ");
      return new Case(job(words[0]), words[1].equals("drip"));
    }

    private static Job job(String name) {
      Job job = name.startsWith("invented") ? InventedJob.of() : scenario(name);
      int test = name.equals("invented clamped") ? 3 : 0;
      return job.withTests(List.of(job.tests().get(test)));
    }

    private static Job scenario(String name) {
      String root = System.getProperty("holdcurve.root", "..");
      return JobReader.read(Path.of(root, "scenarios", name + ".job.json"));
    }

    Hypothesis hypothesis() {
      return drips ? InventedJob.hypothesis(job) : new Hypothesis(List.of(), 1);
    }
  }

  private static double laplace(Case of) {
    try (Workers workers = new Workers(1, Progress.NONE, new ArrayList<>())) {
      HypothesisEvaluator evaluator =
          new HypothesisEvaluator(
              JobModel.of(of.job()), UnknownPriors.usual(), new Identifiability(of.job()), workers);
      List<Hypothesis> both =
          List.of(new Hypothesis(List.of(), 1), InventedJob.hypothesis(of.job()));
      Fitted fitted = evaluator.fitSingles(both, 0.5).get(of.drips() ? 1 : 0);
      return HypothesisEvaluator.evaluated(List.of(fitted)).get(0).logEvidence();
    }
  }

  /**
   * The gaps are those measured, rounded up: 0.03, 0.03, 0.27, 0.68 and 0.99 nat, give or take
   * 0.09, 0.04, 0.10, 0.27 and 0.07 by the sampler. 0.2 is what would be wanted. Laplace misses
   * where the posterior is no Gaussian: a sound circuit that has to explain a leak, far out in its
   * priors, comes out too likely, and a leak whose size one clamped hold leaves open too unlikely.
   */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "invented, drip | 0.2",
        "acceptable-fall, sound | 0.2",
        "check-valve, sound | 0.4",
        "invented, sound | 0.8",
        "invented clamped, drip | 1.1"
      })
  void laplaceIsAsNearAsMeasured(String name, double gap) {
    double sampled = STORED.get(name).get("log_evidence").asDouble();
    assertEquals(sampled, laplace(Case.of(name)), gap, name);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "invented, drip",
        "acceptable-fall, sound",
        "check-valve, sound",
        "invented, sound",
        "invented clamped, drip"
      })
  @EnabledIfSystemProperty(named = "holdcurve.sample", matches = "true")
  void sampleAnew(String name) throws IOException {
    Case of = Case.of(name);
    JobModel data = JobModel.of(of.job());
    HypothesisModel model =
        new HypothesisModel(data, of.hypothesis(), UnknownPriors.usual(), new HoldSimulator());
    WholeLikelihood whole = new WholeLikelihood(data, model);
    TemperedEvidence sampled = new TemperedEvidence(whole, 1, PARTICLES, RUNS, MOVES);
    ObjectNode node = new ObjectMapper().createObjectNode();
    node.put("log_evidence", sampled.logEvidence());
    node.put("standard_error", sampled.standardError());
    node.put("coordinates", whole.dimension());
    node.put("particles", PARTICLES);
    node.put("laplace_then", laplace(of));
    System.out.println(
        new ObjectMapper()
            .enable(SerializationFeature.INDENT_OUTPUT)
            .writeValueAsString(Map.of(name, node)));
  }
}
