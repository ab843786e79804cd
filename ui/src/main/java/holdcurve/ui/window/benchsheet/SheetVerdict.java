package holdcurve.ui.window.benchsheet;

import holdcurve.injector.BenchReport;
import holdcurve.ui.window.frame.Sign;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;

/** The most important of what the sheet says, with a sign and a word. */
final class SheetVerdict extends HBox {
  private final Label word = new Label();
  private final Label sentence = new Label();

  SheetVerdict(BenchSheetModel model) {
    setId("bench-verdict");
    word.getStyleClass().add("hc-word");
    word.setMinWidth(USE_PREF_SIZE);
    sentence.getStyleClass().add("hc-sentence");
    sentence.setWrapText(true);
    sentence.setMinHeight(USE_PREF_SIZE);
    HBox.setHgrow(sentence, Priority.ALWAYS);
    model.reportProperty().addListener((property, before, now) -> show(model));
    model.troubleProperty().addListener((property, before, now) -> show(model));
    show(model);
  }

  private void show(BenchSheetModel model) {
    BenchReport report = model.reportProperty().get();
    String trouble = model.troubleProperty().get();
    getStyleClass().setAll("hc-verdict");
    if (!trouble.isEmpty()) {
      show("leak", Sign.WARNING, "Can't be read", trouble);
    } else if (report == null) {
      show(
          "open",
          Sign.QUESTION,
          "No sheet yet",
          "Type what the bench showed, read a sheet (Ctrl+B), or paste one (Ctrl+Shift+V).");
    } else if (report.allGood()) {
      show("sound", Sign.TICK, "In line", report.verdict().get(0));
    } else {
      boolean flows = report.verdict().get(0).contains("out of line");
      show("leak", Sign.CROSS, flows ? "Out of line" : "Not all fit", report.verdict().get(0));
    }
  }

  private void show(String style, Sign sign, String kind, String said) {
    getStyleClass().add(style);
    word.setText(kind);
    sentence.setText(said);
    getChildren().setAll(sign.node(), word, sentence);
  }
}
