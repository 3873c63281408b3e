package shimwright.mechanics.seal;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code leak-test}. */
public final class LeakProofs {
    private static final String IDEAL_GAS = "ideal gas; ASTM E2930-13(2021), scope";
    private static final String E2930 = "ASTM E2930-13(2021), 5.1";
    private static final String STEP = "JCGM 100:2008, F.2.2.1";
    private static final double CEILING = 30e3;
    private static final double USUAL = 20e3;
    private static final double STEPS = 10;
    private static final double LARGEST_CHANGE = 0.10;
    private static final double COVERAGE = 2;
    private static final double SHARE_OF_LIMIT = 0.25;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "leak-test",
            "Leak test with air",
            "Leak of a case from the fall of air pressure, corrected for temperature, with the time that can prove it.",
            List.of(IDEAL_GAS, E2930, "ceiling 30 kPa for gearbox cases: common practice, no source"),
            Case.class,
            Result.class,
            LeakProofs::work);

    private LeakProofs() {}

    /** An air test by pressure decay: gauge pressures and temperatures at its start and end. */
    public record Case(
            @Input(kind = Kind.VOLUME, meaning = "free volume of the case", min = 1e-5, max = 1, example = "3 L")
            double volume,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "gauge pressure at the start",
                    unit = "kPa",
                    min = 100,
                    max = 1e7,
                    example = "20 kPa")
            double startPressure,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "gauge pressure at the end",
                    unit = "kPa",
                    min = 0,
                    max = 1e7,
                    example = "19.8 kPa")
            double endPressure,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "air in the case at the start",
                    min = 250,
                    max = 340,
                    example = "20.0 °C")
            double startTemperature,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "air in the case at the end",
                    min = 250,
                    max = 340,
                    example = "20.2 °C")
            double endTemperature,

            @Input(kind = Kind.TIME, meaning = "time between them", min = 1, max = 1e6, example = "300 s")
            double time,

            @Input(
                    kind = Kind.FLOW,
                    meaning = "leak allowed, at the reference",
                    min = 1e-12,
                    max = 1e-2,
                    example = "4 cm³/min")
            @Nullable
            Double limit,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "smallest step of the gauge",
                    unit = "Pa",
                    min = 0,
                    max = 1e5,
                    example = "10 Pa")
            double resolution,

            @Input(
                    kind = Kind.TEMPERATURE_DIFFERENCE,
                    meaning = "smallest step of the thermometer",
                    orElse = "0.1 K",
                    min = 0,
                    max = 5)
            double temperatureStep,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "pressure of the air outside",
                    unit = "kPa",
                    orElse = "101.325 kPa",
                    min = 6e4,
                    max = 1.1e5)
            double ambient,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "the same at the end, where it changed",
                    unit = "kPa",
                    min = 6e4,
                    max = 1.1e5)
            @Nullable
            Double ambientEnd,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "reference temperature of the leak",
                    orElse = "20 °C",
                    min = 250,
                    max = 340)
            double referenceTemperature,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "reference pressure of the leak",
                    unit = "kPa",
                    orElse = "101.325 kPa",
                    min = 5e4,
                    max = 2e5)
            double referencePressure,

            @Input(
                    kind = Kind.AREA,
                    meaning = "largest cover the pressure pushes on",
                    unit = "cm²",
                    min = 1e-5,
                    max = 1)
            @Nullable
            Double coverArea,

            @Input(
                    kind = Kind.FLOW,
                    meaning = "standard uncertainty of the leak from other causes; any ± typed above is added",
                    orElse = "0 cm³/min",
                    min = 0,
                    max = 1e-2,
                    elsewhere = "leak")
            double otherUncertainty) {}

    /** The leak with its uncertainty, what it takes to prove the limit, and what the air can do. */
    public record Result(
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

            @Output(kind = Kind.TIME, meaning = "time in which the limit moves the gauge ten steps", decimals = 1)
            @Nullable
            Double minimumTime,

            @Output(kind = Kind.TIME, meaning = "shortest time that can prove the limit", decimals = 0) @Nullable
            Double provingTime,

            @Output(
                    kind = Kind.PRESSURE,
                    meaning = "largest pressure change the test may have",
                    unit = "kPa",
                    decimals = 3)
            double maximumChange,

            @Output(kind = Kind.ENERGY, meaning = "energy in the air", decimals = 2)
            double energy,

            @Output(kind = Kind.FORCE, meaning = "force on the largest cover") @Nullable
            Double coverForce) {}

    /**
     * Leak Q = (V/t)(p1/T1 − p2/T2) Tref/pref with absolute pressures; positive outward. The verdict is {@code IN} or
     * {@code OUT} only if its expanded uncertainty (k = 2) is under a quarter of the limit, the change under a tenth of
     * the start pressure and the leak clear of the limit by that uncertainty.
     *
     * @param c volume in m³, gauge pressures in Pa, temperatures in K, time in s, flows in m³/s
     * @return flows in m³/s, throughput in W, energy in J; refused: a start above 30 kPa, temperatures more than 20 K
     *     apart, a pressure that doubled
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.startPressure() > CEILING * (1 + 1e-9)) {
            refusals.add(Refusal.of(
                    "startPressure",
                    Quantities.brief(c.startPressure(), Units.KPA) + " is above the 30 kPa a gearbox case is tested at",
                    "Use 20 kPa, a regulator that cannot give more, and a relief valve; never shop pressure"));
        }
        if (Math.abs(c.endTemperature() - c.startTemperature()) > 20) {
            refusals.add(Refusal.of(
                    "endTemperature", "the air changed by more than 20 K", "Let the case settle, then start again"));
        }
        if (c.endPressure() > 2 * c.startPressure()) {
            refusals.add(Refusal.of(
                    "endPressure",
                    "the pressure doubled during the test",
                    "Look whether start and end are swapped, and whether the supply is shut off"));
        }
        if (!refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        return Outcome.ok(tested(c));
    }

    private static Worked<Result> tested(Case c) {
        Working w = new Working();
        double p1 = w.line("p1", "start + outside", c.startPressure() + c.ambient(), Kind.PRESSURE, "absolute");
        double outsideEnd = c.ambientEnd() != null ? c.ambientEnd() : c.ambient();
        double p2 = w.line("p2", "end + outside", c.endPressure() + outsideEnd, Kind.PRESSURE, "absolute");
        double perGas = c.volume() / c.time() * c.referenceTemperature();
        double flow = perGas * (p1 / c.startTemperature() - p2 / c.endTemperature());
        double throughput = w.line("leak × pref", "(V/t)(p1/T1 − p2/T2) Tref", flow, Kind.POWER, IDEAL_GAS);
        double leak =
                w.line("leak", "(V/t)(p1/T1 − p2/T2) Tref/pref", flow / c.referencePressure(), Kind.FLOW, IDEAL_GAS);
        double effect = w.line(
                "by temperature",
                "p1 (T2/T1 − 1)",
                p1 * (c.endTemperature() / c.startTemperature() - 1),
                Kind.PRESSURE,
                IDEAL_GAS);
        w.line("share of it with gauge pressure", "start/p1", c.startPressure() / p1, Kind.NUMBER, "why p is absolute");
        double u = w.line("u", "√(u(p)² + u(T)² + u(other)²)", uncertainty(c, p1, p2, perGas), Kind.FLOW, STEP);
        double change = w.line("largest change", "start/10", LARGEST_CHANGE * c.startPressure(), Kind.PRESSURE, E2930);
        Double minimum = minimum(c, w);
        Double proving = proving(c, minimum, u, w);
        double energy = w.line(
                "energy",
                "p1 V (ln(p1/p0) − 1 + p0/p1)",
                energy(c.volume(), p1, c.ambient()),
                Kind.ENERGY,
                "isothermal");
        Double cover = c.coverArea();
        Double force = cover == null
                ? null
                : w.line("force on the cover", "start × area", c.startPressure() * cover, Kind.FORCE, "statics");
        boolean small = Math.abs(c.startPressure() - c.endPressure()) <= change * (1 + 1e-9);
        Verdict verdict = verdict(c.limit(), leak, u, small);
        cautions(c, verdict, small, leak + COVERAGE * u < 0, w);
        return w.worked(new Result(leak, u, throughput, verdict, effect, minimum, proving, change, energy, force));
    }

    /** One reading between two steps is anywhere between them: u = step/√12, at start and end, independent. */
    private static double uncertainty(Case c, double p1, double p2, double perGas) {
        double up = c.resolution() / Math.sqrt(12);
        double ut = c.temperatureStep() / Math.sqrt(12);
        double pressures = Math.hypot(up / c.startTemperature(), up / c.endTemperature());
        double temperatures = Math.hypot(
                ut * p1 / (c.startTemperature() * c.startTemperature()),
                ut * p2 / (c.endTemperature() * c.endTemperature()));
        return Math.hypot(perGas / c.referencePressure() * Math.hypot(pressures, temperatures), c.otherUncertainty());
    }

    private static @Nullable Double minimum(Case c, Working w) {
        Double limit = c.limit();
        if (limit == null) {
            return null;
        }
        double gas = c.referenceTemperature() / (c.startTemperature() * c.referencePressure());
        return w.line(
                "shortest by the gauge",
                "V × 10 steps × Tref/(T1 × limit × pref)",
                c.volume() * STEPS * c.resolution() * gas / limit,
                Kind.TIME,
                E2930);
    }

    /** The uncertainty falls as 1/t. */
    private static @Nullable Double proving(Case c, @Nullable Double minimum, double u, Working w) {
        Double limit = c.limit();
        if (limit == null || minimum == null) {
            return null;
        }
        double byUncertainty = c.time() * COVERAGE * u / (SHARE_OF_LIMIT * limit);
        return w.line(
                "shortest that proves",
                "larger of that and t × 2u/(limit/4)",
                Math.max(minimum, byUncertainty),
                Kind.TIME,
                E2930);
    }

    private static double energy(double volume, double p, double outside) {
        return Math.max(0, p * volume * (Math.log(p / outside) - 1 + outside / p));
    }

    private static Verdict verdict(@Nullable Double limit, double leak, double u, boolean small) {
        if (limit == null || !small || COVERAGE * u > SHARE_OF_LIMIT * limit || leak + COVERAGE * u < 0) {
            return Verdict.NOT_PROVEN;
        }
        if (leak + COVERAGE * u <= limit) {
            return Verdict.IN;
        }
        return leak - COVERAGE * u > limit ? Verdict.OUT : Verdict.NOT_PROVEN;
    }

    private static void cautions(Case c, Verdict verdict, boolean small, boolean rose, Working w) {
        w.caution(
                "Air stores energy: regulator and relief valve that cannot pass 30 kPa, breather blanked, eyes covered; "
                        + "let the air out before touching a plug, and open the breather again afterwards.");
        if (c.startPressure() > USUAL * 1.05) {
            w.caution("20 kPa is enough; more pushes lip seals out of their bores.");
        }
        if (!small) {
            w.caution("The pressure changed by more than a tenth of its start: find the large leak with soap first.");
        }
        if (rose) {
            w.caution(
                    "The pressure rose more than the temperature explains: supply shut? air settled? barometer steady?");
        }
        if (verdict == Verdict.NOT_PROVEN && c.limit() != null) {
            w.caution("Not proven: test longer, with a finer gauge, or with a steadier temperature.");
        }
        if (c.ambientEnd() == null) {
            w.caution("The barometer is taken as steady; 1 hPa of change is 100 Pa on the gauge.");
        }
        w.caution(
                "Do not test before the sealant has cured. A still lip seal may weep air where oil would not pass: judge "
                        + "it wet, after turning the shaft.");
    }
}
