package shimwright.bench.web.job;

import java.math.BigDecimal;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.bench.desk.JobOnBench;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.web.kit.Drawings;
import shimwright.bench.web.kit.PartPhotos;
import shimwright.bench.web.kit.Show;
import shimwright.bench.web.kit.UnitPictures;
import shimwright.bench.web.plan.PeopleView;
import shimwright.bench.web.plan.PlanView;
import shimwright.bench.web.sheet.SheetLine;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.clearance.EtchedDeviation;
import shimwright.rebuild.clearance.SharedShims;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.PartPhoto;
import shimwright.rebuild.job.Reopened;
import shimwright.rebuild.job.UnitPicture;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.backout.LastCallCost;
import shimwright.rebuild.plan.backout.Loss;
import shimwright.rebuild.record.HandBackRecord;
import shimwright.rebuild.rules.ClockRules;
import shimwright.rebuild.rules.HoldPoints;
import shimwright.rebuild.sheet.JobSheets;
import shimwright.rebuild.sheet.JointAdvice;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * One step as the build page shows it.
 *
 * @param step the step; null when all are done
 * @param done true where it stands done already
 * @param waitsFor steps it still waits for
 * @param takes what it takes
 * @param lastCall what it shuts in, and what that costs; null where it is done or none is next
 * @param hands that it needs more than one person, and which steps after it do; empty where it does not
 * @param because why it stands here, reason by reason; empty where the plan does not have it ahead
 * @param checks its hold point
 * @param cautions the usual cautions
 * @param ahead the steps after it
 * @param sooner the step that the plan has next instead of this one, though this one could be done; empty where there is none
 * @param drawnOn pictures of its parts on which something was drawn
 * @param drawing the section with what is in, in hand and still to come
 * @param cannot why it could not be done when last tried; null where it was not tried
 * @param together true where clearances that share shims are all read and wait to be chosen together
 * @param broken waits and windows that it would break if it were done now
 * @param reopens readings and acceptances that undoing it opens again, as sentences; empty where it is not done
 * @param now the server's time
 */
