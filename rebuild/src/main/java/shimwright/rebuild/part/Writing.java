package shimwright.rebuild.part;

import java.text.Normalizer;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A stamp or call-out as somebody wrote it, brought to the one way in which call-outs are kept: capitals, X between sizes, a point for
 * a decimal comma, no zeros behind it that say nothing, {@code 1+1/4} for one and a quarter.
 *
 * @param text without the families that were said in words; the whole where nothing else was written
 * @param said families that were said in words; empty where none was
 * @param flange true where a flange was said
 */
record Writing(String text, Set<Family> said, boolean flange) {
    private static final Pattern FLANGE = Pattern.compile("(^| )(WITH )?FLANGED?(?![A-Z])");
    private static final String NUMBER = "[0-9.]+";
    private static final Pattern SIZES =
            Pattern.compile("((?:[A-Z]+[ -]?)?" + NUMBER + "(?:[ /X-]+" + NUMBER + "){1,3})(?![0-9./])(.*)");

    /** What somebody wrote. */
    static Writing of(String typed) {
        String plain = plain(typed);
        Matcher flanged = FLANGE.matcher(plain);
        boolean flange = flanged.find();
        String whole = flange ? flanged.replaceAll("$1").strip() : plain;
        Set<Family> said = EnumSet.noneOf(Family.class);
        StringBuilder rest = new StringBuilder(whole);
        for (Words words : outermost(whole)) {
            said.add(words.family());
            for (int i = words.from(); i < words.to(); i++) {
                rest.setCharAt(i, ' ');
            }
        }
        String left = rest.toString().replaceAll("\\s+", " ").replaceAll("^[\\s-]+|[\\s-]+$", "");
        if (left.isEmpty()) {
            return new Writing(whole, said, flange);
        }
        return new Writing(
                said.contains(Family.BALL) ? left : left.replaceAll("(?<=[0-9])IN(?![A-Z])", ""), said, flange);
    }

    /** Capitals, one blank between words, X between sizes, a point for a decimal comma. */
    static String plain(String typed) {
        String signs = Normalizer.normalize(typed.replaceAll("(?<=[0-9])(?=[¼½¾⅐-⅞])", " "), Normalizer.Form.NFKC)
                .toUpperCase(Locale.ROOT)
                .replace('⁄', '/')
                .replaceAll("[‐-―−]", "-")
                .replaceAll("[″”“\"]|[′’']{2}", "\"")
                .replaceAll("[×*]", "X")
                .replaceAll("[Ø⌀]|\\bDIA\\b\\.?", " ")
                .replaceAll("(?<=[0-9]),(?=[0-9])", ".")
                .replaceAll("[\\s,;_]+", " ")
                .replaceAll(" ?- ?", "-");
        return signs.replaceAll("(?<![A-Z])(NO|NR|NUMBER)\\.? ?(?=[0-9])", "")
                .replaceAll("(?<=[0-9]) ?MM(?=$|[^A-Z0-9]|X ?[0-9.])", "")
                .replaceAll("(?<=[0-9]) ?(INCH(ES)?|INS?|\")(?![A-Z])", "IN")
                .replaceAll("(/[0-9]+)IN", "$1")
                .replaceAll("(?<=[0-9]) ?(X|BY) ?(?=[0-9.])", "X")
                .replaceAll("(?<=^|[ X/-])\\.(?=[0-9])", "0.")
                .replaceAll("(?<=[0-9])\\.0+(?![0-9])", "")
                .replaceAll("(\\.[0-9]*[1-9])0+(?![0-9])", "$1")
                .replaceAll("(?<![0-9/.])([0-9]{1,2})[ -]([0-9]{1,2}/(2|4|8|16|32|64))(?![0-9.])", "$1+$2")
                .strip();
    }

    /** Words that say a family, but for those that stand within longer ones that say another. */
    private static List<Words> outermost(String text) {
        List<Words> all = new ArrayList<>();
        for (Family family : Family.values()) {
            Matcher found = family.spoken().matcher(text);
            while (found.find()) {
                if (!found.group(2).isEmpty()) {
                    all.add(new Words(family, found.start(2), found.end(2)));
                }
            }
        }
        return all.stream()
                .filter(words -> all.stream().noneMatch(other -> other.holds(words)))
                .toList();
    }

    /** The same with X between sizes that were written with blanks, strokes or dashes between; the same text where there are none. */
    String sized() {
        Matcher sizes = SIZES.matcher(text);
        return sizes.matches() ? sizes.group(1).replaceAll("(?<=[0-9])[ /X-]+(?=[0-9])", "X") + sizes.group(2) : text;
    }

    private record Words(Family family, int from, int to) {
        boolean holds(Words other) {
            return from <= other.from && other.to <= to && to - from > other.to - other.from;
        }
    }
}
