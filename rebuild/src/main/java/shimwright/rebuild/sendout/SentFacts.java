package shimwright.rebuild.sendout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;

/**
 * What was typed for a sheet of work.
 *
 * @param words by name, as typed
 * @param numbers by name, SI; what was left empty is not there
 * @param readings by name, SI; none where nothing was typed
 */
record SentFacts(Map<String, String> words, Map<String, Double> numbers, Map<String, List<Double>> readings) {
    /**
     * The facts of some work.
     *
     * @param typed by name
     * @param readings what was read of those that are typed as readings, by name, SI; an empty list where nothing was
     * @param refusals gets everything that is missing or cannot be read; the facts then lack it
     */
    static SentFacts of(
            OtherWork work,
            Map<String, String> typed,
            Map<String, List<Double>> readings,
            UnitSystem system,
            List<Refusal> refusals) {
        Map<String, String> words = new LinkedHashMap<>();
        Map<String, Double> numbers = new LinkedHashMap<>();
        for (OtherWork.Fact fact : work.facts()) {
            String text = typed.getOrDefault(fact.name(), "").strip();
            String key = "more." + fact.name();
            if (text.isEmpty()) {
                if (fact.needed()) {
                    refusals.add(new Refusal(key, fact.label(), "nothing typed", "The sheet has to say it"));
                }
                continue;
            }
            switch (fact.typed()) {
                case WORDS -> words.put(fact.name(), text);
                case READINGS -> {
                    for (double value : readings.getOrDefault(fact.name(), List.of())) {
                        if (!(value >= fact.range().min()
                                && value <= fact.range().max())) {
                            refusals.add(
                                    new Refusal(key, fact.label(), "a reading is no such size", "Look at the unit"));
                        }
                    }
                }
                default -> {
                    Outcome<Double> read = Quantities.parse(
                                    text,
                                    fact.kind(),
                                    system.display(fact.kind()).unit(),
                                    fact.label(),
                                    fact.range())
                            .placed(key, fact.label())
                            .map(parsed -> parsed.si());
                    refusals.addAll(read.refusals());
                    if (read.isOk()) {
                        numbers.put(fact.name(), read.orElseThrow());
                    }
                }
            }
        }
        return new SentFacts(words, numbers, readings);
    }

    /** True where it was typed and could be read. */
    boolean has(String name) {
        return numbers.containsKey(name) || !read(name).isEmpty();
    }

    String said(String name) {
        return words.getOrDefault(name, "");
    }

    double number(String name) {
        Double value = numbers.get(name);
        if (value == null) {
            throw new IllegalStateException("the sheet was written without " + name);
        }
        return value;
    }

    OptionalDouble maybe(String name) {
        Double value = numbers.get(name);
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }

    /** Readings of something; none where nothing was typed. */
    List<Double> read(String name) {
        return readings.getOrDefault(name, List.of());
    }

    static String mm(double metres) {
        return Quantities.print(metres, Kind.LENGTH, UnitSystem.METRIC);
    }
}
