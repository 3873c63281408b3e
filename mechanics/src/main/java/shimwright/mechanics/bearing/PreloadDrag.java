package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code preload-drag}: preload, drag torque and the pull of a string, either way round. */
public final class PreloadDrag {
    private static final String FRICTION = "bearing makers' rule M = μ P d/2 with their range of μ, read";
    private static final String RIB = "bearing makers' rule M = e μ cos β Fa for rollers that slide on their rib, read";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "preload-drag",
            "Preload and drag",
            "The drag torque and string pull that an axial preload gives, or the preload that a pull read stands for.",
            List.of(FRICTION, RIB, "pull × radius: army manuals for final drives, pinion bearing preload"),
            Case.class,
            Result.class,
            PreloadDrag::work);

    private PreloadDrag() {}

    /** Kind of bearing, with the printed range of its coefficient of friction on the bore's radius. */
    public enum Bearing {
        TAPER(0.0017, 0.0025),
        ANGULAR_CONTACT(0.0012, 0.0020),
        DEEP_GROOVE(0.0010, 0.0015),
        THRUST_BALL(0.0010, 0.0015);

        private final double low;
        private final double high;

        Bearing(double low, double high) {
            this.low = low;
            this.high = high;
        }
    }

    /** How it is turned when pulled. */
    public enum Turning {
        /** Slowly, by string or wrench: a taper slides on its rib. */
        BY_HAND,
        /** Running: rolling friction alone. */
        RUNNING
    }

    /** One bearing of the pair; lengths in metres. */
    public record One(
            @Input(meaning = "kind of bearing", example = "taper")
            Bearing bearing,

            @Input(kind = Kind.LENGTH, meaning = "bore of the bearing", min = 0.003, max = 0.5, example = "35 mm")
            double bore,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "taper: height above the raceway at which its rollers touch the rib, 0 not known",
                    orElse = "0 mm",
                    min = 0,
                    max = 0.01)
            double ribHeight) {
        private boolean slides(Turning turned) {
            return bearing == Bearing.TAPER && turned == Turning.BY_HAND;
        }
    }

    /** Rollers that slide on the rib of their ring when it hardly turns; angle in radians. */
    public record Rib(
            @Input(meaning = "how it is turned", orElse = "by hand")
            Turning turned,

            @Input(meaning = "friction on the rib, oiled, at the start", orElse = "0.20", min = 0.02, max = 0.5)
            double ribFriction,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "half angle of the rollers' own taper",
                    orElse = "2°",
                    min = 0,
                    max = 0.2)
            double rollerAngle) {}

    /** The pair, the seals and what is known of preload and pull; force in newtons, lengths in metres, torque in N·m. */
    public record Case(
            @Input(
                    meaning = "bearings that share the preload: kind: bore: rib height of a taper",
                    most = 4,
                    example = "taper: 35 mm: 1.5 mm; taper: 30 mm: 1.3 mm")
            List<One> bearings,

            @Group Rib rib,

            @Input(kind = Kind.FORCE, meaning = "axial preload", min = 1, max = 1e6, example = "2000 N") @Nullable
            Double preload,

            @Input(kind = Kind.FORCE, meaning = "pull read on the string, steady", min = 0.01, max = 5000) @Nullable
            Double pull,

            @Input(kind = Kind.TORQUE, meaning = "torque read instead of a pull", min = 1e-4, max = 200) @Nullable
            Double torque,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "radius at which the string leaves, half its thickness included",
                    min = 0.003,
                    max = 1,
                    example = "40 mm")
            @Nullable
            Double radius,

            @Input(
                    kind = Kind.TORQUE,
                    meaning = "drag of lip seals, as read before the preload was there",
                    orElse = "0 N·m",
                    min = 0,
                    max = 50)
            double sealDrag) {}

    /** Forces in newtons, torques in N·m; a pair of figures is the lowest and the highest that the friction leaves open. */
    public record Result(
            @Output(kind = Kind.TORQUE, meaning = "drag of the bearings, least", decimals = 3)
            double dragLow,

            @Output(kind = Kind.TORQUE, meaning = "drag of the bearings, most", decimals = 3)
            double dragHigh,

            @Output(kind = Kind.TORQUE, meaning = "torque to turn it, seals and all, least", decimals = 3)
            double torqueLow,

            @Output(kind = Kind.TORQUE, meaning = "torque to turn it, seals and all, most", decimals = 3)
            double torqueHigh,

            @Output(kind = Kind.FORCE, meaning = "pull on the string, least", decimals = 1) @Nullable
            Double pullLow,

            @Output(kind = Kind.FORCE, meaning = "pull on the string, most", decimals = 1) @Nullable
            Double pullHigh,

            @Output(kind = Kind.FORCE, meaning = "preload, least") @Nullable
            Double preloadLow,

            @Output(kind = Kind.FORCE, meaning = "preload, most") @Nullable
            Double preloadHigh) {}

    /**
     * Drag = Σ lever × preload: μ d/2 with the lowest and highest μ of the kind, or e μr cos β for a taper turned by hand; torque =
     * drag + seals = pull × radius; a torque read is solved for the preload, where every lever is known.
     *
     * @param c forces in N, lengths in m, torques in N·m
     * @return forces in N, torques in N·m; refused: not exactly one of preload, pull and torque; a pull without a radius; a
     *     torque no larger than the seals' share; a rib for bearings that have none; the drag of a taper turned by hand
     *     whose rib is not known. Source: bearing makers' catalogues
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        long known = Stream.of(c.preload(), c.pull(), c.torque())
                .filter(Objects::nonNull)
                .count();
        if (known != 1) {
            refusals.add(Refusal.of(
                    "preload",
                    known == 0
                            ? "neither preload, pull nor torque is given"
                            : "more than one of preload, pull and torque given",
                    "Give exactly one of them; the others are worked out"));
        }
        if (c.pull() != null && c.radius() == null) {
            refusals.add(Refusal.of(
                    "radius",
                    "a pull says nothing without it",
                    "Measure the drum and add half the string's thickness"));
        }
        for (int i = 0; i < c.bearings().size(); i++) {
            One one = c.bearings().get(i);
            if (one.bearing() != Bearing.TAPER && one.ribHeight() > 0) {
                refusals.add(Refusal.of(
                        "bearings[" + i + "].ribHeight",
                        "only a taper slides on a rib",
                        "Leave it out for this bearing"));
            }
            if (c.preload() != null && one.slides(c.rib().turned()) && one.ribHeight() == 0) {
                refusals.add(Refusal.of(
                        "bearings[" + i + "].ribHeight",
                        "a taper turned by hand slides on its rib, and the height there is not known",
                        "Read the witness mark on a roller's large end, often 1 to 2 mm above the raceway; or take "
                                + "the drag from the book"));
            }
        }
        Double read = read(c);
        if (read != null && read <= c.sealDrag()) {
            refusals.add(Refusal.of(
                    "sealDrag",
                    "the seals' " + Quantities.brief(c.sealDrag(), Units.NM) + " leave nothing of the "
                            + Quantities.brief(read, Units.NM) + " read",
                    "There is no preload, or one of the two was read otherwise; read both at the same slow speed"));
        }
        return refusals.isEmpty() ? Outcome.ok(turned(c, read)) : Outcome.refused(refusals);
    }

    private static @Nullable Double read(Case c) {
        Double pull = c.pull();
        Double radius = c.radius();
        if (pull == null || radius == null) {
            return c.torque();
        }
        return pull * radius;
    }

    private static Worked<Result> turned(Case c, @Nullable Double read) {
        Working w = new Working();
        cautions(c, w);
        Double preload = c.preload();
        if (preload != null) {
            double[] levers = levers(c, w);
            double low = w.line("drag, least", "preload × lever", preload * levers[0], Kind.TORQUE);
            double high = w.line("drag, most", "preload × lever", preload * levers[1], Kind.TORQUE);
            return pulled(c, low, high, new Double[] {preload, preload}, w);
        }
        double torque = read == null ? Double.NaN : read;
        if (c.pull() != null) {
            w.line("torque", "pull × radius", torque, Kind.TORQUE);
        }
        double drag = w.line("drag of the bearings", "torque − seals", torque - c.sealDrag(), Kind.TORQUE);
        if (c.bearings().stream().anyMatch(one -> one.slides(c.rib().turned()) && one.ribHeight() == 0)) {
            w.caution(
                    "A taper turned by hand slides on its rib: without the height there this drag stands for no preload.");
            return pulled(c, drag, drag, new Double[2], w);
        }
        double[] levers = levers(c, w);
        double least = w.line("preload, least", "drag/lever, most", drag / levers[1], Kind.FORCE);
        double most = w.line("preload, most", "drag/lever, least", drag / levers[0], Kind.FORCE);
        return pulled(c, drag, drag, new Double[] {least, most}, w);
    }

    private static Worked<Result> pulled(Case c, double low, double high, @Nullable Double[] preloads, Working w) {
        double torqueLow = w.line("torque, least", "drag + seals", low + c.sealDrag(), Kind.TORQUE);
        double torqueHigh = w.line("torque, most", "drag + seals", high + c.sealDrag(), Kind.TORQUE);
        Double radius = c.radius();
        Double pullLow = radius == null ? null : w.line("pull, least", "torque/radius", torqueLow / radius, Kind.FORCE);
        Double pullHigh =
                radius == null ? null : w.line("pull, most", "torque/radius", torqueHigh / radius, Kind.FORCE);
        return w.worked(new Result(low, high, torqueLow, torqueHigh, pullLow, pullHigh, preloads[0], preloads[1]));
    }

    /** Torque per force of all bearings, least and most, in metres. */
    private static double[] levers(Case c, Working w) {
        double low = 0;
        double high = 0;
        for (One one : c.bearings()) {
            double rib =
                    one.ribHeight() * c.rib().ribFriction() * Math.cos(c.rib().rollerAngle());
            boolean slides = one.slides(c.rib().turned());
            low += slides ? rib : one.bearing().low * one.bore() / 2;
            high += slides ? rib : one.bearing().high * one.bore() / 2;
        }
        boolean sliding =
                c.bearings().stream().anyMatch(one -> one.slides(c.rib().turned()));
        String how = sliding ? "Σ e μ cos β of tapers, Σ μ d/2 of others" : "Σ μ d/2";
        String source = sliding ? RIB : FRICTION;
        return new double[] {
            w.line("lever, least", how, low, Kind.LENGTH, source), w.line("lever, most", how, high, Kind.LENGTH, source)
        };
    }

    private static void cautions(Case c, Working w) {
        w.caution(
                "The book's drag for this very unit stands above any figure here; note whether it means new or used bearings, "
                        + "with or without seals, starting or turning.");
        w.caution(
                "Oil the bearings, turn ten times to seat the rollers, wind several turns of string, pull square and steadily, "
                        + "and read while it turns, not at the first jerk.");
        if (c.sealDrag() == 0) {
            w.caution(
                    "With seals in, read their drag first and give it; it is often as large as that of the bearings.");
        }
        if (c.rib().turned() == Turning.BY_HAND && c.bearings().stream().anyMatch(one -> one.ribHeight() > 0)) {
            w.caution(
                    "The friction of a rib is between 0.1 and 0.3 with oil, age and wear: the preload is no better known.");
        }
        w.caution("A collapsed spacer does not come back: when the drag is over its limit a new one is needed.");
    }
}
