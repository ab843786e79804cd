package holdcurve.ui.theme;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AppearanceTest {
  @ParameterizedTest
  @CsvSource({"720, 16", "1080, 16", "1200, 16", "1440, 20", "2160, 28", "4320, 28"})
  void aScreenOfMorePointsGetsLargerText(double height, int size) {
    Appearance looks = new Appearance();
    looks.suit(height);
    assertEquals(size, looks.textSizeProperty().get());
    looks.setTextSize(18);
    looks.usualSize();
    assertEquals(size, looks.textSizeProperty().get());
  }
}
