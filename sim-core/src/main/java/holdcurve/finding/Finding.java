package holdcurve.finding;

/** Something found out at a circuit beside the gauge readings of a hold. */
public sealed interface Finding permits JointLook, DropCount, ReferenceHoseLook, DrawOff {
  /** What was found, for a person: a part of a sentence, such as "feed-hose dry". */
  String inWords();
}
