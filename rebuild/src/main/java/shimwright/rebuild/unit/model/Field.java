package shimwright.rebuild.unit.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import shimwright.mechanics.quantity.Kind;

/** What one key of the unit file means; the reader, the schema and the problems are all made from it. */
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.FIELD, ElementType.METHOD})
public @interface Field {
    /** One sentence for the person who writes the file. */
    String value();

    /** The kind of quantity of a number; NUMBER takes a bare number, every other kind needs a unit. */
    Kind kind() default Kind.NUMBER;

    /** The key of the same record that says which kind of quantity a stated {@link Quantity} is; empty for all else. */
    String kindFrom() default "";

    /** The value taken when the key is absent; {@link #REQUIRED} where it must be there. */
    String absent() default REQUIRED;

    /** What list or map of the file a text refers to, so that a wrong id can be named; empty for free text. */
    String refersTo() default "";

    /** An older name of the key, still read; where the value is a list, one value alone is a list of one. */
    String formerly() default "";

    /** The mark of a key that must be there. */
    String REQUIRED = "\0";
}
