package shimwright.rebuild.plan.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

class CrewTest {
    private static final Resource PRESS = new Resource("press", "the press", 1);

    private static Activity at(String id, int duration, String... resources) {
        Map<String, Integer> needs = new java.util.LinkedHashMap<>();
        for (String resource : resources) {
            needs.merge(resource, 1, Integer::sum);
        }
        return new Activity(id, "do " + id, duration, needs);
    }

    private static List<String> facts(Project project) {
        return Crew.least(project, new ConflictLimit(1000), () -> false).refusals().stream()
                .map(Refusal::fact)
                .toList();
    }

    @Test
    void aResourceTooSmallIsNamedAndSoIsACircleOfWaits() {
        Activity a = at("a", 3, "press", "press");
        Activity b = at("b", 4, "press");
        Activity c = at("c", 2);
        Project project = new Project(
                List.of(PRESS),
                List.of(a, b, c),
                List.of(
                        Link.after(b, "c", 10, "glue sets"),
                        Link.within(b, c, 5, "glue open"),
                        Link.after(a, "b", 0, "")));
        assertThat(facts(project))
                .containsExactlyInAnyOrder(
                        "a (do a) needs 2 of the press, of which there are 1",
                        // b ends at 4 of its own time; c starts 10 later and ends 12 after it, 5 are allowed
                        "these times contradict each other: c (do c) starts 7 after b (do b) at most (glue open);"
                                + " c (do c) starts 14 after b (do b) at least (glue sets)");
    }

    @Test
    void whatMustStartBeforeItCanIsNamed() {
        Project project = new Project(
                List.of(),
                List.of(at("a", 3), at("b", 1)),
                List.of(Link.after(at("a", 3), "b", 0, ""), new Link("b", "", -2, "soon")));
        assertThat(facts(project)).containsExactly("b (do b) must start by 2 and cannot before 3");
        Project beginning = new Project(List.of(), List.of(at("a", 1)), List.of(new Link("", "", 1, "")));
        assertThat(facts(beginning)).containsExactly("the beginning waits for itself");
    }

    @Test
    void withoutEnoughEffortNothingIsClaimed() {
        // the serial rules look at no longest wait: d makes c urgent, c holds the press, and b comes too long after a
        Activity a = at("a", 2);
        Activity b = at("b", 2, "press");
        Activity c = at("c", 9, "press");
        Activity d = at("d", 20);
        Project project = new Project(
                List.of(PRESS),
                List.of(a, b, c, d),
                List.of(Link.after(a, "b", 0, ""), Link.within(a, b, 2, ""), Link.after(c, "d", 0, "")));
        Outcome<Timetable> none = Crew.least(project, new ConflictLimit(0), () -> false);
        assertThat(none.refusals()).hasSize(1);
        assertThat(none.refusals().get(0).fact()).contains("not proven");
        assertThat(Crew.least(project, new ConflictLimit(100), () -> false)
                        .orElseThrow()
                        .span())
                .isEqualTo(29);
        assertThat(Crew.least(project, new ConflictLimit(100), () -> true).isOk())
                .isFalse();
    }

    @Test
    void nothingToDoIsDoneAtOnceAndWhatIsMadeWronglyThrows() {
        Timetable nothing = Crew.least(
                        new Project(List.of(PRESS), List.of(), List.of()), new ConflictLimit(1), () -> false)
                .orElseThrow();
        assertThat(nothing).isEqualTo(new Timetable(Map.of(), 0, 0, true, 0));
        assertThatThrownBy(() -> new Resource("r", "", 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> at("", 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new ConflictLimit(-1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Timetable(Map.of(), 3, 4, false, 0)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> new Project(List.of(), List.of(at("a", 1, "press")), List.of()))
                .hasMessage("nothing is called press");
        assertThatThrownBy(() -> new Project(List.of(), List.of(at("a", 1), at("a", 2)), List.of()))
                .hasMessage("a stands twice");
        assertThatThrownBy(() ->
                        new Project(List.of(), List.of(at("a", 1)), List.of(new Link("a", "", -Integer.MAX_VALUE, ""))))
                .hasMessageContaining("larger unit");
    }

    @Test
    void largerProjectsArePossibleTheSameEachTimeAndTheBoundHoldsWithMoreEffort() {
        SplittableRandom random = new SplittableRandom(3);
        for (int time = 0; time < 12; time++) {
            Project project = larger(random, 40);
            Timetable little =
                    Crew.least(project, new ConflictLimit(50), () -> false).orElseThrow();
            Timetable more =
                    Crew.least(project, new ConflictLimit(3000), () -> false).orElseThrow();
            assertThat(Crew.least(project, new ConflictLimit(3000), () -> false).orElseThrow())
                    .isEqualTo(more);
            assertThat(TimetableCheck.faults(project, little.starts(), little.span()))
                    .isEmpty();
            assertThat(TimetableCheck.faults(project, more.starts(), more.span()))
                    .isEmpty();
            assertThat(more.span()).isBetween(little.bound(), little.span());
            assertThat(more.bound()).isBetween(little.bound(), more.span());
        }
    }

    private static Project larger(SplittableRandom random, int n) {
        List<Resource> resources =
                List.of(new Resource("people", "people", 2), new Resource("case", "the case", 1), PRESS);
        List<Activity> activities = new ArrayList<>();
        List<Link> links = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            String id = "a" + i;
            String where = List.of("case", "press", "bench").get(random.nextInt(3));
            Activity one = where.equals("bench")
                    ? at(id, random.nextInt(1, 30), "people")
                    : at(id, random.nextInt(1, 30), "people", where);
            for (int k = 0; i > 0 && k < 2; k++) {
                links.add(Link.after(activities.get(random.nextInt(i)), id, random.nextInt(8) == 0 ? 60 : 0, ""));
            }
            activities.add(one);
        }
        return new Project(resources, activities, links);
    }
}
