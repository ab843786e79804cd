package holdcurve.file;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AtomicMoveNotSupportedException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;

/** The steps in which a file is written, so that each can be made to fail in a test. */
interface Disk {
  /** The disk as it is. */
  Disk REAL = new Disk() {};

  /** Writes a new file and waits until it is on the disk. */
  default void create(Path fresh, byte[] content) throws IOException {
    try (FileChannel channel =
        FileChannel.open(fresh, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      ByteBuffer left = ByteBuffer.wrap(content);
      while (left.hasRemaining()) {
        channel.write(left);
      }
      channel.force(true);
    }
  }

  /** Puts a file where another may stand, in one step where the disk can do that. */
  default void move(Path from, Path to) throws IOException {
    try {
      Files.move(from, to, StandardCopyOption.ATOMIC_MOVE, StandardCopyOption.REPLACE_EXISTING);
    } catch (AtomicMoveNotSupportedException e) {
      Files.move(from, to, StandardCopyOption.REPLACE_EXISTING);
    }
  }

  /** Takes a file away that may not be there. */
  default void delete(Path file) throws IOException {
    Files.deleteIfExists(file);
  }
}
