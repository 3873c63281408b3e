package shimwright.mechanics.registry;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.distribution.continuous.TDistribution;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.axial.shim.Drawer;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.axial.stack.DepthStack;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.decision.ConformitySheet;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.seal.LeakProofs;
import shimwright.mechanics.worksheet.Answer;

/** What a ± typed at a sheet does to its answer; values by the distributions of a general-purpose library. */
class TypedUncertaintyTest {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    /** Φ(1) − Φ(−2) = 0.8186. */
    private static final double ONE_UP_TWO_DOWN = NORMAL.cumulativeProbability(1) - NORMAL.cumulativeProbability(-2);

    private static Answer ask(String sheet, String... pairs) {
        return Registry.find(sheet)
                .orElseThrow()
                .answer(given(Map.of(), pairs), UnitSystem.METRIC)
                .orElseThrow();
    }

    private static Map<String, String> given(Map<String, String> base, String... pairs) {
        Map<String, String> given = new LinkedHashMap<>(base);
        for (int i = 0; i < pairs.length; i += 2) {
            given.put(pairs[i], pairs[i + 1]);
        }
        return given;
    }

    private static Answer example(String sheet, String... changes) {
        var found = Registry.find(sheet).orElseThrow();
        return found.answer(given(found.example(), changes), UnitSystem.METRIC).orElseThrow();
    }

    private static Answer pack(String measured, String... more) {
        String[] pairs = {
            "measured", measured,
            "trialThickness", "1.000 mm",
            "uTrial", "0 mm",
            "effect", "-1",
            "lower", "0.02 mm",
            "upper", "0.08 mm",
            "drawer", "one: 1.030 mm: 0 mm"
        };
        Map<String, String> given = given(given(Map.of(), pairs), more);
        return Registry.find("shim-pack")
                .orElseThrow()
                .answer(given, UnitSystem.METRIC)
                .orElseThrow();
    }

