package shimwright.rebuild.plan.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * The shortest timetable of work that shares resources, with least and longest lags between starts: the resource-constrained
 * project scheduling problem with generalised precedence (RCPSP/max). The same project and effort always give the same
 * timetable, unless it is stopped.
 */
public final class Crew {
    private static final String PLACE = "timetable";

    private Crew() {}

    /**
     * The timetable.
     *
     * @param effort how much looking is allowed; with none there is only the first answer
     * @param stop asked often; the search ends with what it has once it says true
     * @return refused where an activity needs more than there is, where lags contradict each other, both named, where every
     *     timetable was looked at and none keeps them, or where none was found within the effort
     */
    public static Outcome<Timetable> least(Project project, ConflictLimit effort, BooleanSupplier stop) {
        List<Refusal> faults = tooMuch(project);
        IndexedProject model = new IndexedProject(project);
        Lags lags = new Lags(model);
        if (!lags.circle().isEmpty()) {
            faults.add(circle(project, lags.circle()));
        } else if (lags.late()) {
            faults.add(late(project, model, lags));
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        int bound = Bounds.least(model, lags.head, lags.tail);
        ClauseSearch search = new ClauseSearch(model, SerialScheduling.best(model, lags), bound);
        search.run(effort.conflicts(), stop);
        int[] best = search.best();
        if (best != null) {
            java.util.Map<String, Integer> starts = new java.util.LinkedHashMap<>();
            for (int i = 0; i < model.n; i++) {
                starts.put(project.activities().get(i).id(), best[i]);
            }
            int span = best[model.n];
            int least = Math.max(bound, search.bound());
            return Outcome.ok(new Timetable(starts, span, least, least == span, search.conflicts()));
        }
        return search.finished() ? Outcome.refused(List.of(none(project, effort))) : gaveUp(search);
    }

    private static List<Refusal> tooMuch(Project project) {
        List<Refusal> faults = new ArrayList<>();
        for (Resource resource : project.resources()) {
            for (Activity activity : project.activities()) {
                int need = activity.needs().getOrDefault(resource.id(), 0);
                if (need > resource.capacity() && activity.duration() > 0) {
                    faults.add(Refusal.at(
                            PLACE,
                            named(activity) + " needs " + need + " of " + resource.words() + ", of which there are "
                                    + resource.capacity(),
                            "Get more of it, or do it another way"));
                }
            }
        }
        return faults;
    }

    private static String named(Activity activity) {
        return activity.id() + (activity.words().isEmpty() ? "" : " (" + activity.words() + ")");
    }

    private static Refusal circle(Project project, List<Integer> circle) {
        List<Activity> all = project.activities();
        List<String> steps = new ArrayList<>();
        for (int k = 0; k < circle.size(); k++) {
            Activity from = all.get(circle.get(k));
            Activity to = all.get(circle.get((k + 1) % circle.size()));
            steps.add(said(project, from, to));
        }
        return Refusal.at(
                PLACE,
                "these times contradict each other: " + String.join("; ", steps),
                "Look at these waits and how long they may be");
    }

    /** The strictest link between two, in words. */
    private static String said(Project project, Activity from, Activity to) {
        Link link = project.links().stream()
                .filter(one -> one.from().equals(from.id()) && one.to().equals(to.id()))
                .max(java.util.Comparator.comparingInt(Link::least))
                .orElseThrow();
        String words = link.words().isEmpty() ? "" : " (" + link.words() + ")";
        return link.least() < 0
                ? named(from) + " starts " + -link.least() + " after " + named(to) + " at most" + words
                : named(to) + " starts " + link.least() + " after " + named(from) + " at least" + words;
    }

    private static Refusal late(Project project, IndexedProject model, Lags lags) {
        List<String> late = new ArrayList<>();
        for (int i = 0; i < model.n; i++) {
            if (lags.head[i] > model.latest[i]) {
                late.add(named(project.activities().get(i)) + " must start by " + model.latest[i]
                        + " and cannot before " + lags.head[i]);
            }
        }
        return Refusal.at(
                PLACE,
                late.isEmpty() ? "the beginning waits for itself" : String.join("; ", late),
                "Look at what it waits for and by when it must be done");
    }

    /** None at all: says which of the longest waits are to blame together, each of them needed for that. */
    private static Refusal none(Project project, ConflictLimit effort) {
        List<Link> blamed =
                new ArrayList<>(project.links().stream().filter(Link::limits).toList());
        List<Link> others =
                project.links().stream().filter(link -> !link.limits()).toList();
        for (Link link : List.copyOf(blamed)) {
            List<Link> without = new ArrayList<>(others);
            blamed.stream().filter(one -> !one.equals(link)).forEach(without::add);
            IndexedProject model = new IndexedProject(project.with(without));
            ClauseSearch search = new ClauseSearch(model, null, 0);
            search.run(effort.conflicts(), () -> search.best() != null);
            if (search.finished() && search.best() == null) {
                blamed.remove(link);
            }
        }
        String waits = blamed.stream()
                .map(link -> (link.words().isEmpty() ? "" : link.words() + ": ")
                        + (link.to().isEmpty()
                                ? link.from() + " by " + -link.least()
                                : link.from() + " at most " + -link.least() + " after " + link.to()))
                .collect(Collectors.joining("; "));
        return Refusal.at(
                PLACE,
                "with what there is of the resources these longest waits cannot be kept together: " + waits
                        + "; every timetable was looked at",
                "Let one of them be longer, or get more of what they share");
    }

    private static Outcome<Timetable> gaveUp(ClauseSearch search) {
        return Outcome.refused(Refusal.at(
                PLACE,
                "no timetable was found in " + search.conflicts() + " dead ends; that there is none is not proven",
                "Give it more time, or look at the longest waits"));
    }
}
