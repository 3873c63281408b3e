package shimwright.mechanics.worksheet;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import shimwright.mechanics.quantity.Kind;

/** Describes one component of an input record. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Input {
    /** Marks an input that must be given. */
    String REQUIRED = "\u0000";

    /** What a number, or each number of a list, measures. */
    Kind kind() default Kind.NUMBER;

    /** What it is, in a few plain words without a full stop. */
    String meaning();

    /** Smallest allowed SI value, included. */
    double min() default Double.NEGATIVE_INFINITY;

    /** Largest allowed SI value, included. */
    double max() default Double.POSITIVE_INFINITY;

    /** Symbol of the metric unit for bare numbers and help, where the usual one of the kind does not suit. */
    String unit() default "";

    /** Text taken when nothing is given; without it the input is needed, unless its type is {@code Double}. */
    String orElse() default REQUIRED;

    /** An example as typed; needed wherever there is neither {@code orElse} nor a {@code Double}. */
    String example() default "";

    /** Fewest entries of a list; with 0 the list may be left out. */
    int fewest() default 1;

    /** Most entries of a list. */
    int most() default 1000;

    /**
     * Name of the component beside it that holds its standard uncertainty. A ± typed here goes there, by squares with
     * what is given there; without either the other is enough.
     */
    String u() default "";

    /** Name of the component that holds the degrees of freedom of that. */
    String nu() default "";

    /** Name of the output whose uncertainty from all inputs typed with ± is put together with this standard uncertainty. */
    String elsewhere() default "";
}
