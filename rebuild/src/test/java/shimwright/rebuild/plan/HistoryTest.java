package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A person who follows the plan for a while, does steps out of order, skips some and does some again. More of them with
 * {@code -Dshimwright.histories=12}.
 */
class HistoryTest {
    private static final SearchBudget SMALL = new SearchBudget(8, 500);

    private static Plan lay(Unit unit, List<String> done, Map<String, Double> ago, List<String> hint) {
        BuildState present = new BuildState(done, true, ago, Map.of());
        return Planner.lay(unit, Map.of(), present, SMALL, SearchObserver.nobody(), hint)
                .orElseThrow();
    }

    @Test
    void noPlanContradictsTheBench() {
        for (int seed = 0; seed < Integer.getInteger("shimwright.histories", 4); seed++) {
            Random random = new Random(seed);
            Unit unit = random.nextBoolean() ? DemoUnit.A : DemoUnit.B;
            Map<String, Set<String>> edges = PlanCheck.edges(unit, Map.of());
            List<String> steps = new ArrayList<>(edges.keySet());
            List<String> done = new ArrayList<>();
            Map<String, Double> ago = new LinkedHashMap<>();
            List<String> hint = List.of();
            for (int event = 0; event < 25; event++) {
                Plan plan = lay(unit, done, ago, hint);
                PlanCheck.check(unit, Map.of(), new LinkedHashSet<>(done), plan);
                assertThat(names(plan.broken())).isEqualTo(broken(edges, done));
                hint = plan.ahead().stream().map(Step::id).toList();
                happen(random, steps, hint, done);
                done.forEach(id -> ago.put(id, random.nextInt(9000) * 1.0));
            }
        }
    }

    private static void happen(Random random, List<String> steps, List<String> hint, List<String> done) {
        switch (random.nextInt(4)) {
            case 0 -> {
                // out of order: any step at all
                String any = steps.get(random.nextInt(steps.size()));
                done.remove(any);
                done.add(any);
            }
            case 1 -> {
                // undone, to be done again
                if (!done.isEmpty()) {
                    done.remove(random.nextInt(done.size()));
                }
            }
            default -> {
                // as planned, for a few steps, one of them passed over
                int count = Math.min(hint.size(), 1 + random.nextInt(6));
                int skipped = random.nextInt(2 * count);
                for (int k = 0; k < count; k++) {
                    if (k != skipped) {
                        done.add(hint.get(k));
                    }
                }
            }
        }
    }

    private static Set<String> names(List<OrderBreach> broken) {
        Set<String> names = new HashSet<>();
        broken.forEach(b -> names.add(b.step().id() + ">" + b.needed().id() + (b.mended() ? " since" : "")));
        return names;
    }

    private static Set<String> broken(Map<String, Set<String>> edges, List<String> done) {
        Set<String> names = new HashSet<>();
        for (int i = 0; i < done.size(); i++) {
            for (String need : edges.getOrDefault(done.get(i), Set.of())) {
                int at = done.indexOf(need);
                if (at < 0 || at > i) {
                    names.add(done.get(i) + ">" + need + (at < 0 ? "" : " since"));
                }
            }
        }
        return names;
    }

    @Test
    void aPlanFollowedStaysAsItIs() {
        List<String> first = Planner.lay(DemoUnit.A, Map.of(), Set.of()).orElseThrow().ahead().stream()
                .map(Step::id)
                .toList();
        for (int k = 0; k < first.size(); k += 7) {
            Plan plan = Planner.lay(
                            DemoUnit.A,
                            Map.of(),
                            BuildState.inOrder(first.subList(0, k)),
                            SearchBudget.page(),
                            SearchObserver.nobody(),
                            first)
                    .orElseThrow();
            assertThat(plan.ahead()).extracting(Step::id).isEqualTo(first.subList(k, first.size()));
        }
    }

    @Test
    void aWindowThatIsLongOverIsClosedFirstAndSaid() {
        List<String> done = new ArrayList<>(Order.of(DemoUnit.A, Map.of()).leadingTo("R02"));
        done.add("R02");
        Plan plan = lay(DemoUnit.A, done, Map.of("R02", 3600.0), List.of());
        assertThat(plan.late()).extracting(w -> w.id()).containsExactly("WW-AN-G");
        assertThat(plan.ahead().subList(0, 2)).extracting(Step::id).containsExactly("R03", "R04");
        assertThat(lay(DemoUnit.A, done, Map.of("R02", 60.0), List.of()).late()).isEmpty();
    }

    @Test
    void ofTwoOpenWindowsOnlyTheOneThatRanOutIsNamed() {
        String text = UnitFiles.example()
                .replace("longest: 10 min, why: It skins", "longest: 3 h, opens: R02, closes: R05, why: It skins");
        Unit unit = UnitFiles.read("two.yaml", text).outcome().orElseThrow().resolve("A");
        List<String> done = new ArrayList<>(Order.of(unit, Map.of()).leadingTo("R02"));
        done.add("R02");
        Plan plan = lay(unit, done, Map.of("R02", 3600.0), List.of());
        assertThat(plan.late()).extracting(w -> w.id()).containsExactly("WW-AN-G");
        assertThat(lay(unit, done, Map.of("R02", 4 * 3600.0), List.of()).late())
                .extracting(w -> w.id())
                .containsExactlyInAnyOrder("WW-AN-G", "WW-RTV");
    }
}
