package holdcurve.ui.window.holdtests;

import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.caution.Caution;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FindingFormTest {
  /** Whatever can be noted has to be looked for first. */
  @ParameterizedTest
  @EnumSource(FindingForm.class)
  void everyKindOfFindingHasItsCaution(FindingForm form) {
    Caution own =
        switch (form) {
          case WET, WET_AGAIN, DRY, STILL_DRY, ALL_DRY, FUEL_IN_HOSE, NO_FUEL_IN_HOSE ->
              Caution.COLD_LAMP;
          case DROPS -> Caution.INJECTORS_HELD;
          case DRAWN_OFF -> Caution.DRAW_OFF;
        };
    assertTrue(form.caution().contains(own.text()), form.caution());
    assertTrue(form.caution().contains(Caution.PETROL.text()), form.caution());
  }
}
