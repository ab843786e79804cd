package holdcurve.ui.window.frame;

import java.util.function.Function;
import javafx.scene.control.ComboBox;
import javafx.scene.control.ListCell;
import javafx.util.StringConverter;

/** Shows things of a list by a name; nothing is typed. */
public final class Named<T> extends StringConverter<T> {
  private final Function<T, String> name;

  public Named(Function<T, String> name) {
    this.name = name;
  }

  /** Shows the things of a list by a name, and the prompt again once the choice is taken back. */
  public static <T> void in(ComboBox<T> box, String prompt, Function<T, String> name) {
    Named<T> named = new Named<>(name);
    box.setPromptText(prompt);
    box.setConverter(named);
    box.setButtonCell(
        new ListCell<>() {
          @Override
          protected void updateItem(T thing, boolean empty) {
            super.updateItem(thing, empty);
            setText(thing == null ? prompt : named.toString(thing));
          }
        });
  }

  @Override
  public String toString(T thing) {
    return thing == null ? "" : name.apply(thing);
  }

  @Override
  public T fromString(String text) {
    throw new UnsupportedOperationException("this list is chosen from, not typed into");
  }
}
