package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.UnitType.TellTale;
import shimwright.rebuild.unit.model.UnitType.Weight;

/**
 * What the tell-tales say about the variant. A variant is settled when at least two strong tell-tales agree on it and no
 * strong one speaks against it; weak ones travel with swapped parts and are only recorded.
 *
 * @param variant the variant that is settled; null where none is
 * @param votes for each tell-tale that was read, the variants it fits
 * @param against tell-tales, in their words, that speak against the leading variant
 * @param asked counts that are twice or half of what a variant shows: they are asked about and settle nothing
 * @param say one sentence: what is settled, or what is still wanted
 */
public record Identification(
        @Nullable String variant,
        Map<String, Set<String>> votes,
        List<String> against,
        List<String> asked,
        String say) {

    /**
     * Reads the tell-tales.
     *
     * @param type unit type
     * @param seen what was seen, by tell-tale; a missing or blank one was not read
     */
    public static Identification of(UnitType type, Map<String, String> seen) {
        Map<String, Set<String>> votes = new LinkedHashMap<>();
        Map<String, Integer> strong = new LinkedHashMap<>();
        Map<String, String> asked = new LinkedHashMap<>();
        type.variants().keySet().forEach(v -> strong.put(v, 0));
        for (TellTale tale : type.tellTales()) {
            String saw = seen.getOrDefault(tale.id(), "").strip();
            if (saw.isEmpty()) {
                continue;
            }
            Set<String> fits = fits(tale, saw);
            // what nobody has said of a variant may be so as well
            type.variants().keySet().stream()
                    .filter(variant -> !tale.shows().containsKey(variant))
                    .forEach(fits::add);
            votes.put(tale.id(), fits);
            counted(type, tale, saw).ifPresent(question -> asked.put(tale.id(), question));
            if (tale.weight() == Weight.STRONG && fits.size() == 1) {
                strong.merge(fits.iterator().next(), 1, Integer::sum);
            }
        }
        String lead = strong.entrySet().stream()
                .max(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .orElseThrow();
        int count = strong.getOrDefault(lead, 0);
        List<String> strongAgainst = against(type, votes, asked.keySet(), seen, lead, Weight.STRONG);
        List<String> weakAgainst = against(type, votes, asked.keySet(), seen, lead, Weight.WEAK);
        String name = type.variants().get(lead) == null ? lead : nameOf(type, lead);
        List<String> all = new ArrayList<>(strongAgainst);
        all.addAll(weakAgainst);
        List<String> questions = List.copyOf(asked.values());
        if (!questions.isEmpty()) {
            return new Identification(
                    null, votes, count == 0 ? List.of() : all, questions, String.join(" ", questions));
        }
        if (count >= 2 && strongAgainst.isEmpty()) {
            String weak = weakAgainst.isEmpty()
                    ? ""
                    : " Against it, but only weak, as a swapped part: " + String.join("; ", weakAgainst) + ".";
            return new Identification(
                    lead, votes, all, List.of(), count + " strong tell-tales agree on " + name + "." + weak);
        }
        String say = !strongAgainst.isEmpty() && count > 0
                ? "Contradiction: " + count + " strong for " + name + ", but " + String.join("; ", strongAgainst)
                        + ". Look again; parts of two units may be mixed."
                : "Not settled: " + count + " strong tell-tale" + (count == 1 ? "" : "s") + " so far, two must agree.";
        return new Identification(null, votes, count == 0 ? List.of() : all, List.of(), say);
    }

    private static String nameOf(UnitType type, String variant) {
        UnitType.Variant known = type.variants().get(variant);
        return known == null ? variant : known.name();
    }

    private static List<String> against(
            UnitType type,
            Map<String, Set<String>> votes,
            Set<String> asked,
            Map<String, String> seen,
            String lead,
            Weight weight) {
        List<String> against = new ArrayList<>();
        for (TellTale tale : type.tellTales()) {
            Set<String> fits = votes.get(tale.id());
            if (fits != null && !asked.contains(tale.id()) && tale.weight() == weight && !fits.contains(lead)) {
                against.add(tale.look() + ": " + seen.getOrDefault(tale.id(), ""));
            }
        }
        return against;
    }

    private static Set<String> fits(TellTale tale, String saw) {
        Set<String> fits = new LinkedHashSet<>();
        tale.shows().forEach((variant, shown) -> {
            if (same(shown, saw, tale.within())) {
                fits.add(variant);
            }
        });
        return fits;
    }

    /** The question that a count raises which fits no variant, but twice or half of which does. */
    private static Optional<String> counted(UnitType type, TellTale tale, String saw) {
        OptionalDouble count = number(saw);
        if (tale.within() <= 0 || count.isEmpty() || !fits(tale, saw).isEmpty()) {
            return Optional.empty();
        }
        for (double times : new double[] {2, 0.5}) {
            Set<String> meant = fits(tale, Double.toString(count.getAsDouble() / times));
            if (!meant.isEmpty()) {
                String variant = meant.iterator().next();
                return Optional.of(tale.look() + ": " + saw + " is "
                        + (times == 2 ? "twice" : "half of") + " what " + nameOf(type, variant) + " shows, "
                        + tale.shows().getOrDefault(variant, "") + ". "
                        + (times == 2
                                ? "Counted double, or both sides turned together?"
                                : "Only one side counted, or only half of it?")
                        + " Count again, or leave it empty.");
            }
        }
        return Optional.empty();
    }

    private static OptionalDouble number(String text) {
        try {
            return OptionalDouble.of(Double.parseDouble(text.strip().replace(',', '.')));
        } catch (NumberFormatException words) {
            return OptionalDouble.empty();
        }
    }

    private static boolean same(String shown, String saw, double within) {
        if (within > 0) {
            OptionalDouble expected = number(shown);
            OptionalDouble counted = number(saw);
            return expected.isPresent()
                    && counted.isPresent()
                    && Math.abs(expected.getAsDouble() - counted.getAsDouble()) <= within + 1e-9;
        }
        return shown.strip().toLowerCase(Locale.ROOT).equals(saw.toLowerCase(Locale.ROOT));
    }
}
