package holdcurve.physics.circuit;

import java.util.Arrays;
import java.util.Map;
import java.util.Objects;

/** One part of a circuit. Immutable: {@link #with} gives a changed copy. */
public final class Part {
  private final PartKind kind;
  private final String id;
  private final String from;
  private final String to;
  private final Property[] properties;
  private final double[] values;
  private final boolean[] stated;

  private Part(
      PartKind kind,
      String id,
      String from,
      String to,
      Property[] properties,
      double[] values,
      boolean[] stated) {
    this.kind = Objects.requireNonNull(kind);
    this.id = Objects.requireNonNull(id);
    this.from = Objects.requireNonNull(from);
    this.to = Objects.requireNonNull(to);
    this.properties = properties;
    this.values = values;
    this.stated = stated;
  }

  /**
   * @param from connection point at the upstream end; for a one-ended part the point it sits at
   * @param to connection point at the downstream end; for a one-ended part the same as {@code from}
   * @param given the stated values [SI]; the rest take their defaults
   */
  public static Part of(
      PartKind kind, String id, String from, String to, Map<Property, Double> given) {
    Property[] properties = kind.properties().toArray(Property[]::new);
    double[] values = new double[properties.length];
    boolean[] stated = new boolean[properties.length];
    for (int i = 0; i < values.length; i++) {
      Double value = given.get(properties[i]);
      stated[i] = value != null;
      values[i] = stated[i] ? value : properties[i].standard();
    }
    return new Part(kind, id, from, to, properties, values, stated);
  }

  public PartKind kind() {
    return kind;
  }

  public String id() {
    return id;
  }

  public String from() {
    return from;
  }

  public String to() {
    return to;
  }

  /** Value of a property [SI]. */
  public double value(Property property) {
    return values[index(property)];
  }

  /** Whether a yes/no property is set. */
  public boolean is(Property flag) {
    return value(flag) != 0;
  }

  /** Whether the circuit file stated this value, rather than leaving it to its default. */
  public boolean states(Property property) {
    return stated[index(property)];
  }

  /** A copy in which one property has another value [SI]. */
  public Part with(Property property, double value) {
    double[] changed = values.clone();
    boolean[] known = stated.clone();
    int index = index(property);
    changed[index] = value;
    known[index] = true;
    return new Part(kind, id, from, to, properties, changed, known);
  }

  private int index(Property property) {
    for (int i = 0; i < properties.length; i++) {
      if (properties[i] == property) {
        return i;
      }
    }
    int equal = Arrays.asList(properties).indexOf(property);
    if (equal < 0) {
      throw new IllegalArgumentException(
          "a " + kind.id() + " has no property '" + property.fileName() + "'");
    }
    return equal;
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof Part that
        && kind.id().equals(that.kind.id())
        && id.equals(that.id)
        && from.equals(that.from)
        && to.equals(that.to)
        && Arrays.equals(values, that.values);
  }

  @Override
  public int hashCode() {
    return Objects.hash(kind.id(), id, from, to, Arrays.hashCode(values));
  }

  @Override
  public String toString() {
    return kind.id() + " '" + id + "'";
  }
}
