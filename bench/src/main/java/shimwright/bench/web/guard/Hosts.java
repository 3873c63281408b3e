package shimwright.bench.web.guard;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;

/**
 * The names under which this program may be asked. A page elsewhere whose name was made to lead here, which is what DNS
 * rebinding is, still asks for its own name and is not answered.
 *
 * @param names lower case, IPv6 in brackets
 */
public record Hosts(Set<String> names) {
    private static final Set<String> LOOPBACK = Set.of("localhost", "127.0.0.1", "[::1]");

    public Hosts {
        names = Set.copyOf(names);
    }

    /** This machine's own names and those the program was told to serve. */
    public static Hosts with(Collection<String> told) {
        Set<String> names = new LinkedHashSet<>(LOOPBACK);
        for (String name : told) {
            String lower = name.toLowerCase(Locale.ROOT);
            names.add(lower.contains(":") && !lower.startsWith("[") ? "[" + lower + "]" : lower);
        }
        return new Hosts(names);
    }

    /** Refused where another name was asked for, or two that differ. */
    Optional<Refusal> refusal(RequestHead asked) {
        String header = asked.header("Host").toLowerCase(Locale.ROOT);
        boolean known = names.contains(asked.host());
        boolean one = header.isEmpty() || header.equals(asked.authority());
        return known && one
                ? Optional.empty()
                : Optional.of(Refusal.at(
                        "address",
                        "this is not the address of a shop",
                        "Use the address that was printed when the program was started"));
    }
}
