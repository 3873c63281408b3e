package shimwright.bench.desk;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayDeque;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
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
    private volatile @Nullable Shelved shelved;
    /** Changes that were made since the program began, by id. */
    private final Set<String> changes = new HashSet<>();
    /** What was changed since the program began and can be taken back, by unit type, the latest first. */
    private final Map<String, Deque<Change>> earlier = new ConcurrentHashMap<>();

    /**
     * A change that can be taken back.
     *
     * @param words what was changed
     * @param before the file as it was
     */
    private record Change(String words, ReadFile before) {}

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
                PinnedUnit unit = new PinnedUnit(hash(file.content()), file.type());
                byType.put(file.type().id(), unit);
                byHash.put(unit.hash(), file);
            }
            asked = new Shelved(byType, byHash, there.faults());
            shelved = asked;
        }
        return asked;
    }

    private static String hash(byte[] content) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(content));
        } catch (NoSuchAlgorithmException missing) {
            throw new IllegalStateException("every Java has SHA-256", missing);
        }
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

    /**
     * Puts a unit file on the shelf, in place of the one of the same unit type; both are kept under their hashes, and jobs go on
     * with the one they were opened with.
     *
     * @param name of the file, for the problems
     * @param content its bytes
     * @return what it says; refused with every problem of the file
     */
    public synchronized Outcome<UnitType> add(String name, byte[] content) {
        Outcome<UnitType> read = UnitFiles.read(name, content).outcome();
        if (!(read instanceof Outcome.Ok<UnitType> ok)) {
            return read;
        }
        String type = ok.value().id();
        Optional<ReadFile> before = file(type);
        return documents
                .keep(name, content)
                .flatMap(hash -> before.map(file -> documents.keep(file.name(), file.content()))
                        .orElse(Outcome.ok(hash)))
                .flatMap(hash -> folder.put(type, content))
                .map(place -> {
                    shelved = null;
                    return ok.value();
                });
    }

    /**
     * Changes the file of the shelf for a unit type; what comes twice, as after an answer that was lost, is done once.
     *
     * @param id of the change, as the client made it
     * @param words what is changed
     * @param change the text of the changed file, from the unit type as it stands now
     * @return what it says now; refused with every problem that the change would bring
     */
    public synchronized Outcome<UnitType> change(
            String type, String id, String words, Function<UnitType, Outcome<String>> change) {
        PinnedUnit now = units().get(type);
        if (now == null) {
            return Outcome.refused(
                    Refusal.of("type", "there is no unit type " + type + " on this shelf", "Choose another"));
        }
        if (changes.contains(id)) {
            return Outcome.ok(now.type());
        }
        Optional<ReadFile> before = file(type);
        return change.apply(now.type())
                .flatMap(text -> add(type + ".yaml", text.getBytes(StandardCharsets.UTF_8)))
                .map(changed -> {
                    changes.add(id);
                    before.ifPresent(file -> earlier.computeIfAbsent(type, none -> new ArrayDeque<>())
                            .push(new Change(words, file)));
                    return changed;
                });
    }

    /** What was changed last and can be taken back; empty where nothing was changed since the program began. */
    public synchronized Optional<String> lastChange(String type) {
        return Optional.ofNullable(earlier.get(type)).map(Deque::peek).map(Change::words);
    }

    /** Puts the file of the shelf back as it was before the last change; refused where there is none to take back. */
    public synchronized Outcome<UnitType> takeBack(String type) {
        Deque<Change> changed = earlier.getOrDefault(type, new ArrayDeque<>());
        Change last = changed.peek();
        if (last == null) {
            return Outcome.refused(Refusal.of(
                    "type",
                    "nothing was changed since the program began",
                    "Save the file, mend it in an editor and put it on the shelf again"));
        }
        return add(last.before().name(), last.before().content()).map(was -> {
            changed.pop();
            return was;
        });
    }

    /** Keeps the file of the shelf under a hash, so that a job can stand on it for ever; refused where the disk does not take it. */
    Outcome<String> keep(String hash) {
        ReadFile file = shelved().byHash().get(hash);
        return file == null ? Outcome.ok(hash) : documents.keep(file.name(), file.content());
    }
}
