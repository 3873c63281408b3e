package shimwright.bench.web.kit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.bench.web.guard.ReadableText;
import shimwright.bench.web.guard.RequestDenied;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;

/** A form as typed: reads its fields, gathers every fault, and keeps what was typed so that it can be shown again. */
public final class Form {
    private final Map<String, String> typed;
    private final UnitSystem system;
    private final List<Refusal> faults = new ArrayList<>();

    /**
     * A form of fields by name.
     *
     * @throws RequestDenied where a field is longer than any may be or holds what no paper can show, or where there are too many
     */
    public Form(Map<String, List<String>> fields, UnitSystem system) {
        List<Refusal> refusals = ReadableText.refusals(fields);
        if (!refusals.isEmpty()) {
            throw new RequestDenied(422, refusals);
        }
        Map<String, String> first = new LinkedHashMap<>();
        fields.forEach((name, values) -> first.put(name, values.isEmpty() ? "" : String.join("\n", values)));
        this.typed = first;
        this.system = system;
    }

    /** The same form with one field more, which an address says. */
    public Form with(String name, String value) {
        Map<String, List<String>> fields = new LinkedHashMap<>();
        typed.forEach((field, text) -> fields.put(field, List.of(text)));
        fields.put(name, List.of(value));
        return new Form(fields, system);
    }

    /** What was typed in a field; empty where nothing was. */
    public String raw(String name) {
        return typed.getOrDefault(name, "").strip();
    }

    /** Everything typed, to fill the form again. */
    public Map<String, String> typed() {
        return Map.copyOf(typed);
    }

    /** The names of all fields. */
    public Set<String> names() {
        return Collections.unmodifiableSet(typed.keySet());
    }

    /** True where the form has a field of that name, empty or not. */
    public boolean has(String name) {
        return typed.containsKey(name);
    }

    /** A text of so many characters at most, which may be empty; key and place are for the fault. */
    public String text(String name, String key, String place, int longest) {
        String text = raw(name);
        if (text.length() > longest) {
            fault(key, place, "the text has " + text.length() + " characters", "Keep it under " + longest);
            return "";
        }
        return text;
    }

    /** A quantity in SI that must be there; 0 where it was refused, with the fault kept. */
    public double quantity(String name, Kind kind, String place, Range range) {
        Outcome<ParsedQuantity> parsed = Quantities.parse(
                        raw(name), kind, system.display(kind).unit(), place, range)
                .placed(name, place);
        if (parsed instanceof Outcome.Ok<ParsedQuantity> ok) {
            return ok.value().si();
        }
        faults.addAll(parsed.refusals());
        return 0;
    }

    /** Keeps a fault that was found in the form. */
    public void fault(String key, String place, String fact, String hint) {
        faults.add(new Refusal(key, place, fact, hint));
    }

    /** The faults kept so far, in order. */
    public List<Refusal> faults() {
        return List.copyOf(faults);
    }

    /** True while no fault was kept. */
    public boolean sound() {
        return faults.isEmpty();
    }

    /** The units of measure in which the form was typed. */
    public UnitSystem system() {
        return system;
    }
}
