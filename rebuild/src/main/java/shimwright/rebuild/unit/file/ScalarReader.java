package shimwright.rebuild.unit.file;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.fault.QuantityText;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Quantity;

/** Reads single values: texts, yes or no, numbers, quantities and words of a fixed list. */
final class ScalarReader {
    private static final int LONGEST = 4000;
    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}");
    private static final Pattern NUMBER =
            Pattern.compile("[+-]?(\\d{1,15}(\\.\\d{0,15})?|\\.\\d{1,15})([eE][+-]?\\d{1,2})?");

    private final ProblemCollector problems;

    ScalarReader(ProblemCollector problems) {
        this.problems = problems;
    }

    /** A value of the type; empty where it cannot be read, and then the problems say why. */
    Optional<Object> read(Node node, Component component, Class<?> type, String name) {
        Optional<String> text = text(node, component, name);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        if (type == String.class) {
            return Optional.of(text.get());
        }
        Spot spot = new Spot(node, component, name);
        if (type == boolean.class) {
            return truth(text.get(), spot);
        }
        if (type == int.class || type == Integer.class) {
            return whole(text.get(), spot);
        }
        if (type.isEnum()) {
            return word(text.get(), type, spot);
        }
        Kind kind = component.kind();
        if (type == Quantity.class) {
            return spot.taken(QuantityText.stated(text.get(), kind));
        }
        return kind == Kind.NUMBER ? number(text.get(), spot) : spot.taken(QuantityText.one(text.get(), kind));
    }

    /** A row of quantities in one text. */
    Optional<Object> row(Node node, Component component, String name) {
        if (node instanceof SequenceNode) {
            problems.add(
                    Place.of(node),
                    "\"" + component.key() + "\" of " + name + " is one text with the unit at its end, here is a list",
                    "Write it as 92 115 " + QuantityText.usual(component.kind()));
            return Optional.empty();
        }
        Spot spot = new Spot(node, component, name);
        return text(node, component, name).flatMap(text -> spot.taken(QuantityText.row(text, component.kind())));
    }

    private Optional<String> text(Node node, Component component, String name) {
        if (!(node instanceof ScalarNode scalar)) {
            problems.add(
                    Place.of(node),
                    what(component, name) + " is one value, here is " + describe(node),
                    "Write one value");
            return Optional.empty();
        }
        String text = scalar.getValue().strip();
        if (text.isEmpty() && scalar.getScalarStyle() == ScalarStyle.PLAIN) {
            problems.add(Place.of(node), what(component, name) + " has no value", "Write one, or leave the key out");
            return Optional.empty();
        }
        if (text.length() > LONGEST) {
            problems.add(
                    Place.of(node),
                    what(component, name) + " is longer than " + LONGEST + " letters",
                    "Say it shorter");
            return Optional.empty();
        }
        return Optional.of(text);
    }

    private static String what(Component component, String name) {
        return "\"" + component.key() + "\" of " + name;
    }

    private record SpotFact(String fact, String hint) {}

    private final class Spot {
        private final Node node;
        private final Component component;
        private final String name;

        Spot(Node node, Component component, String name) {
            this.node = node;
            this.component = component;
            this.name = name;
        }

        Optional<Object> refuse(SpotFact why) {
            problems.add(Place.of(node), what(component, name) + ": " + why.fact(), why.hint());
            return Optional.empty();
        }

        <T> Optional<Object> taken(Outcome<T> outcome) {
            for (Refusal refusal : outcome.refusals()) {
                problems.add(Place.of(node), what(component, name) + ": " + refusal.fact(), refusal.hint());
            }
            return outcome.isOk() ? Optional.of(outcome.orElseThrow()) : Optional.empty();
        }
    }

    private static Optional<Object> truth(String text, Spot spot) {
        if (text.equals("true") || text.equals("false")) {
            return Optional.of(Boolean.valueOf(text));
        }
        return spot.refuse(new SpotFact("\"" + text + "\" is neither true nor false", "Write true or false"));
    }

    private static Optional<Object> whole(String text, Spot spot) {
        if (WHOLE.matcher(text).matches()) {
            return Optional.of(Integer.valueOf(text));
        }
        return spot.refuse(new SpotFact("\"" + text + "\" is not a whole number", "Write it in digits, such as 3"));
    }

    private static Optional<Object> number(String text, Spot spot) {
        if (NUMBER.matcher(text).matches()) {
            return Optional.of(Double.valueOf(text));
        }
        return spot.refuse(
                new SpotFact("\"" + text + "\" is not a plain number", "Write a number without a unit, such as 0.18"));
    }

    private static Optional<Object> word(String text, Class<?> type, Spot spot) {
        Optional<Object> constant = AbsentValues.constant(type, text);
        if (constant.isPresent()) {
            return constant;
        }
        List<String> known = Arrays.stream(type.getEnumConstants())
                .map(AbsentValues::written)
                .toList();
        return spot.refuse(
                new SpotFact("\"" + text + "\" is not one of its words", Spelling.hint(text, known, "words")));
    }

    /** What a node is, in words. */
    static String describe(Node node) {
        if (node instanceof SequenceNode) {
            return "a list";
        }
        if (node instanceof MappingNode) {
            return "a set of keys and values";
        }
        String text = ((ScalarNode) node).getValue().strip();
        return text.isEmpty() ? "nothing" : "\"" + (text.length() > 40 ? text.substring(0, 40) + "..." : text) + "\"";
    }
}
