package holdcurve.ui.command;

import holdcurve.common.number.Interpolation;
import holdcurve.record.log.Reading;
import holdcurve.training.Debrief;
import holdcurve.ui.practice.DebriefText;
import holdcurve.ui.practice.RepairWords;
import java.util.List;
import java.util.Locale;

/** A debrief as text for a terminal, 80 columns wide: score and answer first. */
final class DebriefPrint {
  private static final String LINE = "      %5s  %12s  %12s  %14s";

  private DebriefPrint() {}

  static void print(Debrief debrief, Printout out) {
    DebriefText text = new DebriefText(debrief);
    out.println();
    out.println("DEBRIEF");
    text.outcome().forEach(sentence -> Wrapped.print(out, "", sentence));
    out.println();
    for (DebriefText.Points one : text.points()) {
      out.println(String.format(Locale.ROOT, "  %-7s %9s  %s", one.name(), one.shown(), one.why()));
    }
    for (int i = 0; i < debrief.lines().size(); i++) {
      step(i + 1, debrief.lines().get(i), text, out);
    }
    paragraphs(text.next().stream().toList(), out);
    debrief.repair().ifPresent(repair -> paragraphs(RepairWords.of(repair), out));
    paragraphs(text.lesson(), out);
    out.flush();
  }

  private static void step(int number, Debrief.Line line, DebriefText text, Printout out) {
    out.println();
    Wrapped.print(out, number + ". ", line.step().words() + ".");
    Wrapped.print(out, "   ", DebriefText.choice(line));
    if (line.hold().isEmpty()) {
      Wrapped.print(out, "   ", DebriefText.came(line, out.pressureUnit()));
    }
    out.println(
        String.format(
            Locale.ROOT,
            "   It told %s. Right answer: you %.0f %% before, your tests %.0f %% after.",
            DebriefText.told(line),
            100 * line.learner(),
            100 * line.evidence()));
    Wrapped.print(out, "   Points at: ", line.leading() + ".");
    line.hold().ifPresent(curves -> curves(curves, text, out));
  }

  /** Each reading beside both curves. */
  private static void curves(Debrief.Curves curves, DebriefText text, Printout out) {
    List<String> names = text.curveNames();
    out.println(String.format(Locale.ROOT, LINE, "", names.get(0), names.get(1), names.get(2)));
    for (Reading reading : curves.taken().hold().orElseThrow().log().hold()) {
      int seconds = (int) Math.round(reading.time());
      out.println(
          String.format(
              Locale.ROOT,
              LINE,
              String.format(Locale.ROOT, "%d:%02d", seconds / 60, seconds % 60),
              out.pressure(reading.pressure()),
              out.pressure(Interpolation.at(curves.times(), curves.truth(), reading.time())),
              out.pressure(Interpolation.at(curves.times(), curves.other(), reading.time()))));
    }
    text.seen(curves).forEach(one -> Wrapped.print(out, "   ", out.said(one)));
  }

  private static void paragraphs(List<String> sentences, Printout out) {
    if (!sentences.isEmpty()) {
      out.println();
      sentences.forEach(sentence -> Wrapped.print(out, "", sentence));
    }
  }
}
