package shimwright.bench.desk;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.LaysFile;
import shimwright.rebuild.act.UnitActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.JobLog;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/**
 * The unit files of the shop as they were and are. A changed file is kept under its hash, then its entry, then it is laid on the
 * shelf; where the last did not come about, it is made up for at the next start.
 */
public final class UnitVersions {
    private final Desk desk;
    private final JobLog log;
    private final UnitShelf shelf;
    private final FoldCache streams;

    UnitVersions(Desk desk, JobLog log, UnitShelf shelf, FoldCache streams) {
        this.desk = desk;
        this.log = log;
        this.shelf = shelf;
        this.streams = streams;
    }

    /**
     * A change of a unit file.
     *
     * @param entry of the log
     * @param change what it says
     */
    public record Version(LogEntry entry, Entry.UnitChanged change) {}

    /** The changes of a unit type's file, the latest first. */
    public List<Version> of(String type) {
        List<Version> versions = new ArrayList<>();
        for (LogEntry entry : desk.shop().unitFile(type)) {
            if (entry.body() instanceof Entry.UnitChanged change) {
                versions.add(new Version(entry, change));
            }
        }
        Collections.reverse(versions);
        return List.copyOf(versions);
    }

    /** A file that was kept; empty where there is none of that hash, or it is one of another unit type. */
    public Optional<String> text(String type, String hash) {
        return shelf.content(hash)
                .filter(content -> UnitFiles.read(type, content).outcome() instanceof Outcome.Ok<UnitType> ok
                        && ok.value().id().equals(type))
                .map(content -> new String(content, StandardCharsets.UTF_8));
    }

    /** The file of a unit type on the shelf; empty where there is none. */
    public Optional<String> text(String type) {
        return shelf.file(type).map(file -> new String(file.content(), StandardCharsets.UTF_8));
    }

    /**
     * Changes the file of the shelf for a unit type; what comes twice, as after an answer that was lost, is done once.
     *
     * @param what is changed
     * @param why it is changed; may be empty
     * @param change the text of the changed file, from the unit type as it stands now
     * @return what it says now; refused with every problem that the change would bring
     */
    public Outcome<UnitType> change(
            String type, Desk.Signed signed, String what, String why, Function<UnitType, Outcome<String>> change) {
        synchronized (shelf) {
            makeUp(desk.shop(), type);
            PinnedUnit now = shelf.units().get(type);
            if (now == null) {
                return Outcome.refused(
                        Refusal.of("type", "there is no unit type " + type + " on this shelf", "Choose another"));
            }
            boolean done = log.find(signed.id())
                    .filter(kept -> kept.body() instanceof Entry.UnitChanged there
                            && there.unitType().equals(type))
                    .isPresent();
            return done
                    ? Outcome.ok(now.type())
                    : change.apply(now.type()).flatMap(text -> put(type, text, signed, what, why));
        }
    }

    /**
     * Puts a unit file on the shelf, in place of the one of the same unit type; both are kept under their hashes, and jobs go on
     * with the one they were opened with.
     *
     * @param name of the file, for the problems
     * @param content its bytes
     * @return what it says; refused with every problem of the file
     */
    public Outcome<UnitType> add(String name, byte[] content, Desk.Signed signed, String what) {
        synchronized (shelf) {
            return UnitFiles.read(name, content)
                    .outcome()
                    .flatMap(type -> put(type.id(), plain(content), signed, what, ""));
        }
    }

    /** The text of a file without its byte order mark. */
    private static String plain(byte[] content) {
        String text = new String(content, StandardCharsets.UTF_8);
        return text.startsWith("\uFEFF") ? text.substring(1) : text;
    }

    private Outcome<UnitType> put(String type, String text, Desk.Signed signed, String what, String why) {
        String before = Optional.ofNullable(shelf.units().get(type))
                .map(PinnedUnit::hash)
                .orElse("");
        byte[] content = text.getBytes(StandardCharsets.UTF_8);
        if (shelf.file(type)
                .filter(there -> Arrays.equals(there.content(), content))
                .isPresent()) {
            return Outcome.ok(shelf.type(type).orElseThrow());
        }
        return desk.act(new UnitActs.ChangeUnit(type, before, text, what, why), signed)
                .map(done -> shelf.type(type).orElseThrow());
    }

