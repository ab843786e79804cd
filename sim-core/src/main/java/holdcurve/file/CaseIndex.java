package holdcurve.file;

import holdcurve.advice.check.CheckVerdict;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.JobFacts;
import holdcurve.casebook.KnownAnswer;
import holdcurve.inference.answer.Verdict;
import holdcurve.record.job.Repair;
import java.io.IOException;
import java.io.Reader;
import java.lang.System.Logger.Level;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * What was read off job files, kept in a file of its own so that a list needn't read them again. It
 * can be thrown away at any time; what it says of a changed file doesn't count.
 */
final class CaseIndex {
  /** Format and version; an index of another one is made anew. */
  static final String FORMAT = "holdcurve-case-index/1";

  private static final System.Logger LOG = System.getLogger(CaseIndex.class.getName());
  private static final int CELLS = 20;

  /** Stands between the files that a job names. */
  private static final String BETWEEN = "\n";

  /**
   * One file.
   *
   * @param named files that the job names, relative to it
   * @param stamp sizes and times of change of all of them
   * @param entry what a list shows; empty for a broken file
   * @param problem what is wrong with it; empty for none
   */
  record Row(List<String> named, String stamp, Optional<CaseEntry> entry, String problem) {
    Row {
      named = List.copyOf(named);
    }
  }

  private CaseIndex() {}

  /** What is kept; nothing where it can't be read. */
  static Map<Path, Row> read(Path file) {
    Map<Path, Row> rows = new LinkedHashMap<>();
    if (!Files.isRegularFile(file)) {
      return rows;
    }
    try (Reader in = Files.newBufferedReader(file)) {
      boolean known = true;
      for (CSVRecord record : CSVFormat.DEFAULT.parse(in)) {
        if (record.getRecordNumber() == 1) {
          known = record.get(0).equals("# " + FORMAT);
        } else if (known && record.size() == CELLS) {
          rows.put(Path.of(record.get(0)), row(record));
        }
      }
    } catch (IOException
        | java.io.UncheckedIOException
        | IllegalArgumentException
        | DateTimeException e) {
      LOG.log(Level.INFO, "the index " + file + " can't be read and is made anew: " + e);
      rows.clear();
    }
    return rows;
  }

  private static Row row(CSVRecord cells) {
    List<String> named =
        cells.get(2).isEmpty() ? List.of() : Arrays.asList(cells.get(2).split(BETWEEN));
    boolean broken = !cells.get(3).isEmpty();
    return new Row(
        named, cells.get(1), broken ? Optional.empty() : Optional.of(entry(cells)), cells.get(3));
  }

  private static CaseEntry entry(CSVRecord cells) {
    int repairs = Integer.parseInt(cells.get(9));
    return new CaseEntry(
        Path.of(cells.get(0)),
        cells.get(4),
        cells.get(5),
        new JobFacts(flag(cells.get(6)), flag(cells.get(7)), flag(cells.get(8))),
        repairs,
        repairs == 0
            ? Optional.empty()
            : Optional.of(
                new Repair(
                    LocalDate.parse(cells.get(10)),
                    cells.get(11),
                    cells.get(12),
                    "",
                    cells.get(13))),
        cells.get(14).isEmpty()
            ? Optional.empty()
            : Optional.of(
                new KnownAnswer(
                    Verdict.Kind.valueOf(cells.get(14)),
                    flag(cells.get(15)),
                    cells.get(16),
                    Double.parseDouble(cells.get(17)),
                    cells.get(18).isEmpty()
                        ? Optional.empty()
                        : Optional.of(CheckVerdict.Kind.valueOf(cells.get(18))))));
  }

  private static boolean flag(String cell) {
    return cell.equals("1");
  }

  private static String cell(boolean flag) {
    return flag ? "1" : "0";
  }

  /**
   * @throws holdcurve.common.input.InputException if it can't be written
   */
  static void write(Path file, Map<Path, Row> rows) {
    SafeFile.write(
        file,
        FigureTable.text(
            FORMAT,
            printer -> {
              for (Map.Entry<Path, Row> row : rows.entrySet()) {
                print(printer, row.getKey(), row.getValue());
              }
            }));
  }

  private static void print(CSVPrinter printer, Path file, Row row) throws IOException {
    List<Object> cells = new ArrayList<>();
    cells.addAll(List.of(file, row.stamp(), String.join(BETWEEN, row.named()), row.problem()));
    row.entry().ifPresent(entry -> cells.addAll(cells(entry)));
    while (cells.size() < CELLS) {
      cells.add("");
    }
    printer.printRecord(cells);
  }

  private static Collection<Object> cells(CaseEntry entry) {
    List<Object> cells = new ArrayList<>();
    JobFacts facts = entry.facts();
    cells.addAll(
        List.of(
            entry.car(),
            entry.date(),
            cell(facts.held()),
            cell(facts.repaired()),
            cell(facts.unproved()),
            entry.repairs()));
    Optional<Repair> repair = entry.repair();
    cells.addAll(
        repair.isEmpty()
            ? List.of("", "", "", "")
            : List.of(
                repair.get().date(),
                repair.get().part(),
                repair.get().fault(),
                repair.get().note()));
    entry
        .answer()
        .ifPresent(
            known ->
                cells.addAll(
                    List.of(
                        known.kind(),
                        cell(known.alone()),
                        known.suspect(),
                        known.chance(),
                        known.check().map(Enum::name).orElse(""))));
    return cells;
  }
}
