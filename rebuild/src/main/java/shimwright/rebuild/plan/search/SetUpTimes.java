package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;

/**
 * Set-ups in numbers. An orientation, place or set of tools beyond the last index is one that is not known: it costs
 * nothing to leave.
 */
final class SetUpTimes {
    /** Of a task: index of the orientation, -1 where it leaves the case as it is. */
    final int[] orientation;
    /** Of a task: index of the place, -1 where any will do. */
    final int[] place;
    /** Of a task: index of the set of tools, -1 where it needs none. */
    final int[] kit;

    final int orientations;
    final int places;
    final long[][] turn;
    final long[][] turnHeavy;
    /** Least time from one orientation to another, by way of others where that is less. */
    final long[][] leastTurn;

    final long walk;
    final long[][] change;
    /** Tools that take time to lay out, and of each set those that it holds. */
    final long[] toolTime;

    final boolean[][] holds;
    final int startOrientation;
    final int startPlace;
    final int startKit;
    final boolean metric;

    private SetUpTimes(SequencingProblem problem, CompiledProblem compiled) {
        SetUps setUps = problem.setUps();
        List<String> stands = new ArrayList<>(new LinkedHashSet<>(problem.tasks().stream()
                .map(Task::stand)
                .filter(s -> !s.isEmpty())
                .toList()));
        String first = problem.start().orientation();
        List<String> turned = new ArrayList<>(
                stands.stream().filter(setUps.orientations()::contains).toList());
        if (!first.isEmpty() && !turned.contains(first)) {
            turned.add(first);
        }
        this.orientations = turned.size();
        List<String> beside = new ArrayList<>(
                stands.stream().filter(s -> !setUps.orientations().contains(s)).toList());
        String at = problem.start().stand();
        if (!at.isEmpty() && !setUps.orientations().contains(at) && !beside.contains(at)) {
            beside.add(at);
        }
        this.places = beside.size() + 1;
        this.walk = CompiledProblem.milliseconds(setUps.walk());
        this.turn = table(orientations + 1);
        this.turnHeavy = table(orientations + 1);
        turns(setUps, turned);
        this.leastTurn = least(turn, orientations);
        int n = compiled.n;
        this.orientation = new int[n];
        this.place = new int[n];
        this.kit = new int[n];
        List<String> tools = setUps.tools().entrySet().stream()
                .filter(e -> e.getValue() > 0)
                .map(java.util.Map.Entry::getKey)
                .sorted()
                .toList();
        // sets that differ in tools without a price alone are the same
        List<Set<String>> kits = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            Task task = problem.tasks().get(i);
            orientation[i] = turned.indexOf(task.stand());
            place[i] = task.stand().isEmpty() ? -1 : beside.indexOf(task.stand()) + 1;
            kit[i] = task.tools().isEmpty() ? -1 : indexOf(kits, priced(task.tools(), tools));
        }
        this.startKit = indexOf(kits, priced(problem.start().tools(), tools));
        this.startOrientation = first.isEmpty() ? orientations : turned.indexOf(first);
        this.startPlace = at.isEmpty() ? places : beside.indexOf(at) + 1;
        this.toolTime = tools.stream()
                .mapToLong(t -> CompiledProblem.milliseconds(setUps.tools().getOrDefault(t, 0.0)))
                .toArray();
        this.holds = new boolean[kits.size()][tools.size()];
        for (int k = 0; k < kits.size(); k++) {
            for (int t = 0; t < tools.size(); t++) {
                holds[k][t] = kits.get(k).contains(tools.get(t));
            }
        }
        this.change = changes();
        this.metric = isMetric(turn, orientations) && isMetric(turnHeavy, orientations);
    }

    static SetUpTimes of(SequencingProblem problem, CompiledProblem compiled) {
        return new SetUpTimes(problem, compiled);
    }

    private static Set<String> priced(Set<String> laidOut, List<String> tools) {
        return tools.stream().filter(laidOut::contains).collect(Collectors.toUnmodifiableSet());
    }

    private static int indexOf(List<Set<String>> kits, Set<String> kit) {
        if (!kits.contains(kit)) {
            kits.add(kit);
        }
        return kits.indexOf(kit);
    }

    private static long[][] table(int size) {
        return new long[size][size];
    }

    private void turns(SetUps setUps, List<String> turned) {
        for (int a = 0; a < orientations; a++) {
            for (int b = 0; b < orientations; b++) {
                double seconds = setUps.turning(turned.get(a), turned.get(b));
                turn[a][b] = CompiledProblem.milliseconds(seconds);
                turnHeavy[a][b] = CompiledProblem.milliseconds(seconds * setUps.heavyFactor());
            }
        }
    }

    private static long[][] least(long[][] turn, int n) {
        long[][] least = new long[turn.length][];
        for (int a = 0; a < turn.length; a++) {
            least[a] = turn[a].clone();
        }
        for (int by = 0; by < n; by++) {
            for (int a = 0; a < n; a++) {
                for (int b = 0; b < n; b++) {
                    least[a][b] = Math.min(least[a][b], least[a][by] + least[by][b]);
                }
            }
        }
        return least;
    }

    private static boolean isMetric(long[][] turn, int n) {
        long[][] least = least(turn, n);
        for (int a = 0; a < n; a++) {
            for (int b = 0; b < n; b++) {
                if (least[a][b] < turn[a][b]) {
                    return false;
                }
            }
        }
        return true;
    }

    private long[][] changes() {
        long[][] table = table(holds.length);
        for (int a = 0; a < holds.length; a++) {
            for (int b = 0; b < holds.length; b++) {
                for (int t = 0; t < toolTime.length; t++) {
                    table[a][b] += holds[b][t] && !holds[a][t] ? toolTime[t] : 0;
                }
            }
        }
        return table;
    }

    long turning(int from, int task, boolean heavy) {
        int to = orientation[task];
        return to < 0 ? 0 : heavy ? turnHeavy[from][to] : turn[from][to];
    }

    long walking(int from, int task) {
        int to = place[task];
        return to < 0 || from == places || from == to ? 0 : walk;
    }

    long tooling(int from, int task) {
        int to = kit[task];
        return to < 0 ? 0 : change[from][to];
    }

    /** Time that gets the first state at least as ready as the second, however heavy the case is by then. */
    long between(int o1, int p1, int k1, int o2, int p2, int k2) {
        boolean turned = o1 != o2 && Math.max(o1, o2) == orientations;
        boolean walked = p1 != p2 && Math.max(p1, p2) == places;
        if (turned || walked) {
            return CompiledProblem.NEVER;
        }
        return turnHeavy[o1][o2] + (p1 == p2 ? 0 : walk) + change[k1][k2];
    }
}
