package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.file.UnitTree;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.UnitType;

/** The problems of a changed file, told where a person stands who changed one entry of it: at its keys, or in words of the place. */
final class EntryFaults {
    private static final Pattern PATH = Pattern.compile("(?:(section)\\.)?(\\w+)\\[(\\d+)](.*)");

    private EntryFaults() {}

    /**
     * A changed tree read with all checks.
     *
     * @param prefix where the changed entry stands; what is at fault in it has its key within the entry, all else none
     */
    static Outcome<UnitType> read(UnitType type, Map<String, Object> tree, String prefix, FileSection in) {
        UnitFiles.Result result = UnitTree.read(type.id() + ".yaml", tree);
        return result instanceof UnitFiles.Good good
                ? Outcome.ok(good.type())
                : Outcome.refused(result.problems().stream()
                        .map(problem -> told(problem, tree, prefix, in))
                        .toList());
    }

    private static Refusal told(Refusal problem, Map<String, Object> tree, String prefix, FileSection in) {
        String key = problem.key();
        boolean within =
                in.single() ? in.keys().stream().anyMatch(c -> problem.within(c.key())) : problem.within(prefix);
        if (within) {
            String inner = in.single() ? key : key.substring(prefix.length()).replaceFirst("^\\.", "");
            return problem.placed(
                    inner, inner.isEmpty() ? "" : Refusal.words(inner).replace('_', ' '));
        }
        return problem.placed("", place(key, tree));
    }

    /** Where a problem of another entry stands: its section and what it names itself by. */
    private static String place(String key, Map<String, Object> tree) {
        Matcher path = PATH.matcher(key);
        if (!path.matches()) {
            return Refusal.words(key).replace('_', ' ');
        }
        String rest = Refusal.words(path.group(4).replaceFirst("^\\.", "")).replace('_', ' ');
        return FileSection.find(path.group(2))
                .map(section -> {
                    List<String> ids = section.ids(tree);
                    int index = Integer.parseInt(path.group(3));
                    String name = index < ids.size() ? ids.get(index) : "";
                    return (section.title() + " " + name).strip() + (rest.isEmpty() ? "" : ", " + rest);
                })
                .orElse(Refusal.words(key).replace('_', ' '));
    }

    /** Texts that must be there and are typed empty, unless they were empty before. */
    static List<Refusal> emptied(FileSection in, Map<String, Object> before, Map<String, Object> entry) {
        List<Refusal> faults = new ArrayList<>();
        for (Component c : in.keys()) {
            boolean was = before.containsKey(c.key())
                    && before.get(c.key()).toString().isBlank();
            boolean text = c.required() && c.type() == String.class;
            if (text && !was && entry.getOrDefault(c.key(), "").toString().isBlank()) {
                faults.add(new Refusal(
                        c.key(),
                        c.key().replace('_', ' '),
                        "nothing typed",
                        "Say " + c.field().value()));
            }
        }
        return faults;
    }
}
