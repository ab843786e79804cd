package holdcurve.ui.theme;

/**
 * An opaque sRGB colour.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Rgb(int red, int green, int blue) {
  /**
   * @param hex such as {@code #0f6674}
   * @throws IllegalArgumentException if it is written otherwise
   */
  public static Rgb of(String hex) {
    if (!hex.matches("#[0-9a-fA-F]{6}")) {
      throw new IllegalArgumentException("colour '" + hex + "' is not written as #rrggbb");
    }
    int packed = Integer.parseInt(hex.substring(1), 16);
    return new Rgb(packed >> 16, packed >> 8 & 0xff, packed & 0xff);
  }

  /**
   * Relative luminance [-], 0 for black to 1 for white.
   *
   * @see <a href="https://www.w3.org/TR/WCAG21/#dfn-relative-luminance">WCAG 2.1, relative
   *     luminance</a>
   */
  public double luminance() {
    return 0.2126 * linear(red) + 0.7152 * linear(green) + 0.0722 * linear(blue);
  }

  private static double linear(int channel) {
    double share = channel / 255.0;
    return share <= 0.03928 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
  }

  /**
   * Contrast ratio [-], 1 for equal colours to 21 for black on white.
   *
   * @see <a href="https://www.w3.org/TR/WCAG21/#dfn-contrast-ratio">WCAG 2.1, contrast ratio</a>
   */
  public double contrast(Rgb other) {
    double lighter = Math.max(luminance(), other.luminance());
    double darker = Math.min(luminance(), other.luminance());
    return (lighter + 0.05) / (darker + 0.05);
  }
}
