package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands behind a call-out: seals and clearance of a bearing, length and strength of a screw. */
final class Suffixes {
    private static final Pattern LENGTH = Pattern.compile("X([0-9.]+)(.*)");
    private static final Pattern STRENGTH =
            Pattern.compile("(4\\.6|4\\.8|5\\.6|5\\.8|6\\.8|8\\.8|9\\.8|10\\.9|12\\.9)");
    /** The usual letters of bearings; common practice, no source: makers add their own. */
    private static final Map<String, String> BEARING = bearing();

    private Suffixes() {}

    private static Map<String, String> bearing() {
        Map<String, String> words = new LinkedHashMap<>();
        words.put("2RS\\w*|DDU|LLU", "sealed on both sides");
        words.put("RS\\w*", "sealed on one side");
        words.put("2Z|ZZ", "shielded on both sides");
        words.put("Z", "shielded on one side");
        words.put("2RZ|RZ", "seals that do not touch");
        words.put("C2", "internal clearance less than normal");
        words.put("CN", "normal internal clearance");
        words.put("C3", "internal clearance over normal");
        words.put("C4", "internal clearance over C3");
        words.put("C5", "internal clearance over C4");
        words.put("NR", "groove in the outer ring, with its ring");
        words.put("N", "groove in the outer ring");
        words.put("K", "tapered bore, 1 in 12");
        words.put("P6|P5|P4", "closer tolerances");
        words.put("E", "larger rollers");
        words.put("X", "boundary dimensions of the international plan");
        return words;
    }

    static List<String> of(Family family, List<String> words) {
        List<String> remarks = new ArrayList<>();
        for (String word : words) {
            String rest = word;
            Matcher length = LENGTH.matcher(rest);
            if (length.matches() && (family.hasLength() || family == Family.SHIM_RING)) {
                remarks.add((family == Family.SHIM_RING ? "Thickness " : "Length ") + length.group(1) + " mm.");
                rest = length.group(2);
            }
            if (!rest.isEmpty()) {
                remarks.add(meaning(family, rest));
            }
        }
        return remarks;
    }

    private static String meaning(Family family, String word) {
        if (family.isBearing()) {
            for (Map.Entry<String, String> one : BEARING.entrySet()) {
                if (word.matches(one.getKey())) {
                    return word + ": " + one.getValue() + ".";
                }
            }
        }
        if ((family == Family.HEX_SCREW || family == Family.SOCKET_SCREW)
                && STRENGTH.matcher(word).matches()) {
            return "Strength class " + word + ".";
        }
        return "Not read: " + word + ".";
    }
}
