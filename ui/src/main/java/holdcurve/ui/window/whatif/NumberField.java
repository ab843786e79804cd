package holdcurve.ui.window.whatif;

import holdcurve.ui.offer.Money;
import javafx.beans.property.DoubleProperty;
import javafx.css.PseudoClass;
import javafx.scene.control.TextField;

/** A number that may be typed; what can't be read is marked and leaves the number as it was. */
final class NumberField extends TextField {
  private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

  private final DoubleProperty number;
  private final double most;
  private boolean typing;

  /**
   * @param most largest number that is taken; the smallest is 0
   */
  NumberField(DoubleProperty number, double most, String meaning, int columns) {
    this.number = number;
    this.most = most;
    setPrefColumnCount(columns);
    setAccessibleText(meaning);
    show();
    textProperty().addListener((property, before, now) -> read(now));
    number.addListener((property, before, now) -> showUnlessTyping());
    focusedProperty().addListener((property, before, now) -> showUnlessTyping());
  }

  private void read(String typed) {
    double value = number(typed);
    pseudoClassStateChanged(WRONG, Double.isNaN(value));
    if (!Double.isNaN(value)) {
      typing = true;
      number.set(value);
      typing = false;
    }
  }

  private double number(String typed) {
    try {
      double value = typed.isBlank() ? 0 : Double.parseDouble(typed.strip().replace(',', '.'));
      return value >= 0 && value <= most ? value : Double.NaN;
    } catch (NumberFormatException e) {
      return Double.NaN;
    }
  }

  private void showUnlessTyping() {
    if (!typing && !isFocused()) {
      show();
    }
  }

  private void show() {
    setText(number.get() == 0 ? "" : Money.number(number.get()));
  }
}
