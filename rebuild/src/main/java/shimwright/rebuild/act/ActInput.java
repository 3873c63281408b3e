package shimwright.rebuild.act;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import shimwright.mechanics.quantity.Kind;

/** What one input of an act is; forms, the HTTP door and its description are read from it. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
public @interface ActInput {
    /** What it is, in the words of the bench; the place of a refusal. */
    String value();

    /** What to do where it is missing; empty where it may be. */
    String missing() default "";

    /** The kind of quantity of a number. */
    Kind kind() default Kind.NUMBER;

    /** The least it can be, SI. */
    double least() default Double.NEGATIVE_INFINITY;

    /** The most it can be, SI. */
    double most() default Double.POSITIVE_INFINITY;

    /** How many characters of text it may have. */
    int longest() default 4000;
}
