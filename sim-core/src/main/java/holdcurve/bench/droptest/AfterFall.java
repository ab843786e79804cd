package holdcurve.bench.droptest;

import java.util.List;

/**
 * Whether an injector goes on passing fuel after it was fired: the needle then falls faster than it
 * does without firing, and faster than after the other injectors.
 *
 * @param rate mean fall after its firings [Pa/s]
 * @param error standard uncertainty of that, from rounding and the eye [Pa/s]
 * @param count firings with a third reading [-]
 */
record AfterFall(double rate, double error, int count) {
  /** Standard errors beyond which it is said: one in a thousand by chance alone [-]. */
  private static final double CLEARLY = 3.1;

  /** Unsteadiness of the eye as a share of the gauge's step: assumed [-]. */
  private static final double UNSTEADY = 0.3;

  static AfterFall of(DropTest test, String injector) {
    double[] falls =
        test.of(injector).stream()
            .filter(firing -> firing.later().isPresent())
            .mapToDouble(firing -> firing.after() - firing.later().getAsDouble())
            .toArray();
    if (falls.length == 0) {
      return new AfterFall(0, 0, 0);
    }
    double sum = 0;
    for (double fall : falls) {
      sum += fall;
    }
    double single = test.resolution() * Math.sqrt(1 / 6.0 + 2 * UNSTEADY * UNSTEADY);
    return new AfterFall(
        sum / falls.length / test.watch(),
        single / Math.sqrt(falls.length) / test.watch(),
        falls.length);
  }

  /** Whether an injector's needle surely falls faster than with no firing and after the others. */
  static boolean staysOpen(DropTest test, String injector) {
    AfterFall own = of(test, injector);
    IdleRate idle = IdleRate.of(test);
    if (own.count == 0 || test.idleFalls().isEmpty()) {
      return false;
    }
    List<AfterFall> others =
        test.injectors().stream()
            .filter(id -> !id.equals(injector))
            .map(id -> of(test, id))
            .filter(fall -> fall.count > 0)
            .toList();
    boolean faster = own.exceeds(idle.rate(), idle.error());
    double usual =
        others.stream()
            .mapToDouble(AfterFall::rate)
            .sorted()
            .skip(others.size() / 2)
            .findFirst()
            .orElse(0);
    double doubt = others.stream().mapToDouble(AfterFall::error).max().orElse(0);
    return faster && (others.isEmpty() || own.exceeds(usual, doubt));
  }

  private boolean exceeds(double other, double otherError) {
    return rate - other > CLEARLY * Math.hypot(error, otherError);
  }
}
