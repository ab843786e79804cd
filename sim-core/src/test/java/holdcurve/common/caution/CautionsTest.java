package holdcurve.common.caution;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.record.refit.RefitList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class CautionsTest {
  @Test
  void theFileHoldsEachOnce() {
    assertEquals(Arrays.stream(Caution.values()).map(Caution::id).toList(), Cautions.ids());
    assertThrows(IllegalArgumentException.class, () -> Cautions.text("hot-lamp"));
  }

  /** A person reads a sentence of at most 22 words while standing. */
  @ParameterizedTest
  @EnumSource(Caution.class)
  void sentencesAreShort(Caution caution) {
    for (String sentence : caution.text().split("(?<=[.:;]) ")) {
      assertTrue(sentence.split(" ").length <= 22, sentence);
    }
    assertTrue(caution.text().endsWith("."));
  }

  @ParameterizedTest
  @CsvSource({
    "workplace, PETROL",
    "workplace, LOCAL_CODES",
    "pressure-relieved, RELIEVE",
    "relay-bridged, BRIDGED_PUMP",
    "first-pressure, BRIDGED_PUMP",
    "first-pressure, INJECTORS_HELD",
    "wet-joints, COLD_LAMP",
    "wet-joints, DRY_FIRST",
    "first-hold, STILL_PRESSURISED"
  })
  void refitStepsHaveTheirs(String step, Caution caution) {
    String said = RefitList.shipped().step(step).orElseThrow().caution();
    assertTrue(said.contains(caution.text()), said);
  }

  /** A step added to the list that runs the pump, looks or opens must bring its caution. */
  @Test
  void everyRefitStepThatNeedsOneHasOne() {
    for (var step : RefitList.shipped().steps()) {
      String text = step.text().toLowerCase(java.util.Locale.ROOT);
      need(text.contains("run the pump"), step.caution(), Caution.BRIDGED_PUMP);
      need(text.contains("look for wet"), step.caution(), Caution.COLD_LAMP);
      need(text.contains("relieve"), step.caution(), Caution.RELIEVE);
      need(text.contains("bridge its socket"), step.caution(), Caution.BRIDGED_PUMP);
    }
  }

  private static void need(boolean needed, String said, Caution caution) {
    assertTrue(!needed || said.contains(caution.text()), caution + ": " + said);
  }

  @Test
  void theGeneralSetIsShort() {
    List<String> general = Cautions.general();
    assertTrue(general.size() <= 4);
    assertTrue(general.contains(Caution.LOCAL_CODES.text()));
  }
}
