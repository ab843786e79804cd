package holdcurve.ui.window.frame;

/** What to beware of, short, for the place where the step is. */
public final class Cautions {
  /** Beside a repair. */
  public static final String REPAIR =
      "Relieve the pressure before opening a joint. Petrol vapour ignites: no flame or spark, air"
          + " the room, extinguisher at hand, cold engine, eye protection.";

  /** Beside a test with clamps. */
  public static final String CLAMPS =
      "Clamp sound flexible hose only, smooth jaws, pump stopped; never rigid or plastic line.";

  /** Beside a test without clamps. */
  public static final String TEST =
      "No flame or spark near petrol. Bridge the pump relay with a fused lead, never unattended.";

  /** Before the circuit is opened for the gauge. */
  public static final String OPENING =
      "Cold engine. Air the room; no flame or spark; extinguisher at hand; eye protection. Relieve"
          + " the pressure before opening a joint.";

  /** While the pump is made to run. */
  public static final String BRIDGED_PUMP =
      "A pump bridged at its relay has lost its crash cut-out: fused lead, never unattended.";

  /** When a hold is over. */
  public static final String RELIEVE =
      "Still under pressure: no flame or spark, eye protection; relieve it into a rag or a can"
          + " before anything is opened.";

  /** Where fuel is let out to be counted or measured. */
  public static final String LET_OUT =
      "Petrol comes out: no flame or spark, air the room, extinguisher at hand, cold engine, eye"
          + " protection. Catch it in a fuel can or a glass that stands firm.";

  /** Where injectors may be lifted or a hose pulled off. */
  public static final String LIFTING =
      "Where a hose is pulled off or an injector lifted, petrol comes out: cold engine, eye"
          + " protection, a can under it, extinguisher at hand.";

  /** Before a folder of plugins is chosen. */
  public static final String PLUGINS =
      "A plugin is a program: it can do on this computer whatever you can. Choose only a folder"
          + " whose jars you trust.";

  private Cautions() {}
}
