package shimwright.rebuild.plan.learn;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.FirstReading;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/**
 * A reading that is taken as found, before something comes off that ends it.
 *
 * @param id short, for the form
 * @param name what is read
 * @param kind a length, a torque for a drag, a number for turns
 * @param endedBy items after which it can be read no more, by id
 * @param again what reads it at the end: a clearance, a wear limit or a check; empty where nobody says
 * @param read true where it was read, or it was said why not
 * @param ended true where something is off that ends it
 */
public record AsFound(
        String id, String name, Kind kind, Set<String> endedBy, String again, boolean read, boolean ended) {
    /** What a finding of such a reading begins with. */
    public static final String LEAD = "as found: ";

    public AsFound {
        endedBy = Set.copyOf(endedBy);
    }

    /** True while it can still be taken. */
    public boolean open() {
        return !read && !ended;
    }

    /** True where it can be taken no more, and nobody said a word of it. */
    public boolean missed() {
        return !read && ended;
    }

    /** The field of the act that takes it. */
    public String field() {
        return kind == Kind.TORQUE ? "drag" : kind == Kind.NUMBER ? "count" : "play";
    }

    /**
     * The readings of a job: of the clearances of its unit and those that its file names; where it has none of the one or the other,
     * those that a gearbox usually has.
     *
     * @param unit as the job builds it
     * @param job what came off and what was read so far
     */
    public static List<AsFound> of(Unit unit, Job job) {
        Set<String> off = job.takenOff().stream()
                .flatMap(said -> said.what().items().stream())
                .collect(Collectors.toSet());
        Set<String> read = job.found().stream().map(said -> said.what().what()).collect(Collectors.toSet());
        List<AsFound> all = new ArrayList<>();
        for (Clearance clearance : unit.type().clearances()) {
            if (clearance.sense() != Clearance.Sense.DISTANCE) {
                boolean drag = clearance.sense() == Clearance.Sense.PRELOAD;
                String name = drag ? clearance.name() + ", drag" : clearance.name();
                Kind kind = drag ? Kind.TORQUE : Kind.LENGTH;
                all.add(made(clearance.id(), name, kind, ends(unit, clearance), clearance.id(), off, read));
            }
        }
        if (all.isEmpty()) {
            all.addAll(usualPlays(unit, off, read));
        }
        for (FirstReading first : unit.type().firstReadings()) {
            all.add(made(first.id(), first.what(), first.kind().quantity(), first.endedBy(), first.again(), off, read));
        }
        if (unit.type().firstReadings().isEmpty()) {
            all.addAll(usualOfParts(unit, off, read));
        }
        return List.copyOf(all);
    }

    private static AsFound made(
            String id, String name, Kind kind, Set<String> endedBy, String again, Set<String> off, Set<String> read) {
        boolean ended = endedBy.stream().anyMatch(off::contains);
        return new AsFound(id, name, kind, endedBy, again, read.contains(LEAD + name), ended);
    }

    /** The shims themselves, and what is fitted by the steps that the reading stands on. */
    private static Set<String> ends(Unit unit, Clearance clearance) {
        Set<String> ends = new LinkedHashSet<>();
        clearance.positions().forEach(position -> ends.add(position.item()));
        for (Step step : unit.type().steps()) {
            if (step.clearance().equals(clearance.id()) && step.phase() != Step.Phase.TRIAL) {
                Set<String> stands = new HashSet<>(Set.of(step.id()));
                step.after().forEach((before, why) -> {
                    if (why == Step.Why.SAME_PART || why == Step.Why.BLOCKED) {
                        stands.add(before);
                    }
                });
                unit.type().steps().stream()
                        .filter(other -> stands.contains(other.id()))
                        .flatMap(other -> Stream.concat(other.installs().stream(), other.builds().stream()))
                        .forEach(ends::add);
            }
        }
        ends.remove("");
        Set<String> trial =
                unit.type().items().stream().filter(Item::trial).map(Item::id).collect(Collectors.toSet());
        ends.removeAll(trial);
        return ends;
    }

    /** End play of each shaft, backlash, drag; common practice, no source. */
    private static List<AsFound> usualPlays(Unit unit, Set<String> off, Set<String> read) {
        List<Item> items = unit.type().items();
        Set<String> covers = covers(items);
        List<AsFound> all = new ArrayList<>();
        for (Item shaft : items) {
            String name = shaft.name().toLowerCase(Locale.ROOT);
            if (name.matches("(input|output|counter).*shaft.*|countershaft.*|differential case")
                    && !name.contains("seal")
                    && !name.matches(".*(nut|bearing|ring).*")) {
                Set<String> ends = new HashSet<>(covers);
                ends.add(shaft.id());
                String plain = name.replaceAll(" with .*", "");
                all.add(made(shaft.id(), "end play of the " + plain, Kind.LENGTH, ends, "", off, read));
            }
        }
        Set<String> wheels = named(items, ".*(final drive wheel|crown wheel|ring gear).*");
        if (!wheels.isEmpty()) {
            wheels.addAll(covers);
            all.add(made("backlash", "backlash of the final drive", Kind.LENGTH, wheels, "", off, read));
        }
        all.add(made("drag", "drag of the input shaft", Kind.TORQUE, covers, "", off, read));
        return List.copyOf(all);
    }

    /** Turns in each gear, floats of the wheels on their shaft, the gaps of the rings; common practice, no source. */
    private static List<AsFound> usualOfParts(Unit unit, Set<String> off, Set<String> read) {
        List<Item> items = unit.type().items();
        List<AsFound> all = new ArrayList<>();
        all.add(made(
                "turns",
                "turns of the input for ten of the output, gear by gear",
                Kind.NUMBER,
                covers(items),
                "",
                off,
                read));
        for (Item item : items) {
            String name = item.name().toLowerCase(Locale.ROOT);
            if (name.matches("(1st|2nd|3rd|[4-8]th) (wheel|gear)")) {
                all.add(made(item.id(), "float of the " + item.name(), Kind.LENGTH, Set.of(item.id()), "", off, read));
            } else if (name.matches(".*blocker ring.*")) {
                all.add(made(item.id(), "gap of the " + item.name(), Kind.LENGTH, Set.of(item.id()), "", off, read));
            }
        }
        return List.copyOf(all);
    }

    private static Set<String> covers(List<Item> items) {
        return named(items, ".*(cover|housing|bell|tail|case half|half of the case|plate|retainer).*");
    }

    private static Set<String> named(List<Item> items, String pattern) {
        return items.stream()
                .filter(item -> item.name().toLowerCase(Locale.ROOT).matches(pattern))
                .map(Item::id)
                .collect(Collectors.toCollection(HashSet::new));
    }
}
