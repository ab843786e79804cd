package holdcurve.inference.finding;

import holdcurve.common.message.Message;
import holdcurve.physics.circuit.Part;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.DropTestResult;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a job's findings say, as side evidence. */
public final class FindingLikelihoods {
  private FindingLikelihoods() {}

  /**
   * Some findings and what they say.
   *
   * @param findings that belong together: where one place leaks, another needn't
   * @param evidence their rows
   */
  public record Said(List<Finding> findings, FindingLikelihood evidence) {
    /** For a person: "feed hose dry; damper wet". */
    public Message message() {
      return Message.joined(findings.stream().map(Finding::message).toList());
    }
  }

  /**
   * One entry for all looks, one for each part where drops were counted, one a draw-off, one a drop
   * test whose needle was watched after the firings. Findings that contradict each other say
   * nothing until one of them is withdrawn.
   */
  public static List<Said> of(Job job) {
    DetectionModel detection = DetectionModel.shipped();
    List<Said> said = new ArrayList<>();
    List<Finding> looks = new ArrayList<>();
    Map<String, List<DropCount>> counts = new LinkedHashMap<>();
    for (Finding finding : FindingFacts.of(job).used()) {
      if (finding instanceof JointLook || finding instanceof ReferenceHoseLook) {
        looks.add(finding);
      } else if (finding instanceof DropCount count) {
        counts.computeIfAbsent(count.part(), key -> new ArrayList<>()).add(count);
      } else if (finding instanceof DrawOff drawOff) {
        said.add(new Said(List.of(drawOff), new DrawOffLikelihood(detection, job, drawOff)));
      } else if (finding instanceof DropTestResult result && result.watched()) {
        said.add(new Said(List.of(result), new StaysOpenLikelihood(detection, job, result)));
      }
    }
    if (!looks.isEmpty()) {
      said.add(0, new Said(looks, new LookLikelihood(detection, job, looks)));
    }
    counts.forEach(
        (id, findings) -> {
          Part part = job.circuit().part(id);
          said.add(
              new Said(List.copyOf(findings), new DropLikelihood(detection, job, part, findings)));
        });
    return said;
  }
}
