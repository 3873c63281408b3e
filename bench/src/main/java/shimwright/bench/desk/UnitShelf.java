package shimwright.bench.desk;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.DocumentStore;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** The unit files that this shop knows: those that a new job can stand on, and those that jobs keep. */
public final class UnitShelf {
    private final UnitSource folder;
    private final DocumentStore documents;
    private final Map<String, Optional<PinnedUnit>> pinned = new ConcurrentHashMap<>();

    /** Hashes of files that this run of the program kept; what is kept is written and synced. */
    private final Set<String> kept = ConcurrentHashMap.newKeySet();

    private volatile @Nullable Shelved shelved;

    /** What lay there before one was laid: its other files are the same. */
    private volatile @Nullable Shelved before;

    /**
     * A unit file that was read without a fault.
     *
     * @param name of the file
     * @param content its bytes
     * @param type what it says
     */
    @SuppressWarnings("ArrayRecordComponent") // files are never compared, their hashes are
    public record ReadFile(String name, byte[] content, UnitType type) {}

    /**
     * The files of the shop as they lie there now.
     *
     * @param sound those without a fault
     * @param faults why others are not on the shelf; they stop nobody
     */
    public record Files(List<ReadFile> sound, List<Refusal> faults) {}

    private record Shelved(Map<String, PinnedUnit> byType, Map<String, ReadFile> byHash, List<Refusal> faults) {}

    /**
     * A shelf that asks for its files when they are first wanted.
     *
     * @param folder where they lie
     * @param documents where jobs keep theirs
     */
    public UnitShelf(UnitSource folder, DocumentStore documents) {
        this.folder = folder;
        this.documents = documents;
    }

    private Shelved shelved() {
        Shelved asked = shelved;
        if (asked == null) {
            Map<String, PinnedUnit> byType = new LinkedHashMap<>();
            Map<String, ReadFile> byHash = new LinkedHashMap<>();
            Files there = folder.files();
            for (ReadFile file : there.sound()) {
                PinnedUnit unit = unit(file);
                byType.put(file.type().id(), unit);
                byHash.put(unit.hash(), file);
            }
            asked = new Shelved(byType, byHash, there.faults());
            shelved = asked;
        }
        return asked;
    }

    /** A file as one stands on it; one that lay there before is the same unit, with what was worked out of it, and not hashed again. */
    @SuppressWarnings("ReferenceEquality") // the very one that lay there
    private PinnedUnit unit(ReadFile file) {
        Shelved last = before;
        if (last != null) {
            PinnedUnit known = last.byType().get(file.type().id());
            for (Map.Entry<String, ReadFile> there : last.byHash().entrySet()) {
                if (there.getValue() == file) {
                    return known != null && known.hash().equals(there.getKey())
                            ? known
                            : new PinnedUnit(there.getKey(), file.type());
                }
            }
        }
        return new PinnedUnit(PinnedUnit.hash(file.content()), file.type());
    }

    /** The unit files that a new job can stand on, by the id of the unit type. */
    public Map<String, PinnedUnit> units() {
        return shelved().byType();
    }

    /** The unit types on the shelf, by name. */
    public Collection<UnitType> types() {
        return units().values().stream().map(PinnedUnit::type).toList();
    }

    /** The unit type of that id; empty where there is none. */
    public Optional<UnitType> type(String id) {
        return Optional.ofNullable(units().get(id)).map(PinnedUnit::type);
    }

    /** The unit type of that id; empty also where the files were not wanted yet: none is read for it. */
    public Optional<UnitType> typeAtHand(String id) {
        Shelved now = shelved;
        return now == null
                ? Optional.empty()
                : Optional.ofNullable(now.byType().get(id)).map(PinnedUnit::type);
    }

    /** Why files of the shop are not on the shelf. */
    public List<Refusal> faults() {
        return shelved().faults();
    }

    /** The unit file under a hash: one of the shelf, or one that a job keeps. */
    public Optional<PinnedUnit> pinned(String hash) {
        for (PinnedUnit unit : units().values()) {
            if (unit.hash().equals(hash)) {
                return Optional.of(unit);
            }
        }
        return pinned.computeIfAbsent(hash, h -> documents.find(h).flatMap(content -> read(h, content)));
    }

    private static Optional<PinnedUnit> read(String hash, byte[] content) {
        return UnitFiles.read("unit file " + hash, content) instanceof UnitFiles.Good good
                ? Optional.of(new PinnedUnit(hash, good.type()))
                : Optional.empty();
    }

    /** The file of the shelf for a unit type, as it was read. */
    public Optional<ReadFile> file(String type) {
        PinnedUnit unit = units().get(type);
        return unit == null
                ? Optional.empty()
                : Optional.ofNullable(shelved().byHash().get(unit.hash()));
    }

    /** The unit files that come with the program, by name. */
    public Map<String, byte[]> shipped() {
        return folder.shipped();
    }

    /** Keeps a file under its hash; the one of the shelf for the same unit type also, so that one can go back to it. */
    Outcome<String> keep(String type, byte[] content) {
        PinnedUnit now = units().get(type);
        Outcome<String> last = now == null ? Outcome.ok("") : keep(now.hash());
        return last.flatMap(there -> documents.keep(type + ".yaml", content)).map(hash -> {
            kept.add(hash);
            return hash;
        });
    }

    /** Keeps what belongs to a unit file under its hash. */
    Outcome<String> keepDocument(String name, byte[] content) {
        return documents.keep(name, content);
    }

    /** Lays a file that is kept already on the shelf, in the place of the one of the same unit type. */
    Outcome<String> lay(String type, byte[] content) {
        return folder.put(type, content).map(place -> {
            before = shelved;
            shelved = null;
            return place;
        });
    }

    /** A file by the hash of its content; empty where nothing is kept under it. */
    Optional<byte[]> content(String hash) {
        ReadFile file = shelved().byHash().get(hash);
        return file == null ? documents.find(hash) : Optional.of(file.content());
    }

    /** Keeps the file of the shelf under a hash, so that a job can stand on it for ever; refused where the disk does not take it. */
    Outcome<String> keep(String hash) {
        ReadFile file = shelved().byHash().get(hash);
        return file == null || kept.contains(hash)
                ? Outcome.ok(hash)
                : documents.keep(file.name(), file.content()).map(same -> {
                    kept.add(hash);
                    return same;
                });
    }
}
