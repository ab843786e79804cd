package holdcurve.file;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.common.input.InputException;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.EthanolBlend;
import holdcurve.physics.fluid.Petrol;
import holdcurve.physics.part.Hose;
import holdcurve.physics.part.Regulator;
import holdcurve.record.job.GaugeSpec;
import holdcurve.record.job.HoldTest;
import holdcurve.record.job.Job;
import holdcurve.record.log.GaugeLog;
import holdcurve.record.log.LogEvent;
import holdcurve.record.log.Reading;
import holdcurve.record.log.TimedEvent;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What was written is read back the same, and what stands unchanged is left alone. */
class JobWriterTest {
  private static final Path SCENARIOS = Path.of("..", "scenarios");
  private static final Path SHIPPED =
      SCENARIOS.resolve("circuits/six-cylinder-return-line.circuit.json");

  @TempDir Path folder;
  private Path file;

  @BeforeEach
  void name() {
    file = folder.resolve("car.job.json");
  }

  private static Job job(Circuit circuit) {
    List<Reading> readings =
        List.of(
            Reading.of(-12.5, 1.9e5),
            Reading.of(0, 2.12e5),
            new Reading(30, 1.98e5, 291.15, Optional.of(LogEvent.of("clamp on")), false),
            new Reading(60.125, 1.9e5, Double.NaN, Optional.empty(), true),
            Reading.of(90, 1.86e5));
    TimedEvent alone = new TimedEvent(75, LogEvent.of("door slammed"));
    GaugeLog log =
        new GaugeLog(
            "x", readings, List.of(new TimedEvent(30, readings.get(2).event().get()), alone), 0);
    HoldTest first =
        new HoldTest(
            "Feed & return",
            Set.of("feed-hose"),
            6.5,
            30,
            OptionalDouble.of(288.15),
            log,
            "2 May",
            "");
    HoldTest second = HoldTest.of("as it stands", Set.of(), log);
    return new Job(
        "Made up",
        circuit,
        new GaugeSpec(6e5, 0.025, 5e3),
        List.of(first, second),
        Map.of("injector-tip", 0.5),
        List.of());
  }

  private static Circuit shipped() {
    return CircuitReader.read(SHIPPED);
  }

  private static void assertSame(Job expected, Job read) {
    assertEquals(expected.title(), read.title());
    assertEquals(expected.circuit(), read.circuit());
    assertEquals(expected.gauge(), read.gauge());
    assertEquals(expected.priors(), read.priors());
    assertEquals(expected.tests().size(), read.tests().size());
    for (int i = 0; i < read.tests().size(); i++) {
      HoldTest a = expected.tests().get(i);
      HoldTest b = read.tests().get(i);
      assertEquals(a.log().readings(), b.log().readings());
      assertEquals(a.log().events(), b.log().events());
      assertEquals(
          new HoldTest(
              a.id(),
              a.clamped(),
              a.clampTime(),
              a.primeTime(),
              a.fuelTemperature(),
              b.log(),
              a.date(),
              a.notes()),
          b);
    }
  }

  @Test
  void aJobComesBackAsItWas() {
    Job job = job(shipped());
    JobWriter.write(file, job);
    assertSame(job, JobReader.read(file));
  }

  @Test
  void valuesLeftToTheirDefaultsStayUnstated() {
    Circuit circuit = shipped().with("regulator", Regulator.SET, Unit.BAR.toSi(2.3));
    Circuit read = CircuitReader.read("text", CircuitWriter.json(circuit));
    assertEquals(circuit, read);
    assertEquals(circuit.title(), read.title());
    for (Part part : circuit.parts()) {
      assertArrayEquals(
          part.kind().properties().stream().map(part::states).toArray(),
          part.kind().properties().stream().map(read.part(part.id())::states).toArray());
    }
    assertTrue(CircuitWriter.json(circuit).contains("\"set_bar\" : 2.3\n"));
  }

  @Test
  void theGradeOfPetrolComesBack() {
    Circuit shipped = shipped();
    EthanolBlend blend = new EthanolBlend(Petrol.of(90_000, 735), 0.05);
    Circuit circuit = new Circuit("E5", blend, shipped.parts());
    assertEquals(blend, CircuitReader.read("text", CircuitWriter.json(circuit)).fluid());
  }

  @Test
  void whatDidNotChangeIsLeftAsItStands() throws IOException {
    Path shared = folder.resolve("shared.circuit.json");
    Files.copy(SHIPPED, shared);
    Files.writeString(folder.resolve("by-hand.csv"), "s;bar\n0;2,1\n30;2,0\n60;1,9\n90;1,8\n");
    Files.writeString(
        file,
        "{\"format\":\"holdcurve-job/1\",\"title\":\"t\",\"notes\":\"of mine\",\"circuit\":"
            + "\"shared.circuit.json\",\"tests\":[{\"id\":\"a\",\"log\":\"by-hand.csv\"}]}");
    Job job = JobReader.read(file);
    JobWriter.write(file, job);
    String text = Files.readString(file);
    assertTrue(text.contains("\"shared.circuit.json\"") && text.contains("\"by-hand.csv\""), text);
    assertTrue(text.contains("of mine"), text);

    Circuit longer = job.circuit().with("feed-hose", Hose.LENGTH, 1.1);
    JobWriter.write(
        file, new Job(job.title(), longer, job.gauge(), job.tests(), job.priors(), List.of()));
    assertEquals(longer, JobReader.read(file).circuit());
    assertEquals(job.circuit(), CircuitReader.read(shared), "others may use it too");
  }

  @Test
  void strangersFilesAreNotWrittenOver() throws IOException {
    Files.writeString(folder.resolve("car.circuit.json"), "somebody else's");
    JobWriter.write(file, job(shipped()));
    assertEquals("somebody else's", Files.readString(folder.resolve("car.circuit.json")));
    assertSame(job(shipped()), JobReader.read(file));
  }

  @Test
  void anUnfinishedJobIsReadOnlyAsSuch() {
    GaugeLog one = new GaugeLog("x", List.of(Reading.of(0, 2e5)), 0);
    Job job =
        new Job(
            "Begun",
            shipped(),
            GaugeSpec.usual(),
            List.of(
                HoldTest.of("begun", Set.of(), one),
                HoldTest.of("not begun", Set.of(), new GaugeLog("not begun", List.of(), 0))),
            Map.of(),
            List.of());
    JobWriter.write(file, job);
    assertSame(job, JobReader.readUnfinished(file));
    InputException refused = assertThrows(InputException.class, () -> JobReader.read(file));
    assertTrue(refused.getMessage().contains("at least 3"), refused::getMessage);
  }

  @Test
  void everyShippedJobComesBackAsItWas() throws IOException {
    try (var jobs = Files.newDirectoryStream(SCENARIOS, "*.job.json")) {
      for (Path shipped : jobs) {
        Path copy = folder.resolve(shipped.getFileName());
        Job job = JobReader.read(shipped);
        JobWriter.write(copy, job);
        assertSame(job, JobReader.read(copy));
      }
    }
  }
}
