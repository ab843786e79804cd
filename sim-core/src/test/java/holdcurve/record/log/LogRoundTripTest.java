package holdcurve.record.log;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What the writer writes, the reader reads back: the readings to the digits that are written. */
class LogRoundTripTest {
  private static final double WRITTEN_TIME = 0.5e-3;
  private static final double WRITTEN_PRESSURE = 0.5;
  private static final double WRITTEN_TEMPERATURE = 0.005;
  private static final double ROUNDING = 1e-9;

  @Property(tries = 500, seed = "1971")
  void readsBackWhatWasWritten(@ForAll("logs") GaugeLog log) {
    GaugeLog back = GaugeLogReader.read("written", GaugeLogWriter.write(log)).log();
    GaugeLog sent = log.fromPumpStop();
    assertEquals(sent.readings().size(), back.readings().size());
    for (int i = 0; i < sent.readings().size(); i++) {
      assertSame(sent.readings().get(i), back.readings().get(i));
    }
    assertEquals(texts(sent), texts(back));
    assertEquals(0, back.pumpStop(), WRITTEN_TIME + ROUNDING);
  }

  @Property(tries = 200, seed = "1972")
  void writesTheSameTextAgain(@ForAll("logs") GaugeLog log) {
    String text = GaugeLogWriter.write(log);
    assertEquals(text, GaugeLogWriter.write(GaugeLogReader.read("written", text).log()));
  }

  private static void assertSame(Reading sent, Reading back) {
    assertEquals(sent.time(), back.time(), WRITTEN_TIME + ROUNDING);
    assertEquals(sent.pressure(), back.pressure(), WRITTEN_PRESSURE + 1e-6);
    assertEquals(sent.fuelTemperature(), back.fuelTemperature(), WRITTEN_TEMPERATURE + ROUNDING);
    assertEquals(sent.event(), back.event());
    assertEquals(sent.doubtful(), back.doubtful());
  }

  private static List<String> texts(GaugeLog log) {
    return log.events().stream().map(e -> e.event().text()).sorted().toList();
  }

  /**
   * Logs with 3 to 40 readings in the hold and the pump-stop event, if any, at the pump stop. Those
   * that happen to look as if a decimal mark had slipped would be refused, and are left out.
   */
  @Provide
  Arbitrary<GaugeLog> logs() {
    Arbitrary<List<Reading>> hold = readings(0, 3600).list().ofMinSize(3).ofMaxSize(40);
    Arbitrary<List<Reading>> buildUp = readings(-30, -0.01).list().ofMaxSize(5);
    Arbitrary<List<TimedEvent>> alone =
        Combinators.combine(Arbitraries.doubles().between(-30, 3600), notes())
            .as(TimedEvent::new)
            .list()
            .ofMaxSize(3);
    Arbitrary<Double> clock = Arbitraries.of(0.0, 0.0, 12.5, 36750.0);
    return Combinators.combine(hold, buildUp, alone, clock)
        .as(LogRoundTripTest::log)
        .filter(log -> OddReading.in(log).stream().noneMatch(OddReading::sure));
  }

  private static GaugeLog log(
      List<Reading> hold, List<Reading> buildUp, List<TimedEvent> alone, double pumpStop) {
    List<Reading> readings = new ArrayList<>(buildUp);
    readings.addAll(hold);
    List<Reading> sorted =
        readings.stream()
            .map(r -> r.since(-pumpStop))
            .sorted(Comparator.comparingDouble(Reading::time))
            .toList();
    List<TimedEvent> events = new ArrayList<>(GaugeLog.eventsOf(sorted));
    alone.forEach(e -> events.add(new TimedEvent(e.time() + pumpStop, e.event())));
    if (pumpStop > 0) {
      events.add(new TimedEvent(pumpStop, LogEvent.of("pump stop")));
    }
    return new GaugeLog("invented", sorted, events, pumpStop);
  }

  private static Arbitrary<Reading> readings(double from, double to) {
    Arbitrary<Double> temperatures = Arbitraries.doubles().between(250, 350).ofScale(2);
    return Combinators.combine(
            Arbitraries.doubles().between(from, to).ofScale(3),
            Arbitraries.doubles().between(-0.9e5, 6e5),
            temperatures.injectNull(0.5),
            notes().optional(0.2),
            Arbitraries.of(false, false, true))
        .as(
            (time, pressure, kelvins, event, doubtful) ->
                new Reading(
                    time, pressure, kelvins == null ? Double.NaN : kelvins, event, doubtful));
  }

  /**
   * Words with everything that a CSV file finds hard, and what a spreadsheet takes for a formula,
   * but none that mean pump or stop.
   */
  private static Arbitrary<LogEvent> notes() {
    Arbitrary<String> first = Arbitraries.of("x", "x", "=a", "+a", "-a", "@a", "'=a", "''-", "'");
    Arbitrary<String> more =
        Arbitraries.strings().withChars("abc ,;|\"'\t\n#=12.?°ü").ofMinLength(1).ofMaxLength(12);
    return Combinators.combine(first, more).as(String::concat).map(LogEvent::of);
  }
}
