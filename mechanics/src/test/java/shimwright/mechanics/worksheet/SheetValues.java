package shimwright.mechanics.worksheet;

import org.jspecify.annotations.Nullable;

/** What stands at a field of a case or result, read as the worksheet itself reads it: through its groups. */
public final class SheetValues {
    private SheetValues() {}

    /** The value at a field; null where it was left out. */
    public static @Nullable Object of(Object record, SheetField field) {
        return Records.get(record, field.name());
    }
}
