package shimwright.rebuild.unit.file;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** What sound texts said that were read lately; a text says the same whenever it is read. */
final class ReadLately {
    private static final int MOST = 4;

    private record Read(String name, UnitFiles.Good good) {}

    private final Map<String, Read> files = new LinkedHashMap<>(MOST, 0.75f, true) {
        private static final long serialVersionUID = 1L;

        @Override
        protected boolean removeEldestEntry(Map.Entry<String, Read> eldest) {
            return size() > MOST;
        }
    };

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
}
