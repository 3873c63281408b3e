package shimwright.bench.web.pair;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** What a device may do in the shop. */
public enum Role {
    /** Everything, also letting devices in and out and handing a unit back. */
    OWNER("owner"),
    /** Everything at the bench: what is done, read, chosen and noted on a job, and the drawer. */
    BENCH("bench"),
    /** Looks and prints; changes nothing. */
    ONLOOKER("onlooker");

    /** Where letting in and out and handing back are done. */
    private static final Set<String> OWNERS = Set.of("/job/{job}/handback", "/api/jobs/{job}/acts/hand-back");

    private static final String DEVICES = "/devices";

    /** What an onlooker may send: how it sees things, that it leaves, and a worksheet, which only computes. */
    private static final Set<String> ONLOOKERS = Set.of("/me", "/held", "/pair/leave", "/api/worksheets/{name}");

    private final String word;

    Role(String word) {
        this.word = word;
    }

    /** The role in the words of the page. */
    public String word() {
        return word;
    }

    /** The role of a word; empty for none. */
    public static Optional<Role> of(String word) {
        String lower = word.strip().toLowerCase(Locale.ROOT);
        for (Role role : values()) {
            if (role.word.equals(lower)) {
                return Optional.of(role);
            }
        }
        return Optional.empty();
    }

    /**
     * Whether a device of this role may do something.
     *
     * @param looks true where nothing is changed by it
     * @param route as the program declares it, such as {@code /job/{job}/note}, the name of an act filled in
     */
    public boolean may(boolean looks, String route) {
        if (this == OWNER) {
            return true;
        }
        if (route.startsWith(DEVICES) || OWNERS.contains(route)) {
            return false;
        }
        return looks || this == BENCH || ONLOOKERS.contains(route);
    }
}
