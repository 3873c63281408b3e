package shimwright.bench.web.record;

import java.util.Base64;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.bench.desk.Desk;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.desk.JobSummary;
import shimwright.bench.picture.photo.Thumbnail;
import shimwright.bench.web.kit.Show;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.LogEntry;
import shimwright.rebuild.record.Discretion;
import shimwright.rebuild.record.Guide;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;

/**
 * A guide as page and paper show it.
 *
 * @param unit that it teaches
 * @param job from which it is made
 * @param all everything that could be in it
 * @param guide what is in it
 * @param left ids of what is left out
 * @param discretion through which every word goes
 * @param pictures sources by hash; empty on a page
 */
public record GuideView(
        Unit unit,
        Job job,
        Guide all,
        Guide guide,
        Set<String> left,
        Discretion discretion,
        Map<String, String> pictures) {
    private static final int SIDE = 420;
    private static final int JOBS = 100;

    /**
     * The guide of a job.
     *
     * @param chosen what is left out; empty where nobody chose yet
     */
    static GuideView of(Desk desk, JobOnBench bench, Optional<Set<String>> chosen, boolean onPaper) {
        Job job = bench.job();
        Unit unit = bench.unit();
        Discretion discretion = discretion(desk, job, unit);
        Guide all = Guide.of(job, unit, discretion);
        Set<String> left = chosen.orElseGet(all::proposed);
        Guide guide = all.without(left);
        Map<String, String> pictures = new LinkedHashMap<>();
        if (onPaper) {
            guide.pictures()
                    .forEach(shot -> desk.pictures()
                            .find(shot.picture())
                            .flatMap(content -> Thumbnail.of(content, SIDE))
                            .ifPresent(small -> pictures.put(
                                    shot.picture(),
                                    "data:image/jpeg;base64,"
                                            + Base64.getEncoder().encodeToString(small))));
        }
        return new GuideView(unit, job, all, guide, Set.copyOf(left), discretion, Map.copyOf(pictures));
    }

    private static Discretion discretion(Desk desk, Job job, Unit unit) {
        List<JobSummary> lines = desk.lines();
        Set<String> owners =
                new LinkedHashSet<>(lines.stream().map(JobSummary::owner).toList());
        Set<String> said = new LinkedHashSet<>();
        Set<String> people = new HashSet<>();
        desk.jobs(unit.type().id(), JOBS)
                .forEach(other -> said.addAll(other.opened().said()));
        for (LogEntry kept : job.entries()) {
            people.add(kept.draft().by());
            if (kept.body() instanceof Entry.JobOpened opened) {
                owners.add(opened.owner());
                said.add(opened.remark());
                said.addAll(opened.said());
            } else if (kept.body() instanceof Entry.IntakeCorrected corrected) {
                owners.add(corrected.facts().getOrDefault("owner", ""));
                said.addAll(corrected.said());
            } else if (kept.body() instanceof Entry.OwnerAnswered answered) {
                owners.add(answered.who());
                said.add(answered.words());
            }
        }
        List<String> numbers = lines.stream().map(JobSummary::number).toList();
        return Discretion.of(owners, said, numbers, people, unit);
    }

    /** A text of the unit file without what is private in it. */
    public String say(String text) {
        return discretion.cut(text);
    }

    /** Tools of all steps, each once. */
    public List<String> tools() {
        return guide.steps().stream()
                .flatMap(step -> step.tools().stream())
                .distinct()
                .map(id -> say(unit.type().tools().getOrDefault(id, id)))
                .toList();
    }

    /** Consumables of all steps, each once. */
    public List<String> uses() {
        return guide.steps().stream()
                .flatMap(step -> step.consumables().stream())
                .distinct()
                .map(unit::consumable)
                .map(one -> say(one.name() + (one.amount().isBlank() ? "" : ", " + one.amount())))
                .toList();
    }

    /** The checks that a person reads at a step. */
    public List<Check> checks(Step step) {
        return step.hold().isBlank()
                ? List.of()
                : unit.holdPoint(step.hold()).checks().stream()
                        .filter(Check::asked)
                        .toList();
    }

    /** What this job read there; empty where it did not. */
    public String read(Step step, Check check, Show show) {
        return job.check(step.id(), check.id())
                .map(Said::what)
                .map(read -> read.values().isEmpty()
                        ? (read.attested() ? "yes" : "no")
                        : show.values(read.values(), read.kind()))
                .orElse("");
    }

    /** The clearances that are read at a step; one or none. */
    public List<Clearance> clearances(Step step) {
        return unit.type().clearances().stream()
                .filter(clearance -> clearance.id().equals(step.clearance()))
                .toList();
    }

    /** What this job set a clearance to, with the pieces by their size; empty while it is not set. */
    public String set(Clearance clearance, Show show) {
        Said<Entry.ClearanceAccepted> accepted = job.accepted().get(clearance.id());
        if (accepted == null) {
            return "";
        }
        StringBuilder words = new StringBuilder(show.length(accepted.what().value()));
        clearance
                .positions()
                .forEach(place -> job.packIn(place.id())
                        .ifPresent(pack -> words.append(", ")
                                .append(place.where())
                                .append(' ')
                                .append(show.thickness(pack.what().pieces()))));
        return words.toString();
    }

    /** Lessons of the unit file. */
    public List<String> lessons() {
        return unit.type().lessons().stream().map(this::say).toList();
    }
}
