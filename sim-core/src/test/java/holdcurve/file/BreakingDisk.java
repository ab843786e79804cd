package holdcurve.file;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;

/** A disk on which one step, the first is 0, goes wrong. */
final class BreakingDisk implements Disk {
  /** What goes wrong. */
  interface Break {
    /**
     * @param step what was about to be done
     */
    void at(String step) throws IOException;
  }

  /** As if the process had ended: nothing reaches the disk after it. */
  static final class Killed extends Error {
    private static final long serialVersionUID = 1;
  }

  private final int breaking;
  private final Break how;
  private final boolean forGood;
  private int step;

  /**
   * @param forGood whether every later step goes wrong as well, even clearing up
   */
  BreakingDisk(int breaking, boolean forGood, Break how) {
    this.breaking = breaking;
    this.how = how;
    this.forGood = forGood;
  }

  /** Whether the writing came to the step that goes wrong. */
  boolean isBroken() {
    return step > breaking;
  }

  /** A file is written in two steps, so that it can stand there by half. */
  @Override
  public void create(Path fresh, byte[] content) throws IOException {
    step("create");
    Files.write(fresh, Arrays.copyOf(content, content.length / 2));
    step("go on writing");
    Files.delete(fresh);
    Disk.super.create(fresh, content);
  }

  @Override
  public void move(Path from, Path to) throws IOException {
    step("move");
    Disk.super.move(from, to);
  }

  @Override
  public void delete(Path file) throws IOException {
    step("delete");
    Disk.super.delete(file);
  }

  private void step(String what) throws IOException {
    int now = step++;
    if (now == breaking || forGood && now > breaking) {
      how.at(what);
    }
  }
}
