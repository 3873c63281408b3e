package shimwright.rebuild.plan.search;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import shimwright.rebuild.plan.model.InitialState;
import shimwright.rebuild.plan.model.Lag;
import shimwright.rebuild.plan.model.Risk;
import shimwright.rebuild.plan.model.SequencingProblem;
import shimwright.rebuild.plan.model.SetUps;
import shimwright.rebuild.plan.model.Task;
import shimwright.rebuild.plan.model.Window;

/** Problems by chance, with everything in them that a problem can have. */
final class RandomProblems {
    private static final List<String> STANDS = List.of("FU", "RU", "LU", "BENCH", "PRESS", "");
    private static final List<Double> PRICES = List.of(1.0, 1.0, 0.1, 0.056, 0.0, 0.0);
    private static final List<String> TOOLS = List.of("OVEN", "TORQUE", "INDICATOR", "PULLER");

    private final Random random;
    private final List<Task> tasks = new ArrayList<>();

    private RandomProblems(Random random) {
        this.random = random;
    }

    private static String id(int i) {
        return "t" + i;
    }

    /** A problem of a few tasks, small enough to try every order. */
    static SequencingProblem small(long seed) {
        Random random = new Random(seed);
        return new RandomProblems(random).make(4 + random.nextInt(random.nextInt(8) == 0 ? 5 : 4));
    }

    /** What a task waits for: any before it, or the one before it in its own chain and now and then one of another. */
    private Set<String> after(int i, int chains, double dense) {
        Set<String> after = new HashSet<>();
        for (int j = 0; j < i; j++) {
            boolean chained = chains > 0 && j % chains == i % chains && i - j == chains;
            if (chained || random.nextDouble() < (chains > 0 ? dense / 4 : dense)) {
                after.add(id(j));
            }
        }
        return after;
    }

    private SequencingProblem make(int n) {
        double dense = 0.1 + 0.4 * random.nextDouble();
        int chains = random.nextInt(3) == 0 ? 2 + random.nextInt(2) : 0;
        boolean alike = random.nextInt(4) == 0;
        for (int i = 0; i < n; i++) {
            Set<String> after = after(i, chains, dense);
            Set<String> tools = new HashSet<>();
            for (String tool : TOOLS) {
                if (random.nextInt(4) == 0) {
                    tools.add(tool);
                }
            }
            int weight = random.nextInt(6) == 0 ? random.nextInt(3) - 1 : 0;
            String stand = STANDS.get(random.nextInt(STANDS.size()));
            if (alike && i > 0 && random.nextBoolean()) {
                Task like = tasks.get(random.nextInt(i));
                tools = like.tools();
                stand = like.stand();
            }
            int seconds = random.nextInt(8) == 0 ? 0 : 1 + random.nextInt(10);
            tasks.add(new Task(id(i), "do " + i, seconds, stand, tools, after, weight));
        }
        List<Window> windows = windows(n);
        Collections.shuffle(tasks, random);
        return new SequencingProblem(
                tasks,
                lags(n),
                windows,
                risks(n),
                setUps(),
                start(n, windows),
                PRICES.get(random.nextInt(PRICES.size())));
    }

    private List<Window> windows(int n) {
        List<Window> windows = new ArrayList<>();
        int count = random.nextInt(random.nextInt(4) == 0 ? 4 : 3);
        for (int w = 0; w < count; w++) {
            int closes = 1 + random.nextInt(n - 1);
            List<String> before = before(closes);
            boolean open = random.nextInt(5) == 0;
            if (before.isEmpty() && !open) {
                continue;
            }
            String opens = open ? "" : before.get(random.nextInt(before.size()));
            windows.add(new Window(
                    "w" + w, "window " + w, opens, id(closes), 5 + random.nextInt(40), random.nextInt(3) > 0));
        }
        return windows;
    }

    private List<Lag> lags(int n) {
        List<Lag> lags = new ArrayList<>();
        int count = random.nextInt(random.nextInt(4) == 0 ? 6 : 4);
        for (int k = 0; k < count; k++) {
            Task to = tasks.get(random.nextInt(n));
            List<String> before = before(tasks.indexOf(to));
            if (!before.isEmpty()) {
                String from = before.get(random.nextInt(before.size()));
                lags.add(new Lag(from, to.id(), random.nextInt(40), "cure"));
            }
        }
        return lags;
    }

    /** What a task waits for, half the time what that waits for as well. */
    private List<String> before(int task) {
        Set<String> before = new TreeSet<>(tasks.get(task).after());
        boolean grown = random.nextBoolean();
        while (grown) {
            grown = tasks.stream()
                    .filter(one -> before.contains(one.id()))
                    .map(one -> before.addAll(one.after()))
                    .reduce(false, (a, b) -> a || b);
        }
        return List.copyOf(before);
    }

    private List<Risk> risks(int n) {
        List<Risk> risks = new ArrayList<>();
        for (int k = 0; k < random.nextInt(6); k++) {
            String hold = id(random.nextInt(n));
            risks.add(new Risk(id(random.nextInt(n)), hold, random.nextInt(80) / 10.0));
        }
        return risks;
    }

    private SetUps setUps() {
        Map<String, Map<String, Double>> turn = new LinkedHashMap<>();
        List<String> three = STANDS.subList(0, 3);
        for (String from : three) {
            Map<String, Double> to = new HashMap<>();
            three.forEach(other -> to.put(other, other.equals(from) ? 0.0 : random.nextInt(9)));
            turn.put(from, to);
        }
        if (random.nextInt(3) > 0) {
            three.forEach(by -> three.forEach(from -> three.forEach(to -> shorten(turn, from, by, to))));
        }
        Map<String, Double> tools = new HashMap<>();
        TOOLS.forEach(tool -> tools.put(tool, (double) random.nextInt(6)));
        return new SetUps(Set.copyOf(three), turn, 1 + random.nextInt(3), random.nextInt(4), tools);
    }

    /** Makes no way dearer than the way round. */
    private static void shorten(Map<String, Map<String, Double>> turn, String from, String by, String to) {
        double round = at(turn, from, by) + at(turn, by, to);
        turn.getOrDefault(from, Map.of()).computeIfPresent(to, (key, straight) -> Math.min(straight, round));
    }

    private static double at(Map<String, Map<String, Double>> turn, String from, String to) {
        return turn.getOrDefault(from, Map.of()).getOrDefault(to, 0.0);
    }

    private InitialState start(int n, List<Window> windows) {
        Map<String, Double> waits = new HashMap<>();
        for (int k = random.nextInt(3); k > 0; k--) {
            waits.put(id(random.nextInt(n)), (double) random.nextInt(random.nextInt(4) == 0 ? 4000 : 60));
        }
        Map<String, Double> open = new HashMap<>();
        windows.stream().filter(w -> w.opens().isEmpty()).forEach(w -> open.put(w.id(), (double) random.nextInt(6)));
        return new InitialState(
                random.nextBoolean() ? "" : STANDS.get(random.nextInt(3)),
                random.nextBoolean() ? "" : STANDS.get(random.nextInt(5)),
                random.nextBoolean() ? Set.of() : Set.of(TOOLS.get(random.nextInt(4))),
                random.nextInt(2),
                waits,
                open);
    }
}
