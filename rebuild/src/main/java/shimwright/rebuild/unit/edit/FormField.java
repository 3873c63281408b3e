package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.List;
import shimwright.rebuild.unit.model.Origin;

/**
 * One field of the form of an entry.
 *
 * @param name of the field
 * @param label what the key means
 * @param widget how it is filled in
 * @param value as the file writes it; of several chosen ones each on a line
 * @param options what may be chosen; for free text with options, what is proposed
 * @param remark what a bare number means, or what is taken where nothing is typed
 * @param groups of a group its fields; of repeated groups each, the last one empty
 */
public record FormField(
        String name,
        String label,
        Widget widget,
        String value,
        List<Option> options,
        String remark,
        List<List<FormField>> groups) {

    /** How a field is filled in. */
    public enum Widget {
        /** A line of text, a number or a quantity. */
        LINE,
        /** Several lines of text, one for each. */
        LINES,
        /** One of its options. */
        ONE,
        /** Some of its options. */
        SOME,
        /** Yes or no. */
        YES,
        /** Where a number comes from: one of its options in the first field, words in the second. */
        ORIGIN,
        /** Fields that belong together. */
        GROUP,
        /** Such groups, as many as there are. */
        GROUPS
    }

    /**
     * One of several groups.
     *
     * @param title by which it is known
     * @param prefix of the names of its fields
     * @param last true for the empty one behind the others
     */
    public record Numbered(String title, String prefix, boolean last, List<FormField> fields) {}

    /** The groups with their titles. */
    public List<Numbered> numbered() {
        List<Numbered> all = new ArrayList<>();
        for (List<FormField> group : groups) {
            boolean last = all.size() == groups.size() - 1;
            FormField first = group.get(0);
            String title = last ? "One more" : first.value().isEmpty() ? String.valueOf(all.size() + 1) : first.value();
            all.add(new Numbered(title, name + "." + all.size() + ".", last, group));
        }
        return all;
    }

    /** One thing that can be chosen: as the file writes it and in words. */
    public record Option(String value, String words) {}

    /** The source of an origin as the file writes it; empty for none. */
    public String source() {
        return Origin.of(value).source().map(Origin.Source::written).orElse("");
    }

    /** The words of an origin behind its source. */
    public String words() {
        return Origin.of(value).words();
    }

    /** Whether an option is chosen. */
    public boolean chosen(Option option) {
        return List.of(value.split("\n", -1)).contains(option.value());
    }
}
