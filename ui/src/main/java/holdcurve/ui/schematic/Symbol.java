package holdcurve.ui.schematic;

import java.util.List;

/**
 * What is drawn for a part, around the origin, which lies on the line; flow to the right.
 *
 * @param marks its strokes
 * @param top how far it reaches up, negative [px at scale 1]
 * @param bottom how far it reaches down [px at scale 1]
 */
public record Symbol(List<Mark> marks, double top, double bottom) {}
