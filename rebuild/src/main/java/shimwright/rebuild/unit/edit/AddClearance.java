package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A clearance that can be set by travel at once: its limits, where its shims go and which way a thicker one acts; with two steps,
 * one that reads it with trial shims and one that reads it with the chosen ones.
 *
 * @param name in the trade's words
 * @param sense end play, backlash or ring play; a preload and a distance are refused, since travel reads neither
 * @param lower lower limit, m, 0 or more
 * @param upper upper limit, m, above the lower
 * @param origin where the limits come from: book and page, told, common practice, guess
 * @param where where the shims go
 * @param shims sizes of the shims
 * @param closes true where a thicker shim closes it
 * @param gauge what it is read with, in words
 * @param after the step after which it can be read
 */
public record AddClearance(
        String name,
        Clearance.Sense sense,
        double lower,
        double upper,
        String origin,
        String where,
        Shims shims,
        boolean closes,
        String gauge,
        String after)
        implements UnitEdit {
    /** Readings that agree so far have settled, and pieces may differ so much round their ring, m; common practice, no source. */
    private static final double SETTLED = 0.02e-3;

    private static final double SPREAD = 0.01e-3;
    /** Common practice, no source. */
    private static final double MINUTES = 15 * 60;

    private static final int MOST_SHIMS = 3;

    /** Sizes of the shims, m. */
    public record Shims(double inner, double outer, double thinnest, double thickest) {}

    @Override
    public Outcome<UnitType> on(UnitType type) {
        Step before = type.steps().stream()
                .filter(step -> step.id().equals(after))
                .findFirst()
                .orElse(null);
        if (before == null) {
            return Outcome.refused(Refusal.of(
                    "after", "there is no step \"" + after + "\"", "Choose after which step it can be read"));
        }
        if (sense == Clearance.Sense.PRELOAD || sense == Clearance.Sense.DISTANCE || lower < 0) {
            return Outcome.refused(Refusal.of(
                    "sense",
                    "travel reads no preload and no distance",
                    "A preload is proven by its turning torque, a distance by its lengths: put it into the file, the shelf gives"
                            + " it out and takes it back"));
        }
        String id = letter(type);
        String family = TypeParts.freeId("F", type.shimFamilies().keySet());
        String item = TypeParts.freeId(
                "shim_" + id, type.items().stream().map(Item::id).toList());
        String tool = tool(type);
        Clearance clearance = new Clearance(
                id,
                name,
                sense,
                new Clearance.Limits(lower, upper, (lower + upper) / 2, 0, "", origin),
                measuring(tool),
                List.of(new Clearance.Position(
                        "s" + id.toUpperCase(Locale.ROOT), where, family, 1, MOST_SHIMS, closes ? -1 : 1, item)),
                List.of(),
                new Clearance.Heating(0, ""),
                List.of(),
                List.of(),
                List.of(),
                Set.of());
        Map<String, ShimFamily> families = new LinkedHashMap<>(type.shimFamilies());
        families.put(
                family,
                new ShimFamily(
                        "shims for " + name, shims.outer(), shims.inner(), shims.thinnest(), shims.thickest(), SPREAD));
        List<Clearance> clearances =
                Stream.concat(type.clearances().stream(), Stream.of(clearance)).toList();
        List<Item> items = Stream.concat(type.items().stream(), Stream.of(Item.plain(item, "shims for " + name, "", 1)))
                .toList();
        Map<String, String> tools = new LinkedHashMap<>(type.tools());
        tools.putIfAbsent(tool, gauge);
        List<String> order = new ArrayList<>(type.settingOrder());
        order.add(id);
        UnitType with = Component.with(type, "items", items);
        with = Component.with(with, "shim_families", families);
        with = Component.with(with, "clearances", clearances);
        with = Component.with(with, "setting_order", List.copyOf(order));
        with = Component.with(with, "tools", tools);
        return Outcome.ok(Component.with(with, "steps", steps(type, before, id, item, tool)));
    }

    @Override
    public String words() {
        return name;
    }

    private Clearance.Measuring measuring(String tool) {
        List<String> how = List.of(
                "Turn the shaft ten times each way so that the bearings settle.",
                "Push it one way, set the gauge to zero, push it the other way and read; three times, turning between.");
        return new Clearance.Measuring(Clearance.Method.TRAVEL, tool, "", "", List.of(), 1, 3, SETTLED, 1, 0, how, "");
    }

    /** The two readings follow the step; what would shut in what that step fitted waits for the second. */
    private List<Step> steps(UnitType type, Step before, String id, String item, String tool) {
        List<String> taken = type.steps().stream().map(Step::id).toList();
        String trial = TypeParts.freeId("P", taken);
        String last = TypeParts.freeId(
                "P", Stream.concat(taken.stream(), Stream.of(trial)).toList());
        Step reads = reading(
                TypeParts.step(
                        trial,
                        "Trial shims in. Read " + name + ".",
                        before.at(),
                        Map.of(after, Step.Why.SAME_PART),
                        List.of(item)),
                id,
                Step.Phase.TRIAL,
                tool);
        Step proves = reading(
                TypeParts.step(
                        last,
                        "Chosen shims in. Read " + name + " again.",
                        before.at(),
                        Map.of(trial, Step.Why.SAME_PART),
                        List.of()),
                id,
                Step.Phase.FINAL,
                tool);
        List<Step> steps = new ArrayList<>();
        for (Step step : type.steps()) {
            steps.add(step.after().get(after) == Step.Why.BLOCKED ? waiting(step, last) : step);
        }
        // of steps of one id, which are several variants', after the last
        int at = steps.size();
        while (!steps.get(at - 1).id().equals(after)) {
            at--;
        }
        steps.addAll(at, List.of(reads, proves));
        return steps;
    }

    private static Step waiting(Step step, String last) {
        Map<String, Step.Why> before = new LinkedHashMap<>(step.after());
        before.put(last, Step.Why.MEASURE_FIRST);
        return Component.with(step, "after", before);
    }

    private static Step reading(Step step, String clearance, Step.Phase phase, String tool) {
        Step reads = Component.with(step, "duration", MINUTES);
        reads = Component.with(reads, "tools", List.of(tool));
        reads = Component.with(reads, "clearance", clearance);
        return Component.with(reads, "phase", phase);
    }

    private static String letter(UnitType type) {
        List<String> taken = type.clearances().stream().map(Clearance::id).toList();
        for (char letter = 'a'; letter <= 'z'; letter++) {
            if (!taken.contains(String.valueOf(letter))) {
                return String.valueOf(letter);
            }
        }
        return TypeParts.freeId("c", taken);
    }

    private String tool(UnitType type) {
        return type.tools().entrySet().stream()
                .filter(entry -> entry.getValue().equals(gauge))
                .map(Map.Entry::getKey)
                .findFirst()
                .orElse(TypeParts.freeId("G", type.tools().keySet()));
    }
}
