package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Component;
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
            return EntryFaults.read(type, tree, "-", FileSection.find("variants").orElseThrow());
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
            Map<String, Object> tree = now;
            for (FileSection section : FileSection.all()) {
                boolean restricted = section.keys().stream().anyMatch(c -> c.key().equals(ONLY));
                if (restricted && section.form() == FileSection.Shape.LIST) {
                    tree = section(section, was, tree);
                }
            }
            return tree;
        }

        private Map<String, Object> section(FileSection section, Map<String, Object> was, Map<String, Object> now) {
            Map<String, Map<String, Object>> before = byId(section, was);
            Map<String, Map<String, Object>> after = byId(section, now);
            List<Map<String, Object>> entries = new ArrayList<>();
            Map<String, String> twins = new LinkedHashMap<>();
            Set<String> ids = new LinkedHashSet<>(before.keySet());
            ids.addAll(after.keySet());
            before.forEach((id, old) -> {
                Map<String, Object> one = after.get(id);
                if (one == null) {
                    entries.add(theirs(old));
                } else if (one.equals(old)) {
                    entries.add(alike(old));
                } else if (section.name().equals(STEPS)) {
                    entries.add(alike(joined(old, one)));
                } else {
                    String twin = TypeParts.freeId(id + "_" + key.toLowerCase(java.util.Locale.ROOT), ids);
                    ids.add(twin);
                    twins.put(id, twin);
                    entries.add(theirs(old));
                    Map<String, Object> other = ours(one);
                    other.put(ID, twin);
                    entries.add(other);
                }
            });
            after.forEach((id, one) -> {
                if (!before.containsKey(id)) {
                    entries.add(ours(one));
                }
            });
            section.put(now, entries);
            Map<String, Object> tree = now;
            for (Map.Entry<String, String> twin : twins.entrySet()) {
                tree = mentioned(section.name(), twin.getKey(), twin.getValue(), tree);
            }
            return tree;
        }

        private static Map<String, Map<String, Object>> byId(FileSection section, Map<String, Object> tree) {
            return section.entries(tree).stream()
                    .collect(Collectors.toMap(section::named, one -> one, (one, two) -> one, LinkedHashMap::new));
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

        /** A step that names the parts of both: those that a variant does not have are no parts of its step. */
        private static Map<String, Object> joined(Map<String, Object> old, Map<String, Object> one) {
            Map<String, Object> both = new LinkedHashMap<>(old);
            one.forEach((key, value) -> {
                if (value instanceof List<?> more && !key.equals("todo")) {
                    List<Object> all = list(both.getOrDefault(key, List.of()));
                    more.stream().filter(id -> !all.contains(id)).forEach(all::add);
                    both.put(key, all);
                } else if (value instanceof Map<?, ?> more) {
                    Map<String, Object> all = TypeParts.map(both.getOrDefault(key, Map.of()));
                    TypeParts.map(more).forEach(all::putIfAbsent);
                    both.put(key, all);
                }
            });
            return both;
        }

        /**
         * Steps name the twin beside the one it is of; what else names that one has a twin of its own, or a piece of the drawing names
         * it still, which the checks of the file tell.
         */
        private Map<String, Object> mentioned(String list, String id, String twin, Map<String, Object> tree) {
            Map<String, Object> changed = tree;
            for (FileSection section : FileSection.all()) {
                boolean restricted = section.keys().stream().anyMatch(c -> c.key().equals(ONLY));
                if (section.entry() == null || !restricted || section.form() != FileSection.Shape.LIST) {
                    continue;
                }
                Class<?> record = Objects.requireNonNull(section.entry());
                List<Map<String, Object>> entries = new ArrayList<>();
                Set<String> ids = new LinkedHashSet<>(section.ids(changed));
                List<String[]> more = new ArrayList<>();
                for (Map<String, Object> entry : section.entries(changed)) {
                    Map<String, Object> beside = beside(record, list, id, twin, entry);
                    entries.add(beside);
                    Map<String, Object> instead = new Mentions(list, id, twin).record(record, beside);
                    boolean single = !section.name().equals(STEPS) && !instead.equals(beside) && !ours(entry).equals(entry);
                    if (single && beside.equals(entry)) {
                        String other = TypeParts.freeId(section.named(entry) + "_" + key.toLowerCase(java.util.Locale.ROOT), ids);
                        ids.add(other);
                        entries.set(entries.size() - 1, theirs(entry));
                        Map<String, Object> own = ours(instead);
                        own.put(ID, other);
                        entries.add(own);
                        more.add(new String[] {section.name(), section.named(entry), other});
                    }
                }
                section.put(changed, entries);
                for (String[] one : more) {
                    changed = mentioned(one[0], one[1], one[2], changed);
                }
            }
            return changed;
        }

        /** An entry whose lists of such ids name the twin beside the id. */
        private static Map<String, Object> beside(
                Class<?> record, String list, String id, String twin, Map<String, Object> entry) {
            Map<String, Object> changed = new LinkedHashMap<>(entry);
            for (Component c : Component.of(record)) {
                if (c.field().refersTo().equals(list) && entry.get(c.key()) instanceof List<?> ids && ids.contains(id)) {
                    changed.put(
                            c.key(),
                            ids.stream()
                                    .flatMap(one -> one.equals(id) ? Stream.<Object>of(one, twin) : Stream.<Object>of(one))
                                    .toList());
                }
            }
            return changed;
        }
    }
}
