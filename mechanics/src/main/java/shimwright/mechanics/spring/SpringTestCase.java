package shimwright.mechanics.spring;

import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Input;

/** A used spring on a spring tester. */
public record SpringTestCase(
        @Input(meaning = "length and load at each reading", most = 100, example = "20 mm: 41 N; 22 mm: 30 N")
        List<Reading> readings,

        @Input(kind = Kind.LENGTH, meaning = "free length measured", min = 1e-3, max = 1, example = "27.4 mm") @Nullable
        Double freeLength,

        @Input(kind = Kind.LENGTH, meaning = "free length when new", min = 1e-3, max = 1, example = "27.8 mm") @Nullable
        Double newFreeLength,

        @Input(kind = Kind.LENGTH, meaning = "length at work", min = 5e-4, max = 1, example = "20 mm") @Nullable
        Double workingLength,

        @Input(kind = Kind.FORCE, meaning = "load at work when new", min = 0.01, max = 1e5, example = "48 N") @Nullable
        Double newLoad,

        @Input(kind = Kind.FORCE, meaning = "smallest load at work allowed", min = 0.01, max = 1e5, example = "39 N")
        @Nullable
        Double limitLoad) {

    /** One reading. */
    public record Reading(
            @Input(kind = Kind.LENGTH, meaning = "length", min = 5e-4, max = 1, example = "20 mm")
            double length,

            @Input(kind = Kind.FORCE, meaning = "load", min = 0, max = 1e5, example = "41 N")
            double load) {}
}
