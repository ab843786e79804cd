package holdcurve.ui.problem;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A job and the files that it names. They are found by what looks like a file's name in the text,
 * since a job that can't be read is reported too.
 */
final class NamedFiles {
  /** More is no gauge log; and a zip is to be sent by mail. */
  private static final long LARGEST = 20_000_000;

  private static final Pattern NAME =
      Pattern.compile("\"([^\"\\\\\\r\\n]+\\.(?:json|csv|tsv|txt))\"", Pattern.CASE_INSENSITIVE);

  private record Found(Path file, String what, byte[] content) {}

  private final Path folder;
  private final List<Found> found = new ArrayList<>();
  private final List<String> missing = new ArrayList<>();

  private NamedFiles(Path folder) {
    this.folder = folder;
  }

  /**
   * @throws InputException if there is no such job
   */
  static NamedFiles in(Path job) {
    Path file = job.toAbsolutePath().normalize();
    if (!Files.isRegularFile(file)) {
      throw InputException.at(
          job.toString(), "", "there is no such file", "name the job that went wrong");
    }
    NamedFiles found = new NamedFiles(file.getParent());
    // a job may name files in a folder beside its own, and in no other
    Path highest = file.getParent().getParent() == null ? file.getParent() : parent(file);
    byte[] content = found.add(file, "the job");
    for (String name : names(new String(content, StandardCharsets.UTF_8))) {
      found.addNamed(name, file, highest);
    }
    return found;
  }

  private static Path parent(Path file) {
    return file.getParent().getParent();
  }

  private static Set<String> names(String text) {
    Set<String> names = new LinkedHashSet<>();
    Matcher matcher = NAME.matcher(text);
    while (matcher.find()) {
      names.add(matcher.group(1));
    }
    return names;
  }

  private void addNamed(String name, Path job, Path highest) {
    Path file;
    try {
      file = job.resolveSibling(name).normalize();
    } catch (InvalidPathException e) {
      missing.add(name + ": can't be the name of a file");
      return;
    }
    if (!file.startsWith(highest)) {
      missing.add(name + ": lies elsewhere");
    } else if (!Files.isRegularFile(file)) {
      missing.add(name + ": there is no such file");
    } else if (!file.equals(job)) {
      add(file, "named by the job");
    }
  }

  private byte[] add(Path file, String what) {
    try {
      if (Files.size(file) > LARGEST) {
        missing.add(file.getFileName() + ": larger than " + LARGEST / 1_000_000 + " MB");
        return new byte[0];
      }
      byte[] content = Files.readAllBytes(file);
      found.add(new Found(file, what, content));
      return content;
    } catch (IOException e) {
      throw InputException.because(
          file.toString(), "", "the file can't be read", "see that you may read it", e);
    }
  }

  /** Laid out as they lie, from the job's own folder on where that holds them all. */
  List<ProblemFile.Entry> entries() {
    boolean within = found.stream().allMatch(one -> one.file().startsWith(folder));
    Path top = within ? folder : folder.getParent();
    return found.stream()
        .map(
            one ->
                new ProblemFile.Entry(
                    "job/" + top.relativize(one.file()).toString().replace('\\', '/'),
                    one.what(),
                    one.content()))
        .toList();
  }

  List<String> missing() {
    return missing;
  }
}
