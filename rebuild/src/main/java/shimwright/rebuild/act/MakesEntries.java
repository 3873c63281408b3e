package shimwright.rebuild.act;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import shimwright.rebuild.job.Entry;

/** The types of entries that an act makes; it makes no others. */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.TYPE)
public @interface MakesEntries {
    Class<? extends Entry>[] value();
}
