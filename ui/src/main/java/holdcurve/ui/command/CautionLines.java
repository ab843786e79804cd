package holdcurve.ui.command;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;
import java.io.PrintWriter;
import java.util.List;

/** Cautions as they are printed, where a result sends someone to the fuel. */
enum CautionLines {
  /** For any work on the circuit: in every output. */
  GENERAL(Cautions.general()),

  /** Before injectors are fired into a standing engine. */
  FIRING(
      Cautions.texts(
          Caution.PETROL,
          Caution.FIRE_ONE,
          Caution.COIL_RESISTOR,
          Caution.SHORT_PULSE,
          Caution.AIR_ENGINE,
          Caution.BRIDGED_PUMP,
          Caution.LOCAL_CODES)),

  /** Before injectors go back on the bench. */
  BENCH(Cautions.texts(Caution.BENCH, Caution.PETROL, Caution.LOCAL_CODES));

  private final List<String> texts;

  CautionLines(List<String> texts) {
    this.texts = texts;
  }

  /** Prints them with an empty line below. */
  void print(PrintWriter out) {
    texts.forEach(text -> Wrapped.print(out, "  ! ", text));
    out.println();
  }
}
