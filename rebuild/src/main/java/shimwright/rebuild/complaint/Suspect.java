package shimwright.rebuild.complaint;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A cause as it is suspected in one job.
 *
 * @param id of the general cause, or {@code own:} with the unit file's own words
 * @param name in words
 * @param cause the general one that it is, or is a case of; null where the general list has none like it
 * @param chance that it is this, 0 to 1, as if one thing alone were wrong
 * @param pro what speaks for it, in words
 * @param contra what speaks against it, in words
 */
public record Suspect(
        String id, String name, @Nullable Cause cause, double chance, List<String> pro, List<String> contra) {
    /** Begins the id of a cause of the unit file. */
    public static final String OWN = "own:";

    /** For a cause that the general list does not have: ours, and said so beside it. */
    private static final double UNKNOWN_MINUTES = 15;

    private static final double UNKNOWN_SEES = 0.8;
    private static final String UNKNOWN_AFTER = "stripped";

    public Suspect {
        pro = List.copyOf(pro);
        contra = List.copyOf(contra);
    }

    /** What is looked at to know. */
    public String look() {
        return cause == null ? "Look for it as the unit comes apart" : cause.look();
    }

    /** What the look takes once it can be had, min. */
    public double minutes() {
        return cause == null ? UNKNOWN_MINUTES : cause.minutes();
    }

    /** Chance that the look shows it where it is there. */
    public double sees() {
        return cause == null ? UNKNOWN_SEES : cause.sees();
    }

    /** How far the box must be apart for the look, by id. */
    public String after() {
        return cause == null ? UNKNOWN_AFTER : cause.after();
    }
}
