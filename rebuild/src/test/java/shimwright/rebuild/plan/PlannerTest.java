package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Step;

/** Plans of the demo unit. Values named by their id in the demo source: invented scenario, recomputed. */
class PlannerTest {
    private static Plan plan(Map<String, String> taken) {
        return Planner.lay(DemoUnit.A, taken, Set.of()).orElseThrow();
    }

    @Test
    void theUsualPlanHasTheStepsAndMinutesOfTheFile() {
        Plan plan = plan(Map.of());
        assertThat(plan.total()).isEqualTo(95);
        assertThat(plan.done()).isZero();
        assertThat(plan.ahead()).hasSize(95);
        assertThat(plan.minutes()).isCloseTo(1261, within(1e-6));
    }

    @Test
    void provedLateItIsThreeStepsAndFortyFiveMinutesShorter() {
        Plan plan = plan(Map.of("O1", "late"));
        assertThat(plan.total()).isEqualTo(92);
        assertThat(plan.minutes()).isCloseTo(1216, within(1e-6));
        assertThat(plan.ahead()).extracting(Step::id).doesNotContain("D04", "D07", "D08");
    }

    @Test
    void twoSidesThatContradictAreRefusedWithTheCircleInWords() {
        // PL-6: the bellhousing needs the pattern, the pattern waits for the end cap
        assertThat(Planner.lay(DemoUnit.A, Map.of("O1", "late", "O4", "first"), Set.of())
                        .refusals())
                .singleElement()
                .satisfies(r -> {
                    assertThat(r.place()).isEqualTo("plan");
                    assertThat(r.fact()).startsWith("these steps wait for each other: ");
                    assertThat(circle(r.fact())).contains("B02", "Q07", "R02", "D03");
                    assertThat(r.hint()).isEqualTo("Take another side of a choice, or mend the unit file");
                });
    }

    /** The steps named, each of which must wait for the next and the last for the first. */
    private static List<String> circle(String fact) {
        Map<String, Set<String>> edges = PlanCheck.edges(DemoUnit.A, Map.of("O1", "late", "O4", "first"));
        List<String> named = Pattern.compile("(\\w+) \\(")
                .matcher(fact)
                .results()
                .map(m -> m.group(1))
                .filter(edges::containsKey)
                .toList();
        assertThat(fact).endsWith(" waits for " + named.get(0));
        for (int i = 0; i < named.size(); i++) {
            assertThat(edges.get(named.get(i))).contains(named.get((i + 1) % named.size()));
        }
        return named;
    }

    @ParameterizedTest
    @CsvSource({
        "O1, late",
        "O1, early",
        "O2, alone",
        "O2, with_pinion",
        "O3, driving_first",
        "O3, driven_first",
        "O4, first",
        "O4, last",
        "O5, once",
        "O5, twice"
    })
    void everySideAloneIsPossibleForBothVariants(String choice, String side) {
        for (var unit : List.of(DemoUnit.A, DemoUnit.B)) {
            Plan plan = Planner.lay(unit, Map.of(choice, side), Set.of()).orElseThrow();
            PlanCheck.check(unit, Map.of(choice, side), Set.of(), plan);
        }
    }

    @Test
    void thePlanEndsAtTheRecordAndBeginsAtTheBench() {
        List<Step> ahead = plan(Map.of()).ahead();
        assertThat(ahead.get(0).id()).isEqualTo("P01");
        assertThat(ahead.get(ahead.size() - 1).id()).isEqualTo("X07");
        assertThat(plan(Map.of()).next()).contains(ahead.get(0));
    }

    @Test
    void allDoneLeavesNothingAhead() {
        Set<String> all =
                new LinkedHashSet<>(Order.of(DemoUnit.A, Map.of()).steps().keySet());
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), all).orElseThrow();
        assertThat(plan.ahead()).isEmpty();
        assertThat(plan.next()).isEmpty();
        assertThat(plan.done()).isEqualTo(95);
        assertThat(plan.minutes()).isZero();
    }

    @Test
    void anOpenWindowIsClosedBeforeAnythingElseIsBegun() {
        Set<String> done = new LinkedHashSet<>(Order.of(DemoUnit.A, Map.of()).leadingTo("R02"));
        done.add("R02");
        List<Step> ahead = Planner.lay(DemoUnit.A, Map.of(), done).orElseThrow().ahead();
        // sealant on G: laid at R02, torqued at R04
        assertThat(ahead.subList(0, 2)).extracting(Step::id).containsExactly("R03", "R04");
    }

    @Test
    void aStepThatIsNotOfThisUnitCountsForNothing() {
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), Set.of("D09B", "no such step"))
                .orElseThrow();
        assertThat(plan.total()).isEqualTo(95);
        assertThat(plan.ahead()).hasSize(95);
    }
}
