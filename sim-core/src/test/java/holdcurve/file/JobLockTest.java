package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class JobLockTest {
  @TempDir private Path folder;

  private Path job() throws IOException {
    return Files.writeString(folder.resolve("car.job.json"), "{}");
  }

  @Test
  void secondIsRefusedUntilTheFirstLetsGo() throws IOException {
    Path job = job();
    JobLock first = JobLock.of(job).orElseThrow();
    assertEquals(Optional.empty(), JobLock.of(job));
    assertEquals(Optional.empty(), JobLock.of(folder.resolve("x/../car.job.json").normalize()));
    first.close();
    JobLock second = JobLock.of(job).orElseThrow();
    first.close();
    assertEquals(Optional.empty(), JobLock.of(job), "closing twice lets nobody else in");
    second.close();
    assertEquals(java.util.List.of(job), Files.list(folder).toList());
  }

  /** A process that holds a lock until it is killed. */
  public static final class Holder {
    public static void main(String[] arguments) throws InterruptedException {
      Optional<JobLock> lock = JobLock.of(Path.of(arguments[0]));
      System.out.println(lock.isPresent() ? "held" : "refused");
      Thread.sleep(120_000);
      lock.ifPresent(JobLock::close);
    }
  }

  @Test
  void otherProcessIsToldAndAKilledOneHoldsNobodyUp() throws Exception {
    Path job = job();
    Process other =
        new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                Holder.class.getName(),
                job.toString())
            .redirectErrorStream(true)
            .start();
    try (var said = other.inputReader()) {
      assertEquals("held", said.readLine());
      assertEquals(Optional.empty(), JobLock.of(job));
      other.destroyForcibly().waitFor();
      assertTrue(Files.exists(JobLock.fileOf(job.toRealPath())), "a stale file is left");
      JobLock lock = JobLock.of(job).orElseThrow();
      assertTrue(lock.isFor(job));
      lock.close();
      assertFalse(Files.exists(JobLock.fileOf(job.toRealPath())));
    } finally {
      other.destroyForcibly();
    }
  }
}
