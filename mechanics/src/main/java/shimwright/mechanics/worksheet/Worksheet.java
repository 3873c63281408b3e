package shimwright.mechanics.worksheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Sampling;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.working.Worked;

/**
 * One calculation with named, dimensioned inputs, its working, its sources and its cautions.
 *
 * @param name key on the command line and in JSON: lower case, dashes
 * @param title as a heading
 * @param doc one sentence: what it finds from what
 * @param sources standards, editions, sections; or "common practice, no source"
 * @param caseType the input record, every component with {@link Input}
 * @param resultType the output record, every component with {@link Output}
 * @param compute the pure function; total over the annotated ranges
 * @param pictures what there is to look at, from the case and its result; never throws for what compute has answered
 * @param slow true where one answer takes over a millisecond: it is drawn only when asked
 */
public record Worksheet<C extends Record, R extends Record>(
        String name,
        String title,
        String doc,
        List<String> sources,
        Class<C> caseType,
        Class<R> resultType,
        Function<C, Outcome<Worked<R>>> compute,
        BiFunction<C, R, List<Diagram>> pictures,
        boolean slow) {
    /** How it is drawn where nobody asked how: enough for two digits of an interval in about a second. */
    private static final Sampling AUTOMATIC = Sampling.of(20_000, 1);

    /** A worksheet that draws nothing; the components as of the record. */
    public Worksheet(
            String name,
            String title,
            String doc,
            List<String> sources,
            Class<C> caseType,
            Class<R> resultType,
            Function<C, Outcome<Worked<R>>> compute) {
        this(name, title, doc, sources, caseType, resultType, compute, (c, r) -> List.of(), false);
    }

    public Worksheet {
        sources = List.copyOf(sources);
        if (!name.matches("[a-z][a-z0-9-]*") || title.isBlank() || !doc.endsWith(".") || sources.isEmpty()) {
            throw new IllegalArgumentException("worksheet " + name + " lacks a name, title, sentence or source");
        }
        Fields.inputs(caseType);
        Fields.outputs(resultType);
    }

    /** The same worksheet with pictures. */
    public Worksheet<C, R> drawn(BiFunction<C, R, List<Diagram>> draw) {
        return new Worksheet<>(name, title, doc, sources, caseType, resultType, compute, draw, slow);
    }

    /** The same worksheet, drawn only when asked. */
    public Worksheet<C, R> drawnWhenAsked() {
        return new Worksheet<>(name, title, doc, sources, caseType, resultType, compute, pictures, true);
    }

    /** What there is to look at, of a case and its result. */
    List<Diagram> diagrams(Record given, Record result) {
        return pictures.apply(caseType.cast(given), resultType.cast(result));
    }

    /** What it needs, in order. */
    public List<SheetField> inputs() {
        return Fields.inputs(caseType);
    }

    /** What it gives, in order. */
    public List<SheetField> outputs() {
        return Fields.outputs(resultType);
    }

    /** The worked example: the {@code example} texts of the annotations, by key. */
    public Map<String, String> example() {
        Map<String, String> example = new LinkedHashMap<>();
        collectExamples(inputs(), "", example);
        return example;
    }

    private static void collectExamples(List<SheetField> fields, String prefix, Map<String, String> example) {
        for (SheetField field : fields) {
            if (!field.example().isEmpty()) {
                example.put(prefix + field.name(), field.example());
            } else if (field.shape() == Shape.RECORD) {
                collectExamples(field.children(), prefix + field.name() + ".", example);
            }
        }
    }

    /**
     * Reads a case.
     *
     * @param given by key: text as typed, or numbers, booleans, lists and maps as a JSON reader gives them; a bare
     *     number is in the unit that {@link Help} shows for the system; nulls count as not given
     * @param system units of bare numbers
     * @return the case, or every fault at once
     */
    public Outcome<BoundCase<C>> read(Map<String, ?> given, UnitSystem system) {
        return bound(given, system).reworded(this::labelled);
    }

    /** Reads, computes and propagates any ±; see {@link #read} for the parameters. */
    public Outcome<Answer> answer(Map<String, ?> given, UnitSystem system) {
        return bound(given, system).flatMap(bound -> answer(bound, system)).reworded(this::labelled);
    }

    /** Computes and propagates a case with its uncertainties to the first order. */
    public Outcome<Answer> answer(BoundCase<C> bound, UnitSystem system) {
        return computed(bound).flatMap(c -> finished(c, system)).reworded(this::labelled);
    }

    /**
     * As a door answers: with draws as asked for; where none are asked for, the first order, and draws beside it where
     * it is shown not to hold (JCGM 100:2008 5.1.2 note, JCGM 101:2008 clause 8).
     *
     * @param given see {@link #read}
     * @param system units of bare numbers
     * @param asked draws asked for; empty leaves it to the sheet
     */
    public Outcome<Answer> answer(Map<String, ?> given, UnitSystem system, Optional<Sampling> asked) {
        if (asked.isPresent()) {
            return answer(given, system, asked.get());
        }
        return bound(given, system)
                .flatMap(this::computed)
                .flatMap(c -> finished(c, system).map(first -> surely(first, c)))
                .reworded(this::labelled);
    }

    private Answer surely(Answer first, Computed<C, R> c) {
        if (c.propagated().bent().isEmpty() || slow) {
            return first;
        }
        Outcome<Simulation> drawn = Simulation.of(this, c.bound(), c.worked().result(), c.propagated(), AUTOMATIC);
        return drawn.isOk()
                ? first.with(drawn.orElseThrow())
                : first.without("Draws were tried, but "
                        + drawn.refusals().get(0).fact().replaceFirst("[.]$", "") + ".");
    }

    /** The same with draws beside the first order; refused where nothing is uncertain, see {@link Simulation}. */
    public Outcome<Answer> answer(Map<String, ?> given, UnitSystem system, Sampling sampling) {
        return bound(given, system)
                .flatMap(this::computed)
                .flatMap(c -> finished(c, system)
                        .flatMap(answer -> Simulation.of(
                                        this, c.bound(), c.worked().result(), c.propagated(), sampling)
                                .map(answer::with)))
                .reworded(this::labelled);
    }

    private Outcome<BoundCase<C>> bound(Map<String, ?> given, UnitSystem system) {
        return CaseReader.bind(caseType, inputs(), given, system);
    }

    /** The one place where a key becomes words: those of the field, where the formula has none of its own. */
    private Refusal labelled(Refusal refusal) {
        return refusal.place().equals(Refusal.words(refusal.key()))
                ? Fields.label(inputs(), refusal.key())
                        .map(label -> refusal.placed(refusal.key(), label))
                        .orElse(refusal)
                : refusal;
    }

    /**
     * A case, what was computed of it without its uncertainties, and what they make of it.
     *
     * @param judged the same computed with the uncertainty behind ± in the input for it, see {@link Input#elsewhere}
     * @param within the output of that; empty where there is none
     */
    private record Computed<C extends Record, R extends Record>(
            BoundCase<C> bound, Worked<R> worked, Propagation propagated, Worked<R> judged, String within) {}

    private Outcome<Computed<C, R>> computed(BoundCase<C> bound) {
        return compute.apply(bound.value())
                .flatMap(worked -> Propagation.of(this, bound, worked.result())
                        .flatMap(propagated -> judged(bound, worked, propagated)));
    }

    private Outcome<Computed<C, R>> judged(BoundCase<C> bound, Worked<R> worked, Propagation propagated) {
        for (SheetField field : inputs()) {
            String output = field.uncertainty().elsewhere();
            Budget typed = propagated.budgets().getOrDefault(output, Budget.NONE);
            if (!output.isEmpty() && typed.u() > 0) {
                double u = Math.hypot(Records.number(bound.value(), field.name()), typed.u());
                return compute.apply(Records.with(bound.value(), field.name(), u, caseType))
                        .map(judged -> new Computed<>(bound, worked, propagated, judged, output));
            }
        }
        return Outcome.ok(new Computed<>(bound, worked, propagated, worked, ""));
    }

    private Outcome<Answer> finished(Computed<C, R> c, UnitSystem system) {
        Worked<R> worked = c.judged();
        boolean finite = worked.working().stream().allMatch(line -> Double.isFinite(line.value()));
        if (!finite || !Render.finite(outputs(), worked.result())) {
            return Outcome.refused(Refusal.at(
                    name, "these inputs give no finite result", "Look for a value that is far too large or too small"));
        }
        List<String> cautions = new ArrayList<>(worked.cautions());
        cautions.addAll(c.bound().cautions());
        cautions.addAll(c.propagated().cautions());
        TotalUncertainty<R> total =
                TotalUncertainty.of(this, worked.result(), c.propagated().budgets(), c.within());
        return Outcome.ok(new Answer(
                this,
                c.bound().value(),
                total.result(),
                worked.working(),
                cautions.stream().distinct().toList(),
                total.budgets(),
                system));
    }
}
