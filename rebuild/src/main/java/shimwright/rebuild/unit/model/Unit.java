package shimwright.rebuild.unit.model;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.Material;
import shimwright.rebuild.unit.model.UnitType.Side;
import shimwright.rebuild.unit.model.UnitType.Station;
import shimwright.rebuild.unit.model.UnitType.Variant;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * A unit type resolved for one variant: everything of other variants is gone, every reference holds, nothing optional
 * is left. A look-up by an id that the unit does not have is a bug and throws {@link IllegalArgumentException}.
 *
 * @param type the unit type with only what holds for this variant
 * @param variant the variant's letter
 */
public record Unit(UnitType type, String variant) {

    /**
     * The same unit as one job builds it: with further steps, and with steps left out by one more choice that is always
     * taken. A step left out stays known by its id.
     *
     * @param more further steps
     * @param before pairs of steps, first before second
     * @param leftOut ids of steps that are not done
     */
    public Unit tailored(List<Step> more, List<List<String>> before, List<String> leftOut) {
        Side side = new Side(before, List.of(), leftOut, 0, "What this job leaves out or adds.");
        Choice own = new Choice("this-job", "what this job leaves out or adds", Map.of("so", side), "so");
        return with(Map.of("steps", joined(type.steps(), more), "choices", joined(type.choices(), List.of(own))));
    }

    /** The same unit with other limits: clearances as a job has them. */
    public Unit withClearances(List<Clearance> clearances) {
        return with(Map.of("clearances", List.copyOf(clearances)));
    }

    private Unit with(Map<String, Object> changed) {
        Object[] values = Component.of(UnitType.class).stream()
                .map(component -> changed.getOrDefault(component.key(), component.in(type)))
                .toArray();
        return new Unit(Component.make(UnitType.class, values), variant);
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        List<T> all = new ArrayList<>(some);
        all.addAll(more);
        return List.copyOf(all);
    }

    /** The variant's full name. */
    public String variantName() {
        return mapped(type.variants(), variant, "variant").name();
    }

    /** What this variant is. */
    public Variant variantFacts() {
        return mapped(type.variants(), variant, "variant");
    }

    /** The step of that id; an id that the unit does not have is a bug and throws. */
    public Step step(String id) {
        return listed(type.steps(), Step::id, id, "step");
    }

    /** The step, where the unit has one of that id; for what a person typed. */
    public Optional<Step> findStep(String id) {
        return type.steps().stream().filter(s -> s.id().equals(id)).findFirst();
    }

    /** The clearance of that id; an id that the unit does not have is a bug and throws. */
    public Clearance clearance(String id) {
        return listed(type.clearances(), Clearance::id, id, "clearance");
    }

    /** The item of that id; an id that the unit does not have is a bug and throws. */
    public Item item(String id) {
        return listed(type.items(), Item::id, id, "item");
    }

    /** The hold point of that id; an id that the unit does not have is a bug and throws. */
    public HoldPoint holdPoint(String id) {
        return listed(type.holdPoints(), HoldPoint::id, id, "hold point");
    }

    /** The fastener of that id; an id that the unit does not have is a bug and throws. */
    public Fastener fastener(String id) {
        return listed(type.fasteners(), Fastener::id, id, "fastener");
    }

    /** The consumable of that id; an id that the unit does not have is a bug and throws. */
    public Consumable consumable(String id) {
        return listed(type.consumables(), Consumable::id, id, "consumable");
    }

    /** The time window of that id; an id that the unit does not have is a bug and throws. */
    public Window window(String id) {
        return listed(type.windows(), Window::id, id, "window");
    }

    /** The wear limit of that id; an id that the unit does not have is a bug and throws. */
    public WearLimit wearLimit(String id) {
        return listed(type.wearLimits(), WearLimit::id, id, "wear limit");
    }

    /** The pair of gears of that id; an id that the unit does not have is a bug and throws. */
    public GearPair gear(String id) {
        return listed(type.gears(), GearPair::id, id, "gear pair");
    }

    /** The shaft of that id; an id that the unit does not have is a bug and throws. */
    public Section.Shaft shaft(String id) {
        return listed(type.section().shafts(), Section.Shaft::id, id, "shaft");
    }

    /** The station of that id; an id that the unit does not have is a bug and throws. */
    public Station station(String id) {
        return mapped(type.stations(), id, "station");
    }

    /** The material of that id; an id that the unit does not have is a bug and throws. */
    public Material material(String id) {
        return mapped(type.materials(), id, "material");
    }

