package shimwright.mechanics.tooth;

import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code mesh-frequencies}: the whine of a pair and how often the same two teeth meet. */
public final class MeshFrequencies {
    private static final String COUNT = "counting of teeth";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "mesh-frequencies",
                    "Gear mesh frequencies",
                    "How often a pair of gears meshes, turns and brings the same two teeth together.",
                    List.of(COUNT, "names: gear vibration practice, common practice, no source"),
                    Case.class,
                    Result.class,
                    MeshFrequencies::work)
            .drawn(ToothPictures::meshFrequencies);

    private MeshFrequencies() {}

    /** A pair of gears; rotation in rad/s. */
    public record Case(
            @Input(meaning = "teeth of the driving gear", min = 1, max = 1000, example = "23")
            int driving,

            @Input(meaning = "teeth of the driven gear", min = 1, max = 1000, example = "67")
            int driven,

            @Input(
                    kind = Kind.ROTATION,
                    meaning = "speed of the driving gear",
                    min = 0.01,
                    max = 10000,
                    example = "1800 rpm")
            double speed) {}

    /** Frequencies in hertz, rotation in rad/s. */
    public record Result(
            @Output(kind = Kind.FREQUENCY, meaning = "mesh", decimals = 2)
            double mesh,

            @Output(kind = Kind.FREQUENCY, meaning = "one tooth of the driving gear, once a turn", decimals = 3)
            double drivingTurn,

            @Output(kind = Kind.FREQUENCY, meaning = "one tooth of the driven gear, once a turn", decimals = 3)
            double drivenTurn,

            @Output(kind = Kind.ROTATION, meaning = "speed of the driven gear", decimals = 1)
            double drivenSpeed,

            @Output(meaning = "largest common factor of the teeth: ways to put them together that wear alike")
            int commonFactor,

            @Output(meaning = "every tooth meets every other")
            boolean hunting,

            @Output(kind = Kind.FREQUENCY, meaning = "the same two teeth together", decimals = 4)
            double sameTeeth,

            @Output(meaning = "turns of the driving gear until then")
            int turns,

            @Output(kind = Kind.FREQUENCY, meaning = "the same group of teeth together", decimals = 3)
            double group) {}

    /**
     * mesh = z1 f1; the same two teeth mesh g/(z1 z2), g the largest common factor; a group of every g-th tooth mesh/g.
     *
     * @param c teeth and speed in rad/s
     * @return frequencies in Hz, speed in rad/s; nothing is refused beyond the ranges
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        double turn = w.line("f1", "speed of the driving gear", c.speed() / (2 * Math.PI), Kind.FREQUENCY);
        double mesh = w.line("mesh", "z1 × f1", c.driving() * turn, Kind.FREQUENCY, COUNT);
        double other = w.line("f2", "mesh/z2", mesh / c.driven(), Kind.FREQUENCY, COUNT);
        int factor = ToothingPair.commonFactor(c.driving(), c.driven());
        w.line("g", "largest common factor of z1 and z2", factor, Kind.NUMBER, "Euclid, Elements VII.2");
        double same = w.line(
                "same two teeth",
                "mesh × g/(z1 z2)",
                mesh * factor / ((double) c.driving() * c.driven()),
                Kind.FREQUENCY,
                COUNT);
        double group = w.line("same group", "mesh/g", mesh / factor, Kind.FREQUENCY, COUNT);
        w.caution("Noise at the mesh frequency with side bands one turn apart points at the shaft whose turn it is.");
        if (factor > 1) {
            w.caution(
                    "Teeth that share a factor wear in as partners: mark them before they come apart and mesh them again as "
                            + "they were.");
        }
        w.caution("Listen from outside; no hand, sleeve or cable near what turns.");
        return Outcome.ok(w.worked(new Result(
                mesh, turn, other, other * 2 * Math.PI, factor, factor == 1, same, c.driven() / factor, group)));
    }
}
