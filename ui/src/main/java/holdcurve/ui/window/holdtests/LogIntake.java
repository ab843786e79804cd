package holdcurve.ui.window.holdtests;

import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.GaugeLogReader;
import java.nio.file.Path;
import java.util.function.Supplier;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** Logs that come from elsewhere: looked at first, then taken or left. */
final class LogIntake {
  private final ChosenHold hold;
  private final Stopwatch watch;
  private final ObjectProperty<Preview> preview = new SimpleObjectProperty<>();

  LogIntake(ChosenHold hold, Stopwatch watch) {
    this.hold = hold;
    this.watch = watch;
  }

  /** Reads a pasted table, to be looked at before it is taken. */
  void paste(String text) {
    String stated = PastedTable.withUnit(text, hold.pressures().unit());
    read("pasted table", () -> new Preview(GaugeLogReader.read("pasted table", stated)));
  }

  /** Reads a log file, to be looked at before it is taken. */
  void open(Path file) {
    read(file.getFileName().toString(), () -> new Preview(GaugeLogReader.read(file)));
  }

  private void read(String name, Supplier<Preview> reading) {
    hold.jobs().work().start("Reading " + name, progress -> reading.get(), preview::set);
  }

  /**
   * Takes the readings looked at into the chosen test, or a new one without clamps if that has
   * some.
   */
  void take() {
    GaugeLog taken = preview.get().readings();
    preview.set(null);
    watch.stop();
    if (hold.hasReadings()) {
      hold.addTest(hold.idProperty().get());
    }
    hold.changeLog("import", log -> taken);
  }

  /** Leaves them. */
  void drop() {
    preview.set(null);
  }

  /** The log that waits to be taken; null for none. */
  ObjectProperty<Preview> previewProperty() {
    return preview;
  }
}
