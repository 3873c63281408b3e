package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
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
    private static final Pattern NUMBERS = Pattern.compile("[0-9.]+( ?[X ] ?[0-9.]+)+");
    private static final Pattern SEAL_OF_A_BEARING = Pattern.compile("2(RS|RZ|LS|Z).*");
    private static final DamerauLevenshteinDistance CHANGES = new DamerauLevenshteinDistance();

    private record Known(CallOut way, StandardPart part) {}

    private final List<Known> known = new ArrayList<>();

    StampReader(Map<StandardPart, List<CallOut>> callOuts) {
        callOuts.forEach((part, ways) -> ways.forEach(way -> known.add(new Known(way, part))));
    }

    Outcome<StandardParts.Found> read(String typed) {
        String plain = plain(typed);
        if (plain.isEmpty()) {
            return Outcome.refused(
                    Refusal.of("stamp", "nothing typed", "Type what is stamped, such as 6206 or 25x47x7"));
        }
        if (plain.length() > LONGEST) {
            return Outcome.refused(Refusal.of("stamp", "over " + LONGEST + " characters", "Type the call-out alone"));
        }
        Set<Family> said = EnumSet.noneOf(Family.class);
        String rest = withoutFamily(plain, said);
        if (rest.indexOf('?') >= 0) {
            return found(unreadable(rest, said), typed);
        }
        List<Match> exact = exact(rest, said);
        if (exact.isEmpty() && NUMBERS.matcher(rest).matches()) {
            exact = exact(rest.replaceAll("[ X]+", "X"), said);
        }
        if (!exact.isEmpty()) {
            return Outcome.ok(StandardParts.Found.of(exact));
        }
        List<Match> other = new ArrayList<>(CallOutSizes.of(rest, said));
        other.addAll(near(rest, said));
        return found(other, typed);
    }

    private static Outcome<StandardParts.Found> found(List<Match> matches, String typed) {
        return matches.isEmpty()
                ? Outcome.refused(Refusal.of(
                        "stamp",
                        "nothing in the tables is like \"" + typed.strip() + "\"",
                        "Put a question mark for what cannot be read, or measure it: bore, outside, width"))
                : Outcome.ok(StandardParts.Found.of(matches));
    }

    /** Capitals, one blank between words, X between sizes, a point for a decimal comma. */
    private static String plain(String typed) {
        return typed.toUpperCase(Locale.ROOT)
                .replaceAll("[×*]", "X")
                .replaceAll("(?<=[0-9]),(?=[0-9])", ".")
                .replaceAll("(?<=[0-9]) ?X ?(?=[0-9])", "X")
                .replaceAll("[\\s,;_]+", " ")
                .strip();
    }

    /** What is left once the families that were said in words are taken out. */
    private static String withoutFamily(String text, Set<Family> said) {
        String rest = text;
        for (Family family : Family.values()) {
            Matcher words = family.spoken().matcher(text);
            if (words.find() && !words.group(2).isEmpty()) {
                said.add(family);
            }
        }
        for (Family family : said) {
            rest = family.spoken().matcher(rest).replaceAll("$1 ");
        }
        if (said.contains(Family.BALL) || said.contains(Family.DOWEL)) {
            rest = rest.replaceAll("(?<=[0-9]) ?(MM|IN|\")( |$)", " ");
        }
        String left = rest.replaceAll("^[\\s-]+|[\\s-]+$", "").replaceAll("\\s+", " ");
        return left.isEmpty() ? text : left;
    }

    private List<Match> exact(String text, Set<Family> said) {
        Spaced spaced = Spaced.of(text);
        Map<Family, List<Match>> longest = new LinkedHashMap<>();
        Map<Family, Integer> length = new LinkedHashMap<>();
        for (Known one : known) {
            Family family = one.part().family();
            int size = one.way().text().length();
            if (size < length.getOrDefault(family, 0)
                    || !(said.isEmpty() ? one.way().alone() : said.contains(family))) {
                continue;
            }
            read(spaced, one).ifPresent(remarks -> {
                if (size > length.getOrDefault(family, 0)) {
                    longest.put(family, new ArrayList<>());
                    length.put(family, size);
                }
                longest.computeIfAbsent(family, none -> new ArrayList<>())
                        .add(new Match(one.part(), Match.Certainty.STAMPED, remarks));
            });
        }
        List<Match> all =
                longest.values().stream().flatMap(List::stream).distinct().toList();
        if (all.size() < 2) {
            return all;
        }
        return all.stream()
                .map(match -> new Match(match.part(), Match.Certainty.ONE_OF_SEVERAL, match.remarks()))
                .toList();
    }

    /** What stands behind the call-out, where the text begins with it. */
    private static Optional<List<String>> read(Spaced typed, Known one) {
        CallOut way = one.way();
        if (!typed.text().startsWith(way.text())) {
            return Optional.empty();
        }
        String rest = typed.text().substring(way.text().length());
        List<String> remarks = new ArrayList<>();
        if (!way.remark().isEmpty()) {
            remarks.add(way.remark());
        }
        if (rest.isEmpty()) {
            return Optional.of(remarks);
        }
        Family family = one.part().family();
        boolean apart = typed.apart().contains(way.text().length());
        boolean digit = Character.isDigit(rest.charAt(0)) || rest.charAt(0) == '.' || rest.charAt(0) == '/';
        boolean sized = rest.matches("X[0-9.].*");
        boolean seal = family.isBearing() && SEAL_OF_A_BEARING.matcher(rest).matches();
        boolean other = sized ? !family.hasLength() && family != Family.SHIM_RING : digit && !apart && !seal;
        if (other) {
            return Optional.empty();
        }
        remarks.addAll(Suffixes.of(family, typed.from(way.text().length())));
        return Optional.of(remarks);
    }

    /** Call-outs that fit what can be read, a question mark standing for one character. */
    private List<Match> unreadable(String text, Set<Family> said) {
        String compact = CallOut.compact(text);
        if (compact.replace("?", "").isEmpty()) {
            return List.of();
        }
        StringBuilder pattern = new StringBuilder();
        for (int i = 0; i < compact.length(); i++) {
            char c = compact.charAt(i);
            pattern.append(c == '?' ? "." : Pattern.quote(String.valueOf(c)));
        }
        Pattern fits = Pattern.compile(pattern.toString());
        return known.stream()
                .filter(one -> said.isEmpty()
                        ? one.way().alone()
                        : said.contains(one.part().family()))
                .filter(one -> fits.matcher(one.way().text()).matches())
                .map(one -> new Match(one.part(), Match.Certainty.NEAR, remarks(one.way())))
                .distinct()
                .toList();
    }

    /** Call-outs with few characters inserted, left out, changed or swapped with their neighbour, the nearest first. */
    private List<Match> near(String text, Set<Family> said) {
        String compact = CallOut.compact(text);
        int most = compact.length() < 4 ? 0 : compact.length() < 6 ? 1 : 2;
        record Scored(Known one, int changes) {}
        return known.stream()
                .filter(one -> said.isEmpty()
                        ? one.way().alone()
                        : said.contains(one.part().family()))
                // no fewer changes than the lengths differ by
                .filter(one -> Math.abs(one.way().text().length() - compact.length()) <= most)
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

        /** The words behind a place. */
        List<String> from(int place) {
            List<String> words = new ArrayList<>();
            int begin = place;
            for (int i = place + 1; i <= text.length(); i++) {
                if (i == text.length() || apart.contains(i)) {
                    words.add(text.substring(begin, i));
                    begin = i;
                }
            }
            return words;
        }
    }
}
