package shimwright.rebuild.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Step.Undo;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitKeys;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * Units by chance: sub-assemblies made at the bench or the press, each a chain with branches, that enter a chain of case
 * work; hold points with their chance, windows round parts of the case work, cures. Stations, tools and their times are those
 * of the demo unit.
 */
final class RandomUnits {
    private static final List<String> CASE = List.of("FU", "RU", "LU", "FLAT");
    private static final List<String> TOOLS = List.of("OVEN", "PRESS", "DI", "TRQ", "FEEL", "DM", "SEALD");

    private final Random random;
    private final List<Step> steps = new ArrayList<>();
    private final List<Window> windows = new ArrayList<>();
    private final List<HoldPoint> holds = new ArrayList<>();

    private RandomUnits(long seed) {
        this.random = new Random(seed);
    }

    /** A unit of about so many steps. */
    static Unit of(long seed, int size) {
        RandomUnits units = new RandomUnits(seed);
        units.fill(size);
        return units.unit();
    }

    /** The same with a circle, or with a window that cannot be kept. */
    static Unit impossible(long seed, int size) {
        RandomUnits units = new RandomUnits(seed);
        units.fill(size);
        if (seed % 2 == 0) {
            units.circle();
        } else {
            units.narrow();
        }
        return units.unit();
    }

    private void fill(int size) {
        int modules = 2 + random.nextInt(5);
        List<String> ends = new ArrayList<>();
        int each = size * 4 / 10 / modules;
        for (int m = 0; m < modules; m++) {
            String last = "";
            for (int k = 0; k < each; k++) {
                Map<String, Why> after = new LinkedHashMap<>();
                if (!last.isEmpty() && random.nextInt(8) > 0) {
                    after.put(last, Why.SAME_PART);
                }
                last = add("M" + m + "_" + k, random.nextInt(4) == 0 ? "PRESS" : "BENCH", after);
            }
            ends.add(last);
        }
        String before = "";
        for (int k = 0; steps.size() < size; k++) {
            Map<String, Why> after = new LinkedHashMap<>();
            if (!before.isEmpty() && random.nextInt(6) > 0) {
                after.put(before, random.nextInt(4) == 0 ? Why.MEASURE_FIRST : Why.BLOCKED);
            }
            if (k > 3 && random.nextInt(3) == 0) {
                after.put("C" + random.nextInt(k - 1), Why.SAME_PART);
            }
            if (!ends.isEmpty() && random.nextInt(3) == 0) {
                after.put(ends.remove(0), Why.SAME_PART);
            }
            before = add("C" + k, CASE.get(random.nextInt(random.nextBoolean() ? 2 : 4)), after);
        }
        windows();
    }

    private String add(String id, String at, Map<String, Why> after) {
        List<String> tools = new ArrayList<>();
        for (int t = random.nextInt(3); t > 0; t--) {
            String tool = TOOLS.get(random.nextInt(TOOLS.size()));
            if (!tools.contains(tool)) {
                tools.add(tool);
            }
        }
        String hold = "";
        if (random.nextInt(6) == 0 && !after.isEmpty()) {
            hold = "H" + holds.size();
            holds.add(new HoldPoint(
                    hold,
                    "reading at " + id,
                    List.of(),
                    random.nextInt(20) / 100.0 + 0.01,
                    List.of(after.keySet().iterator().next()),
                    Set.of()));
        }
        steps.add(step(id, at, after, 60 * (1 + random.nextInt(20)), tools, hold));
        return id;
    }

    private static Step step(
            String id, String at, Map<String, Why> after, double duration, List<String> tools, String hold) {
        return new Step(
                id,
                "Do " + id + ".",
                at,
                new Step.Order(after, Map.of()),
                new Step.Time(duration, ""),
                tools,
                new Step.Undoing(Undo.SLOW, duration / 2, List.of()),
                new Step.Care(hold, List.of(), "", ""),
                new Step.Parts(List.of(), List.of(), List.of(), List.of(), Map.of(), List.of()),
                new Step.Reading("", Phase.NONE),
                List.of(),
                1,
                Set.of());
    }

