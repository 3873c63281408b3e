package shimwright.rebuild.unit.fault;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;

/** Finds the word that was meant. */
public final class Spelling {
    private static final int SUGGESTIONS = 3;
    private static final int LISTED = 40;
    /** Letters inserted, left out, changed or swapped with their neighbor. */
    private static final DamerauLevenshteinDistance CHANGES = new DamerauLevenshteinDistance();

    private Spelling() {}

    /** A hint for a word that is not known: the nearest ones, or all of them where none is near and they are few. */
    public static String hint(String typed, Collection<String> known, String listedAs) {
        List<String> near = nearest(typed, known);
        if (!near.isEmpty()) {
            return "Did you mean "
                    + near.stream().map(word -> "\"" + word + "\"").collect(Collectors.joining(" or ")) + "?";
        }
        if (known.isEmpty()) {
            return "There are no " + listedAs + " in this file";
        }
        String list = known.stream().distinct().limit(LISTED).collect(Collectors.joining(", "));
        return "Known " + listedAs + ": " + list + (known.size() > LISTED ? ", ..." : "");
    }

    /** The known words with the fewest letters changed, if few enough are changed; at most three. */
    public static List<String> nearest(String typed, Collection<String> known) {
        String wanted = plain(typed);
        int best = Math.max(1, wanted.length() / 3);
        List<String> near = new ArrayList<>();
        for (String word : known) {
            int changed = CHANGES.apply(wanted, plain(word));
            if (changed < best) {
                near.clear();
                best = changed;
            }
            if (changed == best && near.size() < SUGGESTIONS && !near.contains(word)) {
                near.add(word);
            }
        }
        return near;
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('-', '_').replace(' ', '_');
    }
}
