package shimwright.mechanics.worksheet;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import shimwright.mechanics.quantity.Kind;

/** Describes one component of an output record. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Output {
    /** What a number, or each number of a list or budget, measures. */
    Kind kind() default Kind.NUMBER;

    /** What it is, in a few plain words without a full stop. */
    String meaning();

    /** Symbol of the metric unit to show, where the usual one of the kind does not suit. */
    String unit() default "";

    /** Decimals in that unit; −1 for the usual. */
    int decimals() default -1;

    /** Name of the component that holds the standard uncertainty of this one. */
    String u() default "";

    /** Name of the component that holds the degrees of freedom of that. */
    String nu() default "";

    /** Name of the component that holds the budget of that. */
    String budget() default "";

    /** Words for an infinite number, where that is a proper result ("no limit"); elsewhere infinity is refused. */
    String infinite() default "";
}
