package shimwright.bench.command;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/**
 * Options of a command: {@code --name value} and {@code --flag}.
 *
 * @param values by name without dashes; a flag has the value "true"
 */
public record Options(Map<String, String> values) {

    /**
     * Reads options.
     *
     * @param args as typed
     * @param named names that take a value
     * @param flags names that do not
     */
    public static Outcome<Options> read(List<String> args, Set<String> named, Set<String> flags) {
        Map<String, String> values = new LinkedHashMap<>();
        for (int i = 0; i < args.size(); i++) {
            String name = args.get(i).replaceFirst("^--", "");
            if (flags.contains(name)) {
                values.put(name, "true");
            } else if (named.contains(name) && i + 1 < args.size()) {
                values.put(name, args.get(++i));
            } else {
                return Outcome.refused(Refusal.at(
                        "command line",
                        "\"" + args.get(i) + "\" " + (named.contains(name) ? "needs a value" : "is not known here"),
                        "Type ./shimwright help"));
            }
        }
        return Outcome.ok(new Options(Map.copyOf(values)));
    }

    /** The value of an option, or another where it was not given. */
    public String get(String name, String otherwise) {
        return values.getOrDefault(name, otherwise);
    }

    /** True where the option was given. */
    public boolean has(String name) {
        return values.containsKey(name);
    }
}