    /** Windows from a step to one that waits for it by others, all where the case need not be moved. */
    private void windows() {
        Set<String> used = new HashSet<>();
        for (int tries = 0; tries < 40 && windows.size() < 4; tries++) {
            Step closes = steps.get(random.nextInt(steps.size()));
            String middle = closes.after().keySet().stream().findFirst().orElse("");
            String opens = middle.isEmpty()
                    ? ""
                    : named(middle).after().keySet().stream().findFirst().orElse("");
            if (!opens.isEmpty()
                    && !used.contains(opens)
                    && !used.contains(middle)
                    && !used.contains(closes.id())
                    && inside(opens, closes.id()).stream()
                            .allMatch(id -> named(id).at().equals(named(opens).at()))) {
                used.addAll(Set.of(opens, middle, closes.id()));
                double bare = seconds(opens, closes.id());
                windows.add(new Window(
                        "W" + windows.size(),
                        "window " + windows.size(),
                        bare + 60 * random.nextInt(5),
                        opens,
                        closes.id(),
                        ""));
            }
        }
    }

    private Set<String> inside(String opens, String closes) {
        Set<String> inside = new HashSet<>(Set.of(closes));
        leading(closes).stream().filter(id -> leading(id).contains(opens)).forEach(inside::add);
        return inside;
    }

    private double seconds(String opens, String closes) {
        return inside(opens, closes).stream()
                .mapToDouble(id -> named(id).duration())
                .sum();
    }

    private Set<String> leading(String id) {
        Set<String> found = new HashSet<>();
        List<String> open = new ArrayList<>(named(id).after().keySet());
        while (!open.isEmpty()) {
            String next = open.remove(0);
            if (found.add(next)) {
                open.addAll(named(next).after().keySet());
            }
        }
        return found;
    }

    private Step named(String id) {
        return steps.stream().filter(s -> s.id().equals(id)).findFirst().orElseThrow();
    }

    private void circle() {
        while (true) {
            Step late = steps.get(random.nextInt(steps.size()));
            List<String> before = leading(late.id()).stream().sorted().toList();
            if (!before.isEmpty()) {
                Step early = named(before.get(random.nextInt(before.size())));
                Map<String, Why> after = new LinkedHashMap<>(early.after());
                after.put(late.id(), Why.HABIT);
                steps.set(
                        steps.indexOf(early),
                        step(early.id(), early.at(), after, early.duration(), early.tools(), early.hold()));
                return;
            }
        }
    }

    private void narrow() {
        for (Step closes : steps) {
            for (String opens : closes.after().keySet()) {
                windows.add(new Window(
                        "W9", "too short a window", seconds(opens, closes.id()) * 0.9, opens, closes.id(), ""));
                return;
            }
        }
    }

    private Unit unit() {
        UnitType t = DemoUnit.A.type();
        return unit(
                new UnitKeys.Renewal(List.of(), List.of(), List.of()),
                new UnitKeys.Build(holds, windows, steps, List.of(), List.of(), List.of()),
                new UnitKeys.Handling(t.turnOver(), t.toolTimes(), t.stationChange(), Map.of()));
    }

    /** A unit of nothing but these, with the stations and tools of the demo unit. */
    static Unit unit(UnitKeys.Renewal renewal, UnitKeys.Build build, UnitKeys.Handling handling) {
        UnitType t = DemoUnit.A.type();
        UnitType type = new UnitType(
                new UnitKeys.Identity(
                        t.format(),
                        "by-chance",
                        t.maker(),
                        t.model(),
                        t.about(),
                        true,
                        t.mass(),
                        t.ratedTorque(),
                        t.fluid(),
                        t.variants(),
                        List.of()),
                t.materials(),
                t.bench(),
                new UnitKeys.Parts(
                        List.of(),
                        t.section(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of()),
                new UnitKeys.Setting(Map.of(), List.of(), List.of()),
                renewal,
                build,
                List.of(),
                handling,
                Map.of(),
                List.of(),
                List.of());
        return new Unit(type, "A");
    }
}
