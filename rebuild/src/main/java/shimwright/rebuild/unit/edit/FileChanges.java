package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.UnitType;

/** What differs between two files of a unit type, in short lines. */
public final class FileChanges {
    /** More lines than these nobody reads; the rest is counted. */
    static final int MOST = 40;

    private static final int LONGEST = 80;

    private FileChanges() {}

    /** A line for each entry that came or went and for each key that changed; empty for files that say the same. */
    public static List<String> of(UnitType before, UnitType after) {
        Map<String, Object> was = UnitTree.seen(before);
        Map<String, Object> is = UnitTree.seen(after);
        List<String> lines = new ArrayList<>();
        FileSection.all().forEach(section -> section(section, was, is, lines));
        List<String> shown = new ArrayList<>(lines.subList(0, Math.min(MOST, lines.size())));
        if (lines.size() > MOST) {
            shown.add("and " + (lines.size() - MOST) + " more");
        }
        return List.copyOf(shown);
    }

    private static void section(
            FileSection section, Map<String, Object> was, Map<String, Object> is, List<String> lines) {
        Map<String, Map<String, Object>> before = byId(section, was);
        Map<String, Map<String, Object>> after = byId(section, is);
        Set<String> ids = new LinkedHashSet<>(before.keySet());
        ids.addAll(after.keySet());
        for (String id : ids) {
            String name = section.single() ? "" : section.title() + " " + id;
            if (!before.containsKey(id) || !after.containsKey(id)) {
                lines.add(name + (before.containsKey(id) ? ": taken out" : ": new"));
            } else {
                entry(name, before.get(id), after.get(id), lines);
            }
        }
        boolean turned = before.keySet().equals(after.keySet())
                && !List.copyOf(before.keySet()).equals(List.copyOf(after.keySet()));
        if (turned) {
            lines.add(section.title() + ": in another order");
        }
    }

    private static Map<String, Map<String, Object>> byId(FileSection section, Map<String, Object> tree) {
        Map<String, Map<String, Object>> byId = new LinkedHashMap<>();
        List<String> ids = section.ids(tree);
        section.entries(tree).forEach(entry -> byId.put(ids.get(byId.size()), entry));
        return byId;
    }

    private static void entry(String name, Map<String, Object> was, Map<String, Object> is, List<String> lines) {
        Set<String> keys = new LinkedHashSet<>(was.keySet());
        keys.addAll(is.keySet());
        for (String key : keys) {
            Object before = was.getOrDefault(key, "");
            Object after = is.getOrDefault(key, "");
            if (!before.equals(after)) {
                String at = key.equals(FileSection.VALUE) ? name : (name + " " + key.replace('_', ' ')).strip();
                lines.add(at + ": " + said(before) + " → " + said(after));
            }
        }
    }

    private static String said(Object value) {
        String text = value.toString().replace('\n', ' ');
        return text.isEmpty() ? "nothing" : text.length() > LONGEST ? text.substring(0, LONGEST) + "…" : text;
    }
}
