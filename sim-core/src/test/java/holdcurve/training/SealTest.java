package holdcurve.training;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Base64;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.AlphaChars;
import net.jqwik.api.constraints.StringLength;
import org.junit.jupiter.api.Test;

class SealTest {
  @Property(tries = 50)
  void opensToWhatWasClosed(@ForAll @AlphaChars @StringLength(max = 400) String text) {
    String seal = Seal.close(text, "story");
    assertEquals(text, Seal.open(seal, "story"));
    assertEquals(Seal.close("", "story").length(), seal.length(), "length tells nothing");
  }

  @Test
  void belongsToItsStoryAndShowsNothing() {
    String seal = Seal.close("check-valve-seat", "story");
    assertThrows(IllegalArgumentException.class, () -> Seal.open(seal, "another"));
    assertThrows(IllegalArgumentException.class, () -> Seal.open(seal.substring(4), "story"));
    assertFalse(new String(Base64.getDecoder().decode(seal)).contains("check"));
  }
}
