package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;

import holdcurve.common.input.InputException;
import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Whatever goes wrong while a file is written, the old or the new content stands there whole. */
class SafeFileTest {
  private static final String OLD = "the readings of last night\n".repeat(200);
  private static final String OLDER = "the readings of the night before\n".repeat(200);
  private static final String NEW = "and those of tonight\n".repeat(300);
  private static final int MOST_STEPS = 100;

  @TempDir private Path folder;
  private Path file;
  private Path backup;

  private void standing() throws IOException {
    file = folder.resolve("log.csv");
    backup = folder.resolve("log.csv~");
    Files.writeString(backup, OLDER);
    Files.writeString(file, OLD);
  }

  private List<String> names() throws IOException {
    try (Stream<Path> all = Files.list(folder)) {
      return all.map(path -> path.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void keepsOneBackupAndNothingElse() throws IOException {
    standing();
    SafeFile.write(file, NEW);
    assertEquals(NEW, Files.readString(file));
    assertEquals(OLD, Files.readString(backup));
    assertEquals(List.of("log.csv", "log.csv~"), names());
  }

  /** Each step once, in a process of its own that is halted there. */
  @Test
  void aKilledProcessLosesNothing() throws Exception {
    TreeSet<String> halted = new TreeSet<>();
    int exit = HaltingWriter.HALTED;
    for (int step = 0; exit == HaltingWriter.HALTED && step < MOST_STEPS; step++) {
      standing();
      exit = HaltingWriter.start(file, NEW, step);
      halted.add(exit + " in step " + step);
      nothingIsLost();
    }
    assertEquals(0, exit, halted.toString());
    assertEquals(9, halted.size(), halted.toString());
    assertEquals(NEW, Files.readString(file));
  }

  @Test
  void aKillAtAnyStepLeavesBothFilesWhole() throws IOException {
    boolean broken = true;
    for (int step = 0; broken; step++) {
      standing();
      BreakingDisk disk =
          new BreakingDisk(
              step,
              true,
              what -> {
                throw new BreakingDisk.Killed();
              });
      try {
        SafeFile.write(file, NEW, disk);
      } catch (BreakingDisk.Killed killed) {
        assertTrue(disk.isBroken());
      }
      broken = disk.isBroken();
      nothingIsLost();
    }
  }

  /** File and backup are whole, and the content before this writing is one of them. */
  private void nothingIsLost() throws IOException {
    String now = Files.readString(file);
    String kept = Files.readString(backup);
    assertTrue(now.equals(OLD) || now.equals(NEW), "the file is cut");
    assertTrue(kept.equals(OLD) || kept.equals(OLDER), "the backup is cut");
    assertTrue(now.equals(OLD) || kept.equals(OLD), "last night's readings are gone");
  }

  @Test
  void aFullDiskLosesNothing() throws IOException {
    for (int step = 0; step < 5; step++) {
      standing();
      BreakingDisk full =
          new BreakingDisk(
              step,
              false,
              what -> {
                throw new FileSystemException("x", null, "No space left on device");
              });
      InputException said =
          assertThrows(InputException.class, () -> SafeFile.write(file, NEW, full));
      assertEquals(
          file
              + ": the file can't be written (No space left on device); make room or choose another"
              + " folder; what stood there is unchanged.",
          said.getMessage());
      assertEquals(OLD, Files.readString(file));
      nothingIsLost();
      assertEquals(List.of("log.csv", "log.csv~"), names(), "no half of a file takes room");
    }
  }

  @Test
  void whatCannotBeClearedIsLeft() throws IOException {
    standing();
    BreakingDisk stuck =
        new BreakingDisk(
            6,
            true,
            what -> {
              throw new AccessDeniedException("x");
            });
    SafeFile.write(file, NEW, stuck);
    assertTrue(stuck.isBroken());
    assertEquals(NEW, Files.readString(file));
  }

  @Test
  void aFolderThatMayNotBeWrittenTo() throws IOException {
    standing();
    BreakingDisk closed =
        new BreakingDisk(
            0,
            false,
            what -> {
              throw new AccessDeniedException("x");
            });
    InputException said =
        assertThrows(InputException.class, () -> SafeFile.write(file, NEW, closed));
    assertEquals(
        file
            + ": its folder may not be written to; choose another folder; what stood there is"
            + " unchanged.",
        said.getMessage());
    nothingIsLost();
  }

  /** The same with a real folder; whoever may do anything can't be kept out. */
  @Test
  void aReadOnlyFolder() throws IOException {
    standing();
    assertTrue(folder.toFile().setWritable(false));
    try {
      assumeFalse(Files.isWritable(folder), "this user may write anywhere");
      InputException said = assertThrows(InputException.class, () -> SafeFile.write(file, NEW));
      assertTrue(said.getMessage().contains("its folder may not be written to"));
      nothingIsLost();
    } finally {
      assertTrue(folder.toFile().setWritable(true));
    }
  }

  @Test
  void aFolderThatIsNotThere() {
    Path lost = folder.resolve("gone").resolve("log.csv");
    InputException said = assertThrows(InputException.class, () -> SafeFile.write(lost, NEW));
    assertEquals(
        lost
            + ": there is no folder '"
            + folder.resolve("gone")
            + "'; make it, or choose a folder that exists.",
        said.getMessage());
  }

  @Test
  void aFolderInPlaceOfTheFile() {
    InputException said = assertThrows(InputException.class, () -> SafeFile.write(folder, NEW));
    assertEquals(
        folder + ": this is a folder; name the file that is to be written.", said.getMessage());
  }

  @Test
  void leftoversOfAKilledProcessGoLater() throws IOException {
    standing();
    Path left = Files.writeString(folder.resolve(".log.csv.1.part"), "half");
    Path young = Files.writeString(folder.resolve(".log.csv.2.part"), "being written");
    Path other = Files.writeString(folder.resolve(".other.csv.3.part"), "another's");
    FileTime yesterday = FileTime.from(Instant.now().minus(Duration.ofDays(1)));
    Files.setLastModifiedTime(left, yesterday);
    Files.setLastModifiedTime(other, yesterday);
    SafeFile.write(file, NEW);
    assertFalse(Files.exists(left));
    assertTrue(Files.exists(young) && Files.exists(other));
  }

  @Test
  void bytesAreWrittenAsTheyAre() throws IOException {
    byte[] all = new byte[1 << 16];
    for (int i = 0; i < all.length; i++) {
      all[i] = (byte) i;
    }
    SafeFile.write(folder.resolve("report.pdf"), all);
    assertArrayEquals(all, Files.readAllBytes(folder.resolve("report.pdf")));
  }
}
