package holdcurve.calibration;

import holdcurve.file.JobReader;
import holdcurve.record.job.Job;
import java.nio.file.Path;
import java.util.List;

/**
 * A job whose truth is known.
 *
 * @param file the job file
 * @param faults ids of the faults that were put in; none for a sound circuit
 * @param size true size of the first [SI]; not-a-number for a sound circuit
 */
public record GeneratedCase(Path file, List<String> faults, double size) {
  Job job() {
    return JobReader.read(file);
  }

  boolean isSound() {
    return faults.isEmpty();
  }
}
