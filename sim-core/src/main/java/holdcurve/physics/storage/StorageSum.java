package holdcurve.physics.storage;

import java.util.List;

/** Storages that share one pressure: everything adds. */
record StorageSum(List<Storage> parts) implements Storage {
  @Override
  public double volume(double pressure) {
    double sum = 0;
    for (Storage part : parts) {
      sum += part.volume(pressure);
    }
    return sum;
  }

  @Override
  public double capacity(double pressure) {
    double sum = 0;
    for (Storage part : parts) {
      sum += part.capacity(pressure);
    }
    return sum;
  }

  @Override
  public boolean isJumped(double from, double to) {
    return parts.stream().anyMatch(part -> part.isJumped(from, to));
  }

  @Override
  public double capacitySlope(double pressure) {
    double sum = 0;
    for (Storage part : parts) {
      sum += part.capacitySlope(pressure);
    }
    return sum;
  }
}
