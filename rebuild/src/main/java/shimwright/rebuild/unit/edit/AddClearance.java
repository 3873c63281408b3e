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
 * A clearance that can be set at once: its limits, where its shims go and which way a thicker one acts; with two steps, one that
 * reads it with trial shims and one that proves it with the chosen ones. A preload is read as the play that trial shims leave, and
 * proven by its turning torque; a distance is read as it stands, again and again until it is seated.
 *
 * @param name in the trade's words
 * @param sense what it is
 * @param lower lower limit, m, signed as play: 0 or more but of a preload
 * @param upper upper limit, m, above the lower; of a preload 0 or less
 * @param origin where the limits come from: book and page, told, common practice, guess
 * @param where where the shims go
 * @param shims sizes of the shims
 * @param closes true where a thicker shim closes it
 * @param gauge what it is read with, in words
 * @param after the step after which it can be read
 * @param proof what else the reading and its proof take
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
        String after,
        Proof proof)
        implements UnitEdit {
    /** Readings that agree so far have settled, and pieces may differ so much round their ring, m; common practice, no source. */
    private static final double SETTLED = 0.02e-3;

    private static final double SPREAD = 0.01e-3;
    /** Rings whose bore and outside agree so far are of one kind, m; common practice, no source. */
    private static final double SAME_RING = 0.2e-3;

    private static final int MOST_SHIMS = 3;

    /** One that travel reads, with shims that the file does not have. */
    public AddClearance(
            String name,
            Clearance.Sense sense,
            double lower,
            double upper,
            String origin,
            String where,
            Shims shims,
            boolean closes,
            String gauge,
            String after) {
        this(name, sense, lower, upper, origin, where, shims, closes, gauge, after, Proof.NONE);
    }

    /**
     * Sizes of the shims, m.
     *
     * @param item of the file that they are; empty where it has none
     */
    public record Shims(double inner, double outer, double thinnest, double thickest, String item) {
        /** Shims that the file does not have. */
        public Shims(double inner, double outer, double thinnest, double thickest) {
            this(inner, outer, thinnest, thickest, "");
        }
    }

    /**
     * What a reading takes that is no travel.
     *
     * @param offset what is added to each reading of a distance, such as half the bar that lies in the bores, m
     * @param drag least and most turning torque that proves a preload, N·m; empty where nobody said
     */
    public record Proof(double offset, List<Double> drag) {
        /** Nothing else. */
        public static final Proof NONE = new Proof(0, List.of());

        public Proof {
            drag = List.copyOf(drag);
        }
    }

    private boolean preload() {
        return sense == Clearance.Sense.PRELOAD;
    }

    private boolean distance() {
        return sense == Clearance.Sense.DISTANCE;
    }

    @Override
    public Outcome<UnitType> on(UnitType type) {
        Step before = type.steps().stream()
                .filter(step -> step.id().equals(after))
                .findFirst()
                .orElse(null);
        if (before == null) {
            return Outcome.refused(Refusal.of(
                    "after",
                    after.isEmpty() ? "no step is chosen" : "there is no step \"" + after + "\"",
                    "Choose after which step it can be read"));
        }
        if (preload() ? upper > 0 : lower < 0) {
            return Outcome.refused(Refusal.of(
                    "sense",
                    preload() ? "a preload with play" : "limits below 0",
                    "Only a preload is below 0, and it is so altogether"));
        }
        if (!shims.item().isEmpty()
                && type.items().stream().noneMatch(known -> known.id().equals(shims.item()))) {
            return Outcome.refused(Refusal.of("item", "there is no item " + shims.item(), "Load the page again"));
        }
        String id = letter(type);
        Map<String, ShimFamily> families = new LinkedHashMap<>(type.shimFamilies());
        String family = family(families);
        String item = shims.item().isEmpty()
                ? TypeParts.freeId(
                        "shim_" + id, type.items().stream().map(Item::id).toList())
                : shims.item();
        String tool = tool(type);
        List<Clearance> clearances = Stream.concat(
                        type.clearances().stream(), Stream.of(clearance(id, family, item, tool)))
                .toList();
        Stream<Item> fresh =
                shims.item().isEmpty() ? Stream.of(Item.plain(item, "shims for " + name, "", 1)) : Stream.empty();
        Map<String, String> tools = new LinkedHashMap<>(type.tools());
        tools.putIfAbsent(tool, gauge);
        List<String> order = new ArrayList<>(type.settingOrder());
        order.add(id);
        UnitType with = Component.with(
                type, "items", Stream.concat(type.items().stream(), fresh).toList());
        with = Component.with(with, "shim_families", families);
        with = Component.with(with, "clearances", clearances);
        with = Component.with(with, "setting_order", List.copyOf(order));
        with = Component.with(with, "tools", tools);
        ReadingSteps reading = new ReadingSteps(name, id, shims.item().isEmpty() ? List.of(item) : List.of(), tool);
        return Outcome.ok(
                preload() ? reading.provenByTorque(with, before, proof.drag()) : reading.readTwice(with, before));
    }

    private Clearance clearance(String id, String family, String item, String tool) {
        List<Clearance.Drag> drag = preload() && proof.drag().size() == 2
                ? List.of(new Clearance.Drag(
                        "with the chosen shims, oiled, without a seal",
                        proof.drag().get(0),
                        proof.drag().get(1),
                        0,
                        0,
                        Set.of()))
                : List.of();
        return new Clearance(
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
                drag,
                List.of(),
                Set.of());
    }

    /** Shims of the same ring are of one family, and lie in one drawer. */
    private String family(Map<String, ShimFamily> families) {
        for (Map.Entry<String, ShimFamily> known : families.entrySet()) {
            ShimFamily same = known.getValue();
            if (Math.abs(same.inner() - shims.inner()) < SAME_RING
                    && Math.abs(same.outer() - shims.outer()) < SAME_RING) {
                known.setValue(new ShimFamily(
                        same.name(),
                        same.outer(),
                        same.inner(),
                        Math.min(same.thinnest(), shims.thinnest()),
                        Math.max(same.thickest(), shims.thickest()),
                        same.spread()));
                return known.getKey();
            }
        }
        String family = TypeParts.freeId("F", families.keySet());
        families.put(
                family,
                new ShimFamily(
                        "shims for " + name, shims.outer(), shims.inner(), shims.thinnest(), shims.thickest(), SPREAD));
        return family;
    }

    @Override
    public String words() {
        return name;
    }

    private Clearance.Measuring measuring(String tool) {
        List<String> how = distance()
                ? List.of(
                        "Push it home and read.",
                        "Tap it, turn it ten times each way and read again, until three readings agree.")
                : List.of(
                        "Turn the shaft ten times each way so that the bearings settle.",
                        "Push it one way, set the gauge to zero, push it the other way and read; three times, turning"
                                + " between.");
        return new Clearance.Measuring(
                distance() ? Clearance.Method.SERIES : Clearance.Method.TRAVEL,
                tool,
                "",
                "",
                List.of(),
                1,
                3,
                SETTLED,
                1,
                distance() ? proof.offset() : 0,
                how,
                "");
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
