package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
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

/** The worksheet {@code ring-groove}: what thrust the groove of a snap ring, its shoulder and the ring carry. */
public final class RingGroove {
    private static final String DIN =
            "DIN 471 and DIN 472, groove load of the tables: yield 200 MPa, 1.2, shoulder 3 depths";
    private static final double SHARE = 1.2;
    private static final double SHOULDER = 3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "ring-groove",
            "Snap ring groove",
            "Thrust that the groove of a snap ring, its shoulder and the ring carry.",
            List.of(DIN, "shear of a short shoulder at yield/√3: common practice, no source"),
            Case.class,
            Result.class,
            RingGroove::work);

    private RingGroove() {}

    /** Where the groove is. */
    public enum Place {
        SHAFT,
        BORE
    }

    /** Lengths in metres, stress in pascal, forces in newtons. */
    public record Case(
            @Input(meaning = "groove on a shaft or in a bore", orElse = "shaft")
            Place place,

            @Input(kind = Kind.LENGTH, meaning = "diameter of shaft or bore", min = 0.002, max = 1, example = "30 mm")
            double diameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "measured diameter at the bottom of the groove",
                    min = 0.001,
                    max = 1.1,
                    example = "28.6 mm")
            double groove,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shoulder from the groove to the end",
                    min = 1e-4,
                    max = 1,
                    example = "3 mm")
            double shoulder,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "yield stress of the grooved part",
                    min = 2e7,
                    max = 2e9,
                    example = "400 MPa")
            double yield,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "depth lost to wear, chamfer or a rolled edge",
                    orElse = "0 mm",
                    min = 0,
                    max = 0.01)
            double lost,

            @Input(kind = Kind.FORCE, meaning = "load of the ring by its table, sharp corner", min = 1, max = 1e7)
            @Nullable
            Double ringLoad,

            @Input(kind = Kind.FORCE, meaning = "thrust it has to hold", min = 0, max = 1e7) @Nullable
            Double thrust) {}

    /** Length in metres, forces in newtons. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "depth of the groove that carries")
            double depth,

            @Output(kind = Kind.FORCE, meaning = "groove carries")
            double grooveLoad,

            @Output(kind = Kind.FORCE, meaning = "shoulder carries in shear")
            double shoulderLoad,

            @Output(kind = Kind.FORCE, meaning = "the weakest carries")
            double least,

            @Output(meaning = "how many times the thrust", decimals = 2, infinite = "no thrust") @Nullable
            Double reserve) {}

    /**
     * Groove = π/4 |d² − dg²| × yield/1.2, less the depth lost; shoulder = π d n × yield/√3 at the groove's diameter.
     *
     * @param c lengths in m, stress in Pa, forces in N
     * @return forces in N; refused: a groove that is none, one deeper than a fifth of the diameter, nothing left of it
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double depth = (c.place() == Place.SHAFT ? 1 : -1) * (c.diameter() - c.groove()) / 2;
        if (depth <= 0) {
            refusals.add(Refusal.of(
                    "groove",
                    "a groove of " + Quantities.brief(c.groove(), Units.MM) + " is none "
                            + (c.place() == Place.SHAFT ? "on a shaft of " : "in a bore of ")
                            + Quantities.brief(c.diameter(), Units.MM),
                    "Say whether it is a shaft or a bore, and look at both diameters"));
        } else if (depth > c.diameter() / 5) {
            refusals.add(
                    Refusal.of("groove", "the groove is deeper than a fifth of the diameter", "Look at the units"));
        } else if (c.lost() >= depth) {
            refusals.add(
                    Refusal.of("lost", "nothing of the groove's depth is left", "It holds no ring: rework or replace"));
        }
        return refusals.isEmpty() ? Outcome.ok(held(c, depth - c.lost())) : Outcome.refused(refusals);
    }

    private static Worked<Result> held(Case c, double carrying) {
        Working w = new Working();
        double depth = w.line("depth", "|d − dg|/2 − lost", carrying, Kind.LENGTH);
        double side = c.place() == Place.SHAFT ? c.groove() + 2 * depth : c.groove() - 2 * depth;
        double area = w.line(
                "area",
                "π/4 |d² − dg²|",
                Math.PI / 4 * Math.abs(side * side - c.groove() * c.groove()),
                Kind.AREA,
                DIN);
        double groove = w.line("groove", "area × yield/1.2", area * c.yield() / SHARE, Kind.FORCE, DIN);
        double shoulder = w.line(
                "shoulder",
                "π dg n × yield/√3",
                Math.PI * c.groove() * c.shoulder() * c.yield() / Math.sqrt(3),
                Kind.FORCE,
                "common practice, no source");
        Double ring = c.ringLoad();
        double least = Math.min(Math.min(groove, shoulder), ring == null ? Double.POSITIVE_INFINITY : ring);
        w.line("least", "of groove, shoulder and ring", least, Kind.FORCE);
        Double thrust = c.thrust();
        Double reserve =
                thrust == null ? null : thrust == 0 ? Double.POSITIVE_INFINITY : Double.valueOf(least / thrust);
        if (c.shoulder() < SHOULDER * depth) {
            w.caution("The shoulder is shorter than three depths: it bends besides, and carries less than shown.");
        }
        if (ring == null) {
            w.caution(
                    "The ring's own load is not given: take it from its table, less where the part against it has a chamfer.");
        }
        w.caution(
                "At the groove's load its edge just begins to yield: no reserve is in it; knocks count more than thrust.");
        w.caution(
                "A spread, bent or used thin ring is replaced; a groove with a rolled edge is measured where it still is sharp.");
        w.caution("A ring on the pliers flies: eye protection, and a hand over it.");
        return w.worked(new Result(depth, groove, shoulder, least, reserve));
    }
}
