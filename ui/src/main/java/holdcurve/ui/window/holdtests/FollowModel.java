package holdcurve.ui.window.holdtests;

import holdcurve.common.input.InputException;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.GaugeLogReader;
import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.TestEdits;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleObjectProperty;

/**
 * A log that grows, followed: what it has more than at the last look goes into the hold. Readings
 * that are there stay as they are, also where a person changed them or the file got shorter.
 */
public final class FollowModel {
  private final ChosenHold hold;
  private final Stopwatch watch;
  private final ObjectProperty<Path> file = new SimpleObjectProperty<>();
  private final ReadOnlyBooleanWrapper following = new ReadOnlyBooleanWrapper();
  private final ReadOnlyStringWrapper said = new ReadOnlyStringWrapper("");
  private boolean looking;
  private String into = "";
  private GaugeLog before;

  FollowModel(ChosenHold hold, Stopwatch watch) {
    this.hold = hold;
    this.watch = watch;
    following.bind(file.isNotNull());
    hold.jobs().takenUpProperty().addListener((property, was, now) -> stop());
  }

  /** Begins to follow a file, into the chosen hold, or a new one if that has readings. */
  void follow(Path growing) {
    watch.stop();
    if (hold.hasReadings()) {
      hold.addTest(hold.idProperty().get());
    }
    into = hold.idProperty().get();
    before = new GaugeLog(growing.getFileName().toString(), List.of(), 0);
    file.set(growing);
    look();
  }

  /** Lets the file be; what was read stays. */
  void stop() {
    file.set(null);
    said.set("");
  }

  /** What a look at the file came to: a log, or why there is none. */
  private record Seen(GaugeLog log, String trouble) {}

  /** Looks whether the file has grown; call it again and again. */
  void look() {
    Path path = file.get();
    if (path == null || looking) {
      return;
    }
    looking = true;
    hold.jobs()
        .work()
        .start("Following " + path.getFileName(), progress -> read(path), seen -> take(path, seen))
        .ifBrokenOff(() -> looking = false);
  }

  private static Seen read(Path path) {
    String name = path.getFileName().toString();
    try {
      String text = WholeLines.of(path);
      return text.isBlank()
          ? new Seen(null, "")
          : new Seen(GaugeLogReader.readUnfinished(name, text).log(), "");
    } catch (InputException e) {
      return new Seen(null, e.getMessage());
    }
  }

  private void take(Path path, Seen seen) {
    looking = false;
    if (!path.equals(file.get())) {
      return;
    }
    int known = before.readings().size();
    if (seen.log() == null) {
      said.set(
          seen.trouble().isEmpty()
              ? "Waiting for the first line of " + path.getFileName() + "."
              : seen.trouble() + " Still following.");
    } else if (seen.log().readings().size() < known) {
      said.set(path.getFileName() + " got shorter. What was read from it stays.");
    } else {
      said.set(
          "Following " + path.getFileName() + ": " + seen.log().readings().size() + " readings.");
      add(seen.log(), known);
    }
  }

  private void add(GaugeLog now, int known) {
    boolean stopMoved = now.pumpStop() != before.pumpStop();
    if (now.readings().size() == known && !stopMoved) {
      return;
    }
    if (hold.job().tests().stream().noneMatch(test -> test.id().equals(into))) {
      stop();
      return;
    }
    List<Reading> more = now.readings().subList(known, now.readings().size());
    before = now;
    hold.jobs()
        .change(
            "readings of " + now.source(),
            job ->
                JobEdits.change(
                    job,
                    into,
                    test -> TestEdits.withLog(test, joined(test.log(), now, more, stopMoved))));
  }

  private static GaugeLog joined(
      GaugeLog there, GaugeLog now, List<Reading> more, boolean stopMoved) {
    return new GaugeLog(
        there.readings().isEmpty() ? now.source() : there.source(),
        JobEdits.withReadings(there, more).readings(),
        now.events(),
        stopMoved || there.readings().isEmpty() ? now.pumpStop() : there.pumpStop());
  }

  /** Whether a file is being followed. */
  ReadOnlyBooleanProperty followingProperty() {
    return following.getReadOnlyProperty();
  }

  /** How it goes, in a sentence; empty while no file is followed. */
  ReadOnlyStringProperty saidProperty() {
    return said.getReadOnlyProperty();
  }
}
