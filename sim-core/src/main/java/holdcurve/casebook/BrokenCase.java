package holdcurve.casebook;

import java.nio.file.Path;

/**
 * A file or folder that can't be listed.
 *
 * @param reason what is wrong with it, as it is said when it is opened
 */
public record BrokenCase(Path file, String reason) {}
