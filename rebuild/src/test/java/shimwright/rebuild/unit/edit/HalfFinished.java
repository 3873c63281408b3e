package shimwright.rebuild.unit.edit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Random;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;
import shimwright.rebuild.unit.begin.Construction.Shift;
import shimwright.rebuild.unit.begin.FirstUnit;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Unit files as they lie about half finished: begun from any construction or copied from a shipped one, with entries gone, copied,
 * renamed and emptied, variants made, strip-downs put in and gaps mended at random.
 */
final class HalfFinished {
    private static final List<UnitType> SHIPPED =
            List.of(shipped("hollinbridge-hb5.yaml"), shipped("ambleholt-l5-74.yaml"));

    private static UnitType shipped(String name) {
        try (InputStream in = Objects.requireNonNull(UnitFiles.class.getResourceAsStream("/units/" + name))) {
            return UnitFiles.read(name, in.readAllBytes()).outcome().orElseThrow();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private final Random random;

    HalfFinished(long seed) {
        random = new Random(seed);
    }

    /** A first unit of a random box. */
    private UnitType begun() {
        if (random.nextInt(6) == 0) {
            UnitType like = SHIPPED.get(random.nextInt(SHIPPED.size()));
            return kept(like, new UnitEdit.CopyAs("Old Works", "half finished")).orElseThrow();
        }
        Construction box = box();
        while (!box.faults().isEmpty()) {
            box = box();
        }
        String text = FirstUnit.text(box, "Old Works", "half finished").orElseThrow();
        return UnitFiles.read("begun.yaml", text).outcome().orElseThrow();
    }

    private <T> T one(T[] of) {
        return of[random.nextInt(of.length)];
    }

    private Construction box() {
        Set<Housing> housings = EnumSet.noneOf(Housing.class);
        for (Housing housing : Housing.values()) {
            if (random.nextBoolean()) {
                housings.add(housing);
            }
        }
        int gears = Construction.FEWEST + random.nextInt(Construction.MOST - Construction.FEWEST + 1);
        Layout layout = one(Layout.values());
        boolean line = layout == Layout.IN_LINE;
        return new Construction(
                layout,
                housings,
                random.ints(gears, 0, 4).boxed().toList(),
                line ? random.nextInt(gears + 1) : 0,
                one(Reverse.values()),
                one(Shift.values()),
                line ? random.nextBoolean() ? 1 : 3 : 0);
    }

    /** A begun unit after some random changes; those that are refused leave it as it is. */
    UnitType unit() {
        UnitType type = begun();
        int changes = random.nextInt(6);
        for (int i = 0; i < changes; i++) {
            type = kept(type, change(type)) instanceof Outcome.Ok<UnitType> ok ? ok.value() : type;
        }
        return type;
    }

    /** Any change: an entry taken out with or without its mentions, a copy under another id, a gap mended. */
    private UnitEdit change(UnitType type) {
        Map<String, Object> tree = UnitTree.of(type);
        List<FileSection> sections = FileSection.all().stream()
                .filter(section -> !section.single() && !section.ids(tree).isEmpty())
                .toList();
        FileSection section = sections.get(random.nextInt(sections.size()));
        List<String> ids = section.ids(tree);
        int index = random.nextInt(ids.size());
        List<UnitGap> gaps = UnitGap.of(type);
        if (random.nextInt(3) == 0 && !gaps.isEmpty()) {
            return mend(type, gaps.get(random.nextInt(gaps.size())).kind());
        }
        Map<String, Object> there = section.entries(tree).get(index);
        String id = ids.get(index);
        return switch (random.nextInt(8)) {
            case 0, 1, 2 -> new DropEntry(section.name(), id, random.nextInt(4) > 0);
            case 3 -> otherwise(type);
            case 4 -> emptied(section, id, there);
            case 5 -> renamed(section, id, there);
            case 6 -> strip(type);
            default -> copied(section, there);
        };
    }

    private static UnitEdit copied(FileSection section, Map<String, Object> there) {
        Map<String, Object> copy = new LinkedHashMap<>(there);
        copy.remove("id");
        copy.remove(FileSection.KEY);
        return new PutEntry(section.name(), "", copy);
    }

    private Item item(UnitType type) {
        return type.items().get(random.nextInt(type.items().size()));
    }

    /** A part more, gone or stamped otherwise: in all of them, or in a variant of its own. */
    private UnitEdit otherwise(UnitType type) {
        if (type.items().isEmpty() || type.steps().isEmpty()) {
            return new UnitEdit.Weigh(40);
        }
        Item item = item(type);
        String step = type.steps().get(random.nextInt(type.steps().size())).id();
        UnitEdit change = switch (random.nextInt(4)) {
            case 0 -> new UnitEdit.RemoveItem(item.id());
            case 1 -> new UnitEdit.AddItem("oil slinger", "", 1 + random.nextInt(3), step);
            case 2 -> mend(type, UnitGap.Kind.FASTENER);
            default -> new UnitEdit.NameItem(item.id(), "the " + item.name(), "6307 C3", random.nextBoolean());
        };
        String like = type.variants().keySet().iterator().next();
        return random.nextBoolean() ? change : new AsVariant(like, item.name(), "as it was", "otherwise", change);
    }

    /** An entry without some of its keys, or with empty lists under them. */
    private UnitEdit emptied(FileSection section, String id, Map<String, Object> there) {
        Map<String, Object> less = new LinkedHashMap<>(there);
        for (String key : there.keySet()) {
            if (random.nextInt(3) == 0 && !key.equals("id") && !key.equals(FileSection.KEY)) {
                if (there.get(key) instanceof List<?> && random.nextBoolean()) {
                    less.put(key, List.of());
                } else {
                    less.remove(key);
                }
            }
        }
        return new PutEntry(section.name(), id, less);
    }

    private static UnitEdit renamed(FileSection section, String id, Map<String, Object> there) {
        Map<String, Object> other = new LinkedHashMap<>(there);
        String key = there.containsKey(FileSection.KEY) ? FileSection.KEY : "id";
        if (there.containsKey(key)) {
            other.put(key, there.get(key) + "_b");
        }
        return new PutEntry(section.name(), id, other);
    }

    /** A few things off in any order. */
    private UnitEdit strip(UnitType type) {
        List<Removal> off = new ArrayList<>();
        for (int n = random.nextInt(6); n > 0 && !type.items().isEmpty(); n--) {
            Item item = item(type);
            boolean known = random.nextInt(4) > 0;
            off.add(new Removal(
                    known ? item.name() : "thing " + n,
                    known ? List.of(item.id()) : List.of(),
                    off.isEmpty() || random.nextBoolean() ? List.of() : List.of(random.nextInt(off.size())),
                    random.nextBoolean(),
                    List.of(),
                    random.nextBoolean()
                            ? Removal.Found.NOTHING
                            : new Removal.Found("", "seal", "up", "4 x M8x1.25 8.8", "", "grey paste")));
        }
        return new StripDownOrder(off);
    }

    /** The gaps of a unit in any order. */
    List<UnitGap> shuffled(UnitType type) {
        List<UnitGap> gaps = new ArrayList<>(UnitGap.of(type));
        Collections.shuffle(gaps, random);
        return gaps;
    }

    /** What a person would say to a gap; of one that takes several the first. */
    UnitEdit mend(UnitType type, UnitGap.Kind gap) {
        String step = type.steps().get(random.nextInt(type.steps().size())).id();
        return switch (gap) {
            case MASS -> new UnitEdit.Weigh(38);
            case FLUID -> new UnitEdit.Fill("GL-4 75W-80", 1.8e-3, "lower lip of the filler");
            case FASTENER -> new UnitEdit.AddFastener("cover", "M8x30", "8.8", 8, 22, "guess", step);
            case CLEARANCE ->
                new AddClearance(
                        "end play",
                        Clearance.Sense.END_PLAY,
                        0.05e-3,
                        0.15e-3,
                        "guess",
                        "under the retainer",
                        new AddClearance.Shims(0.044, 0.052, 0.2e-3, 1e-3),
                        true,
                        "dial indicator 0.01 mm",
                        step);
            case PART -> {
                Item bare = type.items().stream()
                        .filter(item -> item.renew() && item.part().isBlank())
                        .findFirst()
                        .orElseThrow();
                yield new UnitEdit.NameItem(bare.id(), bare.name(), "25x47x7", true);
            }
            case ORDER -> ordered(type);
            case UNREAD -> unread(type);
            case WEAR ->
                new PutEntry(
                        "wear_limits",
                        "",
                        Map.of(
                                "what", "ring to dog gap",
                                "kind", "length",
                                "as_new", List.of("1.0 mm", "1.5 mm"),
                                "limit", "0.5 mm",
                                "direction", "min",
                                "how", "feeler at three places",
                                "origin", "common practice"));
            case PROOF ->
                new PutEntry(
                        "hold_points",
                        "",
                        Map.of(
                                "what", "all gears engage",
                                "step",
                                        type.steps()
                                                .get(type.steps().size() - 1)
                                                .id(),
                                "checks", List.of(Map.of("id", "shift", "what", "each gear engages by hand"))));
            case DRAWING -> {
                FileSection once = FileSection.find(FileSection.ONCE).orElseThrow();
                Map<String, Object> entry =
                        new LinkedHashMap<>(once.entries(UnitTree.of(type)).get(0));
                entry.put("scheme", "false");
                yield new PutEntry(FileSection.ONCE, FileSection.ONCE, entry);
            }
            case VARIANT -> new PutEntry("tell_tales", "", Map.of("look", "tag", "weight", "weak", "shows", Map.of()));
        };
    }

    /** What no step reads was a mistake and goes out again. */
    private static UnitEdit unread(UnitType type) {
        return type.clearances().stream()
                .map(Clearance::id)
                .filter(id ->
                        type.steps().stream().noneMatch(step -> step.clearance().equals(id)))
                .findFirst()
                .map(id -> new DropEntry("clearances", id, true))
                .orElseGet(() -> type.holdPoints().stream()
                        .map(UnitType.HoldPoint::id)
                        .filter(id -> type.steps().stream()
                                .noneMatch(step -> step.hold().equals(id)))
                        .findFirst()
                        .map(id -> new DropEntry("hold_points", id, true))
                        .orElseThrow());
    }

    /** The unit with a gap mended; of many steps that wait by habit or parts without a stamp now and then one, else all in one go. */
    Outcome<UnitType> mended(UnitType type, UnitGap.Kind gap) {
        if (gap == UnitGap.Kind.ORDER && random.nextInt(10) > 0) {
            return allOrdered(type);
        }
        if (gap == UnitGap.Kind.PART && random.nextInt(10) > 0) {
            return allNamed(type);
        }
        return kept(type, mend(type, gap));
    }

    private static Outcome<UnitType> allNamed(UnitType type) {
        UnitType named = type;
        for (Item item : type.items()) {
            if (item.renew() && item.part().isBlank()) {
                named = new UnitEdit.NameItem(item.id(), item.name(), "25x47x7", true)
                        .on(named)
                        .orElseThrow();
            }
        }
        return UnitTree.read("named.yaml", UnitTree.of(named)).outcome();
    }

    /** A change as the shop keeps it: written, and read again with all checks. */
    private static Outcome<UnitType> kept(UnitType type, UnitEdit change) {
        return UnitEdit.text(type, change)
                .flatMap(text -> UnitFiles.read(type.id() + ".yaml", text).outcome());
    }

    private static Outcome<UnitType> allOrdered(UnitType type) {
        FileSection steps = FileSection.find("steps").orElseThrow();
        Map<String, Object> tree = UnitTree.of(type);
        List<Map<String, Object>> all = new ArrayList<>();
        for (Map<String, Object> step : steps.entries(tree)) {
            Map<String, Object> entry = new LinkedHashMap<>(step);
            if (step.get("after") instanceof Map<?, ?> after) {
                Map<String, Object> now = new LinkedHashMap<>();
                after.forEach((id, why) -> now.put(id.toString(), why.equals("habit") ? "same_part" : why));
                entry.put("after", now);
            }
            all.add(entry);
        }
        steps.put(tree, all);
        return UnitTree.read("ordered.yaml", tree).outcome();
    }

    /** The first step that waits by habit waits for the same part instead. */
    private static UnitEdit ordered(UnitType type) {
        FileSection steps = FileSection.find("steps").orElseThrow();
        Map<String, Object> tree = UnitTree.of(type);
        int index = 0;
        while (!type.steps().get(index).after().containsValue(Step.Why.HABIT)) {
            index++;
        }
        Map<String, Object> entry = new LinkedHashMap<>(steps.entries(tree).get(index));
        Map<String, Object> after = new LinkedHashMap<>();
        type.steps()
                .get(index)
                .after()
                .forEach((id, why) -> after.put(
                        id, why == Step.Why.HABIT ? "same_part" : why.name().toLowerCase(java.util.Locale.ROOT)));
        entry.put("after", after);
        return new PutEntry("steps", steps.ids(tree).get(index), entry);
    }
}
