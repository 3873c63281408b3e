package shimwright.rebuild.unit.file;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.snakeyaml.engine.v2.common.FlowStyle;
import org.snakeyaml.engine.v2.common.ScalarStyle;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.scanner.StreamReader;
import shimwright.rebuild.unit.fault.Place;
import shimwright.rebuild.unit.fault.ProblemCollector;

/** Keys and values as the nodes that their text would be read as; each stands on a line of its own, in order. */
final class TreeNodes {
    private static final int[] NO_TEXT = {};

    private static final int LONGEST_KEY = 400;

    private final ProblemCollector problems;
    private int lines;
    private boolean tooDeep;

    private TreeNodes(ProblemCollector problems) {
        this.problems = problems;
    }

    /** The nodes; empty where they could not be written, and then the problems say so. */
    static Optional<Node> of(Map<String, Object> tree, ProblemCollector problems) {
        TreeNodes nodes = new TreeNodes(problems);
        Node root = nodes.node(tree, 1);
        problems.keys(() -> YamlKeys.of(root));
        if (nodes.tooDeep) {
            problems.add(
                    Place.START,
                    "lists lie in lists more than " + YamlGuard.DEEPEST + " deep",
                    "A unit file is never that deep");
        }
        return problems.count() > 0 ? Optional.empty() : Optional.of(root);
    }

    private Node node(@Nullable Object value, int depth) {
        Optional<Mark> here = Optional.of(new Mark("", 0, lines++, 0, NO_TEXT, 0));
        if (depth > YamlGuard.DEEPEST) {
            tooDeep = true;
            return new ScalarNode(Tag.STR, true, "", ScalarStyle.DOUBLE_QUOTED, here, here);
        }
        if (value instanceof Map<?, ?> map) {
            List<NodeTuple> tuples = new ArrayList<>(map.size());
            map.forEach((key, held) -> tuples.add(new NodeTuple(key(key.toString(), depth), node(held, depth + 1))));
            return new MappingNode(Tag.MAP, true, tuples, FlowStyle.FLOW, here, here);
        }
        if (value instanceof Collection<?> list) {
            List<Node> held = new ArrayList<>(list.size());
            list.forEach(one -> held.add(node(one, depth + 1)));
            return new SequenceNode(Tag.SEQ, true, held, FlowStyle.FLOW, here, here);
        }
        ScalarStyle style = value instanceof String ? ScalarStyle.DOUBLE_QUOTED : ScalarStyle.PLAIN;
        String text = String.valueOf(value);
        if (!StreamReader.isPrintable(text)) {
            problems.add(Place.of(here), "there is a character in it that no text has", "Delete it and type it anew");
        }
        return new ScalarNode(Tag.STR, true, text, style, here, here);
    }

    private Node key(String key, int depth) {
        if (key.length() > LONGEST_KEY) {
            problems.add(Place.START, "a key is longer than " + LONGEST_KEY + " letters", "Write a word");
        }
        return node(key, depth);
    }
}
