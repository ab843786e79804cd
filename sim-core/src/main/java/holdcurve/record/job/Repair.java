package holdcurve.record.job;

import java.time.LocalDate;

/**
 * Something that was put right on the circuit.
 *
 * @param date day of the repair
 * @param part id of the part that was worked on; may be empty
 * @param fault id of the fault that was taken to be the cause; may be empty
 * @param afterTest id of the last hold test before the repair; empty where the dates tell
 * @param note free text; may be empty
 */
public record Repair(LocalDate date, String part, String fault, String afterTest, String note) {}
