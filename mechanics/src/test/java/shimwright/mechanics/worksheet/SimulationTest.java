package shimwright.mechanics.worksheet;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.measure.DrawSummary;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** ± through a worksheet: words behind it, shared influences, draws. */
class SimulationTest {
    record Case(
            @Input(kind = Kind.LENGTH, meaning = "one", min = -1, max = 1, example = "1 mm")
            double one,

            @Input(kind = Kind.LENGTH, meaning = "two", min = -1, max = 1, example = "1 mm")
            double two) {}

    record Result(
            @Output(kind = Kind.LENGTH, meaning = "difference")
            double difference,

            @Output(kind = Kind.LENGTH, meaning = "sum") double sum,

            @Output(kind = Kind.AREA, meaning = "product", decimals = 6)
            double product,

            @Output(meaning = "one is larger") boolean larger) {}

    private static Outcome<Worked<Result>> work(Case c) {
        if (c.one() == 0 && c.two() == 0.5) {
            return Outcome.refused(Refusal.of("one", "is nothing", ""));
        }
        return Outcome.ok(new Working()
                .worked(new Result(c.one() - c.two(), c.one() + c.two(), c.one() * c.two(), c.one() > c.two())));
    }

    static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "two-lengths",
            "Two lengths",
            "Two lengths.",
            List.of("geometry"),
            Case.class,
            Result.class,
            SimulationTest::work);

    private static Answer ask(String one, String two) {
        return SHEET.answer(Map.of("one", one, "two", two), UnitSystem.METRIC).orElseThrow();
    }

    private static double u(Answer answer, String output) {
        return requireNonNull(answer.budgets().get(output)).u();
    }

    /** JCGM 100:2008 4.3.7, 4.3.9, 6.2.1, H.1.3.4. */
    @Test
    void wordsBehindTheUncertaintySayWhatItIs() {
        assertThat(u(ask("1 ± 0.2 mm k=2", "2"), "sum")).isCloseTo(1e-4, within(1e-12));
        assertThat(u(ask("1 mm ± 0.3 mm rectangular", "2"), "sum")).isCloseTo(3e-4 / Math.sqrt(3), within(1e-12));
        assertThat(u(ask("(1 ± 0.3) mm triangular", "2"), "sum")).isCloseTo(3e-4 / Math.sqrt(6), within(1e-12));
        assertThat(u(ask("1 ± 0.3 mm U-shaped", "2"), "sum")).isCloseTo(3e-4 / Math.sqrt(2), within(1e-12));
        assertThat(u(ask("1 ± 0.3 ± 0.4 mm", "2"), "sum")).isCloseTo(5e-4, within(1e-12));
        Answer few = ask("1 ± 0.3 mm n=5", "2");
        assertThat(requireNonNull(few.budgets().get("sum")).nu()).isCloseTo(4, within(1e-9));
        Object asData = Map.of("value", 0.001, "unit", "m", "u", 0.0003, "form", "rectangular");
        assertThat(u(
                        SHEET.answer(Map.of("one", asData, "two", "2 mm"), UnitSystem.METRIC)
                                .orElseThrow(),
                        "sum"))
                .isCloseTo(3e-4 / Math.sqrt(3), within(1e-12));
    }

    @Test
    void wordsThatCannotBeAreRefused() {
        for (String bad : List.of(
                "1 ± 0.1 mm k=0",
                "1 ± 0.1 mm k=two",
                "1 ± 0.1 mm n=1",
                "1 ± 0.1 mm rectangular k=2",
                "1 ± 0.1 mm square",
                "1 ± 0.1 ± mm",
                "1 ± 0.1 mm shared=")) {
            assertThat(SHEET.answer(Map.of("one", bad, "two", "2"), UnitSystem.METRIC)
                            .refusals())
                    .as(bad)
                    .isNotEmpty()
                    .allSatisfy(r -> assertThat(r.sentence()).isNotBlank());
        }
        List<Refusal> twoShapes = SHEET.answer(
                        Map.of("one", "1 ± 0.1 mm shared=G", "two", "1 ± 0.1 mm rectangular shared=G"),
                        UnitSystem.METRIC)
                .refusals();
        assertThat(twoShapes).extracting(Refusal::fact).first().asString().contains("another shape");
    }

    /** One gauge's error cancels in a difference and doubles in a sum (JCGM 100:2008 5.2.2 with r = 1). */
    @Test
    void aSharedInfluenceCancelsOrAdds() {
        String uncertainty = " ± 0.003 mm ± 0.01 mm shared=DM";
        Answer answer = SHEET.answer(
                        Map.of("one", "25" + uncertainty, "two", "12" + uncertainty),
                        UnitSystem.METRIC,
                        Sampling.of(20_000, 3))
                .orElseThrow();
        assertThat(u(answer, "difference")).isCloseTo(3e-6 * Math.sqrt(2), within(1e-12));
        assertThat(u(answer, "sum")).isCloseTo(Math.hypot(3e-6 * Math.sqrt(2), 2e-5), within(1e-12));
        Simulation draws = answer.simulation().orElseThrow();
        assertThat(drawn(draws, "difference").u()).isCloseTo(3e-6 * Math.sqrt(2), within(1e-7));
        assertThat(drawn(draws, "sum").u()).isCloseTo(Math.hypot(3e-6 * Math.sqrt(2), 2e-5), within(5e-7));
        Answer alone = ask("25 ± 0.01 mm shared=DM", "12 ± 0.01 mm shared=DM");
        assertThat(u(alone, "difference")).isZero();
    }

    private static DrawSummary drawn(Simulation draws, String output) {
        return requireNonNull(draws.outputs().get(output));
    }

    /** x·y about zero: the first order says 0, u of the product is u². JCGM 101:2008 9.4 is of this kind. */
    @Test
    void aProductAboutZeroIsFlaggedAndThenDrawn() {
        Map<String, String> given = Map.of("one", "0 ± 1 mm", "two", "0 ± 1 mm");
        Answer plain = SHEET.answer(given, UnitSystem.METRIC).orElseThrow();
        assertThat(plain.cautions())
                .anyMatch(caution -> caution.contains("product") && caution.contains("Monte Carlo"));
        Answer answer =
                SHEET.answer(given, UnitSystem.METRIC, Sampling.of(50_000, 3)).orElseThrow();
        assertThat(answer.cautions()).noneMatch(caution -> caution.contains("Ask for"));
        assertThat(answer.cautions()).anyMatch(caution -> caution.contains("product") && caution.contains("clause 8"));
        Simulation draws = answer.simulation().orElseThrow();
        assertThat(drawn(draws, "product").u()).isCloseTo(1e-6, within(3e-8));
        assertThat(requireNonNull(draws.checks().get("sum")).holds()).isTrue();
        assertThat(requireNonNull(draws.choices().get("larger")).get("yes")).isCloseTo(0.5, within(0.02));
        assertThat(answer.text()).contains("Monte Carlo, 50000 draws, seed 3", "does not hold");
        assertThat(answer.json()).containsKey("monteCarlo");
        assertThat(ask("25 ± 0.01", "12 ± 0.01").cautions()).noneMatch(caution -> caution.contains("Monte Carlo"));
    }

    record OddCase(
            @Input(kind = Kind.LENGTH, meaning = "length", min = -1, max = 1, example = "1 mm")
            double length) {}

    record OddResult(@Output(meaning = "cube in mm³") double cube) {}

    private static final Worksheet<OddCase, OddResult> CUBE = new Worksheet<>(
            "cube",
            "Cube",
            "A cube.",
            List.of("geometry"),
            OddCase.class,
            OddResult.class,
            c -> Outcome.ok(new Working().worked(new OddResult(Math.pow(1000 * c.length(), 3)))));

    /** x³ about zero bends and does not shift: E x⁶ = 15 for a normal x, so u is √15, where the first order says 1 (moments of the normal distribution). */
    @Test
    void whatBendsBothWaysAlikeIsFlaggedToo() {
        Map<String, String> given = Map.of("length", "0 ± 1 mm");
        assertThat(CUBE.answer(given, UnitSystem.METRIC).orElseThrow().cautions())
                .anyMatch(caution -> caution.contains("cube does not follow a straight line"));
        Answer drawn =
                CUBE.answer(given, UnitSystem.METRIC, Sampling.of(50_000, 3)).orElseThrow();
        assertThat(drawn(drawn.simulation().orElseThrow(), "cube").u()).isCloseTo(Math.sqrt(15), within(0.3));
        assertThat(CUBE.answer(Map.of("length", "5 ± 0.01 mm"), UnitSystem.METRIC)
                        .orElseThrow()
                        .cautions())
                .isEmpty();
    }

    /** Nobody asked for draws: they are taken where the first order does not hold, and nowhere else. */
    @Test
    void whereTheFirstOrderFailsDrawsAreTakenUnasked() {
        Map<String, String> bent = Map.of("one", "0 ± 1 mm", "two", "0 ± 1 mm");
        Answer answer = SHEET.answer(bent, UnitSystem.METRIC, Optional.empty()).orElseThrow();
        Simulation draws = answer.simulation().orElseThrow();
        assertThat(draws.sampling().seed()).isEqualTo(1);
        assertThat(drawn(draws, "product").u()).isCloseTo(1e-6, within(4e-8));
        assertThat(answer.drawn()).first().asString().isEqualTo("Monte Carlo, 20000 draws, seed 1");
        assertThat(answer.cautions()).noneMatch(caution -> caution.contains("Ask for"));
        Map<String, String> straight = Map.of("one", "25 ± 0.01 mm", "two", "12 ± 0.01 mm");
        assertThat(SHEET.answer(straight, UnitSystem.METRIC, Optional.empty())
                        .orElseThrow()
                        .simulation())
                .isEmpty();
        Answer slow = SHEET.drawnWhenAsked()
                .answer(bent, UnitSystem.METRIC, Optional.empty())
                .orElseThrow();
        assertThat(slow.simulation()).isEmpty();
        assertThat(slow.cautions()).anyMatch(caution -> caution.contains("Ask for Monte Carlo"));
        Map<String, String> over = Map.of("one", "0 ± 600 mm", "two", "0 ± 600 mm");
        Answer tried = SHEET.answer(over, UnitSystem.METRIC, Optional.empty()).orElseThrow();
        assertThat(tried.simulation()).isEmpty();
        assertThat(tried.cautions())
                .anyMatch(caution -> caution.contains("Draws were tried") && caution.contains("have no answer"));
        assertThat(SHEET.answer(bent, UnitSystem.METRIC, Optional.of(Sampling.of(10_000, 5)))
                        .orElseThrow()
                        .drawn())
                .first()
                .asString()
                .contains("10000 draws, seed 5");
    }

    @Test
    void drawsThatCannotBeAreRefused() {
        Map<String, String> edge = Map.of("one", "999 ± 1 mm", "two", "1 mm");
        Map<String, String> exact = Map.of("one", "1 mm", "two", "1 mm");
        Map<String, String> fine = Map.of("one", "1 ± 0.1 mm", "two", "1 mm");
        Sampling some = Sampling.of(10_000, 1);
        assertThat(SHEET.answer(edge, UnitSystem.METRIC, some).refusals().get(0).sentence())
                .contains("draws have no answer", "leaves its range");
        assertThat(SHEET.answer(exact, UnitSystem.METRIC, some)
                        .refusals()
                        .get(0)
                        .fact())
                .contains("no input carries");
        assertThat(SHEET.answer(fine, UnitSystem.METRIC, Sampling.of(10, 1)).refusals())
                .isNotEmpty();
        assertThat(SHEET.answer(fine, UnitSystem.METRIC, some.onThreads(999)).refusals())
                .isNotEmpty();
        assertThat(SHEET.answer(fine, UnitSystem.METRIC, some.covering(1)).refusals())
                .isNotEmpty();
    }

    @Test
    void twoReadingsHaveNoStandardDeviation() {
        Answer answer = SHEET.answer(
                        Map.of("one", "1 ± 0.001 mm n=2", "two", "1 mm"), UnitSystem.METRIC, Sampling.of(20_000, 1))
                .orElseThrow();
        assertThat(answer.cautions()).anyMatch(caution -> caution.contains("no standard deviation"));
    }

    /** The same seed gives the same answer, to the bit, on one thread or four. */
    @Property(tries = 4)
    void threadsDoNotMatter(@ForAll long seed) {
        Random random = new Random(seed);
        Map<String, String> given = new LinkedHashMap<>();
        given.put("one", random.nextDouble() + " ± 0.1 mm rectangular");
        given.put("two", random.nextDouble() + " ± 0.1 mm n=9");
        Sampling one = Sampling.of(25_000, seed);
        Answer alone = SHEET.answer(given, UnitSystem.METRIC, one).orElseThrow();
        Answer four = SHEET.answer(given, UnitSystem.METRIC, one.onThreads(4)).orElseThrow();
        assertThat(four.json()).isEqualTo(alone.json());
    }
}
