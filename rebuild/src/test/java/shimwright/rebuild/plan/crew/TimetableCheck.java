package shimwright.rebuild.plan.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Whether a timetable keeps a project's rules, looked at moment by moment; shares no code with the search. */
final class TimetableCheck {
    private TimetableCheck() {}

    static List<String> faults(Project project, Map<String, Integer> starts, int span) {
        List<String> faults = new ArrayList<>();
        int last = 0;
        for (Activity activity : project.activities()) {
            Integer at = starts.get(activity.id());
            if (at == null || at < 0) {
                faults.add(activity.id() + " starts at " + at);
                return faults;
            }
            last = Math.max(last, at + activity.duration());
        }
        if (last != span) {
            faults.add("it ends at " + last + ", not at " + span);
        }
        for (Link link : project.links()) {
            int from = link.from().isEmpty() ? 0 : starts.get(link.from());
            int to = link.to().isEmpty() ? 0 : starts.get(link.to());
            if (to - from < link.least()) {
                faults.add(link + " is not kept: " + from + ", " + to);
            }
        }
        for (ChangeOver pair : project.aparts()) {
            int a = starts.getOrDefault(pair.a(), 0);
            int b = starts.getOrDefault(pair.b(), 0);
            boolean first = b >= a + duration(project, pair.a()) + pair.afterA();
            if (!first && a < b + duration(project, pair.b()) + pair.afterB()) {
                faults.add(pair + " is not kept: " + a + ", " + b);
            }
        }
        for (int moment = 0; moment < last; moment++) {
            for (Resource resource : project.resources()) {
                int held = 0;
                for (Activity activity : project.activities()) {
                    int at = starts.getOrDefault(activity.id(), 0);
                    if (at <= moment && moment < at + activity.duration()) {
                        held += activity.needs().getOrDefault(resource.id(), 0);
                    }
                }
                if (held > resource.capacity()) {
                    faults.add(held + " of " + resource.id() + " at " + moment);
                }
            }
        }
        return faults;
    }

    private static int duration(Project project, String id) {
        return project.activities().stream()
                .filter(activity -> activity.id().equals(id))
                .mapToInt(Activity::duration)
                .sum();
    }
}
