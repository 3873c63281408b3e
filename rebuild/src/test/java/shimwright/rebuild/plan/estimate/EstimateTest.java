package shimwright.rebuild.plan.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.BuildState;
import shimwright.rebuild.plan.Order;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.plan.StepSetUps;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.unit.model.Step;

class EstimateTest {
    /** A Monday. */
    private static final LocalDate MONDAY = LocalDate.of(2026, 3, 2);

    private static final Evenings EVENINGS = new Evenings(
            LocalTime.of(18, 0),
            Map.of(DayOfWeek.MONDAY, 2.0, DayOfWeek.TUESDAY, 2.0, DayOfWeek.THURSDAY, 3.0),
            Set.of());

    private static UncertainTask task(String id, double minutes, String... after) {
        Map<String, Double> waits = new java.util.LinkedHashMap<>();
        for (String one : after) {
            waits.put(one, 0.0);
        }
        return new UncertainTask(id, waits, ThreePoint.plusMinus(minutes, 0));
    }

    private static Forecast forecast(List<UncertainTask> tasks, List<Arrival> arrivals) {
        return Estimate.of(tasks, arrivals, EVENINGS, MONDAY, 200, 7).orElseThrow();
    }

    @Test
    void withoutSpreadItIsThePlainSumOverTheEvenings() {
        // 2 h Monday, 2 h Tuesday, the rest on Thursday
        Forecast f = forecast(List.of(task("a", 100), task("b", 130, "a"), task("c", 11, "b")), List.of());
        assertThat(List.of(f.early(), f.middle(), f.late())).containsOnly(LocalDate.of(2026, 3, 5));
        assertThat(f.meanMinutes()).isCloseTo(241, within(1e-9));
        assertThat(f.sdMinutes()).isCloseTo(0, within(1e-4));
        assertThat(f.critical()).containsExactly(Map.entry("a", 1.0), Map.entry("b", 1.0), Map.entry("c", 1.0));
        Forecast two = forecast(List.of(task("a", 100), task("b", 140, "a")), List.of());
        assertThat(two.late()).isEqualTo(LocalDate.of(2026, 3, 3));
    }

    @Test
    void aChainHasTheTextbookMeanAndVariance() {
        // mean (a + 4 m + b)/6, variance ((b - a)/6)^2, both add up along a chain (usual three-point rules, from
        // memory)
        List<ThreePoint> spreads =
                List.of(new ThreePoint(20, 30, 70), new ThreePoint(5, 5, 11), new ThreePoint(40, 95, 100));
        List<UncertainTask> chain = new ArrayList<>();
        for (ThreePoint spread : spreads) {
            String id = "t" + chain.size();
            chain.add(new UncertainTask(
                    id, chain.isEmpty() ? Map.of() : Map.of("t" + (chain.size() - 1), 0.0), spread));
        }
        Forecast f = Estimate.of(chain, List.of(), EVENINGS, MONDAY, 40_000, 1).orElseThrow();
        double mean = (20 + 120 + 70) / 6.0 + (5 + 20 + 11) / 6.0 + (40 + 380 + 100) / 6.0;
        double variance = Math.pow(50 / 6.0, 2) + Math.pow(1, 2) + Math.pow(10, 2);
        assertThat(f.meanMinutes()).isCloseTo(mean, within(4 * Math.sqrt(variance / 40_000)));
        assertThat(f.sdMinutes()).isCloseTo(Math.sqrt(variance), within(0.2));
    }

