package shimwright.bench.web.record;

import java.util.List;
import shimwright.rebuild.record.HandBackRecord;
import shimwright.rebuild.record.HandBackRecord.Tightened;

/**
 * Where the torques of a record come from, each source once, so that a line names it by a letter.
 *
 * @param words in the order of their letters
 */
public record TorqueSources(List<String> words) {
    private static final int LETTERS = 26;

    public TorqueSources {
        words = List.copyOf(words);
    }

    static TorqueSources of(HandBackRecord record) {
        return new TorqueSources(record.torques().stream()
                .filter(Tightened::bySetting)
                .map(Tightened::origin)
                .filter(origin -> !origin.isBlank())
                .distinct()
                .toList());
    }

    /** The letter of a torque's source; empty where it was typed or has none. */
    public String letter(Tightened torque) {
        int at = torque.bySetting() ? words.indexOf(torque.origin()) : -1;
        return at < 0 ? "" : letter(at);
    }

    /** The letter of a source by its place. */
    public String letter(int at) {
        return at < LETTERS ? String.valueOf((char) ('a' + at)) : String.valueOf(at + 1);
    }
}
