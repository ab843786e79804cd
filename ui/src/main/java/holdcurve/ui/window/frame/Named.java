package holdcurve.ui.window.frame;

import java.util.function.Function;
import javafx.util.StringConverter;

/** Shows things of a list by a name; nothing is typed. */
public final class Named<T> extends StringConverter<T> {
  private final Function<T, String> name;

  public Named(Function<T, String> name) {
    this.name = name;
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
