package holdcurve.ui.window.help;

import holdcurve.ui.guide.Chapter;
import holdcurve.ui.guide.Guide;
import holdcurve.ui.theme.Appearance;
import java.util.List;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/**
 * The guide beside the work: chapters at the left, the one that is read at the right. It needs no
 * browser and no network.
 */
public final class GuideWindow {
  private static final double WIDTH = 1040;
  private static final double HEIGHT = 860;

  private final Appearance looks;
  private ListView<Chapter> list;
  private ScrollPane reading;
  private Stage stage;

  /**
   * @param looks those of the work
   */
  public GuideWindow(Appearance looks) {
    this.looks = looks;
  }

  /** Shows the chapter of an id, in front of other windows. */
  public void show(String id) {
    if (stage == null) {
      stage = stage();
    }
    turnTo(id);
    stage.show();
    stage.toFront();
    reading.requestFocus();
  }

  private void turnTo(String id) {
    List<Chapter> chapters = list.getItems();
    chapters.stream()
        .filter(chapter -> chapter.id().equals(id))
        .forEach(list.getSelectionModel()::select);
  }

  /** Made when it is first asked for: the start of the work doesn't wait for it. */
  private Stage stage() {
    list = new ListView<>();
    reading = new ScrollPane();
    list.getItems().setAll(Guide.chapters());
    list.setId("guide-chapters");
    list.setCellFactory(view -> new TitleCell());
    list.getStyleClass().add("hc-guide-chapters");
    list.getSelectionModel()
        .selectedItemProperty()
        .addListener((property, before, now) -> read(now));
    reading.setId("guide-text");
    reading.setFitToWidth(true);
    reading.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    BorderPane root = new BorderPane(reading);
    root.setLeft(list);
    return SideWindow.of("Guide", root, looks, WIDTH, HEIGHT);
  }

  private void read(Chapter chapter) {
    if (chapter != null) {
      VBox page = new ChapterView(this::turnTo).of(chapter);
      reading.setContent(page);
      reading.setVvalue(0);
    }
  }

  /** A chapter's title. */
  private static final class TitleCell extends ListCell<Chapter> {
    private final Label title = new Label();

    @Override
    protected void updateItem(Chapter chapter, boolean empty) {
      super.updateItem(chapter, empty);
      title.setText(empty ? "" : chapter.title());
      setGraphic(empty ? null : title);
    }
  }
}
