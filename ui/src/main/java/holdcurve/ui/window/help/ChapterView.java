package holdcurve.ui.window.help;

import holdcurve.ui.guide.Chapter;
import holdcurve.ui.guide.Guide;
import holdcurve.ui.guide.PartSymbol;
import holdcurve.ui.window.symbol.SymbolNodes;
import java.io.ByteArrayInputStream;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import javafx.geometry.VPos;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.text.Text;
import javafx.scene.text.TextFlow;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableCell;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.BulletList;
import org.commonmark.node.Code;
import org.commonmark.node.Emphasis;
import org.commonmark.node.FencedCodeBlock;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;

/** A chapter as nodes. */
final class ChapterView {
  private static final double WIDTH = 720;

  /** A column of few words is not narrower than this many letters, of many not wider than that. */
  private static final int FEWEST = 9;

  private static final int MOST = 60;

  private final Consumer<String> turnTo;

  /**
   * @param turnTo shows another chapter by its id
   */
  ChapterView(Consumer<String> turnTo) {
    this.turnTo = turnTo;
  }

  VBox of(Chapter chapter) {
    VBox page = blocks(chapter.text(), "hc-guide");
    page.setMaxWidth(WIDTH);
    return page;
  }

  private VBox blocks(org.commonmark.node.Node parent, String style) {
    VBox box = new VBox();
    box.getStyleClass().add(style);
    children(parent).forEach(child -> box.getChildren().add(block(child)));
    return box;
  }

  private static List<org.commonmark.node.Node> children(org.commonmark.node.Node parent) {
    List<org.commonmark.node.Node> all = new ArrayList<>();
    for (var child = parent.getFirstChild(); child != null; child = child.getNext()) {
      all.add(child);
    }
    return all;
  }

  private Node block(org.commonmark.node.Node node) {
    if (node instanceof Heading heading) {
      return flow(node, heading.getLevel() == 1 ? "hc-guide-title" : "hc-guide-heading");
    }
    if (node instanceof BlockQuote) {
      VBox caution = blocks(node, "hc-guide-caution");
      caution.getStyleClass().add("hc-caution");
      return caution;
    }
    if (node instanceof BulletList) {
      return list(node, item -> "•");
    }
    if (node instanceof OrderedList numbered) {
      int first = numbered.getMarkerStartNumber();
      return list(node, item -> (first + item) + ".");
    }
    if (node instanceof FencedCodeBlock code) {
      Label lines = new Label(code.getLiteral().stripTrailing());
      lines.getStyleClass().add("hc-guide-code");
      lines.setWrapText(true);
      lines.setMinHeight(Region.USE_PREF_SIZE);
      lines.setMaxWidth(Double.MAX_VALUE);
      return lines;
    }
    if (node instanceof TableBlock) {
      return table(node);
    }
    if (node instanceof Paragraph && node.getFirstChild() instanceof Image image) {
      return picture(image);
    }
    return flow(node, "hc-guide-paragraph");
  }

  private interface Marker {
    String of(int item);
  }

  private VBox list(org.commonmark.node.Node node, Marker marker) {
    VBox list = new VBox();
    list.getStyleClass().add("hc-guide-list");
    List<org.commonmark.node.Node> items = children(node);
    for (int i = 0; i < items.size(); i++) {
      Label mark = new Label(marker.of(i));
      mark.setMinWidth(Region.USE_PREF_SIZE);
      VBox words = blocks(items.get(i), "hc-guide-item");
      HBox.setHgrow(words, Priority.ALWAYS);
      HBox line = new HBox(mark, words);
      line.getStyleClass().add("hc-guide-line");
      list.getChildren().add(line);
    }
    return list;
  }

  private static Node picture(Image image) {
    return PartSymbol.at(image.getDestination())
        .<Node>map(symbol -> new Group(SymbolNodes.group(symbol)))
        .orElseGet(
            () -> {
              byte[] png = Guide.resource(image.getDestination());
              ImageView view =
                  new ImageView(new javafx.scene.image.Image(new ByteArrayInputStream(png)));
              view.setPreserveRatio(true);
              view.setSmooth(true);
              view.setFitWidth(WIDTH - 40);
              view.setAccessibleText(plain(image));
              return view;
            });
  }

  private TextFlow flow(org.commonmark.node.Node node, String style) {
    TextFlow flow = new TextFlow();
    flow.getStyleClass().add(style);
    addInline(node, style, flow);
    return flow;
  }

  private void addInline(org.commonmark.node.Node parent, String style, TextFlow flow) {
    for (org.commonmark.node.Node node : children(parent)) {
      if (node instanceof org.commonmark.node.Text text) {
        flow.getChildren().add(text(text.getLiteral(), style));
      } else if (node instanceof SoftLineBreak) {
        flow.getChildren().add(text(" ", style));
      } else if (node instanceof Code code) {
        flow.getChildren().add(text(code.getLiteral(), "hc-guide-code-word"));
      } else if (node instanceof StrongEmphasis) {
        addInline(node, "hc-guide-label", flow);
      } else if (node instanceof Emphasis) {
        addInline(node, "hc-guide-emphasis", flow);
      } else if (node instanceof Image image) {
        flow.getChildren().add(picture(image));
      } else if (node instanceof Link link) {
        flow.getChildren().add(link(link));
      }
    }
  }

  private static Text text(String words, String style) {
    Text text = new Text(words);
    text.getStyleClass().addAll("hc-guide-text", style);
    return text;
  }

  private Hyperlink link(Link link) {
    Hyperlink words = new Hyperlink(plain(link));
    words.setOnAction(event -> turnTo.accept(link.getDestination().replaceAll("\\.md$", "")));
    return words;
  }

  /** The words of a node without their looks. */
  private static String plain(org.commonmark.node.Node parent) {
    StringBuilder words = new StringBuilder();
    for (org.commonmark.node.Node node : children(parent)) {
      words.append(
          node instanceof org.commonmark.node.Text text
              ? text.getLiteral()
              : node instanceof Code code ? code.getLiteral() : plain(node));
    }
    return words.toString();
  }

  private GridPane table(org.commonmark.node.Node table) {
    GridPane grid = new GridPane();
    grid.getStyleClass().add("hc-guide-table");
    List<List<TableCell>> rows = new ArrayList<>();
    for (org.commonmark.node.Node part : children(table)) {
      for (org.commonmark.node.Node row : children(part)) {
        rows.add(children((TableRow) row).stream().map(TableCell.class::cast).toList());
      }
    }
    int columns = rows.get(0).size();
    double[] letters = new double[columns];
    double all = 0;
    for (int column = 0; column < columns; column++) {
      int at = column;
      int most = rows.stream().mapToInt(row -> plain(row.get(at)).length()).max().orElse(0);
      letters[column] = Math.max(FEWEST, Math.min(MOST, most));
      all += letters[column];
    }
    for (double width : letters) {
      ColumnConstraints constraints = new ColumnConstraints();
      constraints.setPercentWidth(100 * width / all);
      grid.getColumnConstraints().add(constraints);
    }
    for (int line = 0; line < rows.size(); line++) {
      for (int column = 0; column < columns; column++) {
        TableCell cell = rows.get(line).get(column);
        Node words =
            cell.getFirstChild() instanceof Image drawing
                ? picture(drawing)
                : flow(cell, cell.isHeader() ? "hc-guide-head" : "hc-guide-cell");
        GridPane.setValignment(words, VPos.TOP);
        grid.add(words, column, line);
      }
    }
    return grid;
  }
}
