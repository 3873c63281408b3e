package shimwright.rebuild.unit.begin;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.begin.PartList.Group;
import shimwright.rebuild.unit.begin.PartList.Part;

/** The first unit file of a box that is in no file: usual parts, a usual order that is marked as such, a scheme for a drawing. */
public final class FirstUnit {
    /** What stands in the file where nobody can say it yet. */
    public static final String UNKNOWN = "not known yet";

    private static final String USUAL = "usual";
    private static final String TIMED = "    origin: common practice\n";
    private static final int LONGEST = 80;

    private final Construction built;
    private final PartList parts;
    private final Scheme scheme;
    private final StringBuilder out = new StringBuilder();
    private final Map<String, String> stepOf = new LinkedHashMap<>();

    private FirstUnit(Construction built) {
        this.built = built;
        this.parts = UsualParts.of(built);
        this.scheme = Scheme.of(built, parts);
    }

    /**
     * The text of the unit file.
     *
     * @param built how the box is built
     * @param maker who made it, as the person calls it
     * @param model what it is called; the id of the unit type is made of both
     * @return text that reads without a problem; refused: a name that is missing or too long, a box that cannot be, all at once
     */
    public static Outcome<String> text(Construction built, String maker, String model) {
        List<Refusal> faults = new ArrayList<>();
        name(faults, "maker", maker, "Write who made it, or \"maker not known\"");
        name(faults, "model", model, "Write what it is called, or what is cast on it");
        faults.addAll(built.faults());
        if (faults.isEmpty() && id(maker, model).isEmpty()) {
            faults.add(Refusal.of("model", "no letter or digit in it", "Give it a name in letters or digits"));
        }
        return faults.isEmpty()
                ? Outcome.ok(new FirstUnit(built).write(maker.strip(), model.strip()))
                : Outcome.refused(faults);
    }

    private static void name(List<Refusal> faults, String key, String typed, String hint) {
        if (typed.isBlank()) {
            faults.add(Refusal.of(key, "nothing typed", hint));
        } else if (typed.strip().length() > LONGEST) {
            faults.add(Refusal.of(key, "over " + LONGEST + " characters", "Shorten it"));
        }
    }

    /** The id of the unit type: maker and model in small letters and digits with hyphens between. */
    public static String id(String maker, String model) {
        return (maker + " " + model)
                .toLowerCase(Locale.ROOT)
                .replaceAll("[^a-z0-9]+", "-")
                .replaceAll("^-|-$", "");
    }

    /** A forward gear in words, 1 for the first; 0 is reverse. */
    public static String gear(int gear) {
        return Names.gear(gear);
    }

    private String write(String maker, String model) {
        head(maker, model);
        items();
        out.append(scheme.section());
        out.append("fasteners: []\nshim_families: {}\nclearances: []\nsetting_order: []\nwear_limits: []\n");
        out.append("consumables: []\nhold_points: []\n");
        out.append("reasons:\n  ").append(USUAL).append(": Usual for such a box; not seen on this one yet.\n");
        steps();
        return out.toString();
    }

    private void head(String maker, String model) {
        out.append(
                "# Begun without a file: what stands here is what such a box usually has, until it was seen on this one.\n");
        out.append("format: shimwright-unit 1\n");
        out.append("id: ").append(id(maker, model)).append('\n');
        out.append("maker: ").append(quoted(maker)).append('\n');
        out.append("model: ").append(quoted(model)).append('\n');
        out.append("about: ").append(quoted(about())).append('\n');
        out.append("mass: 0 kg\nrated_torque: 0 N.m\n");
        out.append("fluid: {spec: " + UNKNOWN + ", volume: 0 L, level: " + UNKNOWN + "}\n");
        out.append("variants:\n  A: {name: ").append(quoted(model)).append("}\ntell_tales: []\n");
        out.append("materials:\n");
        out.append("  casting: {name: cast aluminum, expansion: 21.8 um/m/K, hot_rise: 60 K}\n");
        out.append("  steel: {name: steel, expansion: 11.5 um/m/K, hot_rise: 75 K}\n");
        out.append("stations:\n  BENCH: {name: on the bench, room: 2}\n");
        out.append("  UP: {name: ").append(quoted(station())).append(", holds_case: true}\n");
        out.append("tools: {}\n");
    }

    private String station() {
        return parts.has("plate") ? "plate in the fixture" : "case open side up";
    }

    private String about() {
        String shafts = built.layout().words();
        if (built.countershafts() > 1) {
            shafts = shafts.replace("countershaft", "a set of " + built.countershafts() + " countershafts");
        }
        String gears = built.gears() + " forward gears, " + shafts;
        String housings = built.housings().stream()
                .sorted()
                .map(housing -> ", " + housing.words())
                .collect(Collectors.joining());
        return gears + housings + "; reverse: " + built.reverse().words() + "; "
                + built.shift().words() + ".";
    }

