package holdcurve.record.log;

import holdcurve.common.message.PressureUnit;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One heading of a table, taken apart: {@code "Fuel temp. [°C]"} is a temperature in {@code "°C"}.
 *
 * @param role what the column holds
 * @param unit the unit as written; empty where none was recognised or bracketed
 * @param text the heading as written
 */
record Heading(Role role, String unit, String text) {
  /** What a column holds. */
  enum Role {
    TIME,
    PRESSURE,
    TEMPERATURE,
    /** What happened, in words that count. */
    EVENT,
    /** Whatever came to mind. */
    REMARK,
    /** Not needed, or not understood. */
    OTHER
  }

  /** No heading is longer [characters]. */
  private static final int LONGEST = 200;

  private static final Pattern BRACKETED = Pattern.compile("(.*?)\\s*[\\[(]([^\\[(]*)[\\])]");
  private static final Pattern ENDING =
      Pattern.compile("(.*?)(?:[\\s_/,]+in)?[\\s_/,]+(\\w+/\\w*2|\\w+/cm²|[^\\s_/,]+)");
  private static final Pattern GAUGE_OR_ABSOLUTE =
      Pattern.compile("(?i)\\b(bar|psi)\\s?[\\[(]?(g|a|abs)[\\])]?(?=$|[\\])])");
  private static final Pattern ABSOLUTE =
      Pattern.compile(
          "(?i)(?<!\\p{L})(abs|absolut|absolute|absolue|assoluta|absoluta)(?!\\p{L})"
              + "|(bar|psi|pa)[ _]?\\(a\\)");
  private static final Set<String> EVENTS =
      Set.of("event", "events", "marker", "markers", "state", "status");
  private static final Set<String> REMARKS =
      Set.of("note", "notes", "remark", "remarks", "comment", "comments", "what");
  private static final Set<String> TEMPERATURES =
      Set.of("temp", "temperature", "temperatur", "température", "temperatura", "tfuel");
  private static final Set<String> ELSEWHERE =
      Set.of(
          "ambient",
          "air",
          "bay",
          "outside",
          "room",
          "engine",
          "coolant",
          "oil",
          "manifold",
          "intake");
  private static final Set<String> PRESSURES =
      Set.of("pressure", "press", "p", "gauge", "druck", "pression", "presión", "pressione");

  /** Units of pressure that are not read; as part of a name they would pass for bar. */
  private static final Set<String> FOREIGN =
      Set.of("torr", "mmhg", "inhg", "cmhg", "atm", "at", "ata", "atü", "mmh2o", "cmh2o", "inh2o");

  private static final Set<String> TIMES =
      Set.of("time", "t", "elapsed", "clock", "stopwatch", "timestamp", "zeit", "tiempo", "tempo");

  /** Words beside a pressure that say where or how it was read, and are no units. */
  private static final Set<String> QUALIFIERS =
      Set.of(
          ("abs absolute absolut actual at before after the a of in on by with dial feed fuel front"
                  + " hold inlet left level line log manometer measured mean needle outlet port"
                  + " pump rail raw read reading readings rear rel relative regulator return right"
                  + " ring sensor shown supply system tee test value")
              .split(" "));

  static Heading of(String text) {
    Heading heading = text.length() > LONGEST ? new Heading(Role.OTHER, "", text) : parsed(text);
    boolean understood = heading.role != Role.PRESSURE || roleOfUnit(heading.unit) != Role.OTHER;
    return understood ? heading : new Heading(Role.PRESSURE, unitBeside(text), text);
  }

  /** What stands behind the word for pressure and is no place: a unit, known or not. */
  private static String unitBeside(String text) {
    List<String> words =
        Arrays.stream(text.split("[^\\p{L}\\p{N}²%\"'°]+"))
            .filter(word -> word.matches(".*[^\\p{N}].*"))
            .toList();
    int name = 0;
    while (name < words.size() && !PRESSURES.contains(words.get(name).toLowerCase(Locale.ROOT))) {
      name++;
    }
    List<String> units =
        words.stream()
            .skip(name + 1L)
            .filter(word -> !QUALIFIERS.contains(word.toLowerCase(Locale.ROOT)))
            .filter(word -> !PRESSURES.contains(word.toLowerCase(Locale.ROOT)))
            .toList();
    return units.stream()
        .filter(word -> PressureUnit.of(word).isPresent())
        .findFirst()
        .orElse(String.join(" ", units));
  }

  private static Heading parsed(String text) {
    String plain = GAUGE_OR_ABSOLUTE.matcher(text.strip()).replaceAll("$1$2");
    Matcher bracketed = BRACKETED.matcher(plain);
    if (bracketed.matches() && !bracketed.group(2).isBlank()) {
      String inside = bracketed.group(2).strip();
      Heading outside = ending(bracketed.group(1), text);
      return isUnit(inside) || outside.unit.isEmpty()
          ? new Heading(roleOf(bracketed.group(1), inside), inside, text)
          : outside;
    }
    return ending(plain, text);
  }

  private static Heading ending(String plain, String text) {
    if (isUnit(plain)) {
      return new Heading(roleOf("", plain), plain, text);
    }
    Matcher ending = ENDING.matcher(plain);
    return ending.matches() && isUnit(ending.group(2))
        ? new Heading(roleOf(ending.group(1), ending.group(2)), ending.group(2), text)
        : new Heading(roleOf(plain, ""), "", text);
  }

  static boolean isUnit(String word) {
    return roleOfUnit(word) != Role.OTHER;
  }

  /** Whether it counts from vacuum, which a fuel gauge doesn't. */
  boolean isAbsolute() {
    return isAbsolute(unit) || ABSOLUTE.matcher(text).find();
  }

  static boolean isAbsolute(String unit) {
    return Set.of("bara", "barabs", "psia", "psiabs").contains(unit.toLowerCase(Locale.ROOT));
  }

  private static Role roleOf(String name, String unit) {
    List<String> words = Arrays.asList(name.toLowerCase(Locale.ROOT).split("[^\\p{L}]+"));
    if (words.stream().anyMatch(EVENTS::contains)) {
      return Role.EVENT;
    }
    if (words.stream().anyMatch(REMARKS::contains)) {
      return Role.REMARK;
    }
    boolean elsewhere = words.stream().anyMatch(ELSEWHERE::contains);
    Role role = roleOfUnit(unit) == Role.OTHER ? roleOfName(words) : roleOfUnit(unit);
    return elsewhere && role != Role.TIME ? Role.OTHER : role;
  }

  private static Role roleOfName(List<String> words) {
    if (words.stream().anyMatch(TEMPERATURES::contains)) {
      return Role.TEMPERATURE;
    }
    if (words.stream().anyMatch(PRESSURES::contains)) {
      return Role.PRESSURE;
    }
    return words.stream().anyMatch(TIMES::contains) ? Role.TIME : Role.OTHER;
  }

  private static Role roleOfUnit(String unit) {
    if (PressureUnit.of(unit).isPresent()
        || isAbsolute(unit)
        || FOREIGN.contains(unit.toLowerCase(Locale.ROOT))) {
      return Role.PRESSURE;
    }
    if (TimeUnit.of(unit).isPresent()) {
      return Role.TIME;
    }
    return TemperatureUnit.of(unit).isPresent() ? Role.TEMPERATURE : Role.OTHER;
  }
}
