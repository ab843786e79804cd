package holdcurve.ui.window;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.stage.Window;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Waits for the window once a word, and once as a chord is pressed and as it is let go: the
 * library's own robot waits after each letter and at each key, most of the time of these tests.
 */
public final class TypingRobot extends FxRobot {
  @Override
  public TypingRobot push(KeyCode... chord) {
    List<KeyCode> released = Arrays.asList(chord.clone());
    Collections.reverse(released);
    robotContext().getKeyboardRobot().pressNoWait(chord);
    WaitForAsyncUtils.waitForFxEvents();
    robotContext().getKeyboardRobot().releaseNoWait(released.toArray(KeyCode[]::new));
    WaitForAsyncUtils.waitForFxEvents();
    return this;
  }

  @Override
  public TypingRobot type(KeyCode... keys) {
    for (KeyCode key : keys) {
      push(key);
    }
    return this;
  }

  @Override
  public TypingRobot write(String word) {
    Scene scene = window(Window::isFocused).getScene();
    word.chars()
        .forEach(
            letter ->
                robotContext()
                    .getBaseRobot()
                    .typeKeyboard(scene, KeyCode.UNDEFINED, Character.toString(letter)));
    WaitForAsyncUtils.waitForFxEvents();
    return this;
  }
}
