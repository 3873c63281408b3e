package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.text.similarity.DamerauLevenshteinDistance;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;

/** Reads stamps and call-outs. */
final class StampReader {
    private static final int LONGEST = 60;
    private static final Pattern SEAL_OF_A_BEARING = Pattern.compile("[./]?2(RS|RZ|LS|Z).*");
    private static final Pattern FIT = Pattern.compile("X?[0-9]{1,2}[A-Z]{1,2}");
    private static final Pattern IN_FRONT = Pattern.compile("([A-Z]+)[. /-]*([A-Z0-9].*)");
    private static final DamerauLevenshteinDistance CHANGES = new DamerauLevenshteinDistance();

    /**
     * A call-out with its part.
     *
     * @param signs which characters it has, a bit for each modulo 64
     */
    private record Known(CallOut way, StandardPart part, long signs) {
        static Known of(CallOut way, StandardPart part) {
            return new Known(way, part, signs(way.text()));
        }

        static long signs(String text) {
            return text.chars().mapToLong(c -> 1L << c).reduce(0, (one, other) -> one | other);
        }

        int length() {
            return way.text().length();
        }
    }

    private final List<Known> known = new ArrayList<>();
    /** Letters that call-outs begin with. */
    private final Set<String> letters = new HashSet<>();

    StampReader(Map<StandardPart, List<CallOut>> callOuts) {
        callOuts.forEach((part, ways) -> ways.forEach(way -> known.add(Known.of(way, part))));
        known.forEach(one -> letters.add(one.way().text().replaceFirst("[^A-Z].*", "")));
    }

    Outcome<StandardParts.Found> read(String typed) {
        String plain = Writing.plain(typed);
        if (plain.isEmpty()) {
            return Outcome.refused(
                    Refusal.of("stamp", "nothing typed", "Type what is stamped, such as 6206 or 25x47x7"));
        }
        if (plain.length() > LONGEST) {
            return Outcome.refused(Refusal.of("stamp", "over " + LONGEST + " characters", "Type the call-out alone"));
        }
        Writing writing = Writing.of(typed);
        if (writing.text().indexOf('?') >= 0) {
            return found(unreadable(writing), typed);
        }
        List<Match> exact = written(writing);
        if (exact.isEmpty()) {
            exact = behindOtherWords(writing);
        }
        if (!exact.isEmpty()) {
            return Outcome.ok(StandardParts.Found.of(certain(exact)));
        }
        List<Match> other = new ArrayList<>(CallOutSizes.of(writing.sized(), writing.said()));
        other.addAll(near(writing));
        return found(other, typed);
    }

    /** What bears the text as it stands, or with its sizes told apart. */
    private List<Match> written(Writing writing) {
        Set<Match> all = new LinkedHashSet<>(exact(writing.text(), writing));
        String sized = writing.sized();
        if (!sized.equals(writing.text()) && (all.isEmpty() || writing.text().matches("[0-9. /-]+"))) {
            all.addAll(exact(sized, writing));
        }
        return List.copyOf(all);
    }

    /** What stands behind words in front that no call-out begins with: a name, a maker's letters, a material. */
    private List<Match> behindOtherWords(Writing writing) {
        String rest = writing.text();
        List<String> unread = new ArrayList<>();
        for (Matcher word = IN_FRONT.matcher(rest); word.matches(); word = IN_FRONT.matcher(rest)) {
            if (letters.contains(word.group(1))) {
                return List.of();
            }
            unread.add(word.group(1));
            rest = word.group(2);
            List<Match> found = written(new Writing(rest, writing.said(), writing.flange()));
            if (!found.isEmpty()) {
                return found.stream()
                        .map(match -> match.with(Suffixes.of(match.part().family(), unread, false)))
                        .toList();
            }
        }
        return List.of();
    }

    private static List<Match> certain(List<Match> all) {
        Match.Certainty certainty = all.size() == 1 ? Match.Certainty.STAMPED : Match.Certainty.ONE_OF_SEVERAL;
        return all.stream().map(match -> match.as(certainty)).toList();
    }

