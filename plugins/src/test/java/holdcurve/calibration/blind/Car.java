package holdcurve.calibration.blind;

import holdcurve.calibration.blind.Leak.Place;
import holdcurve.calibration.blind.Zone.Cushion;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * A car's fuel circuit as it is, and the file that somebody wrote about it: lengths by eye, most
 * values left out, and dampers and hoses other than the file's words make one think.
 *
 * @param parts the part entries of its circuit file
 * @param zones trapped fuel between check valve, feed clamp, regulator and return clamp
 * @param set pressure the regulator holds [Pa]
 * @param closing pressure at which it shuts [Pa]
 * @param gauge zone where the gauge is tee'd in
 * @param creep of its hoses
 * @param expansion of its fuel [1/K]
 * @param weeps what sound seats let past
 */
record Car(
    List<String> parts,
    Map<Place, Zone> zones,
    double set,
    double closing,
    Place gauge,
    Creep creep,
    double expansion,
    List<Leak> weeps,
    boolean hasDamper,
    boolean hasColdStart) {
  private static final double PER_BAR_METRE = 1e-11;

  /** 0.7 to 4 mL/bar: what circuits of this kind give. */
  private static final double LEAST_SOFT = 0.7 * PER_BAR_METRE;

  private static final double MOST_SOFT = 4 * PER_BAR_METRE;
  private static final double BORE_7_5 = 4.418e-5;
  private static final double BORE_6 = 2.827e-5;

  /** Draws a car; see the methods below for what it varies. */
  static Car draw(Draw draw) {
    Car car = new Maker(draw).make();
    while (car.softness() < LEAST_SOFT || car.softness() > MOST_SOFT) {
      car = new Maker(draw).make();
    }
    return car;
  }

  /** What all trapped fuel gives together near the set pressure, creep left out [m³/Pa]. */
  private double softness() {
    double sum = 0;
    for (Place place : List.of(Place.FEED, Place.RAIL)) {
      sum += (zone(place).taken(set) - zone(place).taken(0.8 * set)) / (0.2 * set);
    }
    return sum;
  }

  Zone zone(Place place) {
    return zones.get(place);
  }

  /** The same car with a damper that has lost part of its stroke. */
  Car withTornDamper(double lost) {
    Zone rail = zone(Place.RAIL);
    Cushion whole = rail.damper();
    Zone torn =
        new Zone(
            rail.liquid(),
            rail.hose(),
            rail.stiffening(),
            rail.rigid(),
            rail.air(),
            rail.polytropic(),
            p -> (1 - lost) * whole.taken(p));
    Map<Place, Zone> changed =
        Map.of(Place.FEED, zone(Place.FEED), Place.RAIL, torn, Place.RETURN, zone(Place.RETURN));
    return new Car(
        parts, changed, set, closing, gauge, creep, expansion, weeps, hasDamper, hasColdStart);
  }

  /** What one drawing needs to keep in hand. */
  private static final class Maker {
    private final Draw draw;
    private final List<String> parts = new ArrayList<>();
    private final double softness;
    private final double stiffening;
    private final double modulus;
    private final double stated;

    Maker(Draw draw) {
      this.draw = draw;
      softness = 0.35 * PER_BAR_METRE * draw.factor(0.35);
      stiffening = draw.between(6e5, 40e5);
      modulus = draw.between(0.75e9, 1.0e9);
      stated = draw.one(List.of(2.0e5, 2.0e5, 2.2e5, 2.5e5, 2.5e5, 3.0e5));
    }

    /** Long, because a circuit has many parts; one line each. */
    Car make() {
      int cylinders = draw.one(List.of(4, 4, 6, 6, 8));
      boolean longHose = draw.chance(0.4);
      boolean ring = cylinders > 4 && draw.chance(0.6) || draw.chance(0.2);
      boolean damped = draw.chance(0.55);
      boolean cold = draw.chance(0.7);
      boolean gaugeOnFeed = draw.chance(0.15);
      double set = stated * (1 + draw.normal(0.025));
      double feedHose = draw.between(0.4, 1.4);
      double clampAt = draw.between(0.35, 0.65);

      add("tank", "tank", "");
      add("pump", "pump", "\"from\": \"tank\", \"to\": \"pump-outlet\"");
      add("check-valve", "check-valve", "\"from\": \"pump-outlet\", \"to\": \"feed-start\"");
      double feedLiquid = 0;
      double feedSoft = 0;
      double feedRigid = 0;
      String at = "feed-start";
      if (longHose) {
        double length = draw.between(0.3, 0.9);
        add("hose", "pump-hose", line(at, "pipe-start", length) + ", \"clampable\": false");
        at = "pipe-start";
        feedLiquid += length * BORE_7_5;
        feedSoft += hose(length);
      }
      double pipe = draw.between(1.2, 3.8);
      boolean plastic = draw.chance(0.2);
      String wall = plastic ? ", \"stiffness_GPa\": 0.4, \"poisson\": 0.4" : "";
      add("pipe", "feed-pipe", line(at, "pipe-end", pipe) + ", \"wall_mm\": 1" + wall);
      feedLiquid += pipe * BORE_6;
      feedRigid += plastic ? pipe * 50e-9 / 1e5 * draw.factor(0.2) : 0;
      double filter = draw.between(90e-6, 260e-6);
      String housing = draw.chance(0.5) ? ", " + volume(filter) : "";
      add("filter", "filter", "\"from\": \"pipe-end\", \"to\": \"filter-outlet\"" + housing);
      feedLiquid += filter;
      add("hose", "feed-hose", line("filter-outlet", "rail", feedHose));
      feedLiquid += clampAt * feedHose * BORE_7_5;
      double clamped = hose(feedHose);
      feedSoft += clampAt * clamped;

      double railLiquid = (1 - clampAt) * feedHose * BORE_7_5;
      double railSoft = (1 - clampAt) * clamped;
      double rail = draw.between(30e-6, 110e-6) * Math.sqrt(cylinders / 5.0);
      add("rail", "fuel-rail", "\"at\": \"rail\"" + (draw.chance(0.6) ? ", " + volume(rail) : ""));
      railLiquid += rail;
      add("injector", "injectors", "\"at\": \"rail\", \"count\": " + cylinders);
      double drips = cylinders * 0.003 * draw.factor(0.6);
      if (cold) {
        add("cold-start-injector", "cold-start", "\"at\": \"rail\"");
      }
      Cushion cushion = Cushion.NONE;
      if (damped) {
        boolean gas = draw.chance(0.35);
        add(gas && draw.chance(0.6) ? "accumulator" : "damper", "damper", "\"at\": \"rail\"");
        cushion = gas ? gasDamper(set) : coilDamper(set);
      }
      String end = "rail";
      if (ring) {
        double length = draw.between(0.5, 1.6);
        add("hose", "ring-hose", line(end, "rail-end", length) + ", \"clampable\": false");
        end = "rail-end";
        railLiquid += length * BORE_7_5;
        railSoft += hose(length);
      }
      String tee = gaugeOnFeed ? "filter-outlet" : "rail";
      add("gauge", "gauge", "\"at\": \"" + tee + "\"");
      if (draw.chance(0.5)) {
        add("joint", "gauge-joint", "\"at\": \"" + tee + "\"");
      }
      add(
          "regulator",
          "regulator",
          String.format(
              Locale.ROOT,
              "\"from\": \"%s\", \"to\": \"return-start\", \"set_bar\": %.1f",
              end,
              stated / 1e5));
      double returnHose = draw.between(0.3, 0.9);
      add("hose", "return-hose", line("return-start", "return-pipe-start", returnHose));
      double returning = draw.between(1.5, 3.5);
      add("pipe", "return-pipe", line("return-pipe-start", "tank", returning));
      double stub = draw.between(0.3, 0.7) * returnHose;

      double gaugeAir = 1e-6 * draw.factor(0.7);
      double railAir = draw.chance(0.15) ? draw.between(0.5e-6, 4e-6) : 0;
      double exponent = draw.between(1, 1.15);
      Map<Place, Zone> zones =
          Map.of(
              Place.FEED,
              zone(feedLiquid, feedSoft, feedRigid, gaugeOnFeed ? gaugeAir : 0, exponent),
              Place.RAIL,
              with(
                  zone(railLiquid, railSoft, 0, railAir + (gaugeOnFeed ? 0 : gaugeAir), exponent),
                  cushion),
              Place.RETURN,
              zone(stub * BORE_7_5, hose(stub), 0, 0, exponent));
      return new Car(
          parts,
          zones,
          set,
          set * (1 - draw.between(0, 0.025)),
          gaugeOnFeed ? Place.FEED : Place.RAIL,
          creep(),
          draw.between(1.05e-3, 1.28e-3),
          List.of(
              weep(Place.FEED, Place.OUTSIDE, 0.015),
              weep(Place.RAIL, Place.RETURN, 0.015),
              weep(Place.RAIL, Place.OUTSIDE, drips)),
          damped,
          cold);
    }

    /** 3 to 9 % of the instant stretch a decade: 8 to 25 % in ten minutes. */
    private Creep creep() {
      return draw.chance(0.5)
          ? Creep.of(draw.between(0.03, 0.09), 0)
          : Creep.of(draw.between(0.02, 0.045), draw.between(0.05, 0.2));
    }

    private Cushion coilDamper(double set) {
      double first = set * draw.between(0.3, 0.75);
      double last = set * draw.between(1.05, 1.6);
      return Cushion.coil(1.2e-6 * draw.factor(0.4), first, last);
    }

    private Cushion gasDamper(double set) {
      return Cushion.gas(
          draw.between(2.5e-6, 12e-6), set * draw.between(0.45, 0.85), draw.between(1, 1.2));
    }

    private Zone zone(double liquid, double hose, double wall, double air, double exponent) {
      return new Zone(
          liquid, hose, stiffening, wall + liquid / modulus, air, exponent, Cushion.NONE);
    }

    private static Zone with(Zone z, Cushion cushion) {
      return new Zone(
          z.liquid(), z.hose(), z.stiffening(), z.rigid(), z.air(), z.polytropic(), cushion);
    }

    private double hose(double length) {
      return length * softness * draw.factor(0.2);
    }

    private Leak weep(Place from, Place to, double median) {
      double size = median * draw.factor(0.6) * 1e-6 / 60;
      return Leak.of(from, to, size, draw.between(0.6, 1.2), 0);
    }

    private void add(String kind, String id, String rest) {
      parts.add(
          String.format(
              "{ \"kind\": \"%s\", \"id\": \"%s\"%s }",
              kind, id, rest.isEmpty() ? "" : ", " + rest));
    }

    /** Lengths are estimated along the car and written to the decimetre. */
    private String line(String from, String to, double length) {
      double guessed = Math.max(0.1, length * draw.factor(0.1));
      return String.format(
          Locale.ROOT, "\"from\": \"%s\", \"to\": \"%s\", \"length_m\": %.1f", from, to, guessed);
    }

    private static String volume(double cubicMetres) {
      return String.format(Locale.ROOT, "\"volume_mL\": %.0f", cubicMetres * 1e6);
    }
  }
}
