package holdcurve.physics.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import holdcurve.oracle.Near;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;

/** What {@link Storage} promises, for all storages of this package. */
class StorageContractTest {
  @Provide
  Arbitrary<Storage> storages() {
    Arbitrary<Double> volume =
        Arbitraries.doubles().between(0.1, 500).map(millilitres -> 1e-6 * millilitres);
    Arbitrary<Double> pressure = Arbitraries.doubles().between(-7e4, 2.5e5);
    Arbitrary<Double> width = Arbitraries.doubles().between(2e3, 9e4);
    Arbitrary<Double> hardness = Arbitraries.of(2.0, 4.0);
    Arbitrary<Double> exponent = Arbitraries.doubles().between(1, 1.4).ofScale(6);
    return Arbitraries.oneOf(
        volume.map(v -> new LinearStorage(v / 7.5e8)),
        Combinators.combine(volume, exponent).as(GasSpring::trappedAir),
        Combinators.combine(volume, pressure, exponent, width).as(GasSpring::charged),
        Combinators.combine(volume, pressure, width, hardness).as(SpringDiaphragm::new),
        Combinators.combine(volume, pressure, width).as(VapourGrowth::new),
        Combinators.combine(volume, exponent, width)
            .as(
                (v, n, w) ->
                    Storage.sum(
                        List.of(GasSpring.trappedAir(v, n), new SpringDiaphragm(v, 1e5, w)))));
  }

  @Property
  void countsFromZeroGauge(@ForAll("storages") Storage storage) {
    assertEquals(0, storage.volume(0), 1e-20);
  }

  @Property
  void volumeRises(
      @ForAll("storages") Storage storage,
      @ForAll @DoubleRange(min = -9e4, max = 6e5) double pressure) {
    assertTrue(storage.capacity(pressure) >= 0);
    assertTrue(storage.volume(pressure + 1e3) >= storage.volume(pressure));
  }

  @Property(tries = 3000)
  void capacityIsTheSlopeOfVolume(
      @ForAll("storages") Storage storage,
      @ForAll @DoubleRange(min = -9e4, max = 6e5) double pressure) {
    double scale = largest(storage);
    double slope = Near.derivative(storage::volume, pressure, 30);
    assertEquals(slope, storage.capacity(pressure), 1e-6 * scale);
    double bend = Near.derivative(storage::capacity, pressure, 30);
    assertEquals(bend, storage.capacitySlope(pressure), 1e-6 * scale / 1e3);
  }

  private static double largest(Storage storage) {
    double largest = 0;
    for (double p = -1e5; p <= 6e5; p += 1e3) {
      largest = Math.max(largest, storage.capacity(p));
    }
    return largest;
  }
}