    private static Outcome<StandardParts.Found> found(List<Match> matches, String typed) {
        return matches.isEmpty()
                ? Outcome.refused(Refusal.of(
                        "stamp",
                        "nothing in the tables is like \"" + typed.strip() + "\"",
                        "Put a question mark for what cannot be read, or measure it: bore, outside, width"))
                : Outcome.ok(StandardParts.Found.of(matches));
    }

    private List<Match> exact(String text, Writing writing) {
        return exact(Spaced.of(text), writing);
    }

    /** For each family what has the longest call-out that the text begins with; a question mark stands for any character. */
    private List<Match> exact(Spaced spaced, Writing writing) {
        Map<Family, Integer> length = new EnumMap<>(Family.class);
        List<Read> all = new ArrayList<>();
        for (Known one : known) {
            if (isMeant(one, writing)) {
                read(spaced, one).ifPresent(remarks -> {
                    all.add(new Read(one, new Match(one.part(), Match.Certainty.STAMPED, remarks)));
                    length.merge(one.part().family(), one.length(), Math::max);
                });
            }
        }
        return all.stream()
                .filter(read -> isLongest(
                        read.one(),
                        spaced,
                        length.getOrDefault(read.one().part().family(), 0)))
                .map(Read::match)
                .distinct()
                .toList();
    }

    private record Read(Known one, Match match) {}

    /**
     * True for the longest call-out of its family. The 2 of 2RS is no digit of the number where it stands apart, and may be one where
     * nothing stands between: {@code 62202RS} is a 6220 sealed on both sides or a 62202 sealed on one.
     */
    private static boolean isLongest(Known one, Spaced spaced, int longest) {
        boolean seal = longest < spaced.text().length()
                && one.part().family().isBearing()
                && SEAL_OF_A_BEARING
                        .matcher(spaced.text().substring(longest - 1))
                        .matches();
        if (!seal) {
            return one.length() == longest;
        }
        boolean apart = spaced.apart().contains(longest - 1);
        boolean after = spaced.apart().contains(longest);
        return (one.length() == longest - 1 && !after) || (one.length() == longest && !apart);
    }

    private static boolean isMeant(Known one, Writing writing) {
        boolean said = writing.said().isEmpty()
                ? one.way().alone()
                : writing.said().contains(one.part().family());
        return said && (!writing.flange() || one.part().designation().contains("flange"));
    }

    /** What stands behind the call-out, where the text begins with it. */
    private static Optional<List<String>> read(Spaced typed, Known one) {
        CallOut way = one.way();
        if (!typed.beginsWith(way.text())) {
            return Optional.empty();
        }
        String rest = typed.text().substring(one.length());
        List<String> remarks = new ArrayList<>(remarks(way));
        if (rest.isEmpty()) {
            return Optional.of(remarks);
        }
        Family family = one.part().family();
        if (!isBehind(family, rest, typed.apart().contains(one.length()))) {
            return Optional.empty();
        }
        List<String> behind = typed.from(one.length());
        remarks.addAll(
                family == Family.SPLINE
                        ? Suffixes.fit(way.text(), behind)
                        : Suffixes.of(family, behind, way.text().contains("/")));
        return Optional.of(remarks);
    }

    /** True where what follows a call-out is no part of a longer number. */
    private static boolean isBehind(Family family, String rest, boolean apart) {
        if (family == Family.SPLINE && FIT.matcher(rest).matches()) {
            return true;
        }
        if (rest.matches("X[0-9.?].*")) {
            return family.hasLength() || family == Family.SHIM_RING;
        }
        boolean number = rest.matches("[.+/]?[0-9?].*");
        boolean seal = family.isBearing() && SEAL_OF_A_BEARING.matcher(rest).matches();
        return !number || apart || seal;
    }

