package holdcurve.bench.flowsheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What a bench sheet is judged by, from the data file {@code bench-limits.json} beside this class,
 * where each figure has its source.
 *
 * @param outOfLine departure from the mean of the set from which a service is worth it [-]
 * @param farOut departure from which it surely is [-]
 * @param usualGain flow that a service usually brings [-]
 * @param leastGain less than this is less than usual [-]
 * @param mostGain more than this is more than usual [-]
 * @param mostDrops drops in a minute that a tight injector may lose [1/min]
 * @param sprayGrades words for the grades of spray, best first
 * @param worstGoodSpray the worst grade that may be refitted, 1 the best
 * @param coils kinds of coil
 * @param shelfDays days within which serviced injectors are refitted [d]
 * @param linearDeparture departure from the line at which the linear range ends [-]
 * @param repeatability of a bench that doesn't state it [-]
 * @param accuracy of a bench that doesn't state it [-]
 */
public record BenchLimits(
    double outOfLine,
    double farOut,
    double usualGain,
    double leastGain,
    double mostGain,
    double mostDrops,
    List<String> sprayGrades,
    int worstGoodSpray,
    List<CoilKind> coils,
    int shelfDays,
    double linearDeparture,
    double repeatability,
    double accuracy) {

  /**
   * A kind of coil.
   *
   * @param name in the words of the trade
   * @param least resistance at room temperature [Ω]
   * @param most resistance at room temperature [Ω]
   */
  public record CoilKind(String name, double least, double most) {}

  public BenchLimits {
    sprayGrades = List.copyOf(sprayGrades);
    coils = List.copyOf(coils);
  }

  /**
   * Word for a grade of spray.
   *
   * @param grade 1 the best
   */
  public String sprayWord(int grade) {
    return sprayGrades.get(grade - 1);
  }

  /** The shipped data file. */
  public static BenchLimits shipped() {
    try (InputStream in = BenchLimits.class.getResourceAsStream("bench-limits.json")) {
      return of(new ObjectMapper().readTree(in));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static BenchLimits of(JsonNode root) {
    List<String> grades = new ArrayList<>();
    root.at("/spray/grades").forEach(grade -> grades.add(grade.asText()));
    List<CoilKind> coils = new ArrayList<>();
    root.at("/coil_ohm/kinds")
        .forEach(
            kind ->
                coils.add(
                    new CoilKind(
                        kind.get("name").asText(),
                        kind.get("least").asDouble(),
                        kind.get("most").asDouble())));
    return new BenchLimits(
        percent(root, "/out_of_line_percent/from"),
        percent(root, "/out_of_line_percent/far"),
        percent(root, "/service_gain_percent/usual"),
        percent(root, "/service_gain_percent/least"),
        percent(root, "/service_gain_percent/most"),
        root.at("/drops_per_minute/most").asDouble(),
        grades,
        root.at("/spray/worst_good").asInt(),
        coils,
        root.at("/shelf_days/most").asInt(),
        percent(root, "/linear_range_percent/most"),
        percent(root, "/bench/repeatability_percent"),
        percent(root, "/bench/accuracy_percent"));
  }

  private static double percent(JsonNode root, String place) {
    return root.at(place).asDouble() / 100;
  }
}
