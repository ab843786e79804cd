package holdcurve.fault;

/**
 * What is believed of a fault parameter before any reading.
 *
 * <p>A parameter is handed to a fault in SI; its prior is a curve on a standard-normal scale, so
 * that the engine can treat every parameter alike.
 */
public sealed interface Prior {
  /**
   * @param z standard-normal coordinate
   * @return parameter value [SI]
   */
  double at(double z);

  /**
   * A positive quantity known to a factor.
   *
   * @param median middle value [SI]
   * @param factor one standard deviation up multiplies by this, one down divides [-], above 1
   */
  record LogNormal(double median, double factor) implements Prior {
    public LogNormal {
      if (!(median > 0) || !(factor > 1) || Double.isInfinite(median + factor)) {
        throw new IllegalArgumentException(
            "a log-normal prior needs a positive median and a factor above 1, not "
                + median
                + " and "
                + factor);
      }
    }

    @Override
    public double at(double z) {
      return median * Math.exp(z * Math.log(factor));
    }
  }

  /**
   * A quantity between two limits, the middle likelier than the ends.
   *
   * @param least lower limit [SI]
   * @param most upper limit [SI]
   */
  record Between(double least, double most) implements Prior {
    public Between {
      if (!(least < most) || Double.isInfinite(most - least)) {
        throw new IllegalArgumentException(
            "limits must be finite and in order, not " + least + " and " + most);
      }
    }

    @Override
    public double at(double z) {
      return least + (most - least) / (1 + Math.exp(-1.5 * z));
    }
  }

  /**
   * A quantity between two limits, near one end or the other likelier than half-way.
   *
   * @param least lower limit [SI]
   * @param most upper limit [SI]
   */
  record NearEnds(double least, double most) implements Prior {
    public NearEnds {
      new Between(least, most);
    }

    @Override
    public double at(double z) {
      return least + (most - least) / (1 + Math.exp(-4 * z));
    }
  }
}