    /** The shim family of that id; an id that the unit does not have is a bug and throws. */
    public ShimFamily shimFamily(String id) {
        return mapped(type.shimFamilies(), id, "shim family");
    }

    /** What a tool or gauge is. */
    public String tool(String id) {
        return mapped(type.tools(), id, "tool");
    }

    /** The kit of this variant; empty where the file names none. */
    public Optional<Kit> kit() {
        String id = variantFacts().kit();
        return type.kits().stream().filter(kit -> kit.id().equals(id)).findFirst();
    }

    /**
     * What goes in with an item when another is put in: a bevel pair is run in together and is replaced as a pair (common
     * practice, no source).
     */
    public List<Item> pairedWith(String item) {
        return type.gears().stream()
                .filter(gear -> !gear.straight() && gear.centreDistance() == 0)
                .filter(gear ->
                        !gear.driverItem().isBlank() && !gear.drivenItem().isBlank())
                .filter(gear ->
                        gear.driverItem().equals(item) || gear.drivenItem().equals(item))
                .map(gear -> gear.driverItem().equals(item) ? gear.drivenItem() : gear.driverItem())
                .map(this::item)
                .toList();
    }

    /** The clearance for which shims at this position are chosen: the one that lists it first. */
    public Clearance clearanceOf(String position) {
        return type.clearances().stream()
                .filter(c -> c.positions().get(0).id().equals(position))
                .findFirst()
                .or(() -> type.clearances().stream()
                        .filter(c -> c.positions().stream().anyMatch(p -> p.id().equals(position)))
                        .findFirst())
                .orElseThrow(() -> missing("position", position));
    }

    /** A place for shims, as the clearance describes it for which it is chosen. */
    public Position position(String id) {
        return listed(clearanceOf(id).positions(), Position::id, id, "position");
    }

    /** All places for shims, in setting order. */
    public List<String> positions() {
        Set<String> found = new LinkedHashSet<>();
        for (String id : type.settingOrder()) {
            clearance(id).positions().forEach(p -> found.add(p.id()));
        }
        return List.copyOf(found);
    }

    /** The steps at which a reading of a clearance is taken, in file order. */
    public List<Step> stepsReading(String clearance, Phase phase) {
        return steps(s -> s.clearance().equals(clearance) && s.phase() == phase);
    }

    /** The steps that stand in a hold point, in file order. */
    public List<Step> stepsHolding(String holdPoint) {
        return steps(s -> s.hold().equals(holdPoint));
    }

    private List<Step> steps(Predicate<Step> wanted) {
        return type.steps().stream().filter(wanted).toList();
    }

    /** Seconds to turn the case from one station to another; 0 where it need not be turned. */
    public double turnOver(String from, String to) {
        return type.turnOver().getOrDefault(from + "-" + to, 0.0);
    }

    /**
     * Why one step waits for another, in words.
     *
     * @param step that waits
     * @param before that it waits for
     */
    public String reason(String step, String before) {
        Step waiting = step(step);
        String id = waiting.because().getOrDefault(before, "");
        if (!id.isEmpty()) {
            return mapped(type.reasons(), id, "reason");
        }
        Why why = waiting.after().get(before);
        return why == null ? "The choice taken asks for this order." : why.words();
    }

    /**
     * The items in the unit after these steps. A step that this variant has not, as in a job that moved to it, puts nothing in.
     *
     * @param done steps done, in the order in which they were done
     */
    public Set<String> itemsIn(Collection<String> done) {
        Set<String> in = new LinkedHashSet<>();
        for (String id : done) {
            findStep(id).ifPresent(step -> {
                step.removes().forEach(in::remove);
                in.addAll(step.installs());
            });
        }
        return in;
    }

    /** Items to lay out for a step: those that it builds up and those that it brings in. */
    public List<Item> itemsFor(String step) {
        Step taken = step(step);
        List<String> ids = new ArrayList<>(taken.builds());
        ids.addAll(taken.installs());
        return ids.stream().distinct().map(this::item).toList();
    }

    private static <T> T listed(List<T> list, Function<T, String> id, String wanted, String what) {
        for (T one : list) {
            if (id.apply(one).equals(wanted)) {
                return one;
            }
        }
        throw missing(what, wanted);
    }

    private static <T> T mapped(Map<String, T> map, String wanted, String what) {
        T found = map.get(wanted);
        return Objects.requireNonNullElseGet(found, () -> {
            throw missing(what, wanted);
        });
    }

    private static IllegalArgumentException missing(String what, String id) {
        return new IllegalArgumentException("this unit has no " + what + " " + id);
    }
}
