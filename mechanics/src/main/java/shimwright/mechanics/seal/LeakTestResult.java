package shimwright.mechanics.seal;

import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.worksheet.Output;

/** The leak with its doubt, what it takes to prove the limit, and what the air can do. */
public record LeakTestResult(
        @Output(kind = Kind.FLOW, meaning = "leak at the reference", decimals = 3, u = "leakUncertainty")
        double leak,

        @Output(kind = Kind.FLOW, meaning = "standard uncertainty from gauge and thermometer", decimals = 3)
        double leakUncertainty,

        @Output(
                kind = Kind.POWER,
                meaning = "the same as pressure times volume per time",
                unit = "Pa·m³/s",
                decimals = 6)
        double throughput,

        @Output(meaning = "case") Verdict verdict,

        @Output(kind = Kind.PRESSURE, meaning = "pressure change by temperature alone", unit = "Pa", decimals = 1)
        double temperatureEffect,

        @Output(kind = Kind.TIME, meaning = "time in which the limit moves the gauge ten steps", decimals = 1) @Nullable
        Double minimumTime,

        @Output(kind = Kind.TIME, meaning = "shortest time that can prove the limit", decimals = 0) @Nullable
        Double provingTime,

        @Output(kind = Kind.PRESSURE, meaning = "largest pressure change the test may have", unit = "kPa", decimals = 3)
        double maximumChange,

        @Output(kind = Kind.ENERGY, meaning = "energy in the air", decimals = 2)
        double energy,

        @Output(kind = Kind.FORCE, meaning = "force on the largest cover") @Nullable
        Double coverForce) {}
