package holdcurve.ui.report;

import holdcurve.advice.check.RepairCheck;
import holdcurve.bench.flowsheet.BenchReport;
import holdcurve.common.message.PressureUnit;
import holdcurve.record.job.Job;
import java.time.LocalDate;
import java.util.Optional;

/**
 * What a report tells of.
 *
 * @param job the job
 * @param check of its last tests, with their ranking
 * @param printed date of the report
 * @param benchSheet of its injectors, where they were on the bench
 * @param unit in which pressures are written
 */
public record JobReport(
    Job job,
    RepairCheck check,
    LocalDate printed,
    Optional<BenchReport> benchSheet,
    PressureUnit unit) {
  /** Without a bench sheet. */
  public JobReport(Job job, RepairCheck check, LocalDate printed, PressureUnit unit) {
    this(job, check, printed, Optional.empty(), unit);
  }
}
