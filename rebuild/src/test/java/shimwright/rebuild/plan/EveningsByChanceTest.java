package shimwright.rebuild.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.plan.evening.Evening;
import shimwright.rebuild.plan.evening.EveningPlan;
import shimwright.rebuild.plan.evening.Tonight;
import shimwright.rebuild.plan.evening.Tonight.NotTonight;
import shimwright.rebuild.plan.evening.Tonight.Timed;
import shimwright.rebuild.plan.evening.Tonight.Why;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.Window;
import shimwright.rebuild.plan.search.SearchBudget;
import shimwright.rebuild.plan.search.SearchObserver;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.Choice;

/**
 * Evenings by chance for units by chance, alone and for two, followed by the check of {@link StrangersCheck}: no window runs over the end
 * of the evening, nothing is begun that cannot be closed, nothing that needs two is for one. More of them with
 * {@code -Dshimwright.evenings=1000}, from {@code -Dshimwright.evenings.from} on.
 */
class EveningsByChanceTest {
    private static final int FIRST = Integer.getInteger("shimwright.evenings.from", 0);
    private static final SearchBudget SMALL = new SearchBudget(8, 500);

    /** One evening, and what it stands on. */
    private record Night(
            SmallUnits.Case one,
            Map<String, String> sides,
            Plan plan,
            SequencingProblem problem,
            Evening evening,
            Tonight tonight) {
        List<String> steps() {
            return tonight.steps().stream().map(timed -> timed.step().id()).toList();
        }
    }

    private static Map<String, String> sides(SmallUnits.Case one, Random random) {
        Map<String, String> sides = new LinkedHashMap<>();
        for (Choice choice : one.unit().type().choices()) {
            List<String> names = List.copyOf(choice.sides().keySet());
            sides.put(choice.id(), names.get(random.nextInt(names.size())));
        }
        return sides;
    }

    @Test
    void noEveningEndsWithAWindowOpenOrBeginsWhatItHasNoHandsFor() {
        int count = Integer.getInteger("shimwright.evenings", 200);
        int begun = 0;
        Map<Why, Integer> reasons = new HashMap<>();
        for (int seed = FIRST; seed < FIRST + count; seed++) {
            Random random = new Random(seed);
            SmallUnits.Case one = SmallUnits.of(seed, 4 + random.nextInt(16));
            Map<String, String> sides = sides(one, random);
            Outcome<Plan> plan =
                    Planner.lay(one.unit(), sides, one.present(), SMALL, SearchObserver.nobody(), List.of());
            if (plan.isOk()) {
                Evening evening = new Evening(60 * random.nextInt(360), 1 + random.nextInt(2));
                Night night = new Night(
                        one,
                        sides,
                        plan.orElseThrow(),
                        Planner.problem(one.unit(), sides, one.present()),
                        evening,
                        EveningPlan.tonight(one.unit(), sides, one.present(), plan.orElseThrow(), evening));
                String name = "evening " + seed;
                begun += night.tonight().steps().size();
                night.tonight().notTonight().forEach(not -> reasons.merge(not.why(), 1, Integer::sum));
                allOnce(night, name);
                followed(night, name);
                inTime(night, name);
                night.tonight().notTonight().forEach(not -> reason(night, not, name));
            }
        }
        assertThat(begun).isGreaterThan(count);
        assertThat(reasons).containsOnlyKeys(Why.values());
    }

    /** Each step ahead is for tonight, or is not and says why. */
    private static void allOnce(Night night, String name) {
        List<String> said = new ArrayList<>(night.steps());
        night.tonight().notTonight().forEach(not -> said.add(not.step().id()));
        assertThat(said)
                .as(name)
                .containsExactlyInAnyOrderElementsOf(
                        night.plan().ahead().stream().map(Step::id).toList());
    }

