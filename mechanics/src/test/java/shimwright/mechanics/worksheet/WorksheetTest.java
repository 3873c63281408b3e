package shimwright.mechanics.worksheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

class WorksheetTest {
    enum Pull {
        LEFT_HAND,
        RIGHT
    }

    record Ring(
            @Input(meaning = "name", example = "a") String id,

            @Input(kind = Kind.LENGTH, meaning = "thickness", min = 0, max = 0.1, example = "1 mm")
            double thickness) {}

    record Lever(
            @Input(kind = Kind.LENGTH, meaning = "arm", min = 0, max = 2, example = "0.5 m", unit = "m")
            double arm,

            @Input(kind = Kind.ANGLE, meaning = "slant", orElse = "0°", min = -1, max = 1)
            double slant) {}

    /** Stands on the sheet as if it were written there: no key and no table names it. */
    record Turning(
            @Input(meaning = "how often", orElse = "1", min = 1, max = 9)
            int times,

            @Input(meaning = "dry threads", orElse = "no") boolean dry,
            @Input(meaning = "which way", orElse = "right") Pull way) {}

    record Case(
            @Input(kind = Kind.FORCE, meaning = "pull on the scale", min = 0, max = 1e4, example = "100 N")
            double pull,

            @Input(meaning = "the lever") Lever lever,

            @Group Turning turning,

            @Input(kind = Kind.TORQUE, meaning = "limit") @Nullable
            Double limit,

            @Input(kind = Kind.LENGTH, meaning = "places", fewest = 0)
            List<Double> places,

            @Input(kind = Kind.LENGTH, meaning = "rounds", fewest = 0)
            List<List<Double>> rounds,

            @Input(meaning = "rings", fewest = 0) List<Ring> rings) {}

    record Lengths(
            @Output(kind = Kind.LENGTH, meaning = "pack") double pack,
            @Output(kind = Kind.LENGTH, meaning = "places") List<Double> places) {}

    record Result(
            @Output(kind = Kind.TORQUE, meaning = "torque at the nut")
            double torque,

            @Output(meaning = "over the limit") boolean over,
            @Group Lengths lengths,

            @Output(meaning = "freedom", infinite = "no limit")
            double nu) {}

