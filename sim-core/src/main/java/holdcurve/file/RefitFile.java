package holdcurve.file;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.node.ObjectNode;
import holdcurve.check.InputException;
import holdcurve.refit.RefitList;
import java.nio.file.Path;

/** Writes the refit list of a job into its file and leaves every other entry as it stands. */
public final class RefitFile {
  private static final ObjectWriter WRITER = writer();

  private RefitFile() {}

  private static ObjectWriter writer() {
    Separators colon =
        Separators.createDefaultInstance()
            .withObjectFieldValueSpacing(Separators.Spacing.AFTER)
            .withObjectEmptySeparator("")
            .withArrayEmptySeparator("");
    DefaultPrettyPrinter printer =
        new DefaultPrettyPrinter(colon)
            .withObjectIndenter(new DefaultIndenter("  ", "\n"))
            .withArrayIndenter(new DefaultIndenter("  ", "\n"));
    return new ObjectMapper().writer(printer);
  }

  /**
   * Puts {@code list} in place of the job's list. Comments in the file are lost; the old file stays
   * beside it as {@code name~}.
   *
   * @throws InputException if the file can't be read as a job, or not written
   */
  public static void write(Path jobFile, RefitList list) {
    ObjectNode root = (ObjectNode) JsonFiles.read(jobFile, "holdcurve-job", 1).node();
    root.remove("refit");
    UpkeepWriter.put(root.putArray("refit"), list);
    try {
      SafeFile.write(jobFile, WRITER.writeValueAsString(root) + "\n");
    } catch (JsonProcessingException e) {
      throw new IllegalStateException(e);
    }
  }
}
