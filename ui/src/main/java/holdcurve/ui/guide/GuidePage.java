package holdcurve.ui.guide;

import holdcurve.ui.about.Build;
import holdcurve.ui.report.SymbolDrawing;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.Text;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.AttributeProvider;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/** The whole guide as one well-formed HTML page. */
final class GuidePage {
  static final String TITLE = "Holdcurve guide";

  private GuidePage() {}

  /**
   * @param address where the page finds a picture of a name, such as {@code pictures/start.png}
   */
  static String html(List<Chapter> chapters, UnaryOperator<String> address) {
    StringBuilder page =
        new StringBuilder("<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\"")
            .append(" lang=\"en\">\n<head>\n<meta charset=\"UTF-8\"/>\n<title>")
            .append(TITLE)
            .append("</title>\n<style>\n")
            .append(new String(Guide.resource("guide.css"), StandardCharsets.UTF_8))
            .append("</style>\n</head>\n<body>\n<h1 class=\"cover\">")
            .append(TITLE)
            .append("</h1>\n<p class=\"muted\">Version ")
            .append(Build.version())
            .append(". All cars, circuits and readings in it are invented.</p>\n")
            .append("<ul class=\"contents\">\n");
    for (Chapter chapter : chapters) {
      page.append("<li><a href=\"#" + chapter.id() + "\">" + chapter.title() + "</a></li>\n");
    }
    page.append("</ul>\n");
    for (Chapter chapter : chapters) {
      page.append("<div class=\"chapter\">\n");
      page.append(renderer(chapter.id(), address).render(chapter.text()));
      page.append("</div>\n");
    }
    return page.append("</body>\n</html>\n").toString();
  }

  private static HtmlRenderer renderer(String id, UnaryOperator<String> address) {
    return HtmlRenderer.builder()
        .extensions(List.of(TablesExtension.create()))
        .escapeHtml(true)
        .attributeProviderFactory(context -> attributes(id))
        .nodeRendererFactory(context -> new Pictures(context, address))
        .build();
  }

  /** The chapter's heading can be gone to, and links go to headings. */
  private static AttributeProvider attributes(String id) {
    return (node, tag, attributes) -> {
      if (node instanceof Heading heading && heading.getLevel() == 1) {
        attributes.put("id", id);
      } else if (node instanceof Link link) {
        attributes.put("href", "#" + link.getDestination().replaceAll("\\.md$", ""));
      }
    };
  }

  /** Pictures of the window, and drawings of parts. */
  private static final class Pictures implements NodeRenderer {
    private final HtmlWriter html;
    private final UnaryOperator<String> address;

    Pictures(HtmlNodeRendererContext context, UnaryOperator<String> address) {
      html = context.getWriter();
      this.address = address;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
      return Set.of(Image.class);
    }

    @Override
    public void render(Node node) {
      String name = ((Image) node).getDestination();
      PartSymbol.at(name)
          .ifPresentOrElse(
              symbol -> html.raw(SymbolDrawing.svg(symbol, PartSymbol.REACH)),
              () ->
                  html.tag(
                      "img", Map.of("src", address.apply(name), "alt", words((Image) node)), true));
    }

    private static String words(Image image) {
      return image.getFirstChild() instanceof Text text ? text.getLiteral() : "";
    }
  }
}