    /** What may be wrong is only what was wrong before: a window that is open already and cannot be closed tonight. */
    private static void followed(Night night, String name) {
        List<Window> openNow = night.problem().windows().stream()
                .filter(w -> w.opens().isEmpty())
                .toList();
        StrangersCheck.Verdict verdict = StrangersCheck.begun(night.problem(), night.steps());
        List<String> wrong = new ArrayList<>(verdict.reasons());
        openNow.forEach(w -> wrong.removeIf(reason ->
                reason.startsWith(w.words() + " stays open") || reason.startsWith(w.words() + " is open for")));
        night.plan().late().forEach(w -> wrong.removeIf(reason -> reason.endsWith(w.name() + " is open")));
        assertThat(wrong).as("%s %s", name, night.steps()).isEmpty();
        double before = 0;
        for (Timed timed : night.tonight().steps()) {
            String id = timed.step().id();
            assertThat(timed.begins()).as(name).isCloseTo(before, within(1e-3));
            before = timed.ends();
            assertThat(before)
                    .as("%s: end of %s", name, id)
                    .isCloseTo(Objects.requireNonNull(verdict.ends().get(id)), within(1e-3));
            assertThat(timed.step().persons())
                    .as(name)
                    .isLessThanOrEqualTo(night.evening().persons());
        }
        assertThat(night.tonight().left()).as(name).isCloseTo(night.evening().seconds() - before, within(1e-3));
    }

    /** Over the end goes only what leads to the closing of a window that was open when the evening began and could still be kept. */
    private static void inTime(Night night, String name) {
        List<UnitType.Window> late = night.plan().late();
        Set<String> closing = new HashSet<>();
        night.problem().windows().stream()
                .filter(w -> w.opens().isEmpty()
                        && late.stream().noneMatch(one -> one.id().equals(w.id())))
                .forEach(w -> closing.addAll(leading(night, w.closes())));
        for (Timed timed : night.tonight().steps()) {
            assertThat(timed.ends() <= night.evening().seconds() + 1e-3
                            || closing.contains(timed.step().id()))
                    .as("%s: %s ends %s s after the evening", name, timed.step().id(), timed.ends())
                    .isTrue();
        }
    }

    private static void reason(Night night, NotTonight not, String name) {
        String id = not.step().id();
        Set<String> tonight = new HashSet<>(night.steps());
        tonight.addAll(night.one().present().done());
        Set<String> follows = follows(night, id);
        boolean free = tonight.containsAll(needs(night, id));
        boolean isTrue = switch (not.why()) {
            case HANDS ->
                follows.stream()
                        .anyMatch(step -> night.one().unit().step(step).persons()
                                > night.evening().persons());
            case BEHIND -> !free;
            case AWAITED ->
                follows.stream()
                        .anyMatch(step -> night.one().present().arrives().containsKey(step));
            case WINDOW ->
                night.problem().windows().stream()
                        .anyMatch(w -> w.opens().equals(id)
                                || (w.opens().isEmpty()
                                        && w.alone()
                                        && !leading(night, w.closes()).contains(id)));
            case TOO_LONG, CURES, SPARED -> free;
        };
        assertThat(isTrue).as("%s: %s, %s", name, id, not).isTrue();
    }

    /** A step and all that leads to the closing of what it opens. */
    private static Set<String> follows(Night night, String first) {
        Set<String> found = new HashSet<>(Set.of(first));
        boolean more = true;
        while (more) {
            more = false;
            for (Window window : night.problem().windows()) {
                more |= found.contains(window.opens()) && found.addAll(leading(night, window.closes()));
            }
        }
        return found;
    }

    private static Set<String> needs(Night night, String id) {
        return night.problem().tasks().stream()
                .filter(task -> task.id().equals(id))
                .flatMap(task -> task.after().stream())
                .collect(Collectors.toSet());
    }

    /** A step ahead and all ahead that it waits for. */
    private static Set<String> leading(Night night, String last) {
        Set<String> found = new HashSet<>(Set.of(last));
        boolean more = true;
        while (more) {
            more = false;
            for (String id : List.copyOf(found)) {
                more |= found.addAll(needs(night, id));
            }
        }
        return found;
    }
}
