package holdcurve.ui.window.frame;

import holdcurve.common.caution.Caution;
import holdcurve.common.caution.Cautions;

/** What to beware of, short, for the place where the step is. */
public final class StepCautions {
  /** Beside a repair. */
  public static final String REPAIR = Cautions.of(Caution.PETROL, Caution.RELIEVE);

  /** Beside a test with clamps. */
  public static final String CLAMPS = Cautions.of(Caution.DEAD_HEAD, Caution.CLAMPS);

  /** Beside a test without clamps. */
  public static final String TEST = Cautions.of(Caution.PETROL, Caution.BRIDGED_PUMP);

  /** Before the circuit is opened for the gauge. */
  public static final String OPENING =
      Cautions.of(Caution.PETROL, Caution.RELIEVE, Caution.COLD_LAMP);

  /** While the pump is made to run. */
  public static final String BRIDGED_PUMP = Cautions.of(Caution.BRIDGED_PUMP);

  /** When a hold is over. */
  public static final String RELIEVE =
      Cautions.of(Caution.STILL_PRESSURISED, Caution.COLD_LAMP, Caution.DRY_FIRST);

  /** Before a look for wet joints. */
  public static final String LOOK =
      Cautions.of(Caution.PETROL, Caution.COLD_LAMP, Caution.DRY_FIRST);

  /** Before drops are counted at lifted injectors. */
  public static final String DROPS =
      Cautions.of(
          Caution.PETROL,
          Caution.RELIEVE,
          Caution.NOTHING_FIRES,
          Caution.INJECTORS_HELD,
          Caution.LET_OUT);

  /** Before the thin hose is pulled off the regulator. */
  public static final String THIN_HOSE =
      Cautions.of(Caution.PETROL, Caution.COLD_LAMP, Caution.LET_OUT);

  /** Before fuel is drawn off to be measured. */
  public static final String DRAW_OFF = Cautions.of(Caution.PETROL, Caution.DRAW_OFF);

  /** Where injectors may be lifted or a hose pulled off. */
  public static final String LIFTING =
      Cautions.of(
          Caution.NOTHING_FIRES, Caution.INJECTORS_HELD, Caution.LET_OUT, Caution.COLD_LAMP);

  /** Before a folder of plugins is chosen. */
  public static final String PLUGINS =
      "A plugin is a program: it can do on this computer whatever you can. Choose only a folder"
          + " whose jars you trust.";

  /** Beside a flow bench. */
  public static final String BENCH = Cautions.of(Caution.BENCH);

  /** Before injectors are fired into a standing engine. */
  public static final String FIRING =
      Cautions.of(
          Caution.PETROL,
          Caution.FIRE_ONE,
          Caution.COIL_RESISTOR,
          Caution.SHORT_PULSE,
          Caution.AIR_ENGINE);

  private StepCautions() {}
}
