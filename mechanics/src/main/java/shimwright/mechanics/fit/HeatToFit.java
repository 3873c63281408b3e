package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.mechanics.fit.HeatPlan.Choice;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code heat-to-fit}. */
final class HeatToFit {
    static final Worksheet<HeatPlanCase, HeatPlan> SHEET = new Worksheet<>(
                    "heat-to-fit",
                    "Heat to fit",
                    "How hot the outer and how cold the inner part must be so that they go together with a clearance.",
                    List.of(
                            "linear expansion: Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.3",
                            "DIN 7190: clearance 0.001 d, coefficients on cooling, ceilings; from memory",
                            "bearing heating guideline for bearings"),
                    HeatPlanCase.class,
                    HeatPlan.class,
                    HeatToFit::work)
            .drawn(FitPictures::heat);

    /** Below this retained austenite in hardened parts changes (from memory), −60 °C. */
    private static final double DEEPEST_FOR_HARDENED = 213.15;

    /** Usual clearance per diameter, DIN 7190 practice, from memory. */
    private static final double SAFE_SHARE = 0.001;

    private HeatToFit() {}

    /**
     * The mildest lawful plan: no cold before cold, a freezer before dry ice, and so on.
     *
     * <p>Refused: an interference above 1 % of the diameter; no way that keeps under the lowest ceiling and spares a
     * hardened inner part, with what each way would need.
     */
    static Outcome<Worked<HeatPlan>> work(HeatPlanCase c) {
        if (c.interference() > 0.01 * c.diameter()) {
            return Outcome.refused(
                    "interference",
                    Interference.mm(c.interference()) + " is more than 1 % of the diameter",
                    "Look for a misread digit");
        }
        Working w = new Working();
        double ceiling = ceiling(c, w);
        List<Choice> choices = choices(c, ceiling);
        Optional<Choice> best = choices.stream().filter(Choice::lawful).findFirst();
        if (best.isEmpty()) {
            return Outcome.refused("interference", whyNot(c, ceiling, choices), hint(c));
        }
        return Outcome.ok(plan(c, w, ceiling, choices, best.get()));
    }

    private static double ceiling(HeatPlanCase c, Working w) {
        HeatedPart lowest = c.heated().stream()
                .min(Comparator.comparingDouble(HeatedPart::ceiling))
                .orElseThrow();
        double table = w.line("lowest ceiling", words(lowest), lowest.ceiling(), Kind.TEMPERATURE, lowest.source());
        Double own = c.ownCeiling();
        return own == null
                ? table
                : w.line("ceiling", "lower of that and the own one", Math.min(table, own), Kind.TEMPERATURE);
    }

    private static List<Choice> choices(HeatPlanCase c, double ceiling) {
        List<Choice> choices = new ArrayList<>();
        Double measured = c.innerTemperature();
        if (measured != null) {
            choices.add(choice(c, Cold.NONE, measured, ceiling));
            return choices;
        }
        Arrays.stream(Cold.values())
                .filter(cold -> cold.compareTo(c.cold()) <= 0)
                .forEach(cold -> choices.add(choice(c, cold, cold.reached(c.room()), ceiling)));
        return choices;
    }

    private static Choice choice(HeatPlanCase c, Cold cold, double inner, double ceiling) {
        double needed = c.room()
                + (c.interference() + c.clearance() - shrink(c, inner))
                        / (c.outer().data().expansion() * c.diameter());
        double outer = Math.max(c.room(), needed);
        boolean spared = !c.innerHardened() || inner >= DEEPEST_FOR_HARDENED;
        return new Choice(cold, inner, outer, outer <= ceiling && spared);
    }

    /** Shrink of the inner part from the shop to a temperature, m; with the smaller coefficient when it is chilled. */
    private static double shrink(HeatPlanCase c, double inner) {
        Material.Data data = c.inner().data();
        double alpha = inner < c.room() ? data.coldExpansion() : data.expansion();
        return alpha * c.diameter() * (c.room() - inner);
    }

