package holdcurve.advice.plan;

import holdcurve.advice.plan.FindingCandidate.Outcome;
import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.Message;
import holdcurve.common.message.PartName;
import holdcurve.inference.hypothesis.Hypothesis;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.part.ColdStartInjector;
import holdcurve.physics.part.Injector;
import holdcurve.physics.part.Regulator;
import holdcurve.record.finding.DrawOff;
import holdcurve.record.finding.DropCount;
import holdcurve.record.finding.Finding;
import holdcurve.record.finding.JointLook;
import holdcurve.record.finding.Moment;
import holdcurve.record.finding.ReferenceHoseLook;
import holdcurve.record.job.Job;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/**
 * What can be seen, counted or measured at a circuit beside the gauge. Minutes are common practice,
 * no source.
 */
final class FindingTests {
  private static final double COUNTED_SECONDS = 120;
  private static final int MOST_DROPS = 40;
  private static final double LIFTING = 40;
  private static final double UNSCREWING = 15;
  private static final double JOINTS = 8;
  private static final double THIN_HOSE = 5;
  private static final double DRAWING = 10;

  private final Job job;
  private final Circuit circuit;

  FindingTests(Job job) {
    this.job = job;
    this.circuit = job.circuit();
  }

  /**
   * @param open hypotheses that are still open
   */
  List<CandidateTest> candidates(List<Hypothesis> open) {
    List<CandidateTest> all = new ArrayList<>();
    joints(open).ifPresentOrElse(all::add, () -> {});
    circuit.partsOf(Injector.KIND).forEach(part -> all.add(lifted(part)));
    circuit.partsOf(ColdStartInjector.KIND).forEach(part -> all.add(unscrewed(part)));
    if (!circuit.partsOf(Regulator.KIND).isEmpty()) {
      all.add(thinHose());
    }
    all.add(drawOff());
    return all;
  }

  private java.util.Optional<CandidateTest> joints(List<Hypothesis> open) {
    Set<String> parts = new LinkedHashSet<>();
    for (Hypothesis hypothesis : open) {
      hypothesis.members().stream()
          .filter(m -> m.site().parts().size() > 1 || isOutside(m))
          .forEach(m -> parts.addAll(m.site().parts()));
    }
    if (parts.isEmpty()) {
      return java.util.Optional.empty();
    }
    List<Outcome> outcomes = new ArrayList<>();
    outcomes.add(new Outcome("every joint dry", List.of(JointLook.allDry().afterWiping())));
    for (String wet : parts) {
      List<Finding> looks = new ArrayList<>();
      parts.forEach(part -> looks.add(JointLook.of(part, part.equals(wet)).afterWiping()));
      outcomes.add(new Outcome(PartName.of(wet) + " wet, the others dry", looks));
    }
    return java.util.Optional.of(
        new FindingCandidate(
            job,
            procedure(
                "look-at-joints",
                "Wipe the joints dry, prime, and look",
                JOINTS,
                said(
                    "Wipe every joint between pump and regulator, the gauge tee and the damper"
                        + " dry.",
                    "Bridge the pump relay with a fused lead; run the pump for 20 s, stop it.",
                    "Go round them all for two minutes with a cold lamp; dab each with a white"
                        + " cloth.",
                    "Enter which were wet and which dry."),
                Caution.COLD_LAMP,
                Caution.DRY_FIRST),
            outcomes,
            false,
            "It shows leaks to the outside."));
  }

  private boolean isOutside(Hypothesis.Member member) {
    return member.leaks(circuit).stream().anyMatch(leak -> leak.to().equals(Circuit.AIR));
  }

  private CandidateTest lifted(Part part) {
    return count(
        part,
        "lift-" + part.id(),
        "Lift the " + PartName.of(part.id()) + " and count drops",
        LIFTING,
        List.of(
            "Disconnect the plug of every injector, and the ignition. Relieve the pressure.",
            "Unbolt the injectors with their rail and lift them, hoses on; secure each in its"
                + " holder.",
            "Lay them over dry trays, one below each; nothing hot or live near by.",
            "Bridge the pump relay with a fused lead; run the pump for 20 s, stop it.",
            "Count drops at each for two minutes; then relieve the pressure.",
            "Enter the count, for each or for all together; refit with new seals."));
  }

