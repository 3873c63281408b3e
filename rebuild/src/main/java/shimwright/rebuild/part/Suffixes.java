package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What stands behind a call-out: seals and clearance of a bearing, length and strength of a screw. */
final class Suffixes {
    /** Where what follows the number of a bearing begins. */
    static final Pattern BEHIND_A_NUMBER = Pattern.compile(
            "(?<=[0-9])[ /.-]*(2RS|2RZ|2Z|ZZ|DDU|LLU|RS|C[2-5]( |/|$)|[ /-](C ?[2-5]|P ?[456]|NR?)( |/|$)).*");

    private static final Pattern LENGTH = Pattern.compile("X([0-9.+/]+)(.*)");
    private static final Pattern FIT = Pattern.compile("X?([0-9]{1,2}[A-Z]{1,2})");
    private static final Pattern STRENGTH =
            Pattern.compile("(4\\.?[68]|5\\.?[68]|6\\.?8|8\\.?8|9\\.?8|10\\.?9|12\\.?9)");
    private static final Pattern FILLER = Pattern.compile("GRADE|CLASS|CL|GR|TEETH|AND");
    /** The usual letters of bearings; common practice, no source: makers add their own. */
    private static final Map<String, String> BEARING = bearing();

    /** What a seal or a washer is made of; common practice, no source. */
    private static final Map<String, String> MATERIAL = Map.of(
            "NBR", "nitrile rubber",
            "HNBR", "hydrogenated nitrile rubber",
            "FKM", "fluoro rubber",
            "FPM", "fluoro rubber",
            "ACM", "acrylic rubber",
            "EPDM", "ethylene propylene rubber",
            "PTFE", "fluoro plastic",
            "CU", "copper",
            "COPPER", "copper",
            "AL", "aluminium");

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

    /**
     * What the words behind a call-out say.
     *
     * @param inch true where a length is in inches
     */
    static List<String> of(Family family, List<String> words, boolean inch) {
        List<String> remarks = new ArrayList<>();
        for (String word : words) {
            String rest = word;
            Matcher length = LENGTH.matcher(rest);
            if (length.matches() && (family.hasLength() || family == Family.SHIM_RING)) {
                remarks.add(length(family, length.group(1), inch));
                rest = length.group(2);
            }
            if (!rest.isEmpty() && !FILLER.matcher(rest).matches()) {
                remarks.add(meaning(family, rest));
            }
        }
        return remarks;
    }

    /** What stands behind the call-out of a spline: the fit of its flanks, a small letter on a shaft and a capital in a hub. */
    static List<String> fit(String callOut, List<String> words) {
        List<String> remarks = new ArrayList<>();
        for (String word : words) {
            Matcher fit = FIT.matcher(word);
            if (fit.matches()) {
                String letters =
                        callOut.startsWith("N") ? fit.group(1) : fit.group(1).toLowerCase(Locale.ROOT);
                remarks.add("Fit of the flanks " + letters + ".");
            } else {
                remarks.addAll(of(Family.SPLINE, List.of(word), false));
            }
        }
        return remarks;
    }

    private static String length(Family family, String number, boolean inch) {
        return (family == Family.SHIM_RING ? "Thickness " : "Length ")
                + number.replace('+', ' ')
                + (inch ? " in." : " mm.");
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
            return "Strength class " + (word.contains(".") ? word : word.replaceFirst("(.)$", ".$1")) + ".";
        }
        String material = MATERIAL.get(word);
        return material != null ? word + ": " + material + "." : "Not read: " + word + ".";
    }
}
