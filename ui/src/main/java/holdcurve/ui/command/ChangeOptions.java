package holdcurve.ui.command;

import holdcurve.advice.whatif.Change;
import holdcurve.advice.whatif.ChangeWords;
import holdcurve.advice.whatif.Changes;
import holdcurve.advice.whatif.PlainNumbers;
import holdcurve.common.input.InputException;
import holdcurve.fault.FaultCatalogue;
import holdcurve.physics.circuit.Circuit;
import holdcurve.physics.circuit.Unit;
import holdcurve.physics.fluid.Fluid;
import holdcurve.physics.fluid.Fluids;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Option;

/** Options that say what is changed. */
final class ChangeOptions {
  @Option(
      names = "--replace",
      paramLabel = "PART",
      description = "This part is replaced by a sound one; again for another.")
  private List<String> replaced = new ArrayList<>();

  @Option(
      names = "--repair",
      paramLabel = "FAULT[@SITE]",
      description = "This fault, as 'faults' lists it, is put right; again for another.")
  private List<String> repaired = new ArrayList<>();

  @Option(
      names = "--set",
      paramLabel = "PART.PROPERTY=VALUE",
      description =
          "Another value, in the unit of circuit files, such as feed-hose.length_m=1.2 or"
              + " regulator.set_bar=2.2. A hose's kind is soft, fuel, braided or plastic.")
  private List<String> set = new ArrayList<>();

  @Option(
      names = "--fault",
      paramLabel = "FAULT[@SITE][=SIZE]",
      description = "This fault is added, with its size in the unit that 'faults --explain' gives.")
  private List<String> faults = new ArrayList<>();

  @Option(
      names = "--fuel",
      paramLabel = "FUEL",
      description = "Another fuel: petrol, petrol-e5, petrol-e10 or n-heptane.")
  private String fuel;

  @Option(
      names = "--temperature",
      paramLabel = "C",
      description = "Fuel temperature at the pump stop, in degrees Celsius.")
  private Double temperature;

  @Option(
      names = "--warmth",
      paramLabel = "K",
      description = "Fuel warmer than its surroundings at the pump stop, in kelvin.")
  private Double warmth;

  /** All that is changed, in the order of the options above. */
  Change change(Circuit circuit, FaultCatalogue catalogue) {
    ChangeWords words = new ChangeWords(circuit);
    Change all = Change.none();
    for (String part : replaced) {
      all = all.and(words.replace(part));
    }
    for (String fault : repaired) {
      String name = FaultChoice.fault(catalogue, "--repair", fault.split("@", 2)[0]).name();
      all = all.and(Changes.cure(fault, "put right: " + name.toLowerCase(Locale.ROOT)));
    }
    for (String property : set) {
      all = all.and(words.set(property));
    }
    for (String fault : faults) {
      all = all.and(added(circuit, catalogue, fault));
    }
    return all.and(filling());
  }

  private static Change added(Circuit circuit, FaultCatalogue catalogue, String words) {
    FaultChoice.Choice choice = FaultChoice.choose(circuit, catalogue, words);
    Unit unit = choice.fault().parameters().get(0).unit();
    String size = PlainNumbers.number(unit.fromSi(choice.values()[0])) + " " + unit.symbol();
    return Changes.add(
        "added: " + choice.fault().name().toLowerCase(Locale.ROOT) + " (" + size.strip() + ")",
        choice::apply);
  }

  private Change filling() {
    Change all = Change.none();
    if (fuel != null) {
      Fluid fluid =
          Fluids.byId(fuel)
              .orElseThrow(
                  () ->
                      InputException.at(
                          "command line",
                          "--fuel " + fuel,
                          "there is no such fuel",
                          "use one of " + String.join(", ", Fluids.ids())));
      all = all.and(Changes.fuel(fuel, fluid));
    }
    if (temperature != null) {
      check("--temperature", temperature, -20, 90);
      all = all.and(Changes.fuelTemperature(Unit.CELSIUS.toSi(temperature)));
    }
    if (warmth != null) {
      check("--warmth", warmth, -30, 30);
      all = all.and(Changes.warmth(warmth));
    }
    return all;
  }

  private static void check(String option, double value, double least, double most) {
    if (!(value >= least && value <= most)) {
      throw InputException.at(
          "command line",
          option + " " + value,
          "that is out of range",
          String.format(Locale.ROOT, "give %.0f to %.0f", least, most));
    }
  }
}