  private CandidateTest unscrewed(Part part) {
    return count(
        part,
        "lift-" + part.id(),
        "Unscrew the " + PartName.of(part.id()) + " and count drops",
        UNSCREWING,
        List.of(
            "Disconnect its plug, and the ignition. Relieve the pressure.",
            "Unscrew it with its hose on and secure it in a jar.",
            "Bridge the pump relay with a fused lead; run the pump for 20 s, stop it.",
            "Count drops for two minutes; then relieve the pressure.",
            "Enter the count; refit with a new gasket."));
  }

  private CandidateTest count(
      Part part, String id, String name, double minutes, List<String> steps) {
    List<Outcome> outcomes = new ArrayList<>();
    for (int drops = 0; drops <= MOST_DROPS; drops++) {
      outcomes.add(
          new Outcome(drops(drops), List.of(DropCount.ofAll(part.id(), drops, COUNTED_SECONDS))));
    }
    return new FindingCandidate(
        job,
        procedure(
            id,
            name,
            minutes,
            Message.plain(steps),
            Caution.NOTHING_FIRES,
            Caution.INJECTORS_HELD,
            Caution.LET_OUT),
        outcomes,
        false,
        "It shows what drips into the intake there.");
  }

  private static String drops(int drops) {
    if (drops == 0) {
      return "no drop in two minutes";
    }
    return drops <= 3
        ? "1 to 3 drops in two minutes"
        : drops <= 12 ? "4 to 12 drops in two minutes" : "more than 12 drops in two minutes";
  }

  private CandidateTest thinHose() {
    return new FindingCandidate(
        job,
        procedure(
            "look-into-thin-hose",
            "Look into the regulator's thin hose, or its vent",
            THIN_HOSE,
            said(
                "Bridge the pump relay with a fused lead; run the pump for 20 s, stop it.",
                "Pull the thin hose off the regulator's cap, or look at its vent.",
                "Enter whether there is fuel in it."),
            Caution.COLD_LAMP,
            Caution.LET_OUT),
        List.of(
            new Outcome("fuel in it", List.of(new ReferenceHoseLook(true, Moment.PRIMED))),
            new Outcome("it is dry", List.of(new ReferenceHoseLook(false, Moment.PRIMED)))),
        true,
        "It shows whether the regulator's diaphragm leaks.");
  }

  private CandidateTest drawOff() {
    double from = 0.95 * circuit.partsOf(Regulator.KIND).get(0).value(Regulator.SET);
    double to = from - 0.4e5;
    List<Outcome> outcomes = new ArrayList<>();
    for (int i = 1; i <= 40; i++) {
      double volume = i * 0.1e-6;
      String words = String.format(Locale.ROOT, "%s mL", i <= 8 ? "less than 0.9" : "0.9 or more");
      outcomes.add(new Outcome(words, List.of(new DrawOff(volume, from, to, 20, Set.of()))));
    }
    return new FindingCandidate(
        job,
        procedure(
            "draw-off",
            "Draw off fuel into a measuring cylinder",
            DRAWING,
            List.of(
                Message.plain(
                    "Bridge the pump relay with a fused lead; run the pump for 20 s, stop it."),
                Message.of(
                    "At %s, let fuel into the cylinder through the valve or cracked union."
                        + " Take about 20 s, and shut it at %s.",
                    Message.pressure(from), Message.pressure(to)),
                Message.plain("Enter the volume, both pressures and the time.")),
            Caution.DRAW_OFF),
        outcomes,
        true,
        "It shows how much fuel the circuit gives up for each bar. That tells the size of a leak,"
            + " not its place.");
  }

  private static List<Message> said(String... steps) {
    return Message.plain(List.of(steps));
  }

  private static Procedure procedure(
      String id, String name, double minutes, List<Message> steps, Caution... own) {
    List<String> cautions = new ArrayList<>(Cautions.general());
    cautions.addAll(cautions.size() - 1, Cautions.texts(own));
    return new Procedure(id, name, minutes, false, Set.of(), steps, cautions);
  }
}