    private static Worked<HeatPlan> plan(HeatPlanCase c, Working w, double ceiling, List<Choice> choices, Choice best) {
        double shrink = w.line(
                "shrink of the inner part",
                "α d (shop − inner temperature)",
                shrink(c, best.innerTemperature()),
                Kind.LENGTH,
                "smaller α on cooling: DIN 7190, from memory");
        double outer = w.line(
                "outer part needs",
                "shop + (interference + clearance − shrink)/(α d), not below the shop",
                best.outerNeeded(),
                Kind.TEMPERATURE);
        double alpha = c.outer().data().expansion();
        double growth = w.line(
                "growth of the bore", "α d (outer − shop)", alpha * c.diameter() * (outer - c.room()), Kind.LENGTH);
        double atCeiling = w.line(
                "growth at the ceiling",
                "α d (ceiling − shop)",
                alpha * c.diameter() * (ceiling - c.room()),
                Kind.LENGTH);
        cautions(c, w, best, ceiling);
        return w.worked(new HeatPlan(
                outer,
                outer - c.room(),
                best.innerTemperature(),
                best.cold(),
                ceiling,
                ceiling - outer,
                growth + shrink - c.interference(),
                growth,
                shrink,
                atCeiling,
                choices));
    }

    private static void cautions(HeatPlanCase c, Working w, Choice best, double ceiling) {
        w.caution("Oven, hot plate or induction, never a flame: it softens and warps. Gloves; check the temperature of "
                + "the part itself, bore and rim alike.");
        w.caution(
                "One movement to the shoulder, no second try. Hold it there until it is cold, then check with a feeler.");
        if (c.clearance() < SAFE_SHARE * c.diameter()) {
            w.caution("Less clearance than 0.001 of the diameter: it goes on only if it is quick and square.");
        }
        if (ceiling - best.outerNeeded() < 10) {
            w.caution("Less than 10 K is left under the ceiling: the thermometer must be good to that.");
        }
        if (best.innerTemperature() < 273.15) {
            w.caution("Chill the part dry, wipe off frost, oil it at once against rust. Cold burns: gloves.");
        }
        if (best.cold() == Cold.DRY_ICE || best.cold() == Cold.LIQUID_NITROGEN) {
            w.caution(
                    "Carbon dioxide and nitrogen drive out the air you breathe: doors open, never in a pit or a car.");
        }
        if (c.heated().stream().anyMatch(part -> part.name().endsWith("BEARING") || part == HeatedPart.BARE_RING)) {
            w.caution("After induction, demagnetize. Do not keep a bearing hot longer than it takes.");
        }
        if (c.heated().contains(HeatedPart.CASE_HARDENED)) {
            w.caution("If the tempering temperature of this part is known, stay 20 to 30 K under it.");
        }
    }

    private static String whyNot(HeatPlanCase c, double ceiling, List<Choice> choices) {
        String ways = choices.stream()
                .map(choice -> "inner part "
                        + (c.innerTemperature() == null ? choice.cold().words() : "as it is") + " ("
                        + celsius(choice.innerTemperature()) + "): outer needs " + celsius(choice.outerNeeded())
                        + (choice.outerNeeded() <= ceiling ? ", but so much cold would change a hardened part" : ""))
                .collect(Collectors.joining("; "));
        return "no lawful heat gives " + Interference.mm(c.clearance()) + " clearance under the ceiling of "
                + celsius(ceiling) + ": " + ways;
    }

    private static String hint(HeatPlanCase c) {
        boolean more = c.innerTemperature() == null && c.cold() != Cold.LIQUID_NITROGEN && !c.innerHardened();
        return (more ? "Chill it further, " : "") + (more ? "choose" : "Choose")
                + " a less tight pair, accept less clearance, or press it (see interference)";
    }

    private static String celsius(double kelvin) {
        return Quantities.print(kelvin, Units.CELSIUS, 0);
    }

    private static String words(HeatedPart part) {
        return part.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
