package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.quantity.Kind;

/** Sizes that stand in a call-out itself, where no table has them. */
final class CallOutSizes {
    private static final Pattern THREE = Pattern.compile("([0-9.]+)[ X]([0-9.]+)[ X]([0-9.]+)\\b.*");
    private static final Pattern THREAD = Pattern.compile("M([0-9.]+)X([0-9.]+)\\b.*");
    private static final double THICKEST_SHIM = 4;
    private static final double NARROWEST_SEAL = 3;
    private static final StandardPart.Agreement NONE = new StandardPart.Agreement(0, "", "");

    private CallOutSizes() {}

    /**
     * Parts with the sizes of the call-out, by each family that could bear it.
     *
     * @param text in capitals, X between sizes
     * @param said families that were said in words; empty where none was
     */
    static List<Match> of(String text, Set<Family> said) {
        List<Match> matches = new ArrayList<>();
        Matcher three = THREE.matcher(text);
        if (three.matches()) {
            double inside = number(three.group(1));
            double outside = number(three.group(2));
            double third = number(three.group(3));
            if (0 < inside && inside < outside && outside < 1000 && 0 < third && third < 100) {
                if (third >= NARROWEST_SEAL) {
                    add(matches, said, Family.LIP_SEAL, three, "d_shaft_mm", "D_bore_mm", "b_width_mm");
                }
                if (third <= THICKEST_SHIM) {
                    add(matches, said, Family.SEALING_WASHER, three, "d1_actual_mm", "d2_mm", "h_mm");
                    add(matches, said, Family.SHIM_RING, three, "d_mm", "D_mm", "thickness_mm");
                }
            }
        }
        Matcher thread = THREAD.matcher(text);
        if (thread.matches() && number(thread.group(1)) > 2 * number(thread.group(2)) && number(thread.group(2)) > 0) {
            add(matches, said, Family.HEX_SCREW, thread, "thread_d_mm", "pitch_mm");
        }
        return matches;
    }

    private static void add(List<Match> to, Set<Family> said, Family family, Matcher sizes, String... columns) {
        if (!said.isEmpty() && !said.contains(family)) {
            return;
        }
        List<StandardPart.Size> read = new ArrayList<>();
        List<String> texts = new ArrayList<>();
        for (int i = 0; i < columns.length; i++) {
            texts.add(sizes.group(i + 1));
            String words = family.sizes().getOrDefault(columns[i], columns[i]);
            read.add(new StandardPart.Size(columns[i], words, number(sizes.group(i + 1)) * 1e-3, Kind.LENGTH));
        }
        String name = (family == Family.HEX_SCREW ? "M" : "") + String.join("x", texts);
        String usual = family == Family.LIP_SEAL
                ? "Not a size of the table: read it once more, or measure shaft, bore and width."
                : "Not a size of the table: read it once more.";
        to.add(new Match(new StandardPart(family, name, read, "", NONE), Match.Certainty.SIZES_ONLY, List.of(usual)));
    }

    private static double number(String text) {
        try {
            return Double.parseDouble(text);
        } catch (NumberFormatException several) {
            return -1;
        }
    }
}
