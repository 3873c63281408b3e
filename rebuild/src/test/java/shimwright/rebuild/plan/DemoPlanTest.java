package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.plan.verify.OrderVerifier;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** The best plan of the demo unit against the order of the file and against the strip-down turned round. */
class DemoPlanTest {
    /** The steps whose work went away at the strip-down, in that order: demo source, strip_down. */
    private static final String STRIPPED =
            "X06 D09A D10 B02 D08 D03 Q07 Q06 Q05 Q04 Q03 Q02 Q01 E04 E01 R05 X01 S05A R04 R03 R02 S08 S06A S04 S03 G11 G10"
                    + " G08 G07 G06 G05 G04 G03 G02 G01 S02 F03 F01 T01 K02 D02 D01 Y04 Y02 Y01 R01 B01 I01 P01";

    /** The steps wanted, each after all that it waits for. */
    private static List<String> possibleOrder(Unit unit, List<String> wanted) {
        Map<String, Set<String>> edges = PlanCheck.edges(unit, Map.of());
        Set<String> order = new LinkedHashSet<>();
        wanted.forEach(id -> pull(edges, id, order));
        edges.keySet().forEach(id -> pull(edges, id, order));
        return List.copyOf(order);
    }

    private static void pull(Map<String, Set<String>> edges, String id, Set<String> order) {
        if (!order.contains(id) && edges.containsKey(id)) {
            edges.keySet().stream()
                    .filter(Objects.requireNonNull(edges.get(id))::contains)
                    .forEach(need -> pull(edges, need, order));
            order.add(id);
        }
    }

    private static List<String> turnedRound(Unit unit) {
        List<String> order = new ArrayList<>();
        for (String id : STRIPPED.split(" ")) {
            boolean other = unit.variant().equals("B") && id.endsWith("A");
            order.add(0, other ? id.substring(0, 3) + "B" : id);
        }
        return order;
    }

    @Test
    void bothVariantsAreProvenAndCheaperThanTheFileAndTheStripDownTurnedRound() {
        for (Unit unit : List.of(DemoUnit.A, DemoUnit.B)) {
            List<Double> told = new ArrayList<>();
            long began = System.nanoTime();
            SearchObserver watch =
                    new SearchObserver(() -> false, progress -> told.add((System.nanoTime() - began) / 1e9));
            Plan plan = Planner.lay(
                            unit, Map.of(), BuildState.inOrder(List.of()), SearchBudget.proof(), watch, List.of())
                    .orElseThrow();
            double proof = (System.nanoTime() - began) / 1e9;
            assertThat(plan.proven()).isTrue();
            assertThat(plan.bound()).isCloseTo(plan.cost().total(), within(1e-6));
            assertThat(plan.gap()).isZero();
            SequencingProblem problem = Planner.problem(unit, Map.of(), BuildState.inOrder(List.of()));
            List<String> all = List.copyOf(PlanCheck.edges(unit, Map.of()).keySet());
            Cost file = OrderVerifier.follow(problem, possibleOrder(unit, all)).cost();
            Cost round = OrderVerifier.follow(problem, possibleOrder(unit, turnedRound(unit)))
                    .cost();
            assertThat(plan.cost().total()).isLessThan(file.total()).isLessThan(round.total());
            assertThat(plan.cost().turns()).isLessThanOrEqualTo(Math.min(file.turns(), round.turns()));
            if (Boolean.getBoolean("shimwright.figures")) {
                figures(unit.variant() + " best", plan.cost());
                figures(unit.variant() + " file order", file);
                figures(unit.variant() + " strip-down turned round", round);
                System.out.printf(Locale.ROOT, "first answer %.3f s, proof %.2f s%n", told.get(0), proof);
            }
        }
    }

    private static void figures(String name, Cost cost) {
        System.out.printf(
                Locale.ROOT,
                "| %s | %.1f | %.0f | %.1f, %d | %.1f, %d | %.1f, %d | %.1f | %.1f |%n",
                name,
                cost.total() / 60,
                cost.work() / 60,
                cost.turning() / 60,
                cost.turns(),
                cost.walking() / 60,
                cost.walks(),
                cost.tools() / 60,
                cost.toolChanges(),
                cost.waiting() / 60,
                cost.risk() / 60);
    }

    @Test
    void everyStepSaysWhyItStandsWhereItStands() {
        Plan plan = Planner.lay(DemoUnit.A, Map.of(), Set.of()).orElseThrow();
        assertThat(plan.because())
                .extracting(b -> b.step().id())
                .isEqualTo(plan.ahead().stream().map(Step::id).toList());
        StepReason sealant = because(plan, "R02");
        assertThat(sealant.opens()).extracting(w -> w.id()).containsExactly("WW-AN-G");
        assertThat(sealant.heldUp()).extracting(Step::id).contains("R03");
        assertThat(because(plan, "R04").closes()).extracting(w -> w.id()).containsExactly("WW-AN-G", "WW-JOIN-G");
        // the stack is read (H26 at G09) before the forks stand on it
        assertThat(because(plan, "S03").behind()).containsKey(DemoUnit.A.step("G09"));
        assertThat(because(plan, "G09").ahead()).isPositive();
        for (StepReason because : plan.because()) {
            because.putOff()
                    .ifPresent(more -> assertThat(more)
                            .as("putting off %s", because.step().id())
                            .isGreaterThanOrEqualTo(plan.proven() ? -1e-6 : Double.NEGATIVE_INFINITY));
        }
    }

    private static StepReason because(Plan plan, String id) {
        return plan.because().stream()
                .filter(b -> b.step().id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
