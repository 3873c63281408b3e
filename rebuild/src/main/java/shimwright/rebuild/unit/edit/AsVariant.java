package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;

/**
 * A change that holds for a variant of its own: what was is the other variants', what is new is this one's, and a tell-tale says by
 * what they are told apart. What holds for the variant that it is like holds for it as well.
 *
 * @param like variant that it is like but for the change
 * @param look where to look to tell them apart
 * @param was what the others show there
 * @param is what it shows there
 * @param change what is different
 */
public record AsVariant(String like, String look, String was, String is, UnitEdit change) implements UnitEdit {
    private static final String ONLY = "only";
    private static final String ID = "id";
    private static final String STEPS = "steps";

    /** Keys of a step under which ids stand that a variant may not have. */
    private static final List<String> PARTS = List.of("builds", "installs", "removes", "fasteners", "consumables");

    /** The key that the variant gets: the first letter that no variant of the type has. */
    public static String key(UnitType type) {
        for (char letter = 'A'; letter <= 'Z'; letter++) {
            if (!type.variants().containsKey(String.valueOf(letter))) {
                return String.valueOf(letter);
            }
        }
        return TypeParts.freeId("variant", type.variants().keySet());
    }

    @Override
    public Outcome<UnitType> on(UnitType type) {
        return change.on(type).flatMap(changed -> {
            Split split = new Split(type, key(type), like);
            Map<String, Object> tree = split.of(UnitTree.of(type), UnitTree.of(changed));
            told(tree, type);
            return EntryFaults.read(
                    type, tree, "-", FileSection.find("variants").orElseThrow());
        });
    }

    /** The variant with what is different, and the tell-tale. */
    private void told(Map<String, Object> tree, UnitType type) {
        String key = key(type);
        Map<String, Object> variants = TypeParts.map(tree.getOrDefault("variants", Map.of()));
        Map<String, Object> own = TypeParts.map(Objects.requireNonNullElse(variants.get(like), Map.of()));
        own.put("name", type.model() + " " + key);
        List<Object> differs = new ArrayList<>((List<?>) own.getOrDefault("differs", List.of()));
        differs.add(look + ": " + is);
        own.put("differs", differs);
        variants.put(key, own);
        tree.put("variants", variants);
        FileSection section = FileSection.find("tell_tales").orElseThrow();
        List<Map<String, Object>> tales = new ArrayList<>();
        for (Map<String, Object> tale : section.entries(tree)) {
            Map<String, Object> shows = TypeParts.map(tale.getOrDefault("shows", Map.of()));
            if (shows.containsKey(like)) {
                shows.put(key, shows.get(like));
                tale.put("shows", shows);
            }
            tales.add(tale);
        }
        Map<String, Object> shows = new LinkedHashMap<>();
        type.variants().keySet().forEach(other -> shows.put(other, was));
        shows.put(key, is);
        Map<String, Object> tale = new LinkedHashMap<>();
        tale.put(ID, TypeParts.freeId("T", section.ids(tree)));
        tale.put("look", look);
        tale.put("weight", "strong");
        tale.put("shows", shows);
        tales.add(tale);
        section.put(tree, tales);
    }

    @Override
    public String words() {
        return "a variant: " + look + " " + is;
    }

    /** The two files laid into one another. */
    private static final class Split {
        private final Set<String> others;
        private final String key;
        private final String like;

        Split(UnitType type, String key, String like) {
            this.others = new LinkedHashSet<>(type.variants().keySet());
            this.key = key;
            this.like = like;
        }

        Map<String, Object> of(Map<String, Object> was, Map<String, Object> now) {
            Map<String, Object> tree = new LinkedHashMap<>(now);
            for (FileSection section : FileSection.all()) {
                boolean restricted =
                        section.keys().stream().anyMatch(c -> c.key().equals(ONLY));
                if (restricted && section.form() == FileSection.Shape.LIST) {
                    section(section, was, tree);
                } else if (!section.single()) {
                    kept(section, was, tree);
                }
            }
            return tree;
        }

        /** What stands for every variant stays for every variant, also what the change would take out. */
        private static void kept(FileSection section, Map<String, Object> was, Map<String, Object> now) {
            Map<String, Map<String, Object>> entries = byId(section, was);
            byId(section, now).forEach(entries::putIfAbsent);
            if (!entries.isEmpty()) {
                section.put(now, List.copyOf(entries.values()));
            }
        }

        private void section(FileSection section, Map<String, Object> was, Map<String, Object> now) {
            Map<String, Map<String, Object>> before = byId(section, was);
            Map<String, Map<String, Object>> after = byId(section, now);
            List<Map<String, Object>> entries = new ArrayList<>();
            before.forEach((id, old) -> {
                Map<String, Object> one = after.get(id);
                if (one == null) {
                    entries.add(theirs(old));
                } else if (one.equals(old)) {
                    entries.add(alike(old));
                } else if (section.name().equals(STEPS) && partsOnly(old, one)) {
                    entries.add(alike(joined(old, one)));
                } else {
                    entries.add(theirs(old));
                    entries.add(ours(one));
                }
            });
            after.forEach((id, one) -> {
                if (!before.containsKey(id)) {
                    entries.add(ours(one));
                }
            });
            if (!entries.isEmpty()) {
                section.put(now, entries);
            }
        }

        /** Entries by what they name themselves by; of several variants' the later with their number. */
        private static Map<String, Map<String, Object>> byId(FileSection section, Map<String, Object> tree) {
            Map<String, Map<String, Object>> byId = new LinkedHashMap<>();
            List<String> ids = section.ids(tree);
            List<Map<String, Object>> entries = section.entries(tree);
            for (int n = 0; n < ids.size(); n++) {
                byId.put(ids.get(n), entries.get(n));
            }
            return byId;
        }

        private static List<Object> list(Object value) {
            return new ArrayList<>((List<?>) value);
        }

        /** What the others keep. */
        private Map<String, Object> theirs(Map<String, Object> entry) {
            Map<String, Object> kept = new LinkedHashMap<>(entry);
            kept.putIfAbsent(ONLY, new ArrayList<Object>(others));
            return kept;
        }

        private Map<String, Object> ours(Map<String, Object> entry) {
            Map<String, Object> own = new LinkedHashMap<>(entry);
            own.put(ONLY, new ArrayList<Object>(List.of(key)));
            return own;
        }

        /** What holds for the one it is like holds for it. */
        private Map<String, Object> alike(Map<String, Object> entry) {
            Map<String, Object> both = new LinkedHashMap<>(entry);
            if (both.get(ONLY) instanceof List<?> only && only.contains(like)) {
                List<Object> more = list(only);
                more.add(key);
                both.put(ONLY, more);
            }
            return both;
        }

        /** True where two steps differ in lists of parts alone. */
        private static boolean partsOnly(Map<String, Object> old, Map<String, Object> one) {
            Set<String> keys = new LinkedHashSet<>(old.keySet());
            keys.addAll(one.keySet());
            return keys.stream().allMatch(key -> Objects.equals(old.get(key), one.get(key)) || PARTS.contains(key));
        }

        /** A step that names the parts of both: those that a variant does not have are no parts of its step. */
        private static Map<String, Object> joined(Map<String, Object> old, Map<String, Object> one) {
            Map<String, Object> both = new LinkedHashMap<>(old);
            for (String key : PARTS) {
                List<Object> all = list(both.getOrDefault(key, List.of()));
                list(one.getOrDefault(key, List.of())).stream()
                        .filter(id -> !all.contains(id))
                        .forEach(all::add);
                if (!all.isEmpty()) {
                    both.put(key, all);
                }
            }
            return both;
        }
    }
}
