package holdcurve.physics.circuit;

/** How a part is joined to the circuit. */
public enum Ports {
  /** Stands for a place of its own, such as the tank: other parts name its id as their end. */
  PLACE,
  /** Sits at one connection point ({@code at}). */
  ONE,
  /** Leads from one connection point to another ({@code from}, {@code to}). */
  TWO
}
