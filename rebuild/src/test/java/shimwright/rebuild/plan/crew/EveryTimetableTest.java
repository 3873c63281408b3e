package shimwright.rebuild.plan.crew;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Outcome;

/** Small projects by chance against every timetable there is. */
class EveryTimetableTest {
    private static final int TIMES = Integer.getInteger("shimwright.crews", 400);

    private static Project project(SplittableRandom random) {
        int n = random.nextInt(2, 6);
        List<Resource> resources = new ArrayList<>();
        for (int r = 0; r < random.nextInt(1, 3); r++) {
            resources.add(new Resource("r" + r, "r" + r, random.nextInt(1, 4)));
        }
        List<Activity> activities = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Map<String, Integer> needs = new HashMap<>();
            for (Resource resource : resources) {
                int need = random.nextInt(0, resource.capacity() + 1);
                if (need > 0) {
                    needs.put(resource.id(), need);
                }
            }
            activities.add(new Activity("a" + i, "", random.nextInt(0, 5), needs));
        }
        List<Link> links = new ArrayList<>();
        for (int k = 0; k < random.nextInt(0, 2 * n); k++) {
            int i = random.nextInt(n);
            int j = random.nextInt(n);
            if (i != j) {
                boolean wait = random.nextInt(3) > 0;
                int least = wait == (i < j) ? random.nextInt(0, 5) : -random.nextInt(0, 5);
                links.add(new Link("a" + i, "a" + j, least, ""));
            }
        }
        if (random.nextInt(4) == 0) {
            links.add(new Link("", "a0", random.nextInt(0, 4), ""));
        }
        if (random.nextInt(4) == 0) {
            links.add(new Link("a" + (n - 1), "", -random.nextInt(0, 8), ""));
        }
        List<ChangeOver> aparts = new ArrayList<>();
        if (random.nextInt(3) == 0) {
            aparts.add(new ChangeOver("a0", "a1", random.nextInt(0, 4), random.nextInt(0, 4)));
        }
        return new Project(resources, activities, links, aparts);
    }

    /** The least span of all timetables with starts below the limit; -1 where none keeps the rules. */
    private static int every(Project project, int limit) {
        int[] best = {-1};
        place(project, new HashMap<>(), 0, limit, best);
        return best[0];
    }

    private static void place(Project project, Map<String, Integer> starts, int k, int limit, int[] best) {
        int span = project.activities().stream()
                .filter(activity -> starts.containsKey(activity.id()))
                .mapToInt(activity -> starts.getOrDefault(activity.id(), 0) + activity.duration())
                .max()
                .orElse(0);
        if (best[0] >= 0 && span >= best[0]) {
            return;
        }
        if (k == project.activities().size()) {
            if (TimetableCheck.faults(project, starts, span).isEmpty()) {
                best[0] = span;
            }
            return;
        }
        String id = project.activities().get(k).id();
        for (int at = 0; at < limit; at++) {
            starts.put(id, at);
            if (linked(project, starts)) {
                place(project, starts, k + 1, limit, best);
            }
            starts.remove(id);
        }
    }

    private static boolean linked(Project project, Map<String, Integer> starts) {
        for (Link link : project.links()) {
            Integer from = link.from().isEmpty() ? Integer.valueOf(0) : starts.get(link.from());
            Integer to = link.to().isEmpty() ? Integer.valueOf(0) : starts.get(link.to());
            if (from != null && to != null && to - from < link.least()) {
                return false;
            }
        }
        return true;
    }

    /** No least timetable is longer than every duration, or longest lag out of it, one after the other. */
    private static int limit(Project project) {
        int limit = 1;
        for (Activity activity : project.activities()) {
            int reach = activity.duration();
            for (Link link : project.links()) {
                reach = link.from().equals(activity.id()) ? Math.max(reach, link.least()) : reach;
            }
            for (ChangeOver pair : project.aparts()) {
                reach = pair.a().equals(activity.id()) ? Math.max(reach, activity.duration() + pair.afterA()) : reach;
                reach = pair.b().equals(activity.id()) ? Math.max(reach, activity.duration() + pair.afterB()) : reach;
            }
            limit += reach;
        }
        return limit
                + project.links().stream()
                        .filter(link -> link.from().isEmpty())
                        .mapToInt(Link::least)
                        .sum();
    }

    @Test
    void noTimetableOfAllIsShorterAndWhatIsRefusedHasNone() {
        SplittableRandom random = new SplittableRandom(20261125);
        int refused = 0;
        for (int time = 0; time < TIMES; time++) {
            Project project = project(random);
            int best = every(project, limit(project));
            Outcome<Timetable> found = Crew.least(project, new ConflictLimit(100_000), () -> false);
            if (best < 0) {
                assertThat(found.isOk()).as(project.toString()).isFalse();
                refused++;
            } else {
                Timetable table = found.orElseThrow();
                assertThat(table.span()).as(project.toString()).isEqualTo(best);
                assertThat(table.proven()).isTrue();
                assertThat(TimetableCheck.faults(project, table.starts(), best)).isEmpty();
            }
        }
        assertThat(refused).isBetween(TIMES / 20, TIMES / 2);
    }

    @Test
    void theFirstAnswerAloneIsPossibleAndItsBoundTrue() {
        SplittableRandom random = new SplittableRandom(7);
        int answered = 0;
        for (int time = 0; time < TIMES / 4; time++) {
            Project project = project(random);
            int best = every(project, limit(project));
            Outcome<Timetable> found = Crew.least(project, new ConflictLimit(0), () -> false);
            if (found.isOk()) {
                Timetable table = found.orElseThrow();
                assertThat(TimetableCheck.faults(project, table.starts(), table.span()))
                        .isEmpty();
                assertThat(table.span()).isGreaterThanOrEqualTo(best);
                assertThat(table.bound()).as(project.toString()).isLessThanOrEqualTo(best);
                answered++;
            }
        }
        assertThat(answered).isGreaterThan(TIMES / 10);
    }
}
