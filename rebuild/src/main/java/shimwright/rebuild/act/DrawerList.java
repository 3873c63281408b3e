package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;

/** A list of loose pieces as typed or pasted: one a line, tag first, then the family where it is not said above, then thicknesses. */
final class DrawerList {
    private static final Range THICKNESS = new Range(0.00001, 0.1);
    private static final Pattern NUMBER = Pattern.compile("[-+]?[0-9]*[.,]?[0-9]+.*");
    private static final Pattern UNIT = Pattern.compile("mm|in|thou|µm|um|\"");
    private static final int MOST = 500;

    /** Readings of one piece; a line of more is no piece, and each of its words would be refused by itself. */
    private static final int READINGS = 12;

    private DrawerList() {}

    /** Standard uncertainty of a micrometer of 1 µm steps. */
    private static final double MICROMETER = 0.000002;

    /** How uneven a piece may be that was measured at fewer than three places, half-width; common practice, no source. */
    private static final double UNEVEN = 0.000005;

    /** One piece of the list. */
    record Shim(String piece, String family, List<Double> readings) {
        /** Standard uncertainty of its thickness; with fewer than three places it may be uneven unseen. */
        double u() {
            return readings.size() < 3 ? Math.hypot(MICROMETER, UNEVEN / Math.sqrt(3)) : MICROMETER;
        }
    }

    /**
     * Reads a list.
     *
     * @param family of lines that name none; may be empty
     * @param units of bare numbers
     * @return refused with every line that cannot be read
     */
    static Outcome<List<Shim>> read(String list, String family, UnitSystem units) {
        List<Refusal> refusals = new ArrayList<>();
        List<Shim> shims = new ArrayList<>();
        Set<String> tags = new HashSet<>();
        int number = 0;
        for (String line : list.lines().toList()) {
            number++;
            String text = line.strip();
            if (text.isEmpty() || text.startsWith("#")) {
                continue;
            }
            String place = "line " + number;
            List<String> words = words(text);
            String tag = words.remove(0);
            String own = family;
            if (!words.isEmpty() && !NUMBER.matcher(words.get(0)).matches()) {
                own = words.remove(0);
            }
            if (!tags.add(tag.toLowerCase(Locale.ROOT))) {
                refusals.add(new Refusal("list", place, "the tag " + tag + " stands twice", "Give each piece its own"));
            }
            if (own.isBlank()) {
                refusals.add(new Refusal(
                        "list",
                        place,
                        tag + " says no family",
                        "Write it behind the tag, or choose one for the whole list"));
            }
            shims.add(new Shim(tag, own, readings(words, place, units, refusals)));
        }
        if (shims.size() > MOST) {
            refusals.add(Refusal.of("list", shims.size() + " pieces at once", "Type at most " + MOST));
        }
        return refusals.isEmpty() ? Outcome.ok(List.copyOf(shims)) : Outcome.refused(refusals);
    }

    /** Words of a line; a unit that stands apart goes with the number before it. */
    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        for (String word : line.split("[\\s;|]+")) {
            if (UNIT.matcher(word).matches() && words.size() > 1) {
                words.set(words.size() - 1, words.get(words.size() - 1) + " " + word);
            } else if (!word.isEmpty()) {
                words.add(word);
            }
        }
        return words;
    }

    private static List<Double> readings(List<String> words, String place, UnitSystem units, List<Refusal> refusals) {
        List<Double> readings = new ArrayList<>();
        if (words.isEmpty()) {
            refusals.add(new Refusal(
                    "list", place, "no thickness", "Write what the micrometer says, at best at three places"));
        }
        if (words.size() > READINGS) {
            refusals.add(new Refusal(
                    "list",
                    place,
                    words.size() + " words behind the tag are no piece",
                    "Write one piece a line with at most " + READINGS + " readings"));
            return readings;
        }
        for (String word : words) {
            Outcome<Double> read = Quantities.parse(
                            word, Kind.LENGTH, units.display(Kind.LENGTH).unit(), place, THICKNESS)
                    .placed("list", place)
                    .map(ParsedQuantity::si);
            readings.add(TypedReadings.take(read, refusals, 0.0));
        }
        return readings;
    }
}
