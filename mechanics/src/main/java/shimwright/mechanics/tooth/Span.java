package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code span}: size over several teeth with flat anvils, to tooth thickness and back. */
public final class Span {
    private static final String SOURCE = "ISO 21771-1:2022, span measurement";
    private static final int FEWEST = 5;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "span",
            "Size over teeth",
            "Size over several teeth of a shaft or gear from its tooth thickness, and the thickness from the size.",
            List.of(SOURCE, "DIN 5480-2, the same geometry for splines"),
            Case.class,
            Result.class,
            Span::work);

    private Span() {}

    /** Lengths in metres, angles in radians; exactly one of thickness, shift and reading. */
    public record Case(
            @Input(
                    meaning = "number of teeth; below 0 means an internal gear, which is refused",
                    min = -1000,
                    max = 1000,
                    example = "24")
            int teeth,

            @Input(meaning = "external or internal teeth; internal ones are refused", orElse = "external")
            Side side,

            @Input(kind = Kind.LENGTH, meaning = "normal module", min = 5e-5, max = 0.1, example = "2 mm") @Nullable
            Double module,

            @Input(meaning = "diametral pitch, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "normal pressure angle",
                    min = Toothing.LEAST_ANGLE,
                    max = Toothing.MOST_ANGLE,
                    example = "30°")
            double pressureAngle,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "helix angle at the reference circle",
                    orElse = "0°",
                    min = 0,
                    max = Toothing.MOST_HELIX)
            double helix,

            @Input(meaning = "teeth between the anvils; 0 lets the sheet choose", orElse = "0", min = 0, max = 500)
            int across,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "normal tooth thickness at the reference circle",
                    min = 1e-6,
                    max = 0.5)
            @Nullable
            Double thickness,

            @Input(meaning = "profile shift coefficient", min = -5, max = 5, example = "-0.05") @Nullable
            Double shift,

            @Input(kind = Kind.LENGTH, meaning = "size read over the teeth", min = 1e-5, max = 5) @Nullable
            Double span,

            @Input(kind = Kind.LENGTH, meaning = "tip diameter as it is", min = 1e-5, max = 5) @Nullable
            Double tipDiameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "diameter at which the involute flank ends toward the root",
                    min = 1e-5,
                    max = 5)
            @Nullable
            Double formDiameter,

            @Input(kind = Kind.LENGTH, meaning = "width of the teeth", min = 1e-5, max = 2) @Nullable
            Double faceWidth) {}

    /** Lengths in metres. */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "size over the teeth", decimals = 4)
            double span,

            @Output(meaning = "teeth between the anvils") int across,

            @Output(kind = Kind.LENGTH, meaning = "normal tooth thickness at the reference circle", decimals = 4)
            double thickness,

            @Output(meaning = "profile shift coefficient") double shift,

            @Output(kind = Kind.LENGTH, meaning = "diameter where the anvils touch")
            double contactDiameter,

            @Output(meaning = "change of size per change of tooth thickness")
            double perThickness,

            @Output(kind = Kind.LENGTH, meaning = "least tooth width the reading needs")
            double leastWidth) {}

    /**
     * Size over teeth from thickness or shift, or thickness from the size read; external teeth only.
     *
     * @param c the case; with a reading the number of teeth between the anvils is needed
     * @return refused for an internal gear, where the anvils would miss the flanks or the teeth are too narrow. Source: ISO 21771-1:2022
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        countFault(c.teeth(), c.side()).ifPresent(faults::add);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        ExactlyOne.one(faults, List.of("span", "thickness", "shift"), c.span(), c.thickness(), c.shift());
        if (c.span() != null && c.across() == 0) {
            faults.add(Refusal.of("across", "not given", "A reading needs the number of teeth between the anvils"));
        }
        Optional<Toothing> read = Toothing.read(
                c.teeth(), c.module(), c.diametralPitch(), c.pressureAngle(), c.helix(), Plane.NORMAL, faults);
        if (read.isPresent() && (c.across() == 1 || c.across() > most(read.get()))) {
            faults.add(Refusal.of(
                    "across",
                    c.across() + " teeth cannot be spanned on " + c.teeth(),
                    "Take from 2 to " + most(read.get())));
        }
        if (read.isEmpty() || !faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Toothing t = read.get();
        Double reading = c.span();
        if (reading != null) {
            return fromReading(c, t, reading);
        }
        Double shift = c.shift();
        Double given = c.thickness();
        double arc = given != null ? given : t.arc(shift == null ? 0 : shift);
        return arcFault(t, arc, given != null ? "thickness" : "shift")
                .map(bad -> Outcome.<Worked<Result>>refused(List.of(bad)))
                .orElseGet(() -> {
                    Working w = new Working();
                    t.show(w);
                    int across = c.across() > 0 ? c.across() : chosen(t, arc);
                    return finish(c, t, w, across, arc);
                });
    }

    private static Optional<Refusal> countFault(int teeth, Side side) {
        if (side == Side.INTERNAL || teeth < 0) {
            return Optional.of(Refusal.of(
                    side == Side.INTERNAL ? "side" : "teeth",
                    "an internal gear has hollow flanks, which two flat anvils cannot touch at one span",
                    "Measure it between pins, with between-pins"));
        }
        return teeth < FEWEST
                ? Optional.of(Refusal.of("teeth", teeth + " teeth", "Give " + FEWEST + " or more"))
                : Optional.empty();
    }

    private static Outcome<Worked<Result>> fromReading(Case c, Toothing t, double reading) {
        Working w = new Working();
        t.show(w);
        double arc = reading / Math.cos(t.normalAngle()) - (c.across() - 1) * t.normalPitch() - atBase(t);
        Optional<Refusal> bad = arcFault(t, arc, "span");
        if (bad.isPresent()) {
            return Outcome.refused(List.of(bad.get()));
        }
        w.line(
                "tooth thickness",
                "size/cos(pressure angle) − (teeth between − 1) × π × module − teeth × module × inv(at)",
                arc,
                Kind.LENGTH,
                SOURCE);
        return finish(c, t, w, c.across(), arc);
    }

    private static Optional<Refusal> arcFault(Toothing t, double arc, String place) {
        if (arc > 0 && arc < t.normalPitch()) {
            return Optional.empty();
        }
        return Optional.of(Refusal.of(
                place,
                "means a tooth of " + PinMeasurement.mm(arc) + " in a pitch of " + PinMeasurement.mm(t.normalPitch()),
                "Look at the tooth count, the size and the teeth between the anvils"));
    }

    private static Outcome<Worked<Result>> finish(Case c, Toothing t, Working w, int across, double arc) {
        double span = w.line(
                "size over " + across + " teeth",
                "cos(pressure angle) × ((teeth between − 1) × π × module + thickness + teeth × module × inv(at))",
                size(t, across, arc),
                Kind.LENGTH,
                SOURCE);
        double contact = w.line(
                "diameter where the anvils touch",
                "√(db² + (size × cos(bb))²)",
                contact(t, span),
                Kind.LENGTH,
                "involute geometry");
        double width = span * Math.sin(t.baseHelix());
        List<Refusal> faults = new ArrayList<>();
        Double tip = c.tipDiameter();
        String hint = "Span " + chosen(t, arc) + " teeth";
        if (tip != null && contact > tip) {
            faults.add(Refusal.of(
                    "across", "the anvils would touch beyond the tip, at " + PinMeasurement.mm(contact), hint));
        }
        Double form = c.formDiameter();
        if (form != null && contact < form) {
            faults.add(Refusal.of(
                    "across", "the anvils would touch below the flank, at " + PinMeasurement.mm(contact), hint));
        }
        Double face = c.faceWidth();
        if (face != null && face < width) {
            faults.add(Refusal.of(
                    "faceWidth",
                    "the teeth are narrower than the " + PinMeasurement.mm(width) + " this reading needs",
                    "Measure over balls instead"));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        if (face == null && !t.straight()) {
            w.caution("The teeth must be at least " + PinMeasurement.mm(width) + " wide for both anvils to touch.");
        }
        double per = Math.cos(t.normalAngle());
        return Outcome.ok(w.worked(new Result(span, across, arc, t.shift(arc), contact, per, width)));
    }

    /** Size over teeth, metres. */
    static double size(Toothing t, int across, double arc) {
        return Math.cos(t.normalAngle()) * ((across - 1) * t.normalPitch() + arc + atBase(t));
    }

    private static double atBase(Toothing t) {
        return t.teeth() * t.normalModule() * Involute.of(t.transverseAngle());
    }

    private static double contact(Toothing t, double span) {
        return Math.hypot(t.base(), span * Math.cos(t.baseHelix()));
    }

    private static int most(Toothing t) {
        return Math.max(2, t.teeth() / 2);
    }

    /** The count whose anvils touch nearest to the middle of the tooth, d + 2·shift·module. */
    static int chosen(Toothing t, double arc) {
        double middle = t.reference() + 2 * t.shift(arc) * t.normalModule();
        int best = 2;
        for (int k = 2; k <= most(t); k++) {
            double away = Math.abs(contact(t, size(t, k, arc)) - middle);
            if (away < Math.abs(contact(t, size(t, best, arc)) - middle)) {
                best = k;
            }
        }
        return best;
    }
}