    /** Goes back to a file as it was, which is a change as any other. */
    public Outcome<UnitType> back(String type, String hash, Desk.Signed signed, String what, String why) {
        return text(type, hash)
                .map(text -> change(type, signed, what, why, now -> Outcome.ok(text)))
                .orElseGet(() -> Outcome.refused(
                        Refusal.of("hash", "no file of this unit is kept under that hash", "Choose one of the list")));
    }

    /** The last change, where the file stands as that one left it and there was one before. */
    public Optional<Version> last(String type) {
        PinnedUnit now = shelf.units().get(type);
        return of(type).stream()
                .findFirst()
                .filter(last -> now != null
                        && last.change().after().equals(now.hash())
                        && !last.change().before().isEmpty());
    }

    /** An act that changes a file: the file is kept before its entry is, and laid on the shelf after. */
    Outcome<Desk.Done> keep(LaysFile change, Desk.Signed signed, Supplier<Outcome<Desk.Done>> act) {
        synchronized (shelf) {
            byte[] content = change.text().getBytes(StandardCharsets.UTF_8);
            Optional<LogEntry> known = log.find(signed.id());
            if (known.isPresent()) {
                boolean same = laid(known.get().body(), change.type(), PinnedUnit.hash(content));
                return same
                        ? Outcome.ok(new Desk.Done(JobLog.SHOP, List.of(known.get()), ""))
                        : Outcome.refused(Refusal.of(
                                "entry",
                                "this entry is already kept and says something else",
                                "Load the page again and look"));
            }
            makeUp(desk.shop(), change.type());
            Outcome<UnitType> read =
                    UnitFiles.read(change.type() + ".yaml", content).outcome();
            return read.flatMap(type -> shelf.keep(change.type(), content))
                    .flatMap(hash -> act.get())
                    .flatMap(done -> shelf.lay(change.type(), content).map(place -> done));
        }
    }

    private boolean laid(Entry entry, String type, String hash) {
        boolean file = entry instanceof Entry.UnitChanged there
                && there.unitType().equals(type)
                && there.after().equals(hash);
        boolean pictures = entry instanceof Entry.UnitPictured there
                && there.unitType().equals(type)
                && Optional.ofNullable(shelf.units().get(type))
                        .filter(now -> now.hash().equals(hash))
                        .isPresent();
        return file || pictures;
    }

    /** What another shop said of a unit file; empty where nothing is kept under the hash. */
    public Optional<String> manifest(String hash) {
        return shelf.content(hash).map(content -> new String(content, StandardCharsets.UTF_8));
    }

    /** Keeps what another shop says of a unit file. */
    public Outcome<String> keepManifest(byte[] content) {
        return shelf.keepDocument("manifest.json", content);
    }

    /**
     * Lays what the log says was laid and the shelf does not have, as when the power went between the two or another bench of
     * this shop changed the file. A file that the log does not know was laid there by hand, and stays.
     */
    public void makeUp() {
        synchronized (shelf) {
            Shop shop = desk.shop();
            shop.unitFiles().keySet().forEach(type -> makeUp(shop, type));
        }
    }

    private void makeUp(Shop shop, String type) {
        PinnedUnit now = shelf.units().get(type);
        if (shop.leftBehind(type, now == null ? "" : now.hash())) {
            of(type).stream()
                    .findFirst()
                    .flatMap(last -> text(type, last.change().after()))
                    .ifPresent(text -> shelf.lay(type, text.getBytes(StandardCharsets.UTF_8)));
        }
    }

    /**
     * Jobs of before unit files were kept with them get the file that the shelf has now, so that from here on nothing of
     * them changes.
     *
     * @param by who signs it
     */
    public void pinOlderJobs(String by) {
        for (JobSummary line : streams.lines()) {
            if (line.unitFile().isEmpty()) {
                streams.job(line.job()).ifPresent(job -> pin(job, by));
            }
        }
    }

    private void pin(Job job, String by) {
        desk.file(job)
                .ifPresent(file -> desk.act(
                        job.id(),
                        new IntakeActs.MoveUnit(
                                file.hash(), job.variant(), "unit files are kept with their jobs from now on"),
                        new Desk.Signed("pin-" + job.id(), by, UnitSystem.METRIC)));
    }
}
