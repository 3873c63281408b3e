package shimwright.mechanics.worksheet;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Marks a component of a case or result whose own components stand on the sheet as if they were written there: a form, a
 * key and a table know nothing of the group, the code has its values together under a name. A group is always given.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Group {}
