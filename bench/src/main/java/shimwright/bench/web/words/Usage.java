package shimwright.bench.web.words;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Words of the trade that differ between the two shores of the Atlantic (common practice, no source), to be said as one of them has it. */
final class Usage {
    /** As in Great Britain. */
    static final Usage UK = new Usage(0);

    /** As in the United States. */
    static final Usage US = new Usage(1);

    private final Map<String, String> instead = new HashMap<>();
    private final Pattern others;

    private Usage(int ours) {
        for (List<String> pair : Pairs.ALL) {
            instead.put(pair.get(1 - ours), pair.get(ours));
        }
        others = Pattern.compile(instead.keySet().stream()
                .sorted((a, b) -> b.length() - a.length())
                .map(Pattern::quote)
                .collect(Collectors.joining("|", "(?<![\\p{L}\\p{N}_/-])(?i:", ")(?![\\p{L}\\p{N}_/])")));
    }

    /** The text with the words of this usage; each begins with a capital where the other did. */
    String said(String text) {
        Matcher other = others.matcher(text);
        return other.replaceAll(found -> Matcher.quoteReplacement(
                cased(found.group(), instead.getOrDefault(found.group().toLowerCase(Locale.ROOT), found.group()))));
    }

    private static String cased(String found, String word) {
        return Character.isUpperCase(found.charAt(0))
                ? Character.toUpperCase(word.charAt(0)) + word.substring(1)
                : word;
    }

    /** Read before the usages are made. */
    private static final class Pairs {
        /** Each with the British one first. */
        static final List<List<String>> ALL = List.of(
                List.of("end float", "end play"),
                List.of("layshaft", "countershaft"),
                List.of("layshafts", "countershafts"),
                List.of("layshaft gear", "cluster gear"),
                List.of("circlip", "snap ring"),
                List.of("circlips", "snap rings"),
                List.of("baulk ring", "blocker ring"),
                List.of("baulk rings", "blocker rings"),
                List.of("selector fork", "shift fork"),
                List.of("selector forks", "shift forks"),
                List.of("selector rail", "shift rail"),
                List.of("selector rails", "shift rails"),
                List.of("gear lever", "shift lever"),
                // one name on both shores
                List.of("torque wrench", "torque wrench"),
                List.of("wrench was set", "wrench was set"),
                List.of("spanner", "wrench"),
                List.of("spanners", "wrenches"),
                List.of("bush", "bushing"),
                List.of("bushes", "bushings"),
                List.of("paraffin", "kerosene"),
                List.of("bellhousing", "bell housing"),
                List.of("gudgeon pin", "wrist pin"),
                List.of("tyre", "tire"),
                List.of("tyres", "tires"),
                List.of("colour", "color"),
                List.of("colours", "colors"),
                List.of("grey", "gray"),
                List.of("aluminium", "aluminum"),
                List.of("centre", "center"),
                List.of("centres", "centers"),
                List.of("millimetre", "millimeter"),
                List.of("millimetres", "millimeters"),
                List.of("newton metre", "newton meter"),
                List.of("newton metres", "newton meters"),
                List.of("kilometre", "kilometer"),
                List.of("kilometres", "kilometers"),
                List.of("litre", "liter"),
                List.of("litres", "liters"),
                List.of("fibre", "fiber"),
                List.of("mould", "mold"),
                List.of("catalogue", "catalog"),
                List.of("gearbox", "transmission"),
                List.of("gearboxes", "transmissions"));

        private Pairs() {}
    }
}
