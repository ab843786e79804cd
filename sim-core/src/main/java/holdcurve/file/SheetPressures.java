package holdcurve.file;

import holdcurve.common.message.PressureUnit;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Pressures in sheets: the name of a value ends in its unit, such as {@code pressure_psi}. */
final class SheetPressures {
  private static final List<PressureUnit> UNITS =
      List.of(PressureUnit.BAR, PressureUnit.PSI, PressureUnit.KPA);

  private SheetPressures() {}

  /** All names that a pressure can have. */
  static List<String> names(String stem) {
    return UNITS.stream().map(unit -> name(stem, unit)).toList();
  }

  /** Adds all names of each of these pressures. */
  static void addNames(Collection<String> known, String... stems) {
    for (String stem : stems) {
      known.addAll(names(stem));
    }
  }

  static String name(String stem, PressureUnit unit) {
    return stem + "_" + unit.symbol().toLowerCase(Locale.ROOT);
  }

  /** A pressure as it stands in a sheet: where, and in which unit. */
  record Stated(JsonPlace place, PressureUnit unit) {
    /**
     * @param least that may be stated [bar]
     * @param most that may be stated [bar]
     * @return [Pa]
     */
    double pascals(double least, double most) {
      double scale = unit.fromPascal(1e5);
      double stated =
          unit == PressureUnit.BAR
              ? place.number(least, most, " bar")
              : place.number(
                  Math.floor(100 * least * scale) / 100,
                  Math.ceil(100 * most * scale) / 100,
                  " " + unit.symbol());
      return unit.toPascal(stated);
    }
  }

  /** The pressure under one of its names; refuses two of them. */
  static Optional<Stated> find(SheetFields fields, String stem) {
    Optional<Stated> found = Optional.empty();
    for (PressureUnit unit : UNITS) {
      Optional<JsonPlace> place = fields.find(name(stem, unit));
      if (place.isPresent() && found.isPresent()) {
        throw place.get().bad("the pressure is given in two units", "keep one of the two");
      }
      found = place.isPresent() ? Optional.of(new Stated(place.get(), unit)) : found;
    }
    return found;
  }

  static Stated get(SheetFields fields, String stem, String remedy) {
    return find(fields, stem)
        .orElseGet(
            () -> new Stated(fields.get(name(stem, PressureUnit.BAR), remedy), PressureUnit.BAR));
  }
}
