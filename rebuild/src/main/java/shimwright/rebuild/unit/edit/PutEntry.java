package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;

/**
 * An entry of a section is written: in the place of one that is there, or as a further one. What refers to one that gets another
 * name refers to the new name.
 *
 * @param section of the file, see {@link FileSection}
 * @param was address of the entry that is replaced; empty for a further one
 * @param fields what it says, by key: texts as the file writes them, lists and maps of them
 */
public record PutEntry(String section, String was, Map<String, Object> fields) implements UnitEdit {
    public PutEntry {
        fields = Collections.unmodifiableMap(new LinkedHashMap<>(fields));
    }

    /** The type with the entry, read again with all checks; each problem in the entry has its key there. */
    @Override
    public Outcome<UnitType> on(UnitType type) {
        FileSection in = FileSection.find(section).orElse(null);
        if (in == null) {
            return unknown(section);
        }
        Map<String, Object> tree = UnitTree.of(type);
        List<Map<String, Object>> entries = new ArrayList<>(in.entries(tree));
        List<String> ids = in.ids(tree);
        int index = was.isEmpty() ? entries.size() : ids.indexOf(was);
        if (index < 0) {
            return missing(in, was);
        }
        Map<String, Object> before = was.isEmpty() ? Map.of() : entries.get(index);
        Map<String, Object> entry = named(in, before, ids);
        String step = in.namedBy().isPresent() ? text(entry.remove(FileSection.STEP)) : "";
        String name = in.named(entry);
        if (in.form() == FileSection.Shape.KEYED && !name.equals(in.named(before)) && ids.contains(name)) {
            return Outcome.refused(Refusal.of(
                    FileSection.KEY, "\"" + name + "\" is among the " + in.title() + " already", "Write another"));
        }
        List<Refusal> bare = EntryFaults.emptied(in, before, entry);
        if (index < entries.size()) {
            entries.set(index, entry);
        } else {
            entries.add(entry);
        }
        in.put(tree, entries);
        inSettingOrder(in, tree, name);
        List<Refusal> unplaced = step.isEmpty() ? List.of() : atStep(in, tree, step, name);
        if (!unplaced.isEmpty()) {
            return Outcome.refused(unplaced);
        }
        String old = in.named(before);
        boolean other = !was.isEmpty() && !in.single() && !name.equals(old) && !ids.contains(name);
        Map<String, Object> whole = other && was.equals(old) ? new Mentions(in.name(), old, name).in(tree) : tree;
        Outcome<UnitType> read = EntryFaults.read(type, whole, in.prefix(index, entry), in);
        return bare.isEmpty()
                ? read
                : Outcome.refused(
                        Stream.concat(bare.stream(), read.refusals().stream()).toList());
    }

    private static String text(@Nullable Object value) {
        return value == null ? "" : value.toString();
    }

    /** The step names the entry from now on; refused where there is no such step, or it names another where it names one alone. */
    private static List<Refusal> atStep(FileSection in, Map<String, Object> tree, String id, String name) {
        FileSection steps = FileSection.find("steps").orElseThrow();
        List<Map<String, Object>> all = new ArrayList<>(steps.entries(tree));
        int index = steps.ids(tree).indexOf(id);
        if (index < 0) {
            return List.of(Refusal.of(FileSection.STEP, "there is no step \"" + id + "\"", "Choose one of the list"));
        }
        String key = in.namedBy().orElseThrow();
        Map<String, Object> step = all.get(index);
        if (key.equals("hold")) {
            if (step.containsKey(key)) {
                return List.of(Refusal.of(
                        FileSection.STEP,
                        "step " + id + " has hold point " + step.get(key) + " already",
                        "Choose another step, or add the check to that hold point"));
            }
            step.put(key, name);
        } else {
            List<Object> named = new ArrayList<>((List<?>) step.getOrDefault(key, List.of()));
            named.add(name);
            step.put(key, named);
        }
        steps.put(tree, all);
        return List.of();
    }

    /** A further clearance is set last, until somebody says otherwise. */
    private void inSettingOrder(FileSection in, Map<String, Object> tree, String name) {
        if (was.isEmpty() && in.name().equals("clearances") && tree.get("setting_order") instanceof List<?> order) {
            List<Object> longer = new ArrayList<>(order);
            if (!longer.contains(name)) {
                longer.add(name);
            }
            tree.put("setting_order", longer);
        }
    }

    /** The entry with a name of its own where nobody typed one and the section's entries go by an id. */
    private Map<String, Object> named(FileSection in, Map<String, Object> before, List<String> ids) {
        Map<String, Object> entry = new LinkedHashMap<>(fields);
        String key = in.form() == FileSection.Shape.KEYED || in.keys().isEmpty()
                ? FileSection.KEY
                : in.keys().get(0).key();
        boolean id = key.equals("id") || key.equals(FileSection.KEY);
        if (id && !in.single() && entry.getOrDefault(key, "").toString().isBlank()) {
            String words = in.keys().stream()
                    .filter(c -> c.type() == String.class && !c.key().equals(key))
                    .findFirst()
                    .map(c -> entry.getOrDefault(c.key(), "").toString())
                    .orElse(entry.getOrDefault(FileSection.VALUE, in.title()).toString());
            String own = in.named(before);
            entry.put(key, own.isEmpty() ? TypeParts.freeId(TypeParts.idOf(words), ids) : own);
        }
        return entry;
    }

    static <T> Outcome<T> unknown(String section) {
        return Outcome.refused(Refusal.at(
                "section", "a unit file has no section \"" + section + "\"", "Choose one of those on the unit's page"));
    }

    static <T> Outcome<T> missing(FileSection in, String id) {
        return Outcome.refused(
                Refusal.at(in.title(), "\"" + id + "\" is not among them any more", "Load the page again and look"));
    }

    @Override
    public String words() {
        FileSection in = FileSection.find(section).orElse(null);
        if (in == null || in.single()) {
            return in == null ? section : in.title();
        }
        String name = in.named(fields).isEmpty() ? was : in.named(fields);
        return (in.title() + " " + (name.isEmpty() ? EntryForm.said(in, fields) : name)).strip();
    }
}
