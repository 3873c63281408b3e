package shimwright.mechanics.worksheet;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;

/** Keys as people type them. */
final class Keys {
    private static final Pattern BETWEEN = Pattern.compile("[-_\\s]");

    private Keys() {}

    /** {@code axial-force}, {@code axial_force} and {@code axialForce} are one key. */
    static boolean same(String one, String two) {
        return one.equals(two) || plain(one).equals(plain(two));
    }

    private static String plain(String key) {
        return BETWEEN.matcher(key).replaceAll("").toLowerCase(Locale.ROOT);
    }

    /** The known key that was probably meant. */
    static Optional<String> meant(String typed, List<String> known) {
        String wanted = plain(typed);
        String best = "";
        int least = Math.max(2, wanted.length() / 2) + 1;
        for (String key : known) {
            String plain = plain(key);
            int away = !wanted.isEmpty() && (plain.startsWith(wanted) || wanted.startsWith(plain))
                    ? 1
                    : distance(wanted, plain);
            if (away < least) {
                least = away;
                best = key;
            }
        }
        return best.isEmpty() ? Optional.empty() : Optional.of(best);
    }

    /** Edit distance: insertions, deletions, replacements. */
    private static int distance(String one, String two) {
        int[] row = new int[two.length() + 1];
        for (int j = 0; j < row.length; j++) {
            row[j] = j;
        }
        for (int i = 1; i <= one.length(); i++) {
            int corner = row[0];
            row[0] = i;
            for (int j = 1; j <= two.length(); j++) {
                int replaced = corner + (one.charAt(i - 1) == two.charAt(j - 1) ? 0 : 1);
                corner = row[j];
                row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[two.length()];
    }
}