public record StepView(
        @Nullable Step step,
        boolean done,
        Map<Step, Step.Why> waitsFor,
        Takes takes,
        @Nullable LastCallCost lastCall,
        String hands,
        List<String> because,
        List<HoldPoints.CheckStanding> checks,
        List<String> cautions,
        List<Step> ahead,
        String sooner,
        List<Said<Entry.PictureAdded>> drawnOn,
        Drawings drawing,
        Job.@Nullable Said<Entry.StepCannot> cannot,
        boolean together,
        List<ClockRules.Broken> broken,
        List<String> reopens,
        Instant now) {

    /**
     * What a step takes.
     *
     * @param fasteners what is tightened
     * @param consumables what is used
     * @param windows the time windows it stands in
     * @param parts what the step puts in, takes out and tightens, each with a picture of its own
     * @param pictures those of the unit that show the step or what it puts in or takes out, and stand beside no part
     * @param missing what must be new for it and is neither ordered nor here
     * @param joints what its joints say in a line each
     * @param sheets its worksheets, with what unit and job know
     */
    public record Takes(
            List<Fastener> fasteners,
            List<Consumable> consumables,
            List<Window> windows,
            List<ShownPart> parts,
            List<UnitPicture> pictures,
            List<OrderList.Line> missing,
            List<JointAdvice> joints,
            List<SheetLine> sheets) {
        static Takes of(JobOnBench bench, Step step, Show show) {
            Unit unit = bench.unit();
            JobSheets sheets = JobSheets.of(bench.bench(), show.system());
            List<ShownPart> parts = ShownPart.of(unit, step, sheets, PartPhotos.of(bench));
            Set<String> beside = parts.stream()
                    .flatMap(part -> part.photos().stream())
                    .map(PartPhoto::picture)
                    .collect(Collectors.toSet());
            return new Takes(
                    step.fasteners().stream().map(unit::fastener).toList(),
                    step.consumables().stream().map(unit::consumable).toList(),
                    step.windows().stream().map(unit::window).toList(),
                    parts,
                    UnitPictures.ofStep(bench.shop(), unit.type().id(), step.id(), items(step)).stream()
                            .filter(picture -> !beside.contains(picture.picture()))
                            .toList(),
                    bench.bench().heldUp().containsKey(step.id())
                            ? OrderList.of(unit, bench.job(), bench.shop()).linesFor(step)
                            : List.of(),
                    sheets.advice(step),
                    sheets.at(step).stream()
                            .map(sheet -> SheetLine.of(bench.job(), sheet, step.id(), show.system()))
                            .toList());
        }

        /** What a step builds up, puts in and takes out. */
        private static Set<String> items(Step step) {
            Set<String> items = new LinkedHashSet<>(step.builds());
            items.addAll(step.installs());
            items.addAll(step.removes());
            return items;
        }
    }

    private static final int LOOK_AHEAD = 4;
    private static final int MOST_JUMPS = 3;
    private static final int MOST_HANDS = 3;
    private static final double MINUTES = 15;

    /** Parts worth a warning: out of reach from here on, dearer by more than what they cost now, or a loss from here on. */
    public List<LastCallCost.Jump> jumps() {
        return lastCall == null
                ? List.of()
                : lastCall.jumps().stream()
                        .filter(jump -> jump.lost()
                                || !jump.losses().isEmpty()
                                || (jump.by() >= MINUTES && jump.by() >= jump.before()))
                        .limit(MOST_JUMPS)
                        .toList();
    }

    static StepView of(JobOnBench bench, @Nullable Step step, Show show) {
        Instant now = bench.bench().now();
        Unit unit = bench.unit();
        List<Step> ahead = ahead(bench).stream()
                .filter(next -> !next.equals(step))
                .limit(LOOK_AHEAD)
                .toList();
        if (step == null) {
            return new StepView(
                    null,
                    true,
                    Map.of(),
                    new Takes(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of()),
                    null,
                    "",
                    List.of(),
                    List.of(),
                    List.of(),
                    ahead,
                    "",
                    List.of(),
                    drawing(bench, null, show),
                    null,
                    false,
                    List.of(),
                    List.of(),
                    now);
        }
        return new StepView(
                step,
                bench.job().stepsDone().contains(step.id()),
                bench.order().waitsFor(step.id(), bench.job().stepsDone()),
                Takes.of(bench, step, show),
                lastCall(bench, step),
                hands(bench, step),
                because(bench, step, show),
                HoldPoints.of(bench.bench(), step),
                Cautions.of(step, unit),
                ahead,
                sooner(bench, step),
                drawnOn(bench.job(), Takes.items(step)),
                drawing(bench, step, show),
                bench.job().cannot().get(step.id()),
                SharedShims.due(unit, bench::session),
                ClockRules.broken(bench.bench(), step.id()),
                reopens(bench, step),
                now);
    }

    /** True where a check of the hold point is still open, failed or not proven. */
    public boolean holdOpen() {
        return checks.stream()
                .map(HoldPoints.CheckStanding::standing)
                .anyMatch(standing -> standing == HoldPoints.Standing.OPEN
                        || standing == HoldPoints.Standing.FAILED
                        || standing == HoldPoints.Standing.GUESSED
                        || standing == HoldPoints.Standing.NOT_PROVEN);
    }

    /** Pictures of some parts on which something was drawn; the others stand beside the drawings of their parts. */
    private static List<Said<Entry.PictureAdded>> drawnOn(Job job, Set<String> items) {
        return HandBackRecord.pictures(job).stream()
                .filter(said -> !job.marksOn(said).isEmpty())
                .filter(said -> PartPhoto.shows(job, said.what().about(), said.at()).stream()
                        .map(JudgedPiece::item)
                        .anyMatch(items::contains))
                .toList();
    }

    /** The sheets about one of its fasteners, joints or seals. */
    public List<SheetLine> about(String about) {
        return takes.sheets().stream()
                .filter(line -> line.about().equals(about))
                .toList();
    }

    /** The sheets that stand beside no fastener and no joint of the step. */
    public List<SheetLine> otherSheets() {
        return takes.sheets().stream()
                .filter(line ->
                        !line.about().startsWith("fastener ") && !line.about().startsWith("joint "))
                .toList();
    }

    /** The clocks started by hand at it. */
    public List<Job.Said<Entry.ClockStarted>> clocks(JobOnBench bench) {
        return bench.job().started().stream()
                .filter(said -> step != null && said.what().step().equals(step.id()))
                .toList();
    }

    /** Those of a name. */
    public List<Job.Said<Entry.ClockStarted>> runs(JobOnBench bench, String name) {
        return clocks(bench).stream()
                .filter(said -> said.what().name().equals(name))
                .toList();
    }

    /** How long a window is open, as a form says it. */
    public static String minutes(Window window) {
        return BigDecimal.valueOf(window.longest() / 60).stripTrailingZeros().toPlainString();
    }

    /** Which view is open first: 0 for the section, else the part of that number. */
    public int firstShown() {
        return ShownPart.first(takes.parts());
    }

    /** True where a check of the hold point is a clearance. */
    public boolean holdsClearance() {
        return checks.stream().anyMatch(check -> !check.check().clearance().isBlank());
    }

    /** What is lost where one goes back to it later. */
    public static String losses(LastCallCost.Jump jump) {
        return jump.losses().stream().map(Loss::what).collect(Collectors.joining(", "));
    }

    private static List<String> reopens(JobOnBench bench, Step step) {
        return bench.job().stepsDone().contains(step.id())
                ? Reopened.byUndoing(bench.job(), bench.unit(), step.id())
                : List.of();
    }

    private static List<Step> ahead(JobOnBench bench) {
        return bench.plan() instanceof Outcome.Ok<Plan> ok ? ok.value().ahead() : List.of();
    }

    private static String sooner(JobOnBench bench, Step step) {
        boolean now = !bench.job().stepsDone().contains(step.id())
                && bench.order().waitsFor(step.id(), bench.job().stepsDone()).isEmpty();
        return now
                ? bench.next().map(Step::id).filter(id -> !id.equals(step.id())).orElse("")
                : "";
    }

    private static @Nullable LastCallCost lastCall(JobOnBench bench, Step step) {
        return bench.job().stepsDone().contains(step.id())
                ? null
                : bench.bench().lastCall(step.id());
    }

    /** So that help is asked for once: the next steps for more than one person, with the work before each. */
    private static String hands(JobOnBench bench, Step step) {
        if (step.persons() < 2 || bench.job().stepsDone().contains(step.id())) {
            return "";
        }
        List<String> next = new ArrayList<>();
        double before = 0;
        for (Step other : ahead(bench)) {
            if (!other.equals(step)) {
                if (other.persons() > 1 && next.size() < MOST_HANDS) {
                    next.add(other.id() + " after " + PeopleView.hours(before) + " of work");
                }
                before += other.duration();
            }
        }
        return "is needed for this step"
                + (next.isEmpty() ? " for the last time." : "; next such steps: " + String.join(", ", next) + ".");
    }

    private static List<String> because(JobOnBench bench, Step step, Show show) {
        return bench.plan() instanceof Outcome.Ok<Plan> ok
                ? ok.value().because().stream()
                        .filter(why -> why.step().equals(step))
                        .map(why -> PlanView.words(bench.unit(), bench.job().stepsDone(), why, show))
                        .findFirst()
                        .orElse(List.of())
                : List.of();
    }

    private static Drawings drawing(JobOnBench bench, @Nullable Step step, Show show) {
        Set<String> fitted = bench.unit().itemsIn(bench.job().stepsDone());
        SectionState state = SectionState.EMPTY.withFitted(fitted);
        if (step != null && !bench.job().stepsDone().contains(step.id())) {
            state = state.withInHand(Set.copyOf(step.installs()));
            if (!step.clearance().isBlank()) {
                state = state.withClearance(step.clearance());
            }
        }
        Unit drawn = EtchedDeviation.drawn(bench.unit(), bench.job());
        return Drawings.of(bench.job().id(), drawn, state, "build", show);
    }
}
