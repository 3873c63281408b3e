// size: all parts of a record, and how each is taken from the job
package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.clearance.EtchedDeviation;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.plan.learn.AsFound;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;

/**
 * The record that goes with the unit.
 *
 * @param job the job
 * @param unit the unit
 * @param tellTales what told the variant: look, what was seen
 * @param decisions findings with their verdicts
 * @param asFound what was read before it came apart, beside the same now
 * @param clearances every clearance with readings, pack and acceptance
 * @param torques what was tightened, in order, as the entries have it
 * @param consumables what was used, by name, with the steps it was used at
 * @param holds every hold point that was read
 * @param proofs the proof readings
 * @param overruled what was passed against advice, by whom and why
 * @param struck readings that do not count, with the reason
 * @param notes notes in order
 * @param pictures pictures in order
 * @param history everything that was kept, in order
 */
public record HandBackRecord(
        Job job,
        Unit unit,
        Map<String, String> tellTales,
        List<Decision> decisions,
        List<BeforeAndAfter> asFound,
        List<Setting> clearances,
        List<Tightened> torques,
        Map<String, String> consumables,
        List<HoldReading> holds,
        List<HoldReading> proofs,
        List<String> overruled,
        List<Struck> struck,
        List<Said<Entry.NoteMade>> notes,
        List<Said<Entry.PictureAdded>> pictures,
        List<History.Line> history) {

    /**
     * A finding and the verdict on it.
     *
     * @param pictures those of its pieces, by their place among all of the job, from 1
     * @param readings findings with something that was read, each with the limit of its day
     */
    public record Decision(
            String what,
            String found,
            String verdict,
            String reason,
            String consent,
            List<Long> pictures,
            List<Entry.Found> readings) {}

    /**
     * A clearance as it was set; one that is not read with its pack is proved by its drag at a hold point.
     *
     * @param trialPack pieces that were in for the trial
     * @param trial rounds of the trial that count
     * @param chosen packs chosen at its places
     * @param fitted pieces named as in without a trial
     * @param last rounds that count with the pack in
     * @param accepted the acceptance that stands; null where none does
     * @param readWithPack true where the unit file has a step that reads it with its pack
     */
    public record Setting(
            Clearance clearance,
            Entry.@Nullable PackIn trialPack,
            List<Said<Entry.RoundRead>> trial,
            List<Said<Entry.PackChosen>> chosen,
            Entry.@Nullable PackIn fitted,
            List<Said<Entry.RoundRead>> last,
            @Nullable Said<Entry.ClearanceAccepted> accepted,
            boolean readWithPack) {}

    /**
     * Something tightened: at which step, when, by whom; what was tightened again later counts there alone.
     *
     * @param origin where the torque comes from by the unit file; empty where it does not say it of this torque
     * @param guess true where it is a guess
     */
    public record Tightened(
            String step, Entry.Tightened what, Said<Entry.StepDone> done, String origin, boolean guess) {
        /** True where the wrench was set to the torque of the unit file and nobody read another. */
        public boolean bySetting() {
            return what.how().equals(Entry.Tightened.NOMINAL);
        }

        /** Whether it was read or is what the wrench was set to, in words. */
        public String how() {
            return bySetting() ? Entry.Tightened.SET : what.how();
        }
    }

    /**
     * A check of a step's hold point as read.
     *
     * @param what is read and how
     * @param limits as they were when it was read, in words
     * @param read null where it was not
     */
    public record HoldReading(
            String step,
            String hold,
            String what,
            String limits,
            @Nullable Said<Entry.CheckRead> read) {}

    /** A reading that does not count. */
    public record Struck(Said<Entry.RoundRead> round, String reason) {}

    /** The record of a job, whether it was handed back yet or not. */
    public static HandBackRecord of(Job job, Unit unit) {
        Map<String, String> tales = new LinkedHashMap<>();
        unit.type().tellTales().forEach(tale -> {
            String saw = job.opened().tellTales().get(tale.id());
            if (saw != null) {
                tales.put(tale.look(), saw);
            }
        });
        return new HandBackRecord(
                job,
                unit,
                tales,
                decisions(job, unit),
                BeforeAndAfter.of(job, unit),
                unit.type().settingOrder().stream()
                        .map(id -> setting(job, unit, EtchedDeviation.of(unit.clearance(id), job)))
                        .toList(),
                torques(job, unit),
                consumables(job, unit),
                holds(job, unit, false),
                holds(job, unit, true),
                OverruledAdvice.of(job),
                struck(job, unit),
                job.notes().values().stream()
                        .flatMap(List::stream)
                        .filter(said -> !said.what().text().isBlank())
                        .sorted(java.util.Comparator.comparingLong(Said::number))
                        .toList(),
                pictures(job),
                History.of(job, unit));
    }

    /** The pictures of a job in order. */
    public static List<Said<Entry.PictureAdded>> pictures(Job job) {
        return job.pictures().values().stream()
                .flatMap(List::stream)
                .sorted(java.util.Comparator.comparingLong(Said::number))
                .toList();
    }

    /** The pictures of some pieces, as found or verdict name them, by their place among all of the job, from 1. */
    private static List<Long> pictures(Job job, Unit unit, List<String> items, String piece) {
        Set<String> about = (piece.isEmpty()
                        ? items.stream()
                                .filter(item -> unit.type().items().stream()
                                        .anyMatch(one -> one.id().equals(item)))
                                .flatMap(item -> JudgedPiece.parts(unit.item(item)).stream())
                        : Stream.of(piece.split("\\+")))
                .map(part -> "part " + part)
                .collect(Collectors.toSet());
        List<Said<Entry.PictureAdded>> all = pictures(job);
        return LongStream.rangeClosed(1, all.size())
                .filter(place -> about.contains(all.get((int) place - 1).what().about()))
                .boxed()
                .toList();
    }

    private static List<Decision> decisions(Job job, Unit unit) {
        Map<String, Decision> decisions = new LinkedHashMap<>();
        for (Said<Entry.Found> said : job.found()) {
            Entry.Found found = said.what();
            if (found.what().startsWith(AsFound.LEAD)) {
                continue;
            }
            String words = found.words().isBlank() ? found.outcome() : found.words() + ". " + found.outcome();
            String key = Findings.key(found);
            Decision before = decisions.get(key);
            String all = before == null ? words : before.found() + " " + words;
            List<Entry.Found> readings = new ArrayList<>(before == null ? List.of() : before.readings());
            if (!found.values().isEmpty()) {
                readings.add(found);
            }
            decisions.put(
                    key,
                    new Decision(
                            named(unit, found.what(), found.piece()),
                            all,
                            "",
                            "",
                            "",
                            pictures(job, unit, found.items(), found.piece()),
                            List.copyOf(readings)));
        }
        job.judged().forEach((what, said) -> {
            Entry.Judged judged = said.what();
            String key = Findings.key(judged);
            Decision before = decisions.get(key);
            decisions.put(
                    key,
                    new Decision(
                            before == null ? named(unit, judged) : before.what(),
                            before == null ? "" : before.found(),
                            judged.decision().name().toLowerCase(java.util.Locale.ENGLISH),
                            judged.reason(),
                            judged.consent(),
                            pictures(job, unit, judged.items(), judged.piece()),
                            before == null ? List.of() : before.readings()));
        });
        return List.copyOf(decisions.values());
    }

    private static String named(Unit unit, Entry.Judged judged) {
        return judged.limit().equals(Entry.Judged.PART)
                ? JudgedPiece.named(unit, judged.piece())
                : named(unit, judged.what(), judged.piece());
    }

    /** What was looked at, with the piece that it was looked at on. */
    private static String named(Unit unit, String what, String piece) {
        String on = JudgedPiece.named(unit, piece);
        return piece.isEmpty() || on.equals(what) ? what : on + ": " + what;
    }

    private static Setting setting(Job job, Unit unit, Clearance clearance) {
        Said<Entry.PackIn> in = job.packsIn().get(new Place(clearance.id(), Phase.TRIAL));
        Said<Entry.PackIn> fitted = job.packsIn().get(new Place(clearance.id(), Phase.FINAL));
        Said<Entry.ClearanceAccepted> accepted = job.accepted().get(clearance.id());
        List<Said<Entry.PackChosen>> chosen = clearance.positions().stream()
                .map(position -> job.packIn(position.id()))
                .flatMap(Optional::stream)
                .toList();
        List<Said<Entry.RoundRead>> last = new ArrayList<>(Reopened.rounds(job, unit, clearance.id(), Phase.FINAL));
        last.addAll(Reopened.rounds(job, unit, clearance.id(), Phase.AGAIN));
        Said<Entry.ClearanceAccepted> stands = accepted == null
                        || Reopened.since(job, unit, clearance.id(), accepted).isPresent()
                ? null
                : accepted;
        return new Setting(
                stands == null ? clearance : judged(clearance, stands.what()),
                in == null ? null : in.what(),
                Reopened.rounds(job, unit, clearance.id(), Phase.TRIAL),
                chosen,
                fitted == null ? null : fitted.what(),
                List.copyOf(last),
                stands,
                !unit.stepsReading(clearance.id(), Phase.FINAL).isEmpty());
    }

    /** The clearance by the limits it was accepted with, whatever the unit file says by now. */
    private static Clearance judged(Clearance clearance, Entry.ClearanceAccepted accepted) {
        return Basis.of(accepted.basis())
                .map(by -> clearance.as(by.lower(), by.upper(), by.aim(), by.hot() - accepted.value()))
                .orElse(clearance);
    }

    private static List<Tightened> torques(Job job, Unit unit) {
        List<Tightened> torques = new ArrayList<>();
        for (Said<Entry.StepDone> done : job.done().values()) {
            String id = done.what().step();
            for (Entry.Tightened what : tightened(done.what(), unit)) {
                torques.removeIf(before -> before.what().fastener().equals(what.fastener())
                        && before.what().quantity() <= what.quantity());
                Optional<Fastener> same = unit.type().fasteners().stream()
                        .filter(f -> f.id().equals(what.fastener()) && f.torque() == what.torque())
                        .findFirst();
                torques.add(new Tightened(
                        id,
                        what,
                        done,
                        same.map(Fastener::origin).orElse(""),
                        same.map(Fastener::guessed).orElse(false)));
            }
        }
        return List.copyOf(torques);
    }

    /** What a step tightened; entries of before did not keep it, and then the unit file says. */
    private static List<Entry.Tightened> tightened(Entry.StepDone done, Unit unit) {
        if (!done.tightened().isEmpty()) {
            return done.tightened().stream()
                    .filter(what -> !what.how().equals(Entry.Tightened.TRIAL))
                    .toList();
        }
        return unit.findStep(done.step()).stream()
                .flatMap(step -> step.fasteners().stream()
                        .map(unit::fastener)
                        .map(fastener -> new Entry.Tightened(
                                fastener.id(),
                                fastener.where(),
                                step.tightens(fastener),
                                fastener.thread(),
                                fastener.torque(),
                                Entry.Tightened.NOMINAL)))
                .toList();
    }

    private static Map<String, String> consumables(Job job, Unit unit) {
        Map<String, String> used = new LinkedHashMap<>();
        for (Said<Entry.StepDone> done : job.done().values()) {
            String id = done.what().step();
            List<String> names = done.what().todo().isEmpty()
                    ? unit.findStep(id).stream()
                            .flatMap(step -> step.consumables().stream())
                            .map(c -> unit.consumable(c).name())
                            .toList()
                    : done.what().used();
            names.forEach(name -> used.merge(name, id, (a, b) -> a + ", " + b));
        }
        return used;
    }

    private static List<HoldReading> holds(Job job, Unit unit, boolean proof) {
        List<HoldReading> readings = new ArrayList<>();
        Set<String> shown = new HashSet<>();
        for (Step step : unit.type().steps()) {
            if (step.hold().isBlank() || unit.type().proof().contains(step.hold()) != proof) {
                continue;
            }
            HoldPoint hold = unit.holdPoint(step.hold());
            for (Check check : hold.checks()) {
                Said<Entry.CheckRead> read = job.check(step.id(), check.id()).orElse(null);
                if (check.clearance().isBlank() && (read != null || (proof && check.asked()))) {
                    readings.add(reading(step.id(), hold.id(), check, read));
                    shown.add(step.id() + "/" + check.id());
                }
            }
        }
        job.checks().forEach((key, read) -> {
            boolean proves = unit.type().proof().contains(read.what().hold());
            boolean known = unit.findStep(read.what().step()).isPresent();
            if (!shown.contains(key) && !known && proves == proof) {
                readings.add(kept(read));
            }
        });
        return List.copyOf(readings);
    }

    private static HoldReading reading(String step, String hold, Check check, @Nullable Said<Entry.CheckRead> read) {
        return read == null || read.what().basis().isEmpty()
                ? new HoldReading(step, hold, check.what(), check.limits(), read)
                : kept(read);
    }

    /** A check as its entry has it, whatever the unit file says now. */
    private static HoldReading kept(Said<Entry.CheckRead> read) {
        Map<String, String> basis = read.what().basis();
        String lower = basis.getOrDefault("lower", "");
        String upper = basis.getOrDefault("upper", "");
        String limits = !lower.isEmpty() && !upper.isEmpty()
                ? lower + " to " + upper
                : !lower.isEmpty() ? "at least " + lower : !upper.isEmpty() ? "at most " + upper : "";
        String spread = basis.getOrDefault("spread", "");
        return new HoldReading(
                read.what().step(),
                read.what().hold(),
                basis.getOrDefault("what", read.what().check()),
                spread.isEmpty() ? limits : (limits + " spread up to " + spread).strip(),
                read);
    }

    private static List<Struck> struck(Job job, Unit unit) {
        Map<String, String> reasons = new HashMap<>(Reopened.stale(job, unit));
        reasons.putAll(job.struck());
        List<Struck> struck = new ArrayList<>();
        for (LogEntry kept : job.entries()) {
            String id = kept.draft().id();
            String reason = reasons.get(id);
            if (kept.body() instanceof Entry.RoundRead round && reason != null) {
                struck.add(new Struck(
                        new Said<>(
                                id,
                                kept.number(),
                                kept.draft().at(),
                                kept.draft().by(),
                                round),
                        reason));
            }
        }
        return List.copyOf(struck);
    }
}
