package holdcurve.side;

import holdcurve.circuit.Part;
import holdcurve.finding.DrawOff;
import holdcurve.finding.DropCount;
import holdcurve.finding.Finding;
import holdcurve.finding.JointLook;
import holdcurve.finding.ReferenceHoseLook;
import holdcurve.job.Job;
import holdcurve.saying.Saying;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What a job's findings say, as side evidence. */
public final class FindingEvidence {
  private FindingEvidence() {}

  /**
   * Some findings and what they say.
   *
   * @param findings that belong together: where one place leaks, another needn't
   * @param evidence their rows
   */
  public record Said(List<Finding> findings, SideEvidence evidence) {
    /** For a person: "feed hose dry; damper wet". */
    public Saying saying() {
      return Saying.joined(findings.stream().map(Finding::saying).toList());
    }
  }

  /**
   * One entry for all looks, one for each part where drops were counted, one a draw-off. Findings
   * that contradict each other say nothing until one of them is withdrawn.
   */
  public static List<Said> of(Job job) {
    Seeing seeing = Seeing.shipped();
    List<Said> said = new ArrayList<>();
    List<Finding> looks = new ArrayList<>();
    Map<String, List<DropCount>> counts = new LinkedHashMap<>();
    for (Finding finding : FindingFacts.of(job).used()) {
      if (finding instanceof JointLook || finding instanceof ReferenceHoseLook) {
        looks.add(finding);
      } else if (finding instanceof DropCount count) {
        counts.computeIfAbsent(count.part(), key -> new ArrayList<>()).add(count);
      } else if (finding instanceof DrawOff drawOff) {
        said.add(new Said(List.of(drawOff), new DrawOffEvidence(seeing, job, drawOff)));
      }
    }
    if (!looks.isEmpty()) {
      said.add(0, new Said(looks, new LookEvidence(seeing, job, looks)));
    }
    counts.forEach(
        (id, findings) -> {
          Part part = job.circuit().part(id);
          said.add(new Said(List.copyOf(findings), new DropEvidence(seeing, job, part, findings)));
        });
    return said;
  }
}
