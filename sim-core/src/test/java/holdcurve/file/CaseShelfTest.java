package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.casebook.BrokenCase;
import holdcurve.casebook.CaseBook;
import holdcurve.casebook.CaseEntry;
import holdcurve.casebook.CaseNotes;
import holdcurve.casebook.Correction;
import holdcurve.casebook.JobState;
import holdcurve.casebook.KnownAnswer;
import holdcurve.casebook.RatesInUse;
import holdcurve.common.input.InputException;
import holdcurve.common.work.Progress;
import holdcurve.inference.answer.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Jobs in folders, and what the case book keeps about them. */
class CaseShelfTest {
  private static final Path SCENARIOS = Path.of(System.getProperty("holdcurve.root"), "scenarios");
  private static final KnownAnswer LEAKS =
      new KnownAnswer(
          Verdict.Kind.LEAK, true, "Injector drips, \"at\" its tip", 0.7, Optional.empty());

  @TempDir private Path folder;
  private Path jobs;
  private CaseShelf shelf;
  private CaseNotes notes;

  @BeforeEach
  void copyTwoJobs() throws IOException {
    jobs = Files.createDirectories(folder.resolve("jobs/2026"));
    for (String name :
        List.of("circuits/six-cylinder-return-line.circuit.json", "logs/sound-base.csv")) {
      Files.copy(SCENARIOS.resolve(name), jobs.resolve(name.replaceFirst(".*/", "")));
    }
    job("blue", "Blue, \"the fast one\"");
    job("red", "Red");
    shelf = new CaseShelf(folder.resolve("home/cases"));
    notes = CaseNotes.NONE.withFolders(List.of(folder.resolve("jobs")));
  }

  private void job(String name, String title) throws IOException {
    Files.writeString(
        jobs.resolve(name + ".job.json"),
        """
        { "format": "holdcurve-job/1", "title": "%s",
          "circuit": "six-cylinder-return-line.circuit.json",
          "tests": [ { "id": "first", "log": "sound-base.csv", "date": "2026-04-10" } ],
          "repairs": [ { "date": "2026-04-11", "part": "check-valve", "after_test": "first",
                         "note": "renewed,\\nwith rings" } ] }
        """
            .formatted(title.replace("\"", "\\\"")));
  }

  private CaseBook list() {
    return shelf.list(notes, Progress.NONE);
  }

  private static CaseEntry find(CaseBook book, String name) {
    return book.entries().stream()
        .filter(entry -> entry.file().getFileName().toString().startsWith(name))
        .findFirst()
        .orElseThrow();
  }

  private static Set<String> below(Path top) throws IOException {
    try (Stream<Path> all = Files.walk(top)) {
      return all.map(Path::toString).collect(Collectors.toCollection(TreeSet::new));
    }
  }

  @Test
  void theIndexSaysWhatTheFilesSay() throws IOException {
    Set<String> before = below(jobs);
    CaseBook read = list();
    assertEquals(2, read.entries().size());
    assertEquals("Blue, \"the fast one\"", find(read, "blue").car());
    assertEquals(JobState.REPAIRED, find(read, "blue").state());
    CaseBook kept = list();
    assertEquals(
        find(read, "red").repair().map(r -> r.note()),
        find(kept, "red").repair().map(r -> r.note()));
    assertEquals(find(read, "blue").car(), find(kept, "blue").car());
    assertEquals(before, below(jobs), "nothing is written beside jobs");
  }

  @Test
  void brokenFilesAreNamedAndSkipped() throws IOException {
    Files.writeString(
        jobs.resolve("odd.job.json"), "{ \"format\": \"holdcurve-job/1\", \"title\": 7 }");
    Files.writeString(jobs.resolve("cut.job.json"), "{ \"format\":");
    for (CaseBook book : List.of(list(), list())) {
      assertEquals(2, book.entries().size());
      Map<String, String> broken =
          book.broken().stream()
              .collect(
                  Collectors.toMap(b -> b.file().getFileName().toString(), BrokenCase::reason));
      assertEquals(Set.of("odd.job.json", "cut.job.json"), broken.keySet());
      assertTrue(broken.get("odd.job.json").contains("found 7 where a text belongs"));
    }
  }

  @Test
  void aFolderThatIsGoneIsNamed() {
    notes = notes.withFolders(List.of(folder.resolve("gone")));
    assertEquals("there is no such folder", list().broken().get(0).reason());
  }

  @Test
  void linksRunInNoCircles() throws IOException {
    Files.createSymbolicLink(jobs.resolve("round"), folder.resolve("jobs"));
    assertEquals(2, list().entries().size());
    assertEquals(List.of(), list().broken());
  }

  @Test
  void aJobThatTwoLinksReachCountsOnce() throws IOException {
    Path other = Files.createDirectories(folder.resolve("other"));
    Files.createSymbolicLink(other.resolve("jobs"), folder.resolve("jobs"));
    notes = notes.withFolders(List.of(folder.resolve("jobs"), other));
    assertEquals(2, list().entries().size());
  }

