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
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code seal-seat}. */
public final class SealSeats {
    private static final Table GRADES = Table.read("iso-286-1-2010/table-1.csv");
    private static final Table SEALS = Table.read("iso-6194-1-2007/seal-od.csv");
    private static final double MM = 1e-3;
    private static final double UM = 1e-6;
    private static final double PSI_7 = 48.3e3;
    private static final double DRIVER = 0.4e-3;
    private static final double SMOOTHEST = 0.2e-6;
    private static final double ROUGHEST = 0.8e-6;
    private static final double FAST = 10;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "seal-seat",
            "Lip seal seat",
            "Limits of bore and shaft for a rotary lip seal, its interference, its driver and what pressure does to it.",
            List.of(
                    "bore H8, shaft h11: ISO 6194-1 with ISO 286-1:2010",
                    SEALS.name(),
                    "driver 0.4 mm smaller: vehicle workshop manual; Ra 0.2 to 0.8 µm and 7 psi: makers' guides"),
            Case.class,
            Result.class,
            SealSeats::work);

    private SealSeats() {}

    /** A rotary lip seal, its bore and its shaft. */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "shaft, nominal", min = 0.005, max = 0.12, example = "40 mm")
            double shaft,

            @Input(kind = Kind.LENGTH, meaning = "bore, nominal", min = 0.008, max = 0.12, example = "55 mm")
            double bore,

            @Input(meaning = "outside of the seal", orElse = "metal")
            Outside outside,

            @Input(kind = Kind.LENGTH, meaning = "bore measured", min = 0.005, max = 0.13) @Nullable
            Double boreMeasured,

            @Input(kind = Kind.LENGTH, meaning = "shaft measured", min = 0.004, max = 0.13) @Nullable
            Double shaftMeasured,

            @Input(kind = Kind.LENGTH, meaning = "outside of the seal measured, mean", min = 0.005, max = 0.13)
            @Nullable
            Double sealMeasured,

            @Input(kind = Kind.LENGTH, meaning = "roughness Ra of the shaft", unit = "µm", min = 1e-9, max = 1e-4)
            @Nullable
            Double roughness,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "pressure difference on the seal",
                    unit = "kPa",
                    orElse = "0 kPa",
                    min = 0,
                    max = 1e7)
            double pressure,

            @Input(kind = Kind.ROTATION, meaning = "fastest turning", orElse = "0 rpm", min = 0, max = 5000)
            double speed) {

        /** Outside of the seal. */
        public enum Outside {
            METAL,
            RUBBER
        }
    }

    /** Limits of the seat and what they do to the seal. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "bore tolerance H8", unit = "µm", decimals = 0)
            double boreTolerance,

            @Output(kind = Kind.LENGTH, meaning = "largest bore")
            double boreMax,

            @Output(kind = Kind.LENGTH, meaning = "shaft tolerance h11", unit = "µm", decimals = 0)
            double shaftTolerance,

            @Output(kind = Kind.LENGTH, meaning = "smallest shaft")
            double shaftMin,

            @Output(kind = Kind.LENGTH, meaning = "least interference in the bore")
            double interferenceLow,

            @Output(kind = Kind.LENGTH, meaning = "greatest interference in the bore")
            double interferenceHigh,

            @Output(kind = Kind.LENGTH, meaning = "interference as measured") @Nullable
            Double interference,

            @Output(kind = Kind.LENGTH, meaning = "out of roundness allowed, two diameters", decimals = 2)
            double roundness,

            @Output(kind = Kind.LENGTH, meaning = "driver diameter", decimals = 1)
            double driver,

            @Output(kind = Kind.FORCE, meaning = "force pushing it out", decimals = 1)
            double pushOut,

            @Output(kind = Kind.SPEED, meaning = "speed under the lip", unit = "m/s", decimals = 2)
            double lipSpeed,

            @Output(meaning = "bore") Verdict boreVerdict,
            @Output(meaning = "shaft") Verdict shaftVerdict,
            @Output(meaning = "surface of the shaft") Verdict surfaceVerdict) {}

    /**
     * Seat: interference = allowance of the seal over the bore − H8 … allowance; push-out force = p π/4 (D² − d²).
     *
     * @param c lengths in m, pressure in Pa, speed in rad/s
     * @return lengths in m, force in N, speed in m/s; {@code NOT_PROVEN} for what was not measured; refused: a bore not
     *     larger than the shaft by 4 mm, a measured size over 1 mm from its nominal one, a pressure over 48 kPa
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        if (c.bore() < c.shaft() + 4 * MM) {
            refusals.add(Refusal.of(
                    "bore", "no lip seal fits between this shaft and this bore", "Look which is which: d x D x width"));
        }
        far(c.boreMeasured(), c.bore(), "boreMeasured", refusals);
        far(c.shaftMeasured(), c.shaft(), "shaftMeasured", refusals);
        far(c.sealMeasured(), c.bore(), "sealMeasured", refusals);
        if (c.pressure() > PSI_7) {
            refusals.add(Refusal.of(
                    "pressure",
                    Quantities.brief(c.pressure(), Units.KPA) + " is more than a standard lip takes",
                    "Stay under 48 kPa (7 psi); a case is tested at 20 kPa"));
        }
        return refusals.isEmpty() ? Outcome.ok(seated(c)) : Outcome.refused(refusals);
    }

    private static void far(@Nullable Double measured, double nominal, String place, List<Refusal> refusals) {
        if (measured != null && Math.abs(measured - nominal) > MM) {
            refusals.add(Refusal.of(
                    place,
                    Quantities.brief(measured, Units.MM) + " is more than 1 mm from the nominal "
                            + Quantities.brief(nominal, Units.MM),
                    "Look at the unit, or at the seal you hold"));
        }
    }

    private static double grade(double size, String grade) {
        return GRADES.rows().stream()
                        .filter(row -> size / MM > row.number("over") && size / MM <= row.number("to") + 1e-9)
                        .findFirst()
                        .orElseThrow(() -> new IllegalStateException("size " + size))
                        .number(grade)
                * UM;
    }

    private static Worked<Result> seated(Case c) {
        Working w = new Working();
        Table.Row seal = SEALS.rows().stream()
                .filter(row -> c.bore() / MM > row.number("over") && c.bore() / MM <= row.number("upTo") + 1e-9)
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("bore " + c.bore()));
        String outside = c.outside() == Case.Outside.METAL ? "metal" : "rubber";
        double h8 = w.line("H8", "for this bore", grade(c.bore(), "8"), Kind.LENGTH, GRADES.name());
        double h11 = w.line("h11", "for this shaft", grade(c.shaft(), "11"), Kind.LENGTH, GRADES.name());
        double boreMax = w.line("largest bore", "bore + H8", c.bore() + h8, Kind.LENGTH);
        double shaftMin = w.line("smallest shaft", "shaft − h11", c.shaft() - h11, Kind.LENGTH);
        double low = w.line(
                "least interference",
                "lower allowance − H8",
                seal.number(outside + "Low") * MM - h8,
                Kind.LENGTH,
                SEALS.name());
        double high = w.line(
                "greatest interference",
                "upper allowance",
                seal.number(outside + "High") * MM,
                Kind.LENGTH,
                SEALS.name());
        double round = w.line("roundness", "", seal.number(outside + "Round") * MM, Kind.LENGTH, SEALS.name());
        double driver = w.line("driver", "bore − 0.4 mm", c.bore() - DRIVER, Kind.LENGTH, "vehicle workshop manual");
        double ring = Math.PI / 4 * (c.bore() * c.bore() - c.shaft() * c.shaft());
        double push = w.line("push-out force", "p π/4 (D² − d²)", c.pressure() * ring, Kind.FORCE, "statics");
        double speed = w.line("lip speed", "π d n", c.speed() * c.shaft() / 2, Kind.SPEED, "geometry");
        Double bore = c.boreMeasured();
        Double held = c.sealMeasured();
        Double interference = bore == null || held == null
                ? null
                : w.line("interference", "seal − bore, measured", held - bore, Kind.LENGTH);
        Verdict boreVerdict = within(bore, c.bore(), boreMax);
        Verdict shaftVerdict = within(c.shaftMeasured(), shaftMin, c.shaft());
        Verdict surface = within(c.roughness(), SMOOTHEST, ROUGHEST);
        cautions(c, speed, low, interference, surface, w);
        return w.worked(new Result(
                h8,
                boreMax,
                h11,
                shaftMin,
                low,
                high,
                interference,
                round,
                driver,
                push,
                speed,
                boreVerdict,
                shaftVerdict,
                surface));
    }

    private static Verdict within(@Nullable Double measured, double low, double high) {
        if (measured == null) {
            return Verdict.NOT_PROVEN;
        }
        return measured >= low && measured <= high ? Verdict.IN : Verdict.OUT;
    }

    private static void cautions(
            Case c, double speed, double low, @Nullable Double interference, Verdict surface, Working w) {
        if (interference != null && interference < Math.min(low, c.bore())) {
            w.caution("The seal sits looser than a good bore would hold it: measure both again before fitting.");
        }
        if (surface == Verdict.OUT) {
            w.caution(
                    "Too smooth is a fault as well as too rough. Emery cloth by hand leaves a lead that pumps oil out.");
        }
        if (speed > FAST) {
            w.caution("Over 10 m/s plain nitrile rubber ages fast: ask for another compound.");
        }
        if (c.pressure() > 0) {
            w.caution("Pressure pushes the seal out: stand aside, and support it while testing.");
        }
        w.caution(
                "Press on the case with a square driver, lip towards the oil, splines covered, lip wetted with the oil it "
                        + "will seal; never let the weight of the shaft lie in the lip.");
    }
}
