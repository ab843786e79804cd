package holdcurve.file;

import java.io.IOException;
import java.lang.System.Logger.Level;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.SecureRandom;
import java.util.HashSet;
import java.util.Optional;
import java.util.Set;

/**
 * Says that a job is being worked on, by a lock on a hidden file beside it. The system lets the
 * lock go when its process ends in whatever way, so what a killed one leaves behind holds nobody
 * up.
 */
public final class JobLock implements AutoCloseable {
  private static final System.Logger LOG = System.getLogger(JobLock.class.getName());
  private static final int TRIES = 5;
  private static final int LONGEST_MARK = 4096;

  /**
   * What this process holds. Some systems drop a process's lock on a file as soon as it closes any
   * channel to that file, so one that is held must not be opened a second time.
   */
  private static final Set<Path> HELD = new HashSet<>();

  private final Path job;
  private final FileChannel channelOrNull;
  private boolean closed;

  private JobLock(Path job, FileChannel channelOrNull) {
    this.job = job;
    this.channelOrNull = channelOrNull;
  }

  /**
   * @param job its file, there or not
   * @return the lock, to be closed; empty where somebody else holds it. In a folder that can't be
   *     written to, nobody can save, and the lock is given without a file.
   */
  public static Optional<JobLock> of(Path job) {
    Path real = real(job);
    synchronized (HELD) {
      if (HELD.contains(real)) {
        return Optional.empty();
      }
      Optional<JobLock> lock = locked(real);
      lock.ifPresent(held -> HELD.add(real));
      return lock;
    }
  }

  private static Optional<JobLock> locked(Path job) {
    try {
      for (int i = 0; i < TRIES; i++) {
        FileChannel channel =
            FileChannel.open(fileOf(job), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
        if (!tryLock(channel)) {
          channel.close();
          return Optional.empty();
        }
        if (isThere(fileOf(job), channel)) {
          return Optional.of(new JobLock(job, channel));
        }
        channel.close();
      }
      return Optional.empty();
    } catch (IOException e) {
      return Optional.of(new JobLock(job, null));
    }
  }

  private static boolean tryLock(FileChannel channel) throws IOException {
    try {
      return channel.tryLock() != null;
    } catch (OverlappingFileLockException e) {
      return false;
    }
  }

  /**
   * Whoever held it before may have removed the file between its opening and its locking. Seen by
   * its length, since opening it once more could lose the lock.
   */
  private static boolean isThere(Path file, FileChannel channel) throws IOException {
    int length = 1 + new SecureRandom().nextInt(LONGEST_MARK);
    channel.truncate(0).write(ByteBuffer.allocate(length));
    return Files.exists(file) && Files.size(file) == length;
  }

  private static Path real(Path job) {
    try {
      return job.toRealPath();
    } catch (IOException e) {
      return realFolder(job.toAbsolutePath().normalize());
    }
  }

  private static Path realFolder(Path job) {
    try {
      return job.getParent().toRealPath().resolve(job.getFileName());
    } catch (IOException e) {
      return job;
    }
  }

  /** The hidden file beside a job. */
  static Path fileOf(Path job) {
    return job.resolveSibling("." + job.getFileName() + ".lock");
  }

  /** Whether it is the lock of that job. */
  public boolean isFor(Path other) {
    return job.equals(real(other));
  }

  /** Lets go. */
  @Override
  public void close() {
    synchronized (HELD) {
      if (closed) {
        return;
      }
      closed = true;
      HELD.remove(job);
      if (channelOrNull != null) {
        letGo();
      }
    }
  }

  private void letGo() {
    try {
      Files.deleteIfExists(fileOf(job));
    } catch (IOException e) {
      LOG.log(Level.DEBUG, "left behind, it holds nobody up", e);
    }
    try {
      channelOrNull.close();
    } catch (IOException e) {
      LOG.log(Level.DEBUG, "ends with the process", e);
    }
  }
}
