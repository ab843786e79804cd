package holdcurve.ui.command;

import holdcurve.ui.guide.Chapter;
import holdcurve.ui.guide.Guide;
import holdcurve.ui.guide.GuideFiles;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.Text;
import org.commonmark.renderer.text.LineBreakRendering;
import org.commonmark.renderer.text.TextContentRenderer;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The guide, in the terminal or as files. */
@Command(
    name = "guide",
    description = {
      "Prints a chapter of the guide, or writes all of it as PDF or HTML, with its pictures.",
      "  holdcurve guide first-hold",
      "  holdcurve guide --pdf guide.pdf"
    },
    mixinStandardHelpOptions = true)
final class GuideCommand implements Callable<Integer> {
  @Spec private CommandSpec spec;

  @Parameters(
      arity = "0..1",
      paramLabel = "CHAPTER",
      description = "Which to print. Without one, the chapters are listed.")
  private String chapter;

  @ArgGroup private Files files;

  private static final class Files {
    @Option(names = "--pdf", paramLabel = "FILE", description = "Write the guide as PDF.")
    private Path pdf;

    @Option(
        names = "--html",
        paramLabel = "FOLDER",
        description = "Write the guide as HTML into a folder.")
    private Path html;
  }

  @Override
  public Integer call() {
    PrintWriter out = spec.commandLine().getOut();
    if (files != null) {
      out.println("Written to " + written() + ".");
    } else if (chapter != null) {
      print(Guide.chapter(chapter), out);
    } else {
      list(out);
    }
    out.flush();
    return 0;
  }

  private Path written() {
    if (files.html != null) {
      return GuideFiles.writeHtml(files.html);
    }
    GuideFiles.writePdf(files.pdf);
    return files.pdf;
  }

  private static void list(PrintWriter out) {
    List<Chapter> chapters = Guide.chapters();
    int width = chapters.stream().mapToInt(one -> one.id().length()).max().orElse(0);
    out.println("Chapters of the guide:");
    chapters.forEach(one -> out.printf("  %-" + width + "s  %s%n", one.id(), one.title()));
    out.println("'holdcurve guide CHAPTER' prints one.");
  }

  private static void print(Chapter chapter, PrintWriter out) {
    Node text = chapter.text();
    text.accept(new WordsOnly());
    TextContentRenderer.builder()
        .extensions(List.of(TablesExtension.create()))
        .lineBreakRendering(LineBreakRendering.SEPARATE_BLOCKS)
        .build()
        .render(text)
        .lines()
        .forEach(line -> Wrapped.print(out, "", line));
  }

  /** Takes out what a terminal can't show: pictures, addresses of links, ends of source lines. */
  private static final class WordsOnly extends AbstractVisitor {
    @Override
    public void visit(Image image) {
      image.unlink();
    }

    @Override
    public void visit(Link link) {
      while (link.getFirstChild() != null) {
        link.insertBefore(link.getFirstChild());
      }
      link.unlink();
    }

    @Override
    public void visit(SoftLineBreak end) {
      end.insertBefore(new Text(" "));
      end.unlink();
    }
  }
}
