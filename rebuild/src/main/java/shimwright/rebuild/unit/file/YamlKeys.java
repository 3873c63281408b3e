package shimwright.rebuild.unit.file;

import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import shimwright.rebuild.unit.fault.Place;

/** The path of what stands at each place of a tree: {@code steps[3].torque}; of a list of one its entry. */
final class YamlKeys {
    private final Map<Place, String> paths = new HashMap<>();
    private final Set<Node> seen = Collections.newSetFromMap(new IdentityHashMap<>());

    private YamlKeys() {}

    static Map<Place, String> of(Node tree) {
        YamlKeys keys = new YamlKeys();
        keys.walk(tree, "");
        return keys.paths;
    }

    private void walk(Node node, String path) {
        if (!seen.add(node)) {
            return;
        }
        if (node instanceof SequenceNode sequence) {
            List<Node> entries = sequence.getValue();
            for (int i = 0; i < entries.size(); i++) {
                walk(entries.get(i), path + "[" + i + "]");
            }
        }
        paths.putIfAbsent(Place.of(node), path);
        if (node instanceof MappingNode mapping) {
            for (NodeTuple tuple : mapping.getValue()) {
                String key = tuple.getKeyNode() instanceof ScalarNode word ? word.getValue() : "";
                String inner = path.isEmpty() || key.isEmpty() ? path + key : path + "." + key;
                paths.putIfAbsent(Place.of(tuple.getKeyNode()), inner);
                walk(tuple.getValueNode(), inner);
            }
        }
    }
}
