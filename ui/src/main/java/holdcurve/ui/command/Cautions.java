package holdcurve.ui.command;

import java.io.PrintWriter;

/** Short cautions, printed where a result sends someone to the fuel. */
enum Cautions {
  /** Before a joint is opened or a part is taken out. */
  OPENING(
      "Petrol kills: no flame or spark, ventilate, extinguisher at hand, cold engine, eye"
          + " protection; relieve the pressure before opening a joint. Local codes and a licensed"
          + " technician decide where they differ."),

  /** Before injectors are fired into a standing engine. */
  FIRING(
      "Each firing sprays petrol into the engine: ignition off, cold engine, no flame or spark,"
          + " ventilate, extinguisher at hand, eye protection. Let it air before the engine is"
          + " started. Local codes and a licensed technician decide where they differ."),

  /** Before injectors go back on the bench. */
  BENCH(
      "The mist on a bench ignites as easily as petrol: no flame or spark, extraction on,"
          + " extinguisher at hand, eye protection. Local codes and a licensed technician decide"
          + " where they differ.");

  private final String text;

  Cautions(String text) {
    this.text = text;
  }

  /** Prints it with an empty line below. */
  void print(PrintWriter out) {
    Wrapped.print(out, "", text);
    out.println();
  }
}
