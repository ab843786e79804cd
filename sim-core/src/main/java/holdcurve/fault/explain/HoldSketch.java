package holdcurve.fault.explain;

import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.hold.HoldSetup;
import holdcurve.physics.hold.HoldSimulator;
import holdcurve.physics.part.Gauge;
import holdcurve.physics.part.Regulator;
import holdcurve.physics.part.Seats;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;

/**
 * A small drawing in plain characters of a hold without clamps: pressure against time, a circuit
 * with a fault beside the sound one.
 */
public final class HoldSketch {
  static final int ROWS = 12;
  static final int COLUMNS = 50;

  /** How long the hold is that is drawn [s]. */
  private static final double DURATION = 600;

  private static final double GRID = Unit.BAR.toSi(0.1);
  private static final double LEAST_SPAN = Unit.BAR.toSi(0.5);
  private static final char SOUND = '.';
  private static final char FAULTY = '*';
  private static final char BOTH = '#';

  private HoldSketch() {}

  /**
   * Runs both holds from the set pressure of the regulator and draws them.
   *
   * @throws IllegalArgumentException if the circuit has no gauge
   */
  public static String of(Circuit circuit, Condition faulty) {
    if (circuit.partsOf(Gauge.KIND).isEmpty()) {
      throw new IllegalArgumentException(circuit.title() + " has no gauge, so no curve to draw");
    }
    HoldSetup setup = HoldSetup.plain(startPressure(circuit));
    HoldSimulator simulator = new HoldSimulator();
    return draw(
        simulator.readings(Condition.sound(circuit), setup, times()),
        simulator.readings(faulty, setup, times()));
  }

  private static double startPressure(Circuit circuit) {
    return circuit.partsOf(Regulator.KIND).stream()
        .mapToDouble((Part part) -> part.value(Regulator.SET))
        .findFirst()
        .orElse(Seats.TEST_PRESSURE);
  }

  private static double[] times() {
    return IntStream.range(0, COLUMNS).mapToDouble(i -> DURATION * i / (COLUMNS - 1)).toArray();
  }

  /**
   * @param sound pressure at each column [Pa gauge]; likewise {@code faulty}
   */
  static String draw(double[] sound, double[] faulty) {
    double top = Math.ceil(both(sound, faulty).max().orElseThrow() / GRID) * GRID;
    double least = Math.floor(both(sound, faulty).min().orElseThrow() / GRID) * GRID;
    double bottom = Math.min(least, top - LEAST_SPAN);
    char[][] field = new char[ROWS][COLUMNS];
    Arrays.stream(field).forEach(row -> Arrays.fill(row, ' '));
    for (int column = 0; column < COLUMNS; column++) {
      int soundRow = row(sound[column], bottom, top);
      int faultyRow = row(faulty[column], bottom, top);
      field[soundRow][column] = SOUND;
      field[faultyRow][column] = soundRow == faultyRow ? BOTH : FAULTY;
    }
    return framed(field, bottom, top);
  }

  private static DoubleStream both(double[] sound, double[] faulty) {
    return DoubleStream.concat(Arrays.stream(sound), Arrays.stream(faulty));
  }

  private static int row(double pressure, double bottom, double top) {
    return (int) Math.round((top - pressure) / (top - bottom) * (ROWS - 1));
  }

  private static String framed(char[][] field, double bottom, double top) {
    StringBuilder text = new StringBuilder("bar\n");
    for (int row = 0; row < ROWS; row++) {
      double pressure = top - (top - bottom) * row / (ROWS - 1);
      String label = String.format(Locale.ROOT, "%5.2f |", Unit.BAR.fromSi(pressure));
      text.append((label + new String(field[row])).stripTrailing()).append('\n');
    }
    text.append("      +").append("-".repeat(COLUMNS)).append('\n');
    String end = String.format(Locale.ROOT, "%.0f min", DURATION / 60);
    text.append("       0").append(end.indent(COLUMNS - 1 - end.length()));
    return text.append("       . sound   * with the fault   # both\n").toString();
  }
}