    @Test
    void aPackIsJudgedByTheUncertaintyTypedOnTheClearance() {
        PackOffer offer =
                ((ShimPack.Result) pack("0.0900 ± 0.02 mm").result()).offers().get(0);
        assertThat(offer.predicted()).isCloseTo(0.06e-3, within(1e-12));
        assertThat(offer.u()).isCloseTo(0.02e-3, within(1e-12));
        assertThat(offer.probability()).isCloseTo(ONE_UP_TWO_DOWN, within(1e-9));
        assertThat(offer.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        Answer both = pack("0.0900 ± 0.012 mm", "uMeasured", "0.016 mm");
        assertThat(((ShimPack.Result) both.result()).offers().get(0).probability())
                .isCloseTo(ONE_UP_TWO_DOWN, within(1e-9));
        assertThat(both.cautions()).anyMatch(caution -> caution.contains("put together by squares"));
        PackOffer few = ((ShimPack.Result) pack("0.0900 ± 0.02 mm n=4").result())
                .offers()
                .get(0);
        TDistribution t = new TDistribution(3);
        assertThat(few.nu()).isCloseTo(3, within(1e-9));
        assertThat(few.probability()).isCloseTo(t.cumulativeProbability(1) - t.cumulativeProbability(-2), within(1e-6));
    }

    @Test
    void theUncertaintyOfATrialPieceAndOfAPieceOfTheDrawerCounts() {
        Answer answer =
                pack("0.0900 ± 0.012 mm", "trialThickness", "1.000 ± 0.012 mm", "drawer", "one: 1.030 ± 0.010583 mm");
        assertThat(((ShimPack.Result) answer.result()).offers().get(0).probability())
                .isCloseTo(ONE_UP_TWO_DOWN, within(1e-4));
        Answer shared = pack("0.09 ± 0.02 mm");
        assertThat(shared.text()).contains("0.060 ± 0.020 mm");
        assertThat(Registry.find("shim-pack")
                        .orElseThrow()
                        .answer(
                                given(
                                        Registry.find("shim-pack").orElseThrow().example(),
                                        "measured",
                                        "0.09 ± 0.02 mm shared=DM"),
                                UnitSystem.METRIC)
                        .refusals()
                        .get(0)
                        .sentence())
                .contains("counts as independent");
    }

    @Test
    void aDrawerIsJudgedByTheUncertaintyTypedOnTheClearance() {
        for (String needs :
                List.of("play: 0.09 ± 0.02 mm: : 0.02: 0.08: 0.05", "play: 0.09 mm: 0.02: 0.02: 0.08: 0.05")) {
            Answer answer = ask(
                    "drawer",
                    "needs",
                    needs,
                    "places",
                    "s: F: 1.000 mm: 1: 1",
                    "effects",
                    "play: s: -1",
                    "pieces",
                    "one: F: 1.030 mm: 0 mm");
            assertThat(((Drawer.Result) answer.result()).offers().get(0).probability())
                    .as(needs)
                    .isCloseTo(ONE_UP_TWO_DOWN, within(1e-9));
        }
        Answer pieces = ask(
                "drawer",
                "needs",
                "play: 0.09 mm: 0.012: 0.02: 0.08: 0.05",
                "places",
                "s: F: 1.000 ± 0.012 mm: 1: 1",
                "effects",
                "play: s: -1",
                "pieces",
                "one: F: 1.030 ± 0.01 mm");
        double u = Math.sqrt(2 * 0.012 * 0.012 + 0.01 * 0.01);
        assertThat(((Drawer.Result) pieces.result()).offers().get(0).probability())
                .isCloseTo(
                        NORMAL.cumulativeProbability(0.02 / u) - NORMAL.cumulativeProbability(-0.04 / u), within(1e-9));
    }

    /** Entries of lists carry what comes from the inputs; forces of teeth are proportional to the torque (statics). */
    @Test
    void anEntryOfAListCarriesItsUncertainty() {
        Answer forces = example("mesh-forces", "inputTorque", "200 ± 4 N·m");
        assertThat(forces.budgets().keySet()).anyMatch(path -> path.startsWith("gears["));
        Map<?, ?> result = (Map<?, ?>) requireNonNull(forces.json().get("result"));
        Map<?, ?> first = (Map<?, ?>) ((List<?>) requireNonNull(result.get("gears"))).get(0);
        Map<?, ?> axial = (Map<?, ?>) requireNonNull(first.get("tangential"));
        double value = (Double) requireNonNull(axial.get("value"));
        assertThat((Double) requireNonNull(axial.get("u"))).isCloseTo(0.02 * value, within(1e-6 * value));
        assertThat(forces.text()).contains("±");
    }

    /** One uncertainty: the length's own and the gauge's (JCGM 100:2008 5.2.2), shown and summed alike. */
    @Test
    void aDepthStackHasOneUncertainty() {
        Answer answer = ask("depth-stack", "terms", "depth: 25.01 ± 0.03 mm: 1; part: 17.083 mm: -1: 0.04 mm");
        DepthStack.Result stack = (DepthStack.Result) answer.result();
        assertThat(stack.u()).isCloseTo(0.05e-3, within(1e-12));
        assertThat(stack.budget().u()).isCloseTo(0.05e-3, within(1e-12));
        assertThat(answer.text()).contains("7.927 ± 0.050 mm");
        Map<?, ?> gap = (Map<?, ?>)
                requireNonNull(((Map<?, ?>) requireNonNull(answer.json().get("result"))).get("gap"));
        assertThat((Double) requireNonNull(gap.get("u"))).isCloseTo(stack.u(), within(1e-12));
    }

    /** The verdict rests on the uncertainty that is shown; dQ/dp1 = V·Tref/(t·T1·pref) (ideal gas). */
    @Test
    void aLeakIsJudgedByTheWholeOfItsUncertainty() {
        LeakProofs.Result sure = (LeakProofs.Result) example("leak-test").result();
        Answer doubted = example("leak-test", "startPressure", "20 ± 0.5 kPa");
        LeakProofs.Result unsure = (LeakProofs.Result) doubted.result();
        double fromPressure = 3e-3 / 300 * 500 / 101_325.0;
        assertThat(unsure.leakUncertainty())
                .isCloseTo(Math.hypot(sure.leakUncertainty(), fromPressure), within(1e-3 * fromPressure));
        assertThat(unsure.verdict()).isEqualTo(Verdict.NOT_PROVEN);
        Map<?, ?> leak = (Map<?, ?>)
                requireNonNull(((Map<?, ?>) requireNonNull(doubted.json().get("result"))).get("leak"));
        assertThat((Double) requireNonNull(leak.get("u"))).isCloseTo(unsure.leakUncertainty(), within(1e-15));
    }

    /** With 3 degrees of freedom one-sided 95 % needs t = 2.353 uncertainties of room, not 1.645 (GUM table G.2, one-sided). */
    @Test
    void whatWouldSettleCountsTheDegreesOfFreedom() {
        Answer answer = ask("conformity", "value", "0.06 mm", "u", "0.02 mm", "nu", "3", "lower", "0.05 mm");
        double t = new TDistribution(3).inverseCumulativeProbability(0.95);
        assertThat(requireNonNull(((ConformitySheet.Result) answer.result()).largestUncertainty()))
                .isCloseTo(0.01e-3 / t, within(1e-11));
        Answer typed = ask("conformity", "value", "0.06 ± 0.02 mm n=4", "lower", "0.05 mm");
        assertThat(((ConformitySheet.Result) typed.result()).probability())
                .isCloseTo(((ConformitySheet.Result) answer.result()).probability(), within(1e-12));
    }

    @Test
    void effectiveDegreesOfFreedomAreShown() {
        // GUM G.4.1: u 3 and 4 with 4 and 9: 625 / (81/4 + 256/9) = 12.83
        Answer answer = example("growth", "legs", "case: 200 mm: 21.8: 11.3", "coldPlay", "0.1 ± 0.003 ± 0.004 mm n=5");
        assertThat(answer.text()).contains("degrees of freedom");
        assertThat(answer.json().toString()).contains("degreesOfFreedom");
    }

    /** Where draws show u of a result more than 3 % off, the first order says of itself that it does not hold. */
    @Test
    void theFirstOrderKnowsWhereItIsOffByWhatIsShown() {
        knows("tightening", "nutFactor");
        knows("time-to-grab", "start", "joint", "needed", "air");
    }

    private static void knows(String name, String... inputs) {
        var sheet = Registry.find(name).orElseThrow();
        var bound = sheet.read(sheet.example(), UnitSystem.METRIC).orElseThrow();
        assertThat(bound.uncertainties()).isEmpty();
        for (String input : inputs) {
            String typed = sheet.example().get(input);
            if (typed == null) {
                continue;
            }
            String[] parts = typed.split(" ", 2);
            for (double share : new double[] {0.05, 0.1, 0.12}) {
                String doubted = parts[0] + " ± " + share * Double.parseDouble(parts[0])
                        + (parts.length > 1 ? " " + parts[1] : "");
                Map<String, String> given = given(sheet.example(), input, doubted);
                var asked = sheet.answer(given, UnitSystem.METRIC, Sampling.of(40_000, 7));
                if (!asked.isOk()) {
                    continue;
                }
                Answer drawn = asked.orElseThrow();
                Answer first = sheet.answer(given, UnitSystem.METRIC).orElseThrow();
                var draws = drawn.simulation().orElseThrow();
                drawn.budgets().forEach((path, budget) -> {
                    var one = draws.outputs().get(path);
                    if (one != null && budget.u() > 0 && Math.abs(one.u() / budget.u() - 1) > 0.03) {
                        assertThat(first.cautions())
                                .as("%s %s: u %s against %s drawn", name, doubted, budget.u(), one.u())
                                .anyMatch(caution -> caution.startsWith("The uncertainty of " + path + " does not"));
                    }
                });
            }
        }
    }
}
