package holdcurve.ui.window.benchsheet;

import holdcurve.bench.flowsheet.BenchHeadline;
import holdcurve.ui.window.frame.Sign;

/**
 * How the window shows what a sheet comes to.
 *
 * @param style class in the stylesheet
 */
record SheetHeadline(String style, Sign sign) {
  static SheetHeadline of(BenchHeadline.Kind kind) {
    return switch (kind) {
      case OUT_OF_LINE, NOT_FIT -> new SheetHeadline("leak", Sign.CROSS);
      case NO_FLOWS, NOT_SETTLED -> new SheetHeadline("open", Sign.QUESTION);
      case IN_LINE -> new SheetHeadline("sound", Sign.TICK);
    };
  }
}
