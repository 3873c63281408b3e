package shimwright.rebuild.unit.model;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * A record that only names a group of keys: the unit file does not know it. Its keys stand at the level of the record
 * that has it as a component, in its place.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface FieldGroup {}
