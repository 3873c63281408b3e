package shimwright.rebuild.unit.file;

import java.lang.ref.WeakReference;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.unit.model.UnitType;

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
        Map<String, Object> tree = TreeWriter.tree(type);
        written(type, tree);
        return tree;
    }

    /** A type that was written as this tree, which nobody changes any more. */
    static void written(UnitType type, Map<String, Object> tree) {
        synchronized (LATELY) {
            LATELY.addFirst(new Known(new WeakReference<>(type), tree));
            if (LATELY.size() > MOST) {
                LATELY.removeLast();
            }
        }
    }

    /** The same to look at, for who changes nothing in it. */
    public static Map<String, Object> seen(UnitType type) {
        return Collections.unmodifiableMap(known(type));
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

    /**
     * Reads such a tree as a unit file with all checks; each problem's key is its path in the tree.
     *
     * @param name of the file, for the problems
     */
    public static UnitFiles.Result read(String name, Map<String, Object> tree) {
        return UnitFiles.readTree(name, tree);
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
