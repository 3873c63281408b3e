package shimwright.mechanics.published;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * What became of a published value.
 *
 * @param row the value
 * @param fate what became of it
 * @param words what was found, or why it does not count
 * @param faults what must be mended; empty when all is well
 */
record RowVerdict(PublishedRow row, Fate fate, String words, List<String> faults) {
    /** Wider than this share of the expected value a tolerance lets anything through. */
    private static final double WIDEST = 0.1;

    /** What binary arithmetic leaves, as a share of the expected value. */
    private static final double ROUNDING = 1e-12;

    enum Fate {
        /** Bound and within its tolerance. */
        MET,
        /** Bound and not within its tolerance, or bound in a way that cannot be. */
        MISSED,
        /** Named as one whose answer was typed; proves nothing and does not count as bound. */
        CIRCULAR,
        /** Named as one that nothing of ours answers. */
        LISTED,
        /** Neither bound nor named. */
        SKIPPED
    }

    /** What became of each row; a binding or a name without a row, or two rows of one id, is a mistake of the table. */
    static List<RowVerdict> all(List<PublishedRow> rows, Bindings bindings) {
        Set<String> ids = new HashSet<>();
        rows.forEach(row -> must(ids.add(row.id()), "two rows " + row.id()));
        for (Binding binding : bindings.all) {
            must(binding.missing(rows).isEmpty(), "no row for " + binding.missing(rows));
        }
        for (Map<String, String> names : List.of(bindings.listed, bindings.circular)) {
            names.keySet().forEach(id -> must(ids.contains(id), "no row " + id));
        }
        return rows.stream().map(row -> of(row, bindings)).toList();
    }

    private static void must(boolean so, String otherwise) {
        if (!so) {
            throw new IllegalArgumentException(otherwise);
        }
    }

    private static RowVerdict of(PublishedRow row, Bindings bindings) {
        List<Binding> bound =
                bindings.all.stream().filter(binding -> binding.answers(row)).toList();
        String listed = bindings.listed.get(row.id());
        String named = bindings.circular.get(row.id());
        if (bound.isEmpty()) {
            return listed == null
                    ? new RowVerdict(row, Fate.SKIPPED, "", List.of("neither bound nor listed"))
                    : new RowVerdict(row, Fate.LISTED, listed, List.of());
        }
        List<String> found = new ArrayList<>();
        List<String> faults = new ArrayList<>(row.source().isBlank() ? List.of("no source") : List.of());
        boolean circular = false;
        for (Binding binding : bound) {
            try {
                Map<String, String> given = binding.given().apply(row);
                Object answer = binding.answer().apply(row, given);
                found.add("ours " + answer);
                faults.addAll(faults(row, answer));
                circular |= new TypedRow(row.printed(), row.expected(), given, other -> number(binding, row, other))
                        .circular();
            } catch (RuntimeException broken) {
                faults.add(broken.toString());
            }
        }
        if (circular == (named == null)) {
            faults.add(circular ? "circular: what is typed was made from the answer" : "named circular and is not");
        }
        if (listed != null) {
            faults.add("listed and yet bound");
        }
        Fate fate = circular ? Fate.CIRCULAR : faults.isEmpty() ? Fate.MET : Fate.MISSED;
        return new RowVerdict(row, fate, named == null ? String.join(", ", found) : named, faults);
    }

    private static List<String> faults(PublishedRow row, Object answer) {
        if (row.exact()) {
            return row.expected().equals(answer) ? List.of() : List.of("ours is " + answer);
        }
        if (!(answer instanceof Double ours)) {
            return List.of("a number is expected, ours is " + answer);
        }
        double expected = Double.parseDouble(row.expected());
        double allowed = row.allowed();
        List<String> faults = new ArrayList<>();
        if (!(allowed >= 0 && (expected == 0 || allowed <= WIDEST * Math.abs(expected)))) {
            faults.add("a tolerance of " + row.tolerance() + " shows nothing");
        }
        double deviation = ours - expected;
        if (!(Math.abs(deviation) <= allowed + ROUNDING * Math.abs(expected))) {
            faults.add("ours is " + ours + ", off by " + deviation);
        }
        return faults;
    }

    private static OptionalDouble number(Binding binding, PublishedRow row, Map<String, String> given) {
        try {
            return binding.answer().apply(row, given) instanceof Double number
                    ? OptionalDouble.of(number)
                    : OptionalDouble.empty();
        } catch (RuntimeException refused) {
            return OptionalDouble.empty();
        }
    }

    /** One line for the account of a run. */
    String line() {
        return String.join(
                "\t",
                row.topic() + " " + row.id(),
                fate.name().toLowerCase(Locale.ROOT),
                "expected " + row.expected() + " " + row.unit() + " within " + row.tolerance(),
                faults.isEmpty() ? words : String.join("; ", faults),
                row.source());
    }
}
