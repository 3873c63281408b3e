package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code shaft-bend}: how far and how steeply a shaft on two bearings bends under several loads. */
public final class ShaftBend {
    private static final String BEAM =
            "bending of a beam, M/(E I) integrated twice; Shigley 9th ed., 4-3 and Table A-9";
    private static final String LIMITS = "Shigley 9th ed., Table 7-2: slopes at bearings and gears";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "shaft-bend",
                    "Bending of a shaft",
                    "Deflection and slope of a stepped shaft on two bearings at its gears and bearings.",
                    List.of(BEAM, LIMITS),
                    Case.class,
                    Result.class,
                    ShaftBend::work)
            .drawn(ShaftPictures::bend);

    private ShaftBend() {}

    /** A stretch of the shaft with one diameter; lengths in metres. */
    public record Stretch(
            @Input(kind = Kind.LENGTH, meaning = "ends at", min = 0.001, max = 3, example = "300 mm")
            double end,

            @Input(kind = Kind.LENGTH, meaning = "diameter", min = 0.001, max = 0.5, example = "30 mm")
            double diameter,

            @Input(kind = Kind.LENGTH, meaning = "bore", orElse = "0 mm", min = 0, max = 0.49)
            double bore) {}

    /** A force across the shaft; lengths in metres, force in newtons, angle in radians. */
    public record Load(
            @Input(meaning = "what it is", example = "gear") String name,

            @Input(kind = Kind.LENGTH, meaning = "where", min = 0, max = 3, example = "100 mm")
            double at,

            @Input(kind = Kind.FORCE, meaning = "force", min = -1e7, max = 1e7, example = "2000 N")
            double force,

            @Input(kind = Kind.ANGLE, meaning = "direction round the shaft", orElse = "0°", min = -7, max = 7)
            double direction) {}

    /** Lengths from the left end in metres; modulus in pascal. */
    public record Case(
            @Input(meaning = "stretches from the left: ends at: diameter: bore", most = 40, example = "300 mm: 30 mm")
            List<Stretch> stretches,

            @Input(kind = Kind.LENGTH, meaning = "left bearing", min = 0, max = 3, example = "20 mm")
            double bearingA,

            @Input(kind = Kind.LENGTH, meaning = "right bearing", min = 0, max = 3, example = "280 mm")
            double bearingB,

            @Input(meaning = "loads: name: where: force: direction", most = 40, example = "gear: 100 mm: 2000 N: 0°")
            List<Load> loads,

            @Input(
                    kind = Kind.PRESSURE,
                    meaning = "modulus of elasticity",
                    orElse = "207 GPa",
                    min = 1e9,
                    max = 1e12,
                    unit = "GPa")
            double modulus) {}

    /** One place of the shaft; lengths in metres, angles in radians. */
    public record Place(
            @Output(meaning = "where") String name,

            @Output(kind = Kind.LENGTH, meaning = "bent by", decimals = 4)
            double deflection,

            @Output(kind = Kind.ANGLE, meaning = "slope", unit = "mrad", decimals = 4)
            double slope) {}

    /** Lengths in metres, angles in radians, forces in newtons. */
    public record Result(
            @Output(meaning = "left bearing") Place left,
            @Output(meaning = "right bearing") Place right,
            @Output(meaning = "at each load") List<Place> places,

            @Output(kind = Kind.LENGTH, meaning = "furthest bent, anywhere", decimals = 4)
            double furthest,

            @Output(kind = Kind.FORCE, meaning = "left bearing carries", decimals = 1)
            double loadA,

            @Output(kind = Kind.FORCE, meaning = "right bearing carries", decimals = 1)
            double loadB) {}

    /**
     * Slope and deflection from M/(E I), exact between loads, bearings and steps; two planes put together by squares.
     *
     * @param c lengths in m, forces in N, modulus in Pa
     * @return lengths in m, angles in rad; refused: stretches that do not follow one another, a bore that leaves no wall,
     *     bearings in one place or not from left to right, loads or bearings beyond the shaft. Shear and a soft bearing
     *     are left out
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double end = 0;
        for (int i = 0; i < c.stretches().size(); i++) {
            Stretch s = c.stretches().get(i);
            if (s.end() <= end) {
                refusals.add(Refusal.of(
                        "stretches[" + i + "].end", "ends before it begins", "Count all ends from the left"));
            }
            if (s.bore() >= s.diameter() * 0.99) {
                refusals.add(Refusal.of("stretches[" + i + "].bore", "leaves no wall", "Look at bore and diameter"));
            }
            end = Math.max(end, s.end());
        }
        if (c.bearingB() - c.bearingA() < 0.001) {
            refusals.add(Refusal.of(
                    "bearingB", "the bearings stand in one place or the wrong way round", "The left one comes first"));
        }
        if (c.bearingB() > end + 1e-9) {
            refusals.add(Refusal.of("bearingB", "stands beyond the shaft", "Give the stretches as far as there"));
        }
        for (int i = 0; i < c.loads().size(); i++) {
            if (c.loads().get(i).at() > end + 1e-9) {
                refusals.add(Refusal.of(
                        "loads[" + i + "].at", "stands beyond the shaft", "Give the stretches as far as there"));
            }
        }
        return refusals.isEmpty() ? Outcome.ok(bent(c)) : Outcome.refused(refusals);
    }

    private static Worked<Result> bent(Case c) {
        Working w = new Working();
        BentShaft one = BentShaft.of(c, 0);
        BentShaft two = BentShaft.of(c, Math.PI / 2);
        double a = w.line(
                "left bearing",
                "moments about the right one",
                Math.hypot(one.left(), two.left()),
                Kind.FORCE,
                "statics");
        double b =
                w.line("right bearing", "sum of forces", Math.hypot(one.right(), two.right()), Kind.FORCE, "statics");
        Place left = place(w, "left bearing", one, two, c.bearingA());
        Place right = place(w, "right bearing", one, two, c.bearingB());
        List<Place> places = new ArrayList<>();
        for (Load load : c.loads()) {
            places.add(place(w, load.name(), one, two, load.at()));
        }
        double furthest = 0;
        for (double x : one.fine()) {
            furthest = Math.max(furthest, Math.hypot(one.deflection(x), two.deflection(x)));
        }
        w.line("furthest", "largest of many places along the shaft", furthest, Kind.LENGTH, BEAM);
        double steepest = Math.max(left.slope(), right.slope());
        if (steepest > 0.0008) {
            w.caution(
                    "The shaft leans more than 0.8 mrad in a bearing: taper and cylindrical rollers then load their edges.");
        }
        if (places.stream().anyMatch(place -> place.slope() > 0.0005)) {
            w.caution("A gear that leans more than 0.5 mrad carries on one end of its teeth.");
        }
        w.caution("Shear, soft housings and play in the bearings are left out: the real shaft bends further.");
        w.caution("Splines and keyways weaken a stretch: give it its root diameter.");
        return w.worked(new Result(left, right, places, furthest, a, b));
    }

    private static Place place(Working w, String name, BentShaft one, BentShaft two, double at) {
        double deflection = Math.hypot(one.deflection(at), two.deflection(at));
        double slope = Math.hypot(one.slope(at), two.slope(at));
        w.line(name + ": bent by", "∬ M/(E I)", deflection, Kind.LENGTH, BEAM);
        w.line(name + ": slope", "∫ M/(E I)", slope, Kind.ANGLE, BEAM);
        return new Place(name, deflection, slope);
    }

    /** The bent line in the plane of the first load's direction, for the picture. */
    static BentShaft plane(Case c) {
        return BentShaft.of(c, c.loads().get(0).direction());
    }
}
