package holdcurve.fault;

/** Foreign code was inside for too long and has been thrown out. */
final class CutOffException extends RuntimeException {
  private static final long serialVersionUID = 1;

  CutOffException() {
    super("cut off");
  }
}