    @Property(tries = 20)
    void everyDrawLiesWithinAndMeanAndDeviationAreThoseOfTheThreePoints(
            @ForAll @DoubleRange(min = 0, max = 1) double likely) {
        ThreePoint spread = new ThreePoint(0, likely, 1);
        SplittableRandom random = new SplittableRandom(5);
        int n = 20_000;
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < n; i++) {
            double draw = spread.draw(random);
            assertThat(draw).isBetween(0.0, 1.0);
            sum += draw;
            squares += draw * draw;
        }
        assertThat(sum / n).isCloseTo(spread.mean(), within(0.006));
        assertThat(Math.sqrt(squares / n - sum / n * sum / n)).isCloseTo(spread.sd(), within(0.006));
    }

    @Test
    void aLatePartIsTheWholePathUntilItComes() {
        // the part comes on Monday the 9th; a is done by then, b waits for it
        Arrival part = new Arrival("part", LocalDate.of(2026, 3, 9), ThreePoint.plusMinus(0, 0));
        Forecast f = forecast(List.of(task("a", 60), task("b", 30, "a", "part")), List.of(part));
        assertThat(f.middle()).isEqualTo(LocalDate.of(2026, 3, 9));
        assertThat(f.critical()).containsExactly(Map.entry("part", 1.0), Map.entry("b", 1.0));
        // seven days late in the worst case, three days' spread around: a range of days
        Arrival odd = new Arrival("part", LocalDate.of(2026, 3, 9), new ThreePoint(-2, 0, 14));
        Forecast wide = forecast(List.of(task("a", 60), task("b", 30, "a", "part")), List.of(odd));
        assertThat(wide.early()).isBefore(wide.late());
        assertThat(wide.critical().get("part")).isEqualTo(1.0);
    }

    @Test
    void whatCanBeDoneIsDoneWhileSomethingCures() {
        // a until 18:30; b may go on 3 h later, at 21:30, after the evening: Tuesday. c fills Monday
        List<UncertainTask> tasks = List.of(
                task("a", 30), new UncertainTask("b", Map.of("a", 3.0), ThreePoint.plusMinus(60, 0)), task("c", 60));
        Forecast f = forecast(tasks, List.of());
        assertThat(f.middle()).isEqualTo(LocalDate.of(2026, 3, 3));
        assertThat(f.critical()).containsExactly(Map.entry("a", 1.0), Map.entry("b", 1.0));
    }

    @Test
    void theSameSeedGivesTheSameAndFaultsComeAllAtOnce() {
        List<UncertainTask> tasks =
                UncertainTask.of(DemoUnit.A, Order.of(DemoUnit.A, Map.of()), inFileOrder(), Map.of(), 0.3);
        Forecast one = Estimate.of(tasks, List.of(), EVENINGS, MONDAY, 300, 11).orElseThrow();
        assertThat(Estimate.of(tasks, List.of(), EVENINGS, MONDAY, 300, 11).orElseThrow())
                .isEqualTo(one);
        // 1261 minutes of steps with the shop's choices
        assertThat(one.meanMinutes()).isCloseTo(1261, within(5.0));
        assertThat(one.early()).isBeforeOrEqualTo(one.middle());
        assertThat(one.middle()).isBeforeOrEqualTo(one.late());
        List<UncertainTask> bad =
                List.of(task("a", 10, "z"), task("a", 10), new UncertainTask("b", Map.of(), new ThreePoint(-1, 0, 1)));
        assertThat(Estimate.of(bad, List.of(), new Evenings(LocalTime.NOON, Map.of(), Set.of()), MONDAY, 5, 1)
                        .refusals())
                .hasSize(5);
        assertThat(Estimate.of(List.of(task("a", 1, "b"), task("b", 1, "a")), List.of(), EVENINGS, MONDAY, 100, 1)
                        .refusals())
                .hasSize(2);
    }

    @Test
    void turningWalkingAndToolsAreInItAsThePlanHasThem() {
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), Set.of()).orElseThrow();
        BuildState present = BuildState.of(Set.of());
        Map<String, Double> ready = StepSetUps.before(DemoUnit.A, Map.of(), present, plan);
        Cost cost = plan.cost();
        assertThat(ready.keySet())
                .containsExactlyElementsOf(plan.ahead().stream().map(Step::id).toList());
        assertThat(ready.values()).allMatch(seconds -> seconds >= 0);
        double sum = ready.values().stream().mapToDouble(x -> x).sum();
        assertThat(sum).isCloseTo(cost.turning() + cost.walking() + cost.tools(), within(1e-6));
        List<UncertainTask> tasks =
                UncertainTask.of(DemoUnit.A, Order.of(DemoUnit.A, Map.of()), plan.ahead(), ready, 0);
        Forecast f = Estimate.of(tasks, List.of(), EVENINGS, MONDAY, 200, 3).orElseThrow();
        // nothing spreads: minutes of the steps and of getting ready, waiting left out
        assertThat(f.meanMinutes()).isCloseTo((cost.elapsed() - cost.waiting()) / 60, within(1e-6));
        assertThat(f.meanMinutes()).isGreaterThan(1261 + 200);
    }

    @Test
    void anEveningThatBeginsLaterHasLessOfTheDayLeft() {
        List<UncertainTask> one = List.of(task("a", 200));
        Evenings late = new Evenings(LocalTime.of(22, 30), Map.of(DayOfWeek.MONDAY, 2.0), Set.of());
        assertThat(Estimate.of(one, List.of(), late, MONDAY, 100, 1).refusals()).hasSize(1);
        Evenings all = new Evenings(LocalTime.of(8, 0), Map.of(DayOfWeek.MONDAY, 16.0), Set.of());
        assertThat(Estimate.of(one, List.of(), all, MONDAY, 100, 1)
                        .orElseThrow()
                        .late())
                .isEqualTo(MONDAY);
    }

    private static List<Step> inFileOrder() {
        return List.copyOf(Order.of(DemoUnit.A, Map.of()).steps().values());
    }
}