    /** Call-outs that fit what can be read, a question mark standing for one character. */
    private List<Match> unreadable(Writing writing) {
        String compact = CallOut.compact(writing.text());
        if (compact.replace("?", "").isEmpty()) {
            return List.of();
        }
        Set<Match> all = new LinkedHashSet<>(exact(writing.text(), writing));
        all.addAll(exact(writing.sized(), writing));
        return all.stream().map(match -> match.as(Match.Certainty.NEAR)).toList();
    }

    /**
     * Call-outs with few characters inserted, left out, changed or swapped with their neighbour, the nearest first, each with what stands
     * behind it and without.
     */
    private List<Match> near(Writing writing) {
        Set<Match> all = new LinkedHashSet<>();
        String figures = writing.text()
                .replaceAll("(?<=[0-9])[OQ]|[OQ](?=[0-9])", "0")
                .replaceAll("(?<=[0-9])[IL]|[IL](?=[0-9])", "1");
        if (!figures.equals(writing.text())) {
            exact(figures, writing).forEach(match -> all.add(match.as(Match.Certainty.NEAR)));
        }
        all.addAll(near(CallOut.compact(writing.text()), writing));
        Matcher behind = Suffixes.BEHIND_A_NUMBER.matcher(writing.text());
        if (behind.find()) {
            all.addAll(near(CallOut.compact(writing.text().substring(0, behind.start())), writing));
        }
        return List.copyOf(all);
    }

    private List<Match> near(String compact, Writing writing) {
        int most = compact.length() < 4 ? 0 : compact.length() < 6 ? 1 : 2;
        long signs = Known.signs(compact);
        record Scored(Known one, int changes) {}
        return known.stream()
                .filter(one -> isMeant(one, writing))
                // no fewer changes than the lengths differ by
                .filter(one -> Math.abs(one.length() - compact.length()) <= most)
                // a change takes one character away and brings one
                .filter(one -> Long.bitCount(one.signs() ^ signs) <= 2 * most)
                .map(one -> new Scored(one, CHANGES.apply(compact, one.way().text())))
                .filter(scored -> scored.changes() <= most)
                .sorted(Comparator.comparingInt(Scored::changes))
                .map(scored -> new Match(
                        scored.one().part(),
                        Match.Certainty.NEAR,
                        remarks(scored.one().way())))
                .distinct()
                .toList();
    }

    private static List<String> remarks(CallOut way) {
        return way.remark().isEmpty() ? List.of() : List.of(way.remark());
    }

    /**
     * A text without its blanks and dashes.
     *
     * @param text what is left
     * @param apart where a blank or a dash stood before the character
     */
    private record Spaced(String text, Set<Integer> apart) {
        static Spaced of(String typed) {
            StringBuilder text = new StringBuilder();
            Set<Integer> apart = new HashSet<>();
            for (int i = 0; i < typed.length(); i++) {
                char c = typed.charAt(i);
                if (c == ' ' || c == '-') {
                    apart.add(text.length());
                } else {
                    text.append(c);
                }
            }
            return new Spaced(text.toString(), apart);
        }

        /** True where it begins with a call-out, a question mark standing for any character. */
        boolean beginsWith(String callOut) {
            if (text.length() < callOut.length()) {
                return false;
            }
            for (int i = 0; i < callOut.length(); i++) {
                if (text.charAt(i) != callOut.charAt(i) && text.charAt(i) != '?') {
                    return false;
                }
            }
            return true;
        }

        /** The words behind a place. */
        List<String> from(int place) {
            List<String> words = new ArrayList<>();
            int begin = isStroke(place) || text.charAt(place) == '.' ? place + 1 : place;
            for (int i = place + 1; i <= text.length(); i++) {
                if (i == text.length() || apart.contains(i) || isStroke(i)) {
                    words.add(text.substring(begin, i));
                    begin = isStroke(i) ? i + 1 : i;
                }
            }
            return words;
        }

        /** A stroke before a letter parts words; one before a figure is a fraction or a number. */
        private boolean isStroke(int at) {
            return at + 1 < text.length() && text.charAt(at) == '/' && Character.isLetter(text.charAt(at + 1));
        }
    }
}
