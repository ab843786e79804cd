package holdcurve.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.record.refit.RefitList;
import holdcurve.record.refit.RefitStep;

/** Writes a refit list by itself as JSON. */
public final class RefitListWriter {
  /** Format and version that such files carry. */
  public static final String FORMAT = "holdcurve-refit/1";

  private RefitListWriter() {}

  /** The list with its ticks as JSON text of format {@value #FORMAT}. */
  public static String json(String job, RefitList list) {
    ObjectNode root = JsonFiles.object();
    root.put("format", FORMAT);
    root.put("job", job);
    root.put("done", list.done());
    list.next().map(RefitStep::id).ifPresent(next -> root.put("next", next));
    UpkeepWriter.put(root.putArray("steps"), list);
    return JsonFiles.print(root);
  }
}
