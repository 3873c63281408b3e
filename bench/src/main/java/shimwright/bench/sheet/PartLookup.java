package shimwright.bench.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.part.Match;
import shimwright.rebuild.part.StandardPart;
import shimwright.rebuild.part.StandardParts;

/**
 * What was asked of the tables of standard parts, and what they answer: the page and the JSON door show the same.
 *
 * @param stamp what is stamped on the part, as typed
 * @param sizes what a caliper reads, as typed
 * @param found what was found; empty before anything is asked
 * @param more how many there are besides
 * @param faults why nothing was found
 */
public record PartLookup(String stamp, String sizes, List<Match> found, int more, List<Refusal> faults) {
    private static final String MEASURED = "sizes";

    /** Asks by the stamp where one was typed, else by the sizes; bare numbers are in the unit of the system. */
    public static PartLookup of(String stamp, String sizes, UnitSystem system) {
        if (stamp.isBlank() && sizes.isBlank()) {
            return new PartLookup(stamp, sizes, List.of(), 0, List.of());
        }
        Outcome<StandardParts.Found> found = stamp.isBlank()
                ? lengths(sizes, system).flatMap(StandardParts.shipped()::bySize)
                : StandardParts.shipped().byStamp(stamp);
        return found.isOk()
                ? new PartLookup(
                        stamp,
                        sizes,
                        found.orElseThrow().matches(),
                        found.orElseThrow().more(),
                        List.of())
                : new PartLookup(stamp, sizes, List.of(), 0, found.refusals());
    }

    /** True where something was asked. */
    public boolean asked() {
        return !stamp.isBlank() || !sizes.isBlank();
    }

    /** How many bear what was asked, in a sentence. */
    public String say() {
        int count = found.size() + more;
        if (count == 1) {
            return found.get(0).part().designation() + ": "
                    + found.get(0).certainty().words() + ".";
        }
        return count + " standard parts may be meant. Which one it is only the part itself can say"
                + (more > 0 ? "; the " + found.size() + " likeliest are shown." : ".");
    }

    /** A size in the units of a person: of what is not a length, in the unit of its table. */
    public static String text(StandardPart.Size size, UnitSystem system) {
        return Quantities.brief(size.value(), system.display(size.kind()).unit());
    }

    /** As the JSON door writes it. */
    public Map<String, Object> json() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("count", found.size() + more);
        all.put("parts", found.stream().map(PartLookup::json).toList());
        return all;
    }

    private static Map<String, Object> json(Match match) {
        StandardPart part = match.part();
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("designation", part.designation());
        one.put("family", part.family().words());
        one.put("certainty", match.certainty().words());
        one.put("standard", part.standard());
        one.put("agreement", part.agreement().sentence());
        one.put("remarks", match.remarks());
        Map<String, Object> sizes = new LinkedHashMap<>();
        part.sizes().forEach(size -> {
            Map<String, Object> value = new LinkedHashMap<>();
            value.put("words", size.words());
            value.put("value", size.value());
            value.put("unit", size.kind().siSymbol());
            sizes.put(size.column().replaceFirst("_(mm2?|deg|g)$", ""), value);
        });
        one.put("sizes", sizes);
        return one;
    }

    /** One to three lengths with x, a blank or a semicolon between; a unit behind the last holds for all. */
    private static Outcome<List<Double>> lengths(String typed, UnitSystem system) {
        String spaced = typed.strip()
                .replaceAll("\\s*[×*;xX]\\s*", "x")
                .replaceAll("(?<=[0-9])\\s+(?=[0-9]+([.,][0-9]+)?(\\s|x|$|[a-z\"]))", "x")
                .replaceAll("(?<=[a-z\"])\\s+(?=[0-9.])", "x");
        String[] texts = spaced.split("x", -1);
        String unit = texts[texts.length - 1].replaceAll("^[\\s0-9.,/]*", "").strip();
        List<Double> lengths = new ArrayList<>();
        List<Refusal> faults = new ArrayList<>();
        for (String text : texts) {
            String whole = text.matches("[\\s0-9.,/]*") && !unit.isEmpty() ? text.strip() + " " + unit : text.strip();
            Outcome<ParsedQuantity> read = Quantities.parse(
                    whole, Kind.LENGTH, system.display(Kind.LENGTH).unit(), MEASURED);
            if (read.isOk()) {
                lengths.add(read.orElseThrow().si());
            } else {
                faults.addAll(read.refusals());
            }
        }
        return faults.isEmpty() ? Outcome.ok(lengths) : Outcome.refused(faults);
    }
}