    private static String quoted(String text) {
        return '"' + text.replace("\\", "\\\\").replace("\"", "\\\"") + '"';
    }

    private void items() {
        out.append("items:\n");
        for (Part part : parts.all()) {
            out.append("  - {id: ").append(part.id()).append(", name: ").append(part.name());
            out.append(scheme.of(part.id()));
            if (part.quantity() > 1) {
                out.append(", quantity: ").append(part.quantity());
            }
            if (part.kind().renewed()) {
                out.append(", renew: true");
            }
            out.append(", material: ")
                    .append(part.kind() == PartKind.CASTING ? "casting" : "steel")
                    .append("}\n");
        }
    }

    private void steps() {
        out.append("steps:\n");
        Map<Group, String> ends = new EnumMap<>(Group.class);
        for (Group group : Group.values()) {
            List<Part> list = parts.of(group);
            String before = "";
            int number = 0;
            for (Part part : list) {
                number++;
                String id = group.name().charAt(0) + String.format(Locale.ROOT, "%02d", number);
                id = group == Group.COUNTER ? "K" + id.substring(1) : group == Group.CLOSE ? "E" + id.substring(1) : id;
                step(part, id, before, ends);
                before = id;
            }
            if (!list.isEmpty()) {
                ends.put(group, group.station().equals("BENCH") ? together(list, before) : before);
            }
        }
    }

    private void step(Part part, String id, String before, Map<Group, String> ends) {
        boolean bench = part.group().station().equals("BENCH");
        Map<String, String> after = new LinkedHashMap<>();
        if (part.group() == Group.CLOSE && part.kind() == PartKind.CASTING) {
            ends.forEach((group, end) -> after.put(end, "blocked"));
        }
        String onto = part.onto().isEmpty() ? "" : home(part, ends);
        if (!onto.isEmpty()) {
            after.put(onto, "same_part");
        }
        if (!before.isEmpty()) {
            after.putIfAbsent(before, "habit");
        }
        out.append("  - id: ").append(id).append('\n');
        out.append("    todo: Fit ").append(part.name()).append(".\n");
        out.append("    at: ").append(part.group().station()).append('\n');
        after(after);
        out.append("    duration: ")
                .append(part.kind().minutes())
                .append(" min\n")
                .append(TIMED);
        if (part.kind() == PartKind.SEAL) {
            out.append("    undo: destroys\n    destroys: [")
                    .append(part.name())
                    .append("]\n");
        }
        out.append(bench ? "    builds: [" : "    installs: [")
                .append(part.id())
                .append("]\n");
        String danger = switch (part.kind()) {
            case CASTING -> "lift";
            case BALL, CONE, CUP, HUB -> "press";
            case SNAP_RING -> "spring";
            default -> part.id().startsWith("detent") ? "spring" : "";
        };
        if (!danger.isEmpty()) {
            out.append("    dangers: [").append(danger).append("]\n");
        }
        stepOf.put(part.id(), id);
    }

    /** The step after which the part that this one is put onto is there: its own, or the one that brings its group into the case. */
    private String home(Part part, Map<Group, String> ends) {
        Group group = parts.all().stream()
                .filter(other -> other.id().equals(part.onto()))
                .findFirst()
                .orElseThrow()
                .group();
        return group == part.group() || !ends.containsKey(group)
                ? stepOf.getOrDefault(part.onto(), "")
                : group.station().equals("BENCH") ? ends.get(group) : stepOf.getOrDefault(part.onto(), "");
    }

    private void after(Map<String, String> after) {
        if (after.isEmpty()) {
            return;
        }
        out.append("    after: {");
        out.append(after.entrySet().stream()
                .map(entry -> entry.getKey() + ": " + entry.getValue())
                .collect(Collectors.joining(", ")));
        out.append("}\n");
        String because = after.entrySet().stream()
                .filter(entry -> entry.getValue().equals("habit"))
                .map(entry -> entry.getKey() + ": " + USUAL)
                .collect(Collectors.joining(", "));
        if (!because.isEmpty()) {
            out.append("    because: {").append(because).append("}\n");
        }
    }

    /** What was built up on the bench goes into the case as one. */
    private String together(List<Part> list, String last) {
        String id = last.charAt(0) + "X";
        out.append("  - id: ").append(id).append('\n');
        out.append("    todo: ").append(list.get(0).name()).append(", built up, into its place.\n");
        out.append("    at: UP\n");
        Map<String, String> after = new LinkedHashMap<>();
        list.forEach(part -> after.put(stepOf.get(part.id()), "same_part"));
        after.put(stepOf.get("main_case"), "same_part");
        after(after);
        out.append("    duration: 5 min\n" + TIMED + "    installs: [");
        out.append(list.stream().map(Part::id).collect(Collectors.joining(", ")))
                .append("]\n");
        return id;
    }
}
