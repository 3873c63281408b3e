package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code bush-fit}: how far a pressed-in bush closes, and the play that is left to its shaft. */
public final class PressedInBush {
    private static final String LAME = "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11; Shigley 9th ed., 3-16";

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "bush-fit",
            "Pressed-in bush",
            "How far a bush closes as it is pressed in, the play left to its shaft, and what is to be reamed.",
            List.of(LAME),
            Case.class,
            Result.class,
            PressedInBush::work);

    private PressedInBush() {}

    /** Lengths in metres; readings at 20 °C. */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "housing bore, all readings",
                    min = 1e-3,
                    max = 0.5,
                    most = 100,
                    example = "22.000, 22.006 mm")
            List<Double> housing,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outside of the bush, all readings",
                    min = 1e-3,
                    max = 0.5,
                    most = 100,
                    example = "22.040, 22.044 mm")
            List<Double> outside,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "bore of the free bush, all readings",
                    min = 5e-4,
                    max = 0.5,
                    most = 100,
                    example = "18.050, 18.056 mm")
            List<Double> bore,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "outside of the boss around the housing bore",
                    min = 1e-3,
                    max = 2,
                    example = "40 mm")
            double boss,

            @Input(meaning = "housing, what it is made of", example = "aluminum a380")
            PartMaterial housingMaterial,

            @Input(meaning = "bush, what it is made of", example = "bronze")
            PartMaterial bushMaterial,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "shaft in it, all readings",
                    fewest = 0,
                    min = 5e-4,
                    max = 0.5,
                    most = 100,
                    example = "17.982, 17.986 mm")
            List<Double> shaft,

            @Input(kind = Kind.LENGTH, meaning = "least play wanted", min = 0, max = 0.002, example = "0.020 mm")
            @Nullable
            Double leastPlay) {}

    /** Lengths in metres, diametral; pressure in Pa. */
    public record Result(
            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference, tightest")
            double tightest,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "interference, loosest")
            double loosest,

            @Output(kind = Kind.PRESSURE, decimals = 2, meaning = "pressure of the tightest")
            double pressure,

            @Output(decimals = 3, meaning = "share of the interference by which the bore closes")
            double share,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "bore pressed in, smallest")
            double smallestBore,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "bore pressed in, largest")
            double largestBore,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "least play of the shaft") @Nullable
            Double leastPlay,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "most play of the shaft") @Nullable
            Double mostPlay,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "ream to at least") @Nullable
            Double reamTo) {}

    /**
     * Pressure = interference/(opening of the housing + shrinking of the bush, per pascal); the bore closes by pressure times
     * its own closing per pascal.
     *
     * @param c lengths in m, at 20 °C
     * @return lengths in m, pressure in Pa; refused: a bush loose in its housing at its loosest, a bush or boss without a wall, more
     *     than 1 % of the diameter
     */
    static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> refusals = new ArrayList<>();
        double tightest = Collections.max(c.outside()) - Collections.min(c.housing());
        double loosest = Collections.min(c.outside()) - Collections.max(c.housing());
        if (Collections.max(c.bore()) >= Collections.min(c.outside())) {
            refusals.add(Refusal.of("bore", "the bush has no wall", "Measure both again"));
        }
        if (c.boss() <= Collections.max(c.housing())) {
            refusals.add(Refusal.of("boss", "the housing has no wall", "Measure the outside of the boss"));
        }
        if (loosest <= 0) {
            refusals.add(Refusal.of(
                    "outside",
                    "the bush is loose in its housing",
                    "Another bush, or a lock that holds it by other means"));
        } else if (tightest > 0.01 * Collections.min(c.housing())) {
            refusals.add(Refusal.of(
                    "outside",
                    "an interference of " + Interference.mm(tightest) + " is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        return refusals.isEmpty() ? Outcome.ok(pressed(c, tightest, loosest)) : Outcome.refused(refusals);
    }

    private static Worked<Result> pressed(Case c, double tightest, double loosest) {
        Working w = new Working();
        double joint = Collections.min(c.housing());
        Cylinder bush =
                new Cylinder(Collections.max(c.bore()), joint, c.bushMaterial().data());
        Cylinder housing = new Cylinder(joint, c.boss(), c.housingMaterial().data());
        double give = housing.boreOpens() + bush.outsideShrinks();
        w.line("tightest", "largest bush − smallest housing", tightest, Kind.LENGTH);
        double pressure = w.line("p", "interference/(both give per Pa)", tightest / give, Kind.PRESSURE, LAME);
        double share =
                w.line("share", "closing of the bore per interference", bush.boreCloses() / give, Kind.NUMBER, LAME);
        double smallest = w.line(
                "smallest bore",
                "smallest − share × tightest",
                Collections.min(c.bore()) - share * tightest,
                Kind.LENGTH);
        double largest = w.line(
                "largest bore", "largest − share × loosest", Collections.max(c.bore()) - share * loosest, Kind.LENGTH);
        boolean shaft = !c.shaft().isEmpty();
        Double least = shaft
                ? w.line(
                        "least play",
                        "smallest bore − largest shaft",
                        smallest - Collections.max(c.shaft()),
                        Kind.LENGTH)
                : null;
        Double most = shaft ? largest - Collections.min(c.shaft()) : null;
        Double wanted = c.leastPlay();
        Double ream = shaft && wanted != null
                ? w.line("ream to", "largest shaft + least play", Collections.max(c.shaft()) + wanted, Kind.LENGTH)
                : null;
        if (least != null && wanted != null && least < wanted) {
            w.caution("It closes on the shaft: ream or bore it in place, or take a bush with more bore.");
        }
        w.caution("Measure the bore again once it is in: a thin or split bush closes by more than an even ring.");
        w.caution(
                "Press with a shouldered mandrel square and oiled; line the oil hole up first, it cannot be turned after.");
        w.caution("In light alloy it loses grip as it warms: see housing-grip.");
        return w.worked(new Result(tightest, loosest, pressure, share, smallest, largest, least, most, ream));
    }
}
