package shimwright.rebuild.plan.crew;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** A project by numbers: activities 0 to n - 1, the end of everything n. */
final class IndexedProject {
    final Project project;
    final int n;
    final int[] duration;
    final int[] capacity;
    /** Need by resource and activity. */
    final int[][] need;

    /** From, to and least of every lag between two variables. */
    final int[][] arcs;
    /** Lags by the variable where they begin and end. */
    final int[][] from;

    final int[][] to;
    /** Soonest start that the links alone allow, and latest, the horizon where there is none. */
    final int[] soonest;

    final int[] latest;
    /** Where no timetable is longer that need be, if there is any. */
    final int horizon;

    /** Pairs that never run together. */
    final int[][] apart;

    /** Least time from the end of one to the start of another that comes later; -1 where they may run together. */
    final int[][] gap;

    IndexedProject(Project project) {
        this.project = project;
        n = project.activities().size();
        duration = project.activities().stream().mapToInt(Activity::duration).toArray();
        capacity = project.resources().stream().mapToInt(Resource::capacity).toArray();
        need = needs(project);
        Map<String, Integer> index = new HashMap<>();
        project.activities().forEach(activity -> index.put(activity.id(), index.size()));
        soonest = new int[n + 1];
        latest = new int[n + 1];
        List<int[]> found = new ArrayList<>();
        long longest = 0;
        int[] reach = duration.clone();
        for (Link link : project.links()) {
            if (link.from().isEmpty()) {
                longest += Math.max(0, link.least());
            } else if (!link.to().isEmpty()) {
                int i = at(index, link.from());
                reach[i] = Math.max(reach[i], link.least());
            }
        }
        for (ChangeOver pair : project.aparts()) {
            int a = at(index, pair.a());
            int b = at(index, pair.b());
            reach[a] = Math.max(reach[a], duration[a] + pair.afterA());
            reach[b] = Math.max(reach[b], duration[b] + pair.afterB());
        }
        for (int one : reach) {
            longest += one;
        }
        horizon = (int) longest;
        java.util.Arrays.fill(latest, horizon);
        for (Link link : project.links()) {
            if (link.from().isEmpty() && link.to().isEmpty()) {
                soonest[n] = link.least() > 0 ? horizon + 1 : soonest[n];
            } else if (link.from().isEmpty()) {
                int i = at(index, link.to());
                soonest[i] = Math.max(soonest[i], link.least());
            } else if (link.to().isEmpty()) {
                int i = at(index, link.from());
                latest[i] = Math.min(latest[i], -link.least());
            } else {
                found.add(new int[] {at(index, link.from()), at(index, link.to()), link.least()});
            }
        }
        for (int i = 0; i < n; i++) {
            found.add(new int[] {i, n, duration[i]});
        }
        arcs = found.toArray(new int[0][]);
        from = by(0);
        to = by(1);
        gap = gaps(index);
        apart = pairs();
    }

    private static int at(Map<String, Integer> index, String id) {
        return index.getOrDefault(id, -1);
    }

    private static int[][] needs(Project project) {
        int[][] need = new int[project.resources().size()][project.activities().size()];
        for (int r = 0; r < need.length; r++) {
            String id = project.resources().get(r).id();
            for (int i = 0; i < need[r].length; i++) {
                Activity activity = project.activities().get(i);
                need[r][i] = activity.duration() == 0 ? 0 : activity.needs().getOrDefault(id, 0);
            }
        }
        return need;
    }

    private int[][] by(int end) {
        List<List<Integer>> lists = new ArrayList<>();
        for (int i = 0; i <= n; i++) {
            lists.add(new ArrayList<>());
        }
        for (int a = 0; a < arcs.length; a++) {
            lists.get(arcs[a][end]).add(a);
        }
        return lists.stream()
                .map(list -> list.stream().mapToInt(x -> x).toArray())
                .toArray(int[][]::new);
    }

    private int[][] gaps(Map<String, Integer> index) {
        int[][] gaps = new int[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                boolean both = true;
                for (int r = 0; r < capacity.length; r++) {
                    both &= need[r][i] + need[r][j] <= capacity[r];
                }
                gaps[i][j] = both || i == j ? -1 : 0;
            }
        }
        for (ChangeOver pair : project.aparts()) {
            int a = at(index, pair.a());
            int b = at(index, pair.b());
            gaps[a][b] = Math.max(gaps[a][b], pair.afterA());
            gaps[b][a] = Math.max(gaps[b][a], pair.afterB());
        }
        return gaps;
    }

    private int[][] pairs() {
        List<int[]> pairs = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = i + 1; j < n; j++) {
                if (gap[i][j] >= 0) {
                    pairs.add(new int[] {i, j});
                }
            }
        }
        return pairs.toArray(new int[0][]);
    }
}
