package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.fit.HeatToFit.Result.Choice;
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

/** The worksheet {@code heat-to-fit}. */
public final class HeatToFit {
    /** Below this retained austenite in hardened parts changes (from memory), −60 °C. */
    private static final double DEEPEST_FOR_HARDENED = 213.15;

    /** Usual clearance per diameter, DIN 7190 practice, from memory. */
    private static final double SAFE_SHARE = 0.001;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "heat-to-fit",
                    "Heat to fit",
                    "How hot the outer and how cold the inner part must be so that they go together with a clearance.",
                    List.of(
                            "linear expansion: Boresi and Schmidt, Advanced Mechanics of Materials, Example 11.3",
                            "DIN 7190: clearance 0.001 d, coefficients on cooling, ceilings; from memory",
                            "bearing heating guideline for bearings"),
                    Case.class,
                    Result.class,
                    HeatToFit::work)
            .drawn(FitPictures::heat);

    private HeatToFit() {}

    /**
     * Case of {@code heat-to-fit}; lengths in metres, temperatures in kelvin.
     *
     * @param diameter joint diameter
     * @param interference the tightest of the measured pair at 20 °C
     * @param clearance wanted while the parts go together
     * @param outer the part that is heated, what it is made of
     * @param inner the part that goes in, what it is made of
     * @param heated everything that gets hot; the lowest ceiling counts
     * @param ownCeiling a lower ceiling that is known, such as 20 to 30 K under the part's own temper; null when none is
     * @param room temperature of the shop
     * @param cold the strongest cold at hand
     * @param innerHardened whether the inner part is hardened, so that deep cold would change it
     * @param innerTemperature temperature of the inner part as measured when fitted; null lets the plan choose
     */
    public record Case(
            @Input(kind = Kind.LENGTH, meaning = "joint diameter", min = 1e-3, max = 2, example = "30 mm")
            double diameter,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "interference, the tightest of the pair",
                    min = 1e-7,
                    max = 0.02,
                    example = "0.020 mm")
            double interference,

            @Input(
                    kind = Kind.LENGTH,
                    meaning =
                            "clearance wanted while fitting: 0.001 of the diameter, for a small bearing by hand 0.01 mm",
                    min = 0,
                    max = 0.02,
                    example = "0.010 mm")
            double clearance,

            @Input(meaning = "outer part, what it is made of")
            PartMaterial outer,

            @Input(meaning = "inner part, what it is made of")
            PartMaterial inner,

            @Input(meaning = "everything that gets hot", most = 12, example = "open bearing")
            List<HeatedPart> heated,

            @Input(kind = Kind.TEMPERATURE, meaning = "own lower ceiling", min = 293.15, max = 673.15) @Nullable
            Double ownCeiling,

            @Input(kind = Kind.TEMPERATURE, meaning = "shop temperature", min = 253.15, max = 323.15, orElse = "20 °C")
            double room,

            @Input(meaning = "strongest cold at hand", orElse = "none")
            Chilling cold,

            @Input(meaning = "inner part is hardened", example = "yes")
            boolean innerHardened,

            @Input(
                    kind = Kind.TEMPERATURE,
                    meaning = "temperature of the inner part when fitted, else the plan chooses",
                    min = 73.15,
                    max = 373.15)
            @Nullable
            Double innerTemperature) {}

    /**
     * Result of {@code heat-to-fit}; lengths in metres, diametral; temperatures in kelvin.
     *
     * @param outerTemperature to heat the outer part to
     * @param outerRise above the shop
     * @param innerTemperature of the inner part
     * @param cold how the inner part gets there
     * @param ceiling lowest ceiling of all that gets hot
     * @param room left under the ceiling, K
     * @param clearance counted on while fitting
     * @param boreGrowth growth of the outer bore at {@code outerTemperature}
     * @param innerShrink shrink of the inner part at {@code innerTemperature}; negative when it is warmer than the shop
     * @param growthAtCeiling growth of the outer bore at the ceiling
     * @param choices every cold that was looked at
     */
    public record Result(
            @Output(kind = Kind.TEMPERATURE, meaning = "heat the outer part to")
            double outerTemperature,

            @Output(kind = Kind.TEMPERATURE_DIFFERENCE, meaning = "above the shop by")
            double outerRise,

            @Output(kind = Kind.TEMPERATURE, meaning = "inner part at")
            double innerTemperature,

            @Output(meaning = "inner part chilled by") Chilling cold,

            @Output(kind = Kind.TEMPERATURE, meaning = "ceiling")
            double ceiling,

            @Output(kind = Kind.TEMPERATURE_DIFFERENCE, meaning = "left under the ceiling")
            double room,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "clearance counted on")
            double clearance,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "growth of the bore")
            double boreGrowth,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "shrink of the inner part")
            double innerShrink,

            @Output(kind = Kind.LENGTH, decimals = 4, meaning = "growth of the bore at the ceiling")
            double growthAtCeiling,

            @Output(meaning = "choices") List<Choice> choices) {
        public Result {
            choices = List.copyOf(choices);
        }

        /**
         * One way to do it.
         *
         * @param cold how the inner part is chilled
         * @param innerTemperature what it reaches, K
         * @param outerNeeded what the outer part then needs, K
         * @param possible whether that stays under the ceiling, and the cold suits the inner part
         */
        public record Choice(
                @Output(meaning = "cold") Chilling cold,

                @Output(kind = Kind.TEMPERATURE, meaning = "inner part at")
                double innerTemperature,

                @Output(kind = Kind.TEMPERATURE, meaning = "outer part needs")
                double outerNeeded,

                @Output(meaning = "possible") boolean possible) {}
    }

    /**
     * The mildest possible plan: no cold before cold, a freezer before dry ice, and so on.
     *
     * <p>Refused: an interference above 1 % of the diameter; no way that keeps under the lowest ceiling and spares a
     * hardened inner part, with what each way would need.
     */
    static Outcome<Worked<Result>> work(Case c) {
        if (c.interference() > 0.01 * c.diameter()) {
            return Outcome.refused(Refusal.of(
                    "interference",
                    Interference.mm(c.interference()) + " is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        Working w = new Working();
        double ceiling = ceiling(c, w);
        List<Choice> choices = choices(c, ceiling);
        Optional<Choice> best = choices.stream().filter(Choice::possible).findFirst();
        if (best.isEmpty()) {
            return Outcome.refused(Refusal.of("interference", whyNot(c, ceiling, choices), hint(c)));
        }
        return Outcome.ok(plan(c, w, ceiling, choices, best.get()));
    }

    private static double ceiling(Case c, Working w) {
        HeatedPart lowest = c.heated().stream()
                .min(Comparator.comparingDouble(HeatedPart::ceiling))
                .orElseThrow();
        double table = w.line("lowest ceiling", words(lowest), lowest.ceiling(), Kind.TEMPERATURE, lowest.source());
        Double own = c.ownCeiling();
        return own == null
                ? table
                : w.line("ceiling", "lower of that and the own one", Math.min(table, own), Kind.TEMPERATURE);
    }

    private static List<Choice> choices(Case c, double ceiling) {
        List<Choice> choices = new ArrayList<>();
        Double measured = c.innerTemperature();
        if (measured != null) {
            choices.add(choice(c, Chilling.NONE, measured, ceiling));
            return choices;
        }
        Arrays.stream(Chilling.values())
                .filter(cold -> cold.compareTo(c.cold()) <= 0)
                .forEach(cold -> choices.add(choice(c, cold, cold.reached(c.room()), ceiling)));
        return choices;
    }

    private static Choice choice(Case c, Chilling cold, double inner, double ceiling) {
        double needed = c.room()
                + (c.interference() + c.clearance() - shrink(c, inner))
                        / (c.outer().data().expansion() * c.diameter());
        double outer = Math.max(c.room(), needed);
        boolean spared = !c.innerHardened() || inner >= DEEPEST_FOR_HARDENED;
        return new Choice(cold, inner, outer, outer <= ceiling && spared);
    }

    /** Shrink of the inner part from the shop to a temperature, m; with the smaller coefficient when it is chilled. */
    private static double shrink(Case c, double inner) {
        Material.Data data = c.inner().data();
        double alpha = inner < c.room() ? data.coldExpansion() : data.expansion();
        return alpha * c.diameter() * (c.room() - inner);
    }

    private static Worked<Result> plan(Case c, Working w, double ceiling, List<Choice> choices, Choice best) {
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
        return w.worked(new Result(
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

    private static void cautions(Case c, Working w, Choice best, double ceiling) {
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
        if (best.cold() == Chilling.DRY_ICE || best.cold() == Chilling.LIQUID_NITROGEN) {
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

    private static String whyNot(Case c, double ceiling, List<Choice> choices) {
        String ways = choices.stream()
                .map(choice -> "inner part "
                        + (c.innerTemperature() == null ? choice.cold().words() : "as it is") + " ("
                        + celsius(choice.innerTemperature()) + "): outer needs " + celsius(choice.outerNeeded())
                        + (choice.outerNeeded() <= ceiling ? ", but so much cold would change a hardened part" : ""))
                .collect(Collectors.joining("; "));
        return "no possible heat gives " + Interference.mm(c.clearance()) + " clearance under the ceiling of "
                + celsius(ceiling) + ": " + ways;
    }

    private static String hint(Case c) {
        boolean more = c.innerTemperature() == null && c.cold() != Chilling.LIQUID_NITROGEN && !c.innerHardened();
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
