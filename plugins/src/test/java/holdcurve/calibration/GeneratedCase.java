package holdcurve.calibration;

import holdcurve.job.Job;
import java.util.Optional;

/**
 * A job whose truth is known.
 *
 * @param fault id of the fault that was put in; empty for a sound circuit
 * @param size its true size [SI]; not-a-number for a sound circuit
 */
record GeneratedCase(Job job, Optional<String> fault, double size) {}
