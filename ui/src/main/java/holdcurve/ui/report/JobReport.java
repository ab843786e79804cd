package holdcurve.ui.report;

import holdcurve.advice.check.RepairCheck;
import holdcurve.common.message.PressureUnit;
import holdcurve.record.job.Job;
import java.time.LocalDate;

/**
 * What a report tells of.
 *
 * @param job the job
 * @param check of its last tests, with their ranking
 * @param printed date of the report
 * @param unit in which pressures are written
 */
public record JobReport(Job job, RepairCheck check, LocalDate printed, PressureUnit unit) {}
