package holdcurve.bench.droptest;

import holdcurve.bench.flowsheet.Standing;
import holdcurve.common.number.Interval;
import java.util.Optional;

/**
 * What the test says of one injector.
 *
 * @param id number or name
 * @param firings how often it was fired [-]
 * @param meanDrop of the readings [Pa]
 * @param departure of what it passes from the median of the set [-]
 * @param standing where that puts it
 * @param sure whether the 90 % range lies on one side of the limit for a service
 * @param lowest probability that it passes least of all [-]
 * @param moves whether the needle moved at all
 * @param staysOpen whether the needle went on falling after it, so that it doesn't shut
 * @param flow what it passes while energised, at the pressure of the test [m³/s]; empty where the
 *     circuit's compliance isn't known
 */
public record InjectorDrop(
    String id,
    int firings,
    double meanDrop,
    Interval departure,
    Standing standing,
    boolean sure,
    double lowest,
    boolean moves,
    boolean staysOpen,
    Optional<Interval> flow) {}
