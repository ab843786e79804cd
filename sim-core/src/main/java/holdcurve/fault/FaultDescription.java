package holdcurve.fault;

import java.util.ArrayList;
import java.util.List;

/**
 * What a plugin says of itself, asked once and kept, so that its answers can't change later. Not
 * checked: any of it may be null.
 */
record FaultDescription(
    String id,
    int contractVersion,
    String name,
    String symptoms,
    String repair,
    List<FaultParameter> parameters,
    double prevalence,
    boolean showsInHold) {

  /** Asks no more than id and version of a plugin written for another contract. */
  static FaultDescription of(LeakFault fault) {
    String id = fault.id();
    int version = fault.contractVersion();
    if (version != LeakFault.CONTRACT_VERSION) {
      return new FaultDescription(id, version, null, null, null, null, 0, false);
    }
    List<FaultParameter> parameters = fault.parameters();
    return new FaultDescription(
        id,
        version,
        fault.name(),
        fault.symptoms(),
        fault.repair(),
        parameters == null ? null : new ArrayList<>(parameters),
        fault.prevalence(),
        fault.showsInHold());
  }
}