  @Test
  void anAnswerIsKeptUntilAnyOfItsFilesChanges() throws IOException {
    list();
    shelf.keep(jobs.resolve("blue.job.json"), LEAKS);
    shelf.keep(jobs.resolve("red.job.json"), LEAKS);
    assertEquals(Optional.of(LEAKS), find(list(), "blue").answer());
    job("blue", "Blue, sold");
    assertEquals(Optional.empty(), find(list(), "blue").answer());
    assertEquals(Optional.of(LEAKS), find(list(), "red").answer());
    Files.writeString(jobs.resolve("sound-base.csv"), "time_s,pressure_bar\n0,2\n60,2\n120,2\n");
    assertEquals(Optional.empty(), find(list(), "red").answer());
  }

  @Test
  void otherFoldersKeepTheirAnswers() throws IOException {
    list();
    shelf.keep(jobs.resolve("red.job.json"), LEAKS);
    Path other = Files.createDirectories(folder.resolve("other"));
    shelf.list(notes.withFolders(List.of(other)), Progress.NONE);
    assertEquals(Optional.of(LEAKS), find(list(), "red").answer());
  }

  @Test
  void aTornIndexIsMadeAnew() throws IOException {
    list();
    Path index = folder.resolve("home/cases/case-index.csv");
    for (String torn :
        List.of("", "# holdcurve-case-index/9\na,b\n", "# holdcurve-case-index/1\n\"a")) {
      Files.writeString(index, torn);
      assertEquals(2, list().entries().size(), torn);
    }
  }

  @Test
  void whereNothingCanBeKeptTheListIsThereAllTheSame() throws IOException {
    Path blocked = Files.writeString(folder.resolve("a-file"), "");
    shelf = new CaseShelf(blocked.resolve("cases"));
    assertEquals(2, list().entries().size());
    String said = assertThrows(InputException.class, () -> shelf.keep(notes)).getMessage();
    assertTrue(said.contains("can't be made"), said);
  }

  /** Each file with one character changed is read or refused, and never breaks the program off. */
  @Test
  void damagedFilesAreReadOrRefused() throws IOException {
    shelf.keep(
        notes
            .withRates(new RatesInUse(RatesInUse.Kind.FILE, Optional.of(folder.resolve("r.json"))))
            .with(jobs.resolve("red.job.json"), c -> new Correction("injector-tip", "AB 123")));
    list();
    shelf.keep(jobs.resolve("red.job.json"), LEAKS);
    Path rates = folder.resolve("home/cases/rates.json");
    Files.writeString(
        rates,
        "{ \"format\": \"holdcurve-fault-rates/1\", \"cases\": 3,"
            + " \"rates\": { \"injector-tip\": { \"rate\": 0.03, \"cases\": 3 } } }");
    Random random = new Random(1);
    for (String name : List.of("case-book.json", "case-index.csv", "rates.json")) {
      Path file = folder.resolve("home/cases").resolve(name);
      String whole = Files.readString(file);
      for (int i = 0; i < 500; i++) {
        int at = random.nextInt(whole.length());
        String odd = "\"{}[],:#\\\u0000x9-\n".substring(random.nextInt(12)).substring(0, 1);
        Files.writeString(file, whole.substring(0, at) + odd + whole.substring(at + 1));
        try {
          shelf.notes();
          shelf.listed(notes);
          RatesFile.read(rates);
        } catch (InputException refused) {
          assertTrue(refused.getMessage().contains(name), refused.getMessage());
        }
      }
      Files.writeString(file, whole);
    }
  }

  @Test
  void whatWasSaidComesBack() {
    assertEquals(CaseNotes.NONE, shelf.notes());
    CaseNotes said =
        notes
            .withRates(new RatesInUse(RatesInUse.Kind.FILE, Optional.of(folder.resolve("r.json"))))
            .with(jobs.resolve("red.job.json"), c -> new Correction("injector-tip", "AB 123"));
    shelf.keep(said);
    assertEquals(said, shelf.notes());
    CaseNotes taken = said.with(jobs.resolve("red.job.json"), c -> Correction.EMPTY);
    assertEquals(Map.of(), taken.corrections());
  }

  @Test
  void earlierJobsAreThoseThatTheUserLinked() throws IOException {
    Path red = jobs.resolve("red.job.json");
    Path blue = jobs.resolve("blue.job.json");
    Files.writeString(
        blue, Files.readString(blue).replace("2026-04-10", "2025-04-10").replace("04-11", "04-12"));
    shelf.keep(notes);
    list();
    assertEquals(List.of(), shelf.earlier(red));
    shelf.keep(shelf.notes().with(red, c -> c.withCar("AB 1")).with(blue, c -> c.withCar("ab 1")));
    assertEquals(
        List.of("Blue, \"the fast one\""),
        shelf.earlier(red).stream().map(j -> j.title()).toList());
    assertEquals(List.of(), shelf.earlier(blue), "the later one teaches nothing");
  }

  @Test
  void aNotesFileThatIsWrongIsSaidAndLeftAlone() throws IOException {
    shelf.keep(notes);
    Path file = folder.resolve("home/cases/case-book.json");
    Files.writeString(file, "{ \"format\": \"holdcurve-case-book/1\", \"rates\": \"best\" }");
    String said = assertThrows(InputException.class, shelf::notes).getMessage();
    assertTrue(said.contains("write shipped, own or file"), said);
    assertTrue(Files.readString(file).contains("best"));
  }
}
