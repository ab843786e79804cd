package holdcurve.inference.data;

import holdcurve.common.input.InputException;
import holdcurve.common.input.NoAnswerException;
import holdcurve.common.message.Message;
import holdcurve.common.number.Celsius;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.TemperatureRange;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.Reading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** What readings must be like before anything can be made of them. */
public final class ReadingChecks {
  /** A needle that never comes this far off its stop shows no hold: assumed [Pa]. */
  private static final double LEAST = 1e4;

  /** Within this of its boiling point fuel evaporates instead of losing pressure: assumed [Pa]. */
  private static final double BOILING = 1e4;

  private ReadingChecks() {}

  /**
   * @param notes receives a sentence for what can be used with care
   * @throws InputException if a value can't be right
   * @throws NoAnswerException if the values may be right and tell nothing
   */
  public static void check(Job job, List<Message> notes) {
    List<Message> empty = new ArrayList<>();
    for (HoldTest test : job.tests()) {
      checkTemperature(test, job);
      checkScale(test, job.gauge(), job.title(), notes);
      checkVacuum(test, job);
      silence(test, job, notes).ifPresent(empty::add);
    }
    if (!empty.isEmpty() && empty.size() == job.tests().size()) {
      throw new NoAnswerException(job.title() + ": " + String.join(" ", Message.inBar(empty)));
    }
    notes.addAll(empty);
  }

  private static void checkTemperature(HoldTest test, Job job) {
    TemperatureRange range = job.circuit().fluid().validRange();
    for (Reading reading : test.log().hold()) {
      if (reading.hasTemperature() && !range.contains(reading.fuelTemperature())) {
        throw InputException.at(
            job.title(),
            "test '" + test.id() + "' at " + seconds(reading),
            String.format(Locale.ROOT, "fuel at %.0f °C", Celsius.of(reading.fuelTemperature())),
            String.format(
                Locale.ROOT,
                "give %.0f to %.0f °C, or leave the temperatures out",
                Celsius.of(range.low()),
                Celsius.of(range.high())));
      }
    }
  }

  private static void checkScale(HoldTest test, GaugeSpec gauge, String job, List<Message> notes) {
    double end = gauge.most();
    int atStop = 0;
    for (Reading reading : test.log().hold()) {
      if (reading.pressure() > end) {
        throw InputException.at(
            job,
            "test '" + test.id() + "' at " + seconds(reading),
            bar(reading.pressure()) + " bar on a gauge to " + bar(gauge.range()) + " bar",
            "give the gauge's \"range_bar\" in the job, or correct the reading or its unit");
      }
      atStop += reading.pressure() >= gauge.range() ? 1 : 0;
    }
    if (atStop > 0) {
      notes.add(
          Message.of(
              "%s: %d readings at the end of the scale, %s, count for little: the needle was at its"
                  + " stop.",
              test.id(), atStop, Message.pressure(gauge.range())));
    }
  }

  /** Fuel boils before the pressure falls to its vapour pressure, and keeps it up from then on. */
  private static void checkVacuum(HoldTest test, Job job) {
    double temperature = TestOperations.of(test).fuelTemperature();
    double boils = boiling(job, temperature);
    double error = job.gauge().range() * job.gauge().accuracyClass() + job.gauge().resolution();
    for (Reading reading : test.log().hold()) {
      if (reading.pressure() < boils - BOILING - error) {
        throw InputException.at(
            job.title(),
            "test '" + test.id() + "' at " + seconds(reading),
            String.format(
                Locale.ROOT,
                "%s bar, where fuel of %.0f °C boils at %s bar already and falls no further",
                bar(reading.pressure()),
                Celsius.of(temperature),
                bar(boils)),
            "look at the gauge's zero and at the sign and unit of the readings, and give"
                + " \"fuel_temp_C\" if the fuel was colder");
      }
    }
  }

  /** Pressure at which the fuel boils [Pa gauge]. */
  private static double boiling(Job job, double temperature) {
    return job.circuit().fluid().vapourPressure(temperature) - Fluid.ATMOSPHERE;
  }

  /** Why a test says nothing; where it does, how far down, as a note. */
  private static Optional<Message> silence(HoldTest test, Job job, List<Message> notes) {
    List<Reading> hold = test.log().hold();
    double most = hold.stream().mapToDouble(Reading::pressure).max().orElse(0);
    double least = hold.stream().mapToDouble(Reading::pressure).min().orElse(0);
    if (least >= job.gauge().range()) {
      return Optional.of(
          Message.of(
              "'%s' shows nothing but the end of the scale, %s: the needle was at its stop. Use a"
                  + " gauge with a longer scale, or go on until the needle leaves its stop.",
              test.id(), Message.pressure(job.gauge().range())));
    }
    if (most < LEAST) {
      return Optional.of(
          Message.of(
              "'%s' never shows more than %s, so there is no hold to judge. If the heading of the"
                  + " log names a wrong unit, correct it. If the gauge did rise while the pump ran,"
                  + " look for a large leak or a check valve that hangs open; if not, look at the"
                  + " pump, its fuse and the fuel.",
              test.id(), Message.pressure(Math.max(0, most))));
    }
    double temperature = TestOperations.of(test).fuelTemperature();
    double boils = boiling(job, temperature);
    Message where =
        Message.of(
            "'%s': at %.0f °C this fuel boils below %s",
            test.id(), Celsius.of(temperature), Message.pressure(boils));
    if (boils > most - BOILING) {
      return Optional.of(
          Message.of(
              "%s, above all that the gauge shows, so a leak makes vapour instead of a fall. Let it"
                  + " cool and hold again.",
              where));
    }
    if (boils > 0 && boils > least - BOILING) {
      notes.add(Message.of("%s, so readings near that say little about leaks.", where));
    }
    return Optional.empty();
  }

  private static String seconds(Reading reading) {
    return String.format(Locale.ROOT, "%.0f s", reading.time());
  }

  private static String bar(double pascal) {
    return String.format(Locale.ROOT, "%.2f", pascal / 1e5);
  }
}
