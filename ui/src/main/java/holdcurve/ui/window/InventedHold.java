package holdcurve.ui.window;

import holdcurve.physics.circuit.Circuit;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.Reading;
import holdcurve.ui.schematic.CircuitLayout;
import holdcurve.ui.window.job.CircuitTemplates;
import holdcurve.ui.window.job.JobEdits;
import holdcurve.ui.window.job.TestEdits;
import holdcurve.ui.window.plot.HoldPlot;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A job to rehearse with, and its plot.
 *
 * @param job one hold, readings every tenth of a second
 */
record InventedHold(Job job, HoldPlot plot) {
  /** As many as are read by eye. */
  private static final int FEW = 12;

  /** As many as a logger gives, so that what is done for each is compiled. */
  private static final int MANY = 20_000;

  /** Two readings, a few, and a logger's. Takes a while at first: not for the screen's thread. */
  static List<InventedHold> all() {
    Circuit circuit = CircuitTemplates.circuit(CircuitTemplates.all().get(0));
    CircuitLayout.of(circuit);
    return Stream.of(2, FEW, MANY).map(count -> of(circuit, count)).toList();
  }

  private static InventedHold of(Circuit circuit, int count) {
    List<Reading> readings =
        IntStream.range(0, count).mapToObj(i -> Reading.of(0.1 * i, 2e5 - i)).toList();
    Job job =
        JobEdits.change(
            JobEdits.blank("", circuit),
            JobEdits.FIRST_TEST,
            hold -> TestEdits.withLog(hold, new GaugeLog("", readings, 0)));
    return new InventedHold(job, HoldPlot.of(job.tests().get(0), HoldPlot.Wish.PLAIN));
  }
}
