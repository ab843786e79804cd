package holdcurve.oracle;

import java.lang.annotation.ElementType;
import java.lang.annotation.Repeatable;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says that a test compares with something outside this program. One row of {@code
 * sim-core/docs/outside-checks.md}, compared by {@link OutsideChecks#holds}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.METHOD)
@Repeatable(OutsideCheck.All.class)
public @interface OutsideCheck {
  /** What is compared, in a few words, unlike any other in the same class. */
  String what();

  /** Where the value stands; "from memory" or "computed apart" where that is so. */
  String source();

  /** The value with its unit; a number in front is what {@link OutsideChecks} takes. */
  String value();

  /** Largest gap allowed, in {@link #unit}. */
  double tolerance();

  /** Unit of the tolerance; "%" means of the value. */
  String unit();

  /** Why the program misses the value, if it does; a test then fails once it no longer does. */
  String misses() default "";

  /** Several of one test. */
  @Retention(RetentionPolicy.RUNTIME)
  @Target(ElementType.METHOD)
  @interface All {
    OutsideCheck[] value();
  }
}
