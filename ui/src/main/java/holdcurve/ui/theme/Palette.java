package holdcurve.ui.theme;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.EnumMap;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The colours of a theme by role, for drawing outside the stylesheet's reach and for checks. The
 * stylesheet is where they are defined.
 */
public final class Palette {
  /** The one stylesheet of the program, beside this class. */
  public static final String STYLESHEET = "holdcurve.css";

  private final Map<Role, Rgb> colours;

  private Palette(Map<Role, Rgb> colours) {
    this.colours = colours;
  }

  /** Reads what the stylesheet says for {@code theme}. */
  public static Palette of(Theme theme) {
    String block = block(stylesheet(), theme);
    Map<Role, Rgb> colours = new EnumMap<>(Role.class);
    for (Role role : Role.values()) {
      colours.put(role, colour(block, role, theme));
    }
    return new Palette(colours);
  }

  public Rgb get(Role role) {
    return colours.get(role);
  }

  private static String stylesheet() {
    try (InputStream in = Palette.class.getResourceAsStream(STYLESHEET)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static String block(String css, Theme theme) {
    return find(css, "\\.root\\." + theme.styleClass() + " \\{([^}]*)}", theme.name());
  }

  private static Rgb colour(String block, Role role, Theme theme) {
    return Rgb.of(
        find(block, role.cssName() + ": *(#[0-9a-fA-F]{6});", role + " of " + theme.name()));
  }

  private static String find(String text, String pattern, String what) {
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    if (!matcher.find()) {
      throw new IllegalStateException(STYLESHEET + " says nothing of " + what);
    }
    return matcher.group(1);
  }
}
