package shimwright.rebuild.unit.file;

import java.lang.ref.WeakReference;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.model.UnitType;
import tools.jackson.databind.json.JsonMapper;

/**
 * A unit file as keys and values that are not judged yet: maps, lists and texts as they would be written, so that one of them can
 * be put in another's place and the whole be read with all checks.
 */
public final class UnitTree {
    /** Unit types whose trees are held: the one under work, and one or two beside it. */
    private static final int MOST = 3;

    private static final Deque<Known> LATELY = new ArrayDeque<>();

    private record Known(WeakReference<UnitType> type, Map<String, Object> tree) {}

    private UnitTree() {}

    /** The file of a unit type as maps, lists and texts that can be changed; what is as it would be when absent is left out. */
    public static Map<String, Object> of(UnitType type) {
        Map<String, Object> copy = new LinkedHashMap<>();
        known(type).forEach((key, value) -> copy.put(key, copy(value)));
        return copy;
    }

    /** The tree of a type that was asked for lately, else a new one; nobody changes it. */
    private static Map<String, Object> known(UnitType type) {
        synchronized (LATELY) {
            for (Known known : LATELY) {
                if (known.type().refersTo(type)) {
                    return known.tree();
                }
            }
        }
        Node text = YamlTree.read(UnitFiles.write(type), new ProblemCollector(type.id()))
                .orElseThrow(() -> new IllegalStateException("what was written cannot be read: " + type.id()));
        return keep(type, text);
    }

    /** Holds the tree of a type, which was read from its own text. */
    static Map<String, Object> keep(UnitType type, Node text) {
        Map<String, Object> tree = read(text);
        synchronized (LATELY) {
            LATELY.addFirst(new Known(new WeakReference<>(type), tree));
            if (LATELY.size() > MOST) {
                LATELY.removeLast();
            }
        }
        return tree;
    }

    private static Object copy(Object value) {
        if (value instanceof Map<?, ?> map) {
            Map<String, Object> copy = new LinkedHashMap<>();
            map.forEach((key, inner) -> copy.put(key.toString(), copy(inner)));
            return copy;
        }
        return value instanceof List<?> list
                ? new ArrayList<>(list.stream().map(UnitTree::copy).toList())
                : value;
    }

    private static Map<String, Object> read(Node tree) {
        Map<String, Object> root = new LinkedHashMap<>();
        ((Map<?, ?>) plain(tree)).forEach((key, value) -> root.put(key.toString(), value));
        return root;
    }

    private static Object plain(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<String, Object> map = new LinkedHashMap<>();
            for (NodeTuple tuple : mapping.getValue()) {
                map.put(((ScalarNode) tuple.getKeyNode()).getValue(), plain(tuple.getValueNode()));
            }
            return map;
        }
        if (node instanceof SequenceNode sequence) {
            return new ArrayList<>(
                    sequence.getValue().stream().map(UnitTree::plain).toList());
        }
        return ((ScalarNode) node).getValue();
    }

    /**
     * Reads such a tree as a unit file with all checks; each problem's key is its path in the tree.
     *
     * @param name of the file, for the problems
     */
    public static UnitFiles.Result read(String name, Map<String, Object> tree) {
        return UnitFiles.read(name, JsonMapper.shared().writeValueAsString(tree)); // JSON is YAML
    }

    /** The words of a choice as a unit file writes them. */
    public static List<String> words(Class<?> choice) {
        List<String> words = new ArrayList<>();
        for (Object constant : choice.getEnumConstants()) {
            words.add(AbsentValues.written(constant));
        }
        return words;
    }
}
