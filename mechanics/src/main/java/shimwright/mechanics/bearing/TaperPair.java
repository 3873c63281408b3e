package shimwright.mechanics.bearing;

import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code taper-pair}: equivalent loads of two opposed taper bearings. */
public final class TaperPair {
    private static final String SOURCE = "taper bearing practice, induced thrust 0.47 Fr/K, from memory";
    private static final double INDUCED = 0.47;
    private static final double RADIAL_SHARE = 0.4;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "taper-pair",
            "Taper bearing pair",
            "Equivalent loads of two opposed taper bearings, with the thrust each makes by itself.",
            List.of(SOURCE),
            Case.class,
            Result.class,
            TaperPair::work);

    private TaperPair() {}

    /** Forces in newtons. */
    public record Case(
            @Input(kind = Kind.FORCE, meaning = "radial load of bearing A", min = 0, max = 1e7, example = "2170 N")
            double radialA,

            @Input(kind = Kind.FORCE, meaning = "radial load of bearing B", min = 0, max = 1e7, example = "2654 N")
            double radialB,

            @Input(
                    kind = Kind.FORCE,
                    meaning = "outer thrust, + where it pushes bearing A into its cup",
                    min = -1e7,
                    max = 1e7,
                    example = "1690 N")
            double thrust,

            @Input(meaning = "factor K of bearing A", min = 0.3, max = 5, example = "1.5")
            double factorA,

            @Input(meaning = "factor K of bearing B", min = 0.3, max = 5, example = "1.5")
            double factorB) {}

    /** Forces in newtons. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "thrust that bearing A makes by its own radial load", decimals = 1)
            double inducedA,

            @Output(kind = Kind.FORCE, meaning = "thrust that bearing B makes by its own radial load", decimals = 1)
            double inducedB,

            @Output(kind = Kind.FORCE, meaning = "equivalent load of bearing A", decimals = 1)
            double equivalentA,

            @Output(kind = Kind.FORCE, meaning = "equivalent load of bearing B", decimals = 1)
            double equivalentB,

            @Output(meaning = "bearing A takes the outer thrust")
            boolean takenByA) {}

    /**
     * Equivalent loads with end play near zero.
     *
     * @param c the case; K = 0.389 × cot(cup half angle) from the bearing's table
     * @return equivalent loads, none less than its radial load; preload is not counted. Source: taper bearing
     *     practice, from memory
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        double a = w.line(
                "induced thrust A", "0.47 × radial / K", INDUCED * c.radialA() / c.factorA(), Kind.FORCE, SOURCE);
        double b = w.line(
                "induced thrust B", "0.47 × radial / K", INDUCED * c.radialB() / c.factorB(), Kind.FORCE, SOURCE);
        boolean onA = a <= b + c.thrust();
        double loadA = onA ? RADIAL_SHARE * c.radialA() + c.factorA() * (b + c.thrust()) : c.radialA();
        double loadB = onA ? c.radialB() : RADIAL_SHARE * c.radialB() + c.factorB() * (a - c.thrust());
        double equivalentA = w.line(
                "equivalent load A",
                onA ? "0.4 × radial + K × (induced B + outer), not under radial" : "radial alone",
                Math.max(c.radialA(), loadA),
                Kind.FORCE,
                SOURCE);
        double equivalentB = w.line(
                "equivalent load B",
                onA ? "radial alone" : "0.4 × radial + K × (induced A − outer), not under radial",
                Math.max(c.radialB(), loadB),
                Kind.FORCE,
                SOURCE);
        w.caution("For bearings set near zero play: a preload adds to both, play leaves one unloaded.");
        return Outcome.ok(w.worked(new Result(a, b, equivalentA, equivalentB, onA)));
    }
}
