package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Step.Undo;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitKeys;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.Side;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * Units of a few steps by chance, small enough to try every order of every combination of sides, with all that a plan takes up: choices
 * that add and drop order and leave steps out, windows to be served alone and long ones, cures, hold points with their chance, a heavy part,
 * steps for two, parts on their way, steps done in and out of order and an unlike weight of the day.
 */
final class SmallUnits {
    private static final List<String> AT = List.of("FU", "RU", "LU", "BENCH", "PRESS");
    private static final List<String> TOOLS = List.of("OVEN", "TRQ", "DI");
    private static final List<Why> WHY = List.of(Why.SAME_PART, Why.BLOCKED, Why.MEASURE_FIRST, Why.HABIT, Why.WAITS);
    private static final double MINUTE = 60;

    private final Random random;
    private final int size;
    private final Map<String, Map<String, Why>> after = new LinkedHashMap<>();
    private final Map<String, Double> seconds = new LinkedHashMap<>();
    private final List<HoldPoint> holds = new ArrayList<>();
    private final List<Window> windows = new ArrayList<>();

    private SmallUnits(Random random, int size) {
        this.random = random;
        this.size = size;
    }

    /** A unit and how it stands. */
    record Case(Unit unit, BuildState present) {}

    /** So few steps that every order can be tried. */
    static Case of(long seed) {
        Random random = new Random(seed);
        return new SmallUnits(random, 3 + random.nextInt(random.nextInt(5) == 0 ? 5 : 4)).made();
    }

    /** As many steps as are asked for. */
    static Case of(long seed, int size) {
        return new SmallUnits(new Random(seed), size).made();
    }

    private Case made() {
        Unit unit = unit();
        return new Case(unit, present(unit));
    }

    private boolean one(int in) {
        return random.nextInt(in) == 0;
    }

    private String any(List<String> of) {
        return of.get(random.nextInt(of.size()));
    }

    private Unit unit() {
        double dense = (0.15 + 0.4 * random.nextDouble()) * Math.min(1, 6.0 / size);
        int heavy = one(2) ? random.nextInt(size) : -1;
        List<Step> steps = new ArrayList<>();
        for (int k = 0; k < size; k++) {
            Map<String, Why> before = new LinkedHashMap<>();
            for (String earlier : after.keySet()) {
                if (random.nextDouble() < dense) {
                    before.put(earlier, WHY.get(random.nextInt(WHY.size())));
                }
            }
            after.put("S" + k, before);
            seconds.put("S" + k, one(8) ? 0 : MINUTE * (1 + random.nextInt(20)));
            steps.add(step("S" + k, k == heavy));
        }
        for (int k = random.nextInt(3); k > 0; k--) {
            window();
        }
        List<Choice> choices = new ArrayList<>();
        for (int k = random.nextInt(3); k > 0; k--) {
            choices.add(choice("O" + k));
        }
        List<Consumable> consumables = List.of(
                new Consumable("LOCKER", "locker", "", 0, 10 * MINUTE, ""),
                new Consumable("SEALANT", "sealant", "", 0, 720 * MINUTE, ""));
        Collections.shuffle(steps, random);
        return RandomUnits.unit(
                new UnitKeys.Renewal(List.of(), consumables, List.of()),
                new UnitKeys.Build(holds, windows, steps, choices, List.of(), List.of()),
                handling());
    }

    private Step step(String id, boolean heavy) {
        Map<String, Why> before = needs(id);
        List<String> tools = TOOLS.stream().filter(tool -> one(4)).toList();
        String hold = "";
        if (one(4) && !before.isEmpty()) {
            hold = "H" + holds.size();
            holds.add(new HoldPoint(
                    hold,
                    "reading at " + id,
                    List.of(),
                    (1 + random.nextInt(30)) / 100.0,
                    List.copyOf(before.keySet()),
                    Set.of()));
        }
        double undo = MINUTE * random.nextInt(10);
        return new Step(
                id,
                "Do " + id + ".",
                any(AT),
                new Step.Order(before, Map.of()),
                new Step.Time(Objects.requireNonNull(seconds.get(id)), ""),
                tools,
                new Step.Undoing(Undo.SLOW, undo, List.of()),
                new Step.Care(hold, List.of(), "", ""),
                new Step.Parts(
                        List.of(),
                        heavy ? List.of("carrier") : List.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        one(3) ? List.of(one(3) ? "SEALANT" : "LOCKER") : List.of()),
                new Step.Reading("", Phase.NONE),
                List.of(),
                one(4) ? 2 : 1,
                Set.of());
    }

