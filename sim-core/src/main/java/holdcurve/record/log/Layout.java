package holdcurve.record.log;

import holdcurve.common.message.PressureUnit;
import java.util.List;
import java.util.Optional;

/**
 * How the lines of one file are to be read.
 *
 * @param separator between columns
 * @param decimalComma whether numbers have a decimal comma; empty until the first mark is seen
 * @param headings numbers of the heading lines: none, one, or two where the units have their own
 * @param width number of columns that have a meaning
 * @param time index of the time column
 * @param timeUnit empty where no heading names it
 * @param pressure index of the pressure column
 * @param pressureUnit empty where no heading names it
 * @param temperature index of the temperature column, or -1
 * @param temperatureUnit empty where no heading names it
 * @param event index of the column that says what happened, or -1
 * @param remark index of the column of remarks, or -1
 * @param unused headings of columns that are not read
 */
record Layout(
    Separator separator,
    Optional<Boolean> decimalComma,
    List<Integer> headings,
    int width,
    int time,
    Optional<TimeUnit> timeUnit,
    int pressure,
    Optional<PressureUnit> pressureUnit,
    int temperature,
    Optional<TemperatureUnit> temperatureUnit,
    int event,
    int remark,
    List<String> unused) {

  /** Line of the last heading; 0 for none. */
  int lastHeading() {
    return headings.isEmpty() ? 0 : headings.get(headings.size() - 1);
  }
}
