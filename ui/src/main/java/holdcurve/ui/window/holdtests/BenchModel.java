package holdcurve.ui.window.holdtests;

import holdcurve.record.log.Reading;
import holdcurve.ui.window.job.PressureFormat;
import java.util.OptionalDouble;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.DoubleProperty;
import javafx.beans.property.ReadOnlyStringProperty;
import javafx.beans.property.ReadOnlyStringWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleDoubleProperty;
import javafx.collections.ListChangeListener;

/** Readings taken from two metres away: a needle that is set, and when the next one is due. */
public final class BenchModel {
  /** Read so often at first, and up to here; then each minute: as the steps of a hold say [s]. */
  private static final double AT_FIRST = 30;

  private static final double FIRST_PART = 120;
  private static final double LATER = 60;

  private final HoldTestsModel model;
  private final DoubleProperty needle = new SimpleDoubleProperty();
  private final ReadOnlyStringWrapper typed = new ReadOnlyStringWrapper("");
  private final BooleanProperty beep = new SimpleBooleanProperty();
  private double told;

  BenchModel(HoldTestsModel model) {
    this.model = model;
    model.watch().runningProperty().addListener((property, before, now) -> told = 0);
    model.readings().addListener((ListChangeListener<Reading>) change -> toLast());
    toLast();
  }

  private void toLast() {
    int last = model.readings().size() - 1;
    if (last >= 0 && typed.get().isEmpty()) {
      needle.set(model.readings().get(last).pressure());
    }
  }

  /** The pump stops now, or this is the moment of the next reading. */
  void mark() {
    model.entry().mark();
  }

  /** The needle is set where the dial was tapped [Pa gauge]. */
  void tap(double pressure) {
    model.entry().typing();
    typed.set("");
    needle.set(stepped(pressure));
  }

  /** The needle goes on by so many steps of reading. */
  void nudge(int steps) {
    tap(needle.get() + steps * step());
  }

  private double stepped(double pressure) {
    double most =
        model.job().getValue() == null ? pressure : model.job().getValue().gauge().range();
    return Math.max(0, Math.min(most, step() * Math.rint(pressure / step())));
  }

  private double step() {
    return model.job().getValue() == null ? 1e3 : model.job().getValue().gauge().resolution();
  }

  /** A digit or a decimal mark, as typed. */
  void type(String character) {
    model.entry().typing();
    typed.set(typed.get() + character.replace(',', '.'));
    PressureFormat pressures = model.pressures();
    OptionalDouble value = pressures.parse(typed.get());
    value.ifPresent(needle::set);
  }

  /** Takes the last character back. */
  void back() {
    if (!typed.get().isEmpty()) {
      typed.set(typed.get().substring(0, typed.get().length() - 1));
      model.pressures().parse(typed.get()).ifPresent(needle::set);
    }
  }

  /** Takes the reading as the needle stands, or as typed. */
  boolean take() {
    String text = typed.get().isEmpty() ? model.pressures().number(needle.get()) : typed.get();
    boolean taken = model.entry().enter(text);
    if (taken) {
      typed.set("");
      toLast();
    }
    return taken;
  }

  /** When the next reading is due [s since the pump stopped]. */
  static double due(double time) {
    double every = time < FIRST_PART ? AT_FIRST : LATER;
    return every * (Math.floor(time / every + 1e-9) + 1);
  }

  /** Time to the next reading [s]; 0 while the watch stands. */
  double left() {
    double now = model.watch().time();
    return model.watch().runningProperty().get() ? due(now) - now : 0;
  }

  /** Whether a reading has become due since this was asked last. */
  boolean isNewlyDue() {
    if (!model.watch().runningProperty().get()) {
      return false;
    }
    double next = due(model.watch().time());
    boolean passed = told != 0 && next > told;
    told = next;
    return passed;
  }

  HoldTestsModel holds() {
    return model;
  }

  /** Where the needle is set [Pa gauge]. */
  DoubleProperty needleProperty() {
    return needle;
  }

  /** What has been typed of a number; empty for nothing. */
  ReadOnlyStringProperty typedProperty() {
    return typed.getReadOnlyProperty();
  }

  /** Whether it beeps when a reading is due. */
  BooleanProperty beepProperty() {
    return beep;
  }
}
