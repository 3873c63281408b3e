package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;

/**
 * An entry of a section goes out of the file.
 *
 * @param section of the file, see {@link FileSection}
 * @param id address of the entry
 * @param mentions true where every mention of it goes with it, and what waited for such a step waits for what that one waited
 *     for; else it stays while something refers to it
 */
public record DropEntry(String section, String id, boolean mentions) implements UnitEdit {
    @Override
    public Outcome<UnitType> on(UnitType type) {
        FileSection in = FileSection.find(section).orElse(null);
        if (in == null) {
            return PutEntry.unknown(section);
        }
        if (in.single()) {
            return Outcome.refused(Refusal.at(in.title(), "that cannot go", "Change it instead"));
        }
        Map<String, Object> tree = UnitTree.of(type);
        List<Map<String, Object>> entries = new ArrayList<>(in.entries(tree));
        int index = in.ids(tree).indexOf(id);
        if (index < 0) {
            return PutEntry.missing(in, id);
        }
        Map<String, Object> gone = entries.remove(index);
        String name = in.named(gone);
        boolean last = entries.stream().noneMatch(one -> in.named(one).equals(name));
        if (mentions && in.name().equals("steps")) {
            entries.replaceAll(step -> waiting(step, name, gone));
        }
        in.put(tree, entries);
        Map<String, Object> whole = mentions && last ? new Mentions(in.name(), name, null).in(tree) : tree;
        return EntryFaults.read(type, whole, "-", in);
    }

    /** A step that waited for the one that is gone waits for what that one waited for. */
    private static Map<String, Object> waiting(Map<String, Object> step, String name, Map<String, Object> gone) {
        Map<String, Object> after = TypeParts.map(step.getOrDefault("after", Map.of()));
        if (!after.containsKey(name)) {
            return step;
        }
        TypeParts.map(gone.getOrDefault("after", Map.of())).forEach(after::putIfAbsent);
        Map<String, Object> waits = new LinkedHashMap<>(step);
        waits.put("after", after);
        return waits;
    }

    @Override
    public String words() {
        return "without " + FileSection.find(section).map(FileSection::title).orElse(section) + " " + id;
    }
}
