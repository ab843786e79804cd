package holdcurve.common.caution;

import java.util.Locale;

/** What to beware of. The words stand in {@code cautions.json} beside this class. */
public enum Caution {
  PETROL,
  LOCAL_CODES,
  RELIEVE,
  BRIDGED_PUMP,
  CLAMPS,
  DEAD_HEAD,
  STILL_PRESSURISED,
  COLD_LAMP,
  INJECTORS_HELD,
  NOTHING_FIRES,
  LET_OUT,
  DRAW_OFF,
  RETURN_CAN,
  FLUSH_RETURN,
  FIRE_ONE,
  COIL_RESISTOR,
  SHORT_PULSE,
  AIR_ENGINE,
  MIST,
  BENCH,
  DRY_FIRST;

  /** The id that files name it by, such as {@code cold-lamp}. */
  public String id() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** The words, the same wherever it is shown. */
  public String text() {
    return Cautions.text(id());
  }
}
