package holdcurve.bench.droptest;

import java.util.List;

/** How a drop test is done, step by step: common practice, no source. */
public final class FiringSteps {
  private static final List<String> STEPS =
      List.of(
          "Switch the ignition off, and take the plugs off all injectors.",
          "Fit the gauge at the tee. Prime, and stop the pump.",
          "Wait until the needle moves slowly, then read the gauge.",
          "Give one injector one pulse from the relay box, such as 250 ms. A low-resistance coil"
              + " gets its resistor.",
          "Read again at the time set for the second reading, such as after 8 seconds.",
          "If it may not shut: read a third time, such as a minute later.",
          "Prime again, and go on to the next injector.",
          "Once a round, watch the gauge a minute without firing. That is the line idle.",
          "At the end relieve the pressure into a can, and air the engine.");

  private FiringSteps() {}

  /** In order. */
  public static List<String> all() {
    return STEPS;
  }
}