    private Map<String, Why> needs(String id) {
        return after.getOrDefault(id, Map.of());
    }

    private Set<String> leading(String id) {
        Set<String> found = new LinkedHashSet<>();
        List<String> open = new ArrayList<>(needs(id).keySet());
        while (!open.isEmpty()) {
            String one = open.remove(0);
            if (found.add(one)) {
                open.addAll(needs(one).keySet());
            }
        }
        return found;
    }

    private void window() {
        String closes = "S" + random.nextInt(size);
        List<String> before = List.copyOf(leading(closes));
        if (!before.isEmpty()) {
            String opens = any(before);
            double bare = seconds.entrySet().stream()
                    .filter(e -> e.getKey().equals(closes)
                            || (before.contains(e.getKey())
                                    && leading(e.getKey()).contains(opens)))
                    .mapToDouble(Map.Entry::getValue)
                    .sum();
            double more = one(3) ? 60 + random.nextInt(120) : random.nextInt(30);
            windows.add(new Window(
                    "W" + windows.size(), "window " + windows.size(), bare + MINUTE * (1 + more), opens, closes, ""));
        }
    }

    private Choice choice(String id) {
        Map<String, Side> sides = new LinkedHashMap<>();
        for (String name : one(3) ? List.of("first", "second", "third") : List.of("first", "second")) {
            List<List<String>> before = new ArrayList<>();
            if (one(2)) {
                int early = random.nextInt(size - 1);
                List<String> pair = List.of("S" + early, "S" + (early + 1 + random.nextInt(size - early - 1)));
                before.add(one(4) ? List.of(pair.get(1), pair.get(0)) : pair);
            }
            sides.put(
                    name,
                    new Side(
                            before,
                            drops(),
                            one(4) ? List.of("S" + random.nextInt(size)) : List.of(),
                            one(2) ? MINUTE * (random.nextInt(31) - 15) : 0,
                            "why " + name));
        }
        return new Choice(id, "about " + id, sides, "first");
    }

    /** A pair that no window hangs on. */
    private List<List<String>> drops() {
        String later = "S" + random.nextInt(size);
        boolean hangs = windows.stream()
                .anyMatch(w -> w.closes().equals(later) || leading(w.closes()).contains(later));
        List<String> before = List.copyOf(needs(later).keySet());
        return hangs || before.isEmpty() || one(2) ? List.of() : List.of(List.of(any(before), later));
    }

    private UnitKeys.Handling handling() {
        boolean even = one(2);
        Map<String, Double> turn = new LinkedHashMap<>();
        List<String> stands = List.of("FU", "RU", "LU");
        stands.forEach(from -> stands.stream()
                .filter(to -> !to.equals(from))
                .forEach(to -> turn.put(from + "-" + to, MINUTE * (even ? 3 : random.nextInt(9)))));
        Map<String, Double> tools = new LinkedHashMap<>();
        TOOLS.forEach(tool -> tools.put(tool, MINUTE * random.nextInt(6)));
        return new UnitKeys.Handling(turn, tools, MINUTE * random.nextInt(3), Map.of("carrier", 2.0));
    }

    private BuildState present(Unit unit) {
        List<String> ids =
                new ArrayList<>(unit.type().steps().stream().map(Step::id).toList());
        Collections.shuffle(ids, random);
        List<String> done = new ArrayList<>();
        int many = one(2) ? 0 : random.nextInt(size);
        boolean straight = !one(4);
        for (int k = 0; k < many; k++) {
            ids.stream()
                    .filter(id -> !done.contains(id)
                            && (!straight || done.containsAll(needs(id).keySet())))
                    .findFirst()
                    .ifPresent(done::add);
        }
        Map<String, Double> ago = new LinkedHashMap<>();
        done.forEach(id -> ago.put(id, MINUTE * random.nextInt(one(4) ? 1500 : 40)));
        Map<String, Double> arrives = new LinkedHashMap<>();
        Set<String> awaited = new HashSet<>();
        for (int k = random.nextInt(3); k > 0; k--) {
            awaited.add(any(ids));
        }
        awaited.forEach(id -> arrives.put(id, MINUTE * (one(2) ? random.nextInt(90) : random.nextInt(5000))));
        double day = List.of(0.0, 600.0, 600.0, 2400.0, 10_800.0).get(random.nextInt(5));
        return new BuildState(done, random.nextBoolean(), ago, arrives, new Weights(day));
    }
}
