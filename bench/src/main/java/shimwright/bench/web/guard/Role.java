package shimwright.bench.web.guard;

import java.util.Locale;
import java.util.Optional;

/** What a device may do in the shop. */
public enum Role {
    /** Everything, also letting devices in and out and handing a unit back. */
    OWNER("owner"),
    /** Everything at the bench: what is done, read, chosen and noted on a job, and the drawer. */
    BENCH("bench"),
    /** Looks and prints; changes nothing. */
    ONLOOKER("onlooker");

    private final String word;

    Role(String word) {
        this.word = word;
    }

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
}