    static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        double torque = w.line(
                "torque",
                "pull × arm × cos(slant)",
                c.pull() * c.lever().arm() * Math.cos(c.lever().slant()),
                Kind.TORQUE,
                "statics");
        w.caution("Pull square to the lever.");
        double pack = c.rings().stream().mapToDouble(Ring::thickness).sum();
        Double limit = c.limit();
        boolean over = limit != null && torque > limit;
        return Outcome.ok(w.worked(new Result(torque, over, new Lengths(pack, c.places()), Double.POSITIVE_INFINITY)));
    }

    static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "lever",
            "Lever",
            "Torque from a pull on a lever.",
            List.of("statics"),
            Case.class,
            Result.class,
            WorksheetTest::work);

    private static List<String> sentences(Map<String, ?> given) {
        return SHEET.answer(given, UnitSystem.METRIC).refusals().stream()
                .map(Refusal::sentence)
                .toList();
    }

    private static Object result(Map<String, Object> json, String name) {
        Map<?, ?> result = (Map<?, ?>) requireNonNull(json.get("result"));
        return requireNonNull(result.get(name));
    }

    private static Budget budget(Answer answer, String path) {
        return requireNonNull(answer.budgets().get(path));
    }

    @Test
    void textBecomesACaseWithDefaultsUnitsAndLists() {
        Case c = SHEET.read(
                        Map.of(
                                "pull", "20 lb",
                                "lever.arm", "0.3",
                                "way", "left-hand",
                                "places", "0.355 0.360 0.365 mm",
                                "rounds", "0.24/0.32 0.25/0.31 0.24/0.31",
                                "rings", "a: 1 mm; b: 40 thou"),
                        UnitSystem.METRIC)
                .orElseThrow()
                .value();
        assertThat(c.pull()).isCloseTo(88.96, within(0.01));
        assertThat(c.lever()).isEqualTo(new Lever(0.3, 0));
        assertThat(c.turning().way()).isEqualTo(Pull.LEFT_HAND);
        assertThat(c.limit()).isNull();
        assertThat(c.places()).containsExactly(0.000355, 0.00036, 0.000365);
        assertThat(c.rounds())
                .containsExactly(List.of(0.00024, 0.00032), List.of(0.00025, 0.00031), List.of(0.00024, 0.00031));
        assertThat(c.rings().get(1).thickness()).isCloseTo(0.001016, within(1e-12));
    }

    @Test
    void jsonShapesAndDashedKeysReadTheSame() {
        Case c = SHEET.read(
                        Map.of(
                                "pull", Map.of("value", 100, "unit", "N", "u", 2),
                                "lever", Map.of("arm", 0.5),
                                "rounds", List.of(List.of(0.24, "0.32"), List.of("0.1 in")),
                                "rings", List.of(Map.of("id", "x", "thickness", 1.5), List.of("y", "2 mm"))),
                        UnitSystem.METRIC)
                .orElseThrow()
                .value();
        assertThat(c.rounds()).containsExactly(List.of(0.00024, 0.00032), List.of(0.00254));
        assertThat(c.rings()).containsExactly(new Ring("x", 0.0015), new Ring("y", 0.002));
        assertThat(SHEET.read(Map.of("pull", "1", "lever", "0.5 m: 10°", "PULL-", "2"), UnitSystem.METRIC)
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly("given twice");
    }

    @Test
    void allFaultsComeBackAtOnceWithPlaceAndHint() {
        assertThat(sentences(Map.of("pul", "3", "times", "2.5", "dry", "maybe", "way", "up", "rings", "a; b: 5 N")))
                .containsExactlyInAnyOrder(
                        "pul: there is no such input. Did you mean pull?",
                        "pull on the scale: not given. Type it, such as pull=100 N.",
                        "the lever, arm: not given. Type it, such as lever.arm=0.5 m.",
                        "how often: \"2.5\" is not a whole number. Type a count such as 3.",
                        "dry threads: \"maybe\" is neither yes nor no. Type yes or no.",
                        "which way: \"up\" is none of the choices. Choose one of: left hand, right.",
                        "rings entry 1, thickness: not given. Type it, such as 1 mm.",
                        "rings entry 2, thickness: \"5 N\" is a force; a length is needed here.");
        assertThat(sentences(Map.of("pull", "-1", "lever", Map.of("arm", List.of(1)), "lever.slant", "0")))
                .containsExactlyInAnyOrder(
                        "pull on the scale: \"-1\" is below 0 N. The smallest value taken here is that.",
                        "the lever, arm: one number is needed here.");
    }

    @Test
    void theAnswerIsResultWorkingAndCautionsInWordsAndAsData() {
        Answer answer = SHEET.answer(SHEET.example(), UnitSystem.METRIC).orElseThrow();
        assertThat(answer.text())
                .contains("torque at the nut: 50.00 N·m", "torque = pull × arm × cos(slant) = 50.000 N·m   [statics]")
                .contains("Pull square to the lever.");
        Map<String, Object> json = answer.json();
        assertThat(json.keySet()).containsExactly("worksheet", "result", "working", "cautions");
        assertThat(result(json, "torque")).isEqualTo(Map.of("value", 50.0, "unit", "N·m", "text", "50.00 N·m"));
        assertThat(result(json, "nu").toString()).contains("value=null", "text=no limit");
        assertThat(SHEET.answer(SHEET.example(), UnitSystem.INCH).orElseThrow().text())
                .contains("36.9 lbf·ft");
    }

    @Test
    void anyInputMayCarryUncertaintyAndTheSheetReturnsABudget() {
        Answer answer = SHEET.answer(
                        Map.of("pull", "100 ± 3 N", "lever.arm", "0.5 ± 0.02 m", "limit", "51 N·m"), UnitSystem.METRIC)
                .orElseThrow();
        // product rule: relative uncertainties 3 % and 4 % give 5 % (JCGM 100:2008 5.1.6)
        Budget budget = budget(answer, "torque");
        assertThat(budget.u()).isCloseTo(2.5, within(1e-9));
        assertThat(budget.contributions()).extracting("name").containsExactly("lever.arm", "pull");
        assertThat(budget.contributions().get(0).share()).isCloseTo(0.64, within(1e-9));
        assertThat(answer.text()).contains("torque at the nut: 50.0 ± 2.5 N·m", "64 % of the uncertainty");
        assertThat(answer.cautions())
                .contains("Within the uncertainty of pull, over the limit may be \"yes\" instead of \"no\".");
        Answer list = SHEET.answer(
                        Map.of("pull", "1", "lever.arm", "1", "rings", "a: 1 ± 0.003; b: 2 ± 0.004"), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(budget(list, "pack").u()).isCloseTo(5e-6, within(1e-12));
    }

    @Test
    void aUncertaintyThatLeavesTheRangeIsTakenOneSided() {
        Answer answer = SHEET.answer(Map.of("pull", "0 ± 3 N", "lever.arm", "0.5 m"), UnitSystem.METRIC)
                .orElseThrow();
        assertThat(budget(answer, "torque").u()).isCloseTo(1.5, within(1e-9));
        assertThat(sentences(Map.of("pull", "5000 ± 6000 N", "lever.arm", "0.5 m")))
                .containsExactly(
                        "pull on the scale: the uncertainty behind ± reaches beyond what can be computed. Give a smaller "
                                + "uncertainty, or the value alone.");
    }

    @Test
    void helpNamesInputsUnitsDefaultsExampleAndSources() {
        assertThat(Help.text(SHEET, UnitSystem.METRIC))
                .contains("pull  pull on the scale [N, 0 N to 10000 N; needed]")
                .contains("lever.slant  slant [°, -57.2958° to 57.2958°; else 0°]")
                .contains("limit  limit [N·m; may be left out]")
                .contains("way  which way [one of: left hand, right; else right]")
                .contains("each entry: id: thickness")
                .contains("lever pull=\"100 N\" lever.arm=\"0.5 m\"")
                .contains("Sources\n  statics");
        assertThat(Help.text(SHEET, UnitSystem.INCH)).contains("pull on the scale [lbf");
    }

    record Bare(@Input(meaning = "x", example = "1") double x, double y) {}

    record Huge(@Output(meaning = "y") double y) {}

    @Test
    void misuseIsABugAndAnInfiniteResultIsRefused() {
        assertThatThrownBy(() -> new Worksheet<>(
                        "bare",
                        "Bare",
                        "Bare.",
                        List.of("none"),
                        Bare.class,
                        Result.class,
                        c -> Outcome.refused(Refusal.at("", "x", ""))))
                .hasMessageContaining("Bare.y has no @Input");
        Worksheet<Ring, Huge> sheet = new Worksheet<>(
                "huge",
                "Huge",
                "Huge.",
                List.of("none"),
                Ring.class,
                Huge.class,
                c -> Outcome.ok(new Working().worked(new Huge(1 / c.thickness()))));
        assertThat(sheet.answer(Map.of("id", "a", "thickness", "0"), UnitSystem.METRIC)
                        .refusals())
                .extracting(Refusal::fact)
                .containsExactly("these inputs give no finite result");
    }
}
