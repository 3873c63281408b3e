package shimwright.rebuild.unit.begin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;

/** Parts in the order in which they usually go together, each with what it is put onto. */
final class PartList {
    /**
     * One part.
     *
     * @param id short id
     * @param name in the trade's words
     * @param onto the part it is put onto, which must be there first; empty for the first of its group
     * @param group what is built up together
     * @param kind what it is, for its minutes and its figure
     * @param quantity pieces of it
     */
    record Part(String id, String name, String onto, Group group, PartKind kind, int quantity) {}

    /** What is built up together before it goes into the case. */
    enum Group {
        CASE("UP"),
        INPUT("BENCH"),
        OUTPUT("BENCH"),
        COUNTER("BENCH"),
        DIFFERENTIAL("BENCH"),
        REVERSE("UP"),
        SHIFT("UP"),
        CLOSE("UP");

        private final String station;

        Group(String station) {
            this.station = station;
        }

        String station() {
            return station;
        }
    }

    private final Map<String, Part> parts = new LinkedHashMap<>();

    void add(Group group, PartKind kind, String id, String name, String onto) {
        add(group, kind, id, name, onto, 1);
    }

    void add(Group group, PartKind kind, String id, String name, String onto, int quantity) {
        if (parts.putIfAbsent(id, new Part(id, name, onto, group, kind, quantity)) != null) {
            throw new IllegalArgumentException(id + " stands twice");
        }
        if (!onto.isEmpty() && !parts.containsKey(onto)) {
            throw new IllegalArgumentException(id + " is put onto " + onto + ", which is not there");
        }
    }

    boolean has(String id) {
        return parts.containsKey(id);
    }

    /** The name of a part that is there. */
    String name(String id) {
        return Objects.requireNonNull(parts.get(id), id).name();
    }

    List<Part> of(Group group) {
        return parts.values().stream().filter(part -> part.group() == group).toList();
    }

    List<Part> all() {
        return new ArrayList<>(parts.values());
    }
}
