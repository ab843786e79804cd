package holdcurve.file;

import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.record.refit.RefitList;
import java.nio.file.Path;

/** Writes the refit list of a job into its file and leaves every other entry as it stands. */
public final class RefitFile {
  private RefitFile() {}

  /**
   * Puts {@code list} in place of the job's list. Comments in the file are lost; the old file stays
   * beside it as {@code name~}.
   *
   * @throws holdcurve.common.input.InputException if the file can't be read as a job, or not
   *     written
   */
  public static void write(Path jobFile, RefitList list) {
    ObjectNode root = (ObjectNode) JsonFiles.read(jobFile, "holdcurve-job", 1).node();
    root.remove("refit");
    UpkeepWriter.put(root.putArray("refit"), list);
    SafeFile.write(jobFile, JsonFiles.print(root));
  }
}
