package holdcurve.ui.harduse;

import java.io.IOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import jdk.jfr.Recording;
import jdk.jfr.consumer.RecordedEvent;
import jdk.jfr.consumer.RecordingFile;

/** What the Java machine itself records of all that is written, to files and to sockets. */
final class WriteRecord {
  private static final List<String> WATCHED =
      List.of("jdk.FileWrite", "jdk.SocketWrite", "jdk.SocketRead");

  private final Recording recording = new Recording();

  private WriteRecord() {}

  static WriteRecord start() {
    WriteRecord record = new WriteRecord();
    WATCHED.forEach(event -> record.recording.enable(event).withoutThreshold().withoutStackTrace());
    record.recording.start();
    return record;
  }

  /**
   * Ends the record and prints it, a line an event.
   *
   * @param control a file that is written to and must appear, as must one byte over a socket: a
   *     record that misses these would prove nothing
   */
  void print(Path kept, Path control) throws IOException {
    Files.writeString(control, "control");
    try (ServerSocket here = new ServerSocket(0, 1, InetAddress.getLoopbackAddress());
        Socket there = new Socket(here.getInetAddress(), here.getLocalPort())) {
      there.getOutputStream().write(1);
    }
    recording.stop();
    recording.dump(kept);
    recording.close();
    RecordingFile.readAllEvents(kept).forEach(WriteRecord::print);
  }

  private static void print(RecordedEvent event) {
    String name = event.getEventType().getName();
    if (!name.equals("jdk.FileWrite")) {
      System.out.println(name + " " + event.getString("host"));
    } else if (event.getString("path") != null) {
      System.out.println(name + " " + event.getString("path"));
    }
  }
}
