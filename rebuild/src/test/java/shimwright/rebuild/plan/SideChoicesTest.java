package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.UnitType.Choice;

/** Sides of the demo unit, two choices at a time. */
class SideChoicesTest {
    private static List<SideChoices.Ranked> ranked(Map<String, String> taken, String... open) {
        Set<String> settled = new LinkedHashSet<>();
        DemoUnit.A.type().choices().stream().map(Choice::id).forEach(settled::add);
        settled.removeAll(Set.of(open));
        return SideChoices.of(
                        DemoUnit.A,
                        taken,
                        settled,
                        BuildState.inOrder(List.of()),
                        new SearchBudget(4, 500),
                        SearchObserver.nobody())
                .orElseThrow();
    }

    @Test
    void theCheapestComesFirstAndWhatContradictsItselfNotAtAll() {
        List<SideChoices.Ranked> ranked = ranked(Map.of(), "O1", "O4");
        // late and first wait for each other in a circle
        assertThat(ranked)
                .noneMatch(r -> "late".equals(r.sides().get("O1"))
                        && "first".equals(r.sides().get("O4")));
        assertThat(ranked).extracting(SideChoices.Ranked::saves).isSortedAccordingTo((a, b) -> Double.compare(b, a));
        assertThat(ranked.get(0).saves()).isNotNegative();
        assertThat(ranked).filteredOn(r -> r.saves() == 0).isNotEmpty();
        for (SideChoices.Ranked one : ranked) {
            PlanCheck.check(DemoUnit.A, one.sides(), Set.of(), one.plan());
        }
    }

    @Test
    void withEverythingSettledThereIsOnlyWhatIsTaken() {
        assertThat(ranked(Map.of("O2", "alone")))
                .singleElement()
                .satisfies(r -> assertThat(r.sides()).containsEntry("O2", "alone"));
    }
}
