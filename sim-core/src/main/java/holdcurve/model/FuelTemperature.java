package holdcurve.model;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.math3.analysis.polynomials.PolynomialSplineFunction;

/**
 * Gathers what the temperature of the fuel does: one row for each region, or none where it was
 * measured. Fuel under the bonnet always has a row, so that a circuit's states are the same whether
 * it holds liquid there or not; the floor has one only if some is there.
 */
final class FuelTemperature {
  private final Map<Region, Integer> rows = new EnumMap<>(Region.class);
  private final List<Element> elements = new ArrayList<>();

  /**
   * @param firstRow first row that is free
   */
  FuelTemperature(
      NetworkBuilder parts, NodePlacement placement, NodeStorage storage, int firstRow) {
    Operation operation = parts.operation();
    double expansion = parts.fluid().thermalExpansion(operation.fuelTemperature());
    Node[] nodes = placement.inner().toArray(Node[]::new);
    for (Region region : Region.values()) {
      double[] swelling = storage.liquid(region);
      boolean any = region == Region.ENGINE;
      for (int i = 0; i < swelling.length; i++) {
        any |= swelling[i] > 0;
        swelling[i] *= expansion;
      }
      if (any) {
        add(region, nodes, swelling, operation.measuredTemperature(), firstRow + rows.size());
      }
    }
  }

  private void add(
      Region region,
      Node[] nodes,
      double[] swelling,
      Optional<PolynomialSplineFunction> measured,
      int row) {
    String name = "fuel temperature, " + region.title();
    if (measured.isPresent()) {
      elements.add(new MeasuredTemperatureElement(name, measured.get(), nodes, swelling));
    } else {
      elements.add(new ThermalElement(name, row, region.timeConstant(), nodes, swelling));
      rows.put(region, row);
    }
  }

  /** Region → row of its excess temperature. */
  Map<Region, Integer> rows() {
    return rows;
  }

  /** The equations of the rows, or of the measured curve. */
  List<Element> elements() {
    return elements;
  }
}
