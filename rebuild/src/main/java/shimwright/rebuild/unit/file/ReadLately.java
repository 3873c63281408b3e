package shimwright.rebuild.unit.file;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import shimwright.rebuild.unit.model.UnitType;

/** What sound texts said that were read lately; a text says the same whenever it is read. */
final class ReadLately {
    private static final int MOST = 4;

    private static final int MOST_JUDGED = 2;

    private record Read(String name, UnitFiles.Good good) {}

    private final Map<String, Read> files = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Read> eldest) {
            return size() > MOST;
        }
    };

    private record Judged(Map<String, Object> tree, UnitFiles.Good good) {}

    /** Unit files that were judged before they were written, with the trees that they were read from. */
    private final Deque<Judged> judged = new ArrayDeque<>();

    /** What a text said under that name, or under another where nothing of it names the file. */
    synchronized Optional<UnitFiles.Good> find(String name, String text) {
        return Optional.ofNullable(files.get(text))
                .filter(read ->
                        read.name().equals(name) || read.good().remarks().isEmpty())
                .map(Read::good);
    }

    synchronized void keep(String name, String text, UnitFiles.Good good) {
        files.put(text, new Read(name, good));
    }

    synchronized void keepJudged(Map<String, Object> tree, UnitFiles.Good good) {
        judged.addFirst(new Judged(tree, good));
        if (judged.size() > MOST_JUDGED) {
            judged.removeLast();
        }
    }

    /** What was found of one that says the very same and was judged lately, before it was written. */
    synchronized Optional<UnitFiles.Good> judged(UnitType type) {
        return judged.stream()
                .map(Judged::good)
                .filter(good -> good.type().equals(type))
                .findFirst();
    }

    /** The same of this very one, where it was read from the tree that it would be written as. */
    @SuppressWarnings("ReferenceEquality") // the very one that was judged
    synchronized Optional<UnitFiles.Good> judged(UnitType type, Map<String, Object> tree) {
        return judged.stream()
                .filter(one -> one.good().type() == type && one.tree().equals(tree))
                .map(Judged::good)
                .findFirst();
    }
}
