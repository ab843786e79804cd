package holdcurve.fault.explain;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import holdcurve.common.message.PartName;
import holdcurve.common.work.ComputationException;
import holdcurve.fault.FaultParameter;
import holdcurve.fault.LeakFault;
import holdcurve.fault.Site;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Condition;
import holdcurve.physics.circuit.LeakPath;
import holdcurve.physics.circuit.Part;
import holdcurve.physics.circuit.Property;
import java.util.List;

/** Everything there is to say about one fault in one circuit, as plain text. */
public final class FaultExplanation {
  /** Standard-normal coordinate of the ends of a 90 % range [-]. */
  private static final double END = 1.6449;

  private final LeakFault fault;
  private final Circuit circuit;
  private final Paragraphs text = new Paragraphs();

  private FaultExplanation(LeakFault fault, Circuit circuit) {
    this.fault = fault;
    this.circuit = circuit;
  }

  /**
   * Name, symptoms, repair, sizes with their source, sites, what it changes, and a sketch of its
   * hold curve beside the sound one.
   *
   * @throws holdcurve.fault.FaultFailure if the fault gives a bad answer
   * @return lines of at most 80 characters, ending with a line break
   */
  public static String of(LeakFault fault, Circuit circuit) {
    return new FaultExplanation(fault, circuit).text();
  }

  private String text() {
    text.heading(fault.name());
    text.heading("What one notices").paragraph(fault.symptoms());
    text.heading("What puts it right")
        .paragraph(String.join(" ", Cautions.general()))
        .paragraph(fault.repair());
    text.heading("How bad it can be, before any reading");
    fault.parameters().forEach(parameter -> text.paragraph(size(parameter)));
    addSites(fault.sites(circuit));
    return text.toString();
  }

  private static String size(FaultParameter p) {
    String range =
        Quantities.number(p.prior().at(-END), p.unit())
            + " to "
            + Quantities.withUnit(p.prior().at(END), p.unit());
    return p.name()
        + ": "
        + Quantities.withUnit(p.prior().at(0), p.unit())
        + ", 90 % range "
        + range
        + (p.variesBetweenTests() ? ". It differs a little from hold to hold" : "")
        + ". Source: "
        + p.source()
        + ".";
  }

  private void addSites(List<Site> sites) {
    text.heading("Where in " + circuit.title());
    if (sites.isEmpty()) {
      text.paragraph("Nowhere: this circuit has no part that can have it.");
      return;
    }
    for (Site site : sites) {
      text.paragraph(site.where() + ". Look at the " + PartName.all(site.parts()) + ".");
    }
    Condition usual =
        fault.apply(
            Condition.sound(circuit), sites.get(0), FaultParameter.usual(fault.parameters()));
    addEffect(usual, sites.size() > 1 ? ", " + sites.get(0).where() : "");
    addSketch(usual);
  }

  private void addEffect(Condition usual, String where) {
    text.heading("What it does");
    text.paragraph("At its usual size" + where + ".");
    for (LeakPath leak : usual.leaks()) {
      text.paragraph(LawInWords.of(leak, fault.parameters().get(0)));
    }
    for (Part part : usual.circuit().parts()) {
      Part sound = circuit.part(part.id());
      for (Property property : part.kind().properties()) {
        if (part.value(property) != sound.value(property)) {
          text.paragraph(change(property, sound, part));
        }
      }
    }
  }

  private static String change(Property property, Part sound, Part now) {
    return "At the "
        + PartName.of(now.id())
        + ", "
        + property.meaning()
        + ": "
        + Quantities.withUnit(now.value(property), property.unit())
        + " instead of "
        + Quantities.number(sound.value(property), property.unit())
        + ".";
  }

  private void addRun(Condition usual) {
    text.heading("What tells it");
    if (!usual.leaks().isEmpty()) {
      text.paragraph(Cautions.of(Caution.COLD_LAMP, Caution.DRY_FIRST));
      text.paragraph(
          "No hold and no gauge shows this. Wipe the joints there dry, let the pump run"
              + " and look. A joint that is wet again after wiping leaks.");
      return;
    }
    text.paragraph(Caution.MIST.text());
    text.paragraph("Only readings with the pump running show this:");
    RunInWords.of(Condition.sound(circuit), usual).forEach(text::paragraph);
    text.paragraph(RunInWords.HOW);
  }

  private void addSketch(Condition usual) {
    if (!fault.showsInHold()) {
      addRun(usual);
      return;
    }
    text.heading("What a hold without clamps looks like");
    try {
      text.verbatim(HoldSketch.of(circuit, usual));
    } catch (ComputationException | IllegalArgumentException e) {
      text.paragraph("No drawing: " + e.getMessage() + ".");
    }
  }
}
