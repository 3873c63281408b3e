package shimwright.mechanics.spring;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** What the tester says; what was not given cannot be compared and is absent. */
public record SpringTestResult(
        @Output(kind = Kind.STIFFNESS, meaning = "rate", decimals = 3)
        double rate,

        @Output(kind = Kind.LENGTH, meaning = "free length by the loads", decimals = 2)
        double impliedFreeLength,

        @Output(kind = Kind.LENGTH, meaning = "set", decimals = 2) @Nullable
        Double set,

        @Output(kind = Kind.FORCE, meaning = "load at work", decimals = 1) @Nullable
        Double load,

        @Output(meaning = "load lost since new", unit = "%", decimals = 1) @Nullable
        Double loss,

        @Output(meaning = "load at work against its limit") Verdict verdict) {}
