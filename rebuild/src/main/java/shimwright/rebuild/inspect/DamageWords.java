package shimwright.rebuild.inspect;

import java.util.List;
import shimwright.mechanics.reference.Table;

/**
 * Words for damage: terms of ISO 15243:2017 for rolling bearings and of ISO 10825-1:2022 for gear teeth, from memory, with how each looks in our
 * own words. They are offered and nothing is concluded from them.
 */
public final class DamageWords {
    private static final class Shipped {
        private static final List<Word> ALL = Table.resource("/inspect/damage.csv").rows().stream()
                .map(row -> new Word(row.text("of"), row.text("word"), row.text("looks")))
                .toList();
    }

    private DamageWords() {}

    /**
     * One word.
     *
     * @param of what can have it, {@code bearing} or {@code gear}
     * @param looks how it looks
     */
    public record Word(String of, String word, String looks) {}

    /** All of them, in the order of the file. */
    public static List<Word> all() {
        return Shipped.ALL;
    }

    /** Whose words a part of that sort can have, {@code bearing} or {@code gear}; empty where no standard has words for it. */
    public static String of(TradeChecks.Sort sort) {
        return switch (sort) {
            case RACE, TRACK -> "bearing";
            case GEAR, HUB, SLEEVE, SHAFT -> "gear";
            default -> "";
        };
    }
}
