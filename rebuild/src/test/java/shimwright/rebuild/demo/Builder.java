package shimwright.rebuild.demo;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import shimwright.mechanics.conformity.Verdict;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ClearanceActs;
import shimwright.rebuild.act.HandBackActs;
import shimwright.rebuild.act.HoldActs;
import shimwright.rebuild.act.InspectActs;
import shimwright.rebuild.act.IntakeActs;
import shimwright.rebuild.act.OrderActs;
import shimwright.rebuild.act.StepActs;
import shimwright.rebuild.act.YesNo;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.clearance.Sessions;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Place;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.rules.ClockRules;
import shimwright.rebuild.rules.HoldPoints;
import shimwright.rebuild.rules.HoldPoints.Standing;
import shimwright.rebuild.supply.OrderList;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.workbench.Workbench;

/**
 * Who knows the true sizes of a unit and does, wherever the job stands, the next right thing: for units whose clearances have
 * one place for shims each.
 */
final class Builder {
    private static final double MM = 1e-3;
    private static final double STEP = 1e-5;
    private static final double LEAST_SIZE = 0.01;
    private static final double SECOND = 5e-3;

    private final Map<String, Double> unshimmed;

    /**
     * Somebody who builds.
     *
     * @param unshimmed what each clearance would be without its shim, m, by clearance
     */
    Builder(Map<String, Double> unshimmed) {
        this.unshimmed = unshimmed;
    }

    /** True clearance with the pieces that are in for good, m; not a number where none are. */
    double play(Workbench bench, String clearance) {
        Position place = bench.unit().clearance(clearance).positions().get(0);
        List<PieceIn> in = FittedPieces.now(bench.job()).get(place.id());
        return in == null ? Double.NaN : with(bench.unit().clearance(clearance), in);
    }

    private double with(Clearance c, List<PieceIn> in) {
        double thick = in.stream().mapToDouble(PieceIn::thickness).sum();
        return Objects.requireNonNull(unshimmed.get(c.id()))
                + c.positions().get(0).effect() * thick;
    }

    /** How long the next act waits for a cure, s. */
    double waits(Workbench bench, Act.OfJob act) {
        return act instanceof StepActs.Done done
                ? ClockRules.broken(bench, done.step()).stream()
                        .filter(ClockRules.Broken::early)
                        .mapToDouble(ClockRules.Broken::seconds)
                        .max()
                        .orElse(0)
                : 0;
    }

    /** The next right act; empty once the unit is handed back. */
    Optional<Act.OfJob> next(Workbench bench) {
        Job job = bench.job();
        if (job.closed()) {
            return Optional.empty();
        }
        List<Step> left = bench.order().steps().values().stream()
                .filter(step -> !job.stepsDone().contains(step.id()))
                .toList();
        if (left.isEmpty()) {
            return Optional.of(last(bench));
        }
        Step step = left.stream()
                .filter(one -> bench.order().free(one.id(), job.stepsDone()))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("nothing can be done: " + left));
        for (Job.Said<Entry.Sent> sent : job.awaited(step)) {
            return Optional.of(new OrderActs.TakeDelivery(sent.id(), YesNo.YES, "measured, as ordered"));
        }
        List<String> missing = OrderList.of(bench.unit(), job).linesFor(step).stream()
                .map(OrderList.Line::key)
                .toList();
        if (bench.heldUp().containsKey(step.id())) {
            return Optional.of(new OrderActs.HaveHere(missing, "beside the old one, the same", ""));
        }
        Optional<Act.OfJob> before = set(bench, step).or(() -> read(bench, step));
        return before.or(() -> Optional.of(done(bench, step)));
    }

    private static Act.OfJob done(Workbench bench, Step step) {
        boolean late = ClockRules.broken(bench, step.id()).stream().anyMatch(broken -> !broken.early());
        return new StepActs.Done(step.id(), "", Map.of(), "", late ? "wiped off and laid anew" : "");
    }

    private Act.OfJob last(Workbench bench) {
        for (Clearance c : bench.unit().type().clearances()) {
            for (Phase phase : List.of(Phase.AGAIN, Phase.FINAL)) {
                for (Step step : bench.unit().stepsReading(c.id(), phase)) {
                    if (bench.session(c.id()).stage() != Stage.DONE) {
                        Optional<Act.OfJob> act = set(bench, step);
                        if (act.isPresent()) {
                            return act.get();
                        }
                    }
                }
            }
        }
        for (Step step : bench.order().steps().values()) {
            if (step.phase() != Phase.TRIAL) {
                Optional<Act.OfJob> act = read(bench, step);
                if (act.isPresent()) {
                    return act.get();
                }
            }
        }
        for (Entry.Found found : Findings.undecided(bench.job())) {
            return new InspectActs.Decide(
                    found.limit(), found.what(), Entry.Decision.REUSE, "it will do", "by telephone", List.of());
        }
        return new HandBackActs.HandBack("12 months", "", "");
    }

    /** What the step's clearance still asks for. */
    private Optional<Act.OfJob> set(Workbench bench, Step step) {
        if (step.clearance().isEmpty()) {
            return Optional.empty();
        }
        Session session = bench.session(step.clearance());
        Clearance c = bench.unit().clearance(step.clearance());
        Position place = c.positions().get(0);
        if (step.phase() == Phase.TRIAL) {
            return session.trialReadSince(Sessions.before(bench.job(), step))
                    ? Optional.empty()
                    : Optional.of(trial(bench, c, place));
        }
        boolean again = step.phase() == Phase.AGAIN;
        Job.Said<Entry.ClearanceAccepted> accepted = session.accepted();
        if (accepted != null && (!again || accepted.what().phase() == Phase.AGAIN)) {
            return Optional.empty();
        }
        boolean tried = !bench.unit().stepsReading(c.id(), Phase.TRIAL).isEmpty();
        List<PieceIn> in = FittedPieces.now(bench.job()).getOrDefault(place.id(), List.of());
        if (!tried) {
            PieceIn ring = ring(bench, c, place);
            if (!in.stream().map(PieceIn::piece).toList().equals(List.of(ring.piece()))) {
                return Optional.of(new ClearanceActs.NamePieces(c.id(), "final", Map.of(place.id(), ring.piece())));
            }
        } else if (in.isEmpty() || !withinLimits(c, with(c, in))) {
            Session.Advice advice = session.advice();
            return Optional.of(
                    advice == null
                            ? trial(bench, c, place)
                            : new ClearanceActs.ChoosePack(
                                    c.id(),
                                    String.join(
                                            " ",
                                            Objects.requireNonNull(advice.result())
                                                    .offers()
                                                    .get(0)
                                                    .pieces()),
                                    ""));
        }
        Phase phase = again && accepted != null ? Phase.AGAIN : Phase.FINAL;
        List<Double> shown = shown(c, with(c, in));
        Optional<Act.OfJob> wrong = wrong(bench, c, phase, shown);
        if (wrong.isPresent()) {
            return wrong;
        }
        Session.Closing closing = session.closing();
        boolean accept = session.stage() == Stage.ACCEPT || session.stage() == Stage.ACCEPT_AGAIN;
        return Optional.of(
                accept && closing != null
                        ? new ClearanceActs.AcceptClearance(
                                c.id(),
                                closing.verdict() == Verdict.IN
                                                && closing.finding().isBlank()
                                        ? ""
                                        : "seen to be so")
                        : round(c, phase, shown));
    }

    private static boolean withinLimits(Clearance c, double play) {
        return play > c.lower() && play < c.upper();
    }

    private Act.OfJob trial(Workbench bench, Clearance c, Position place) {
        PieceIn thinnest = pieces(bench, place).get(0);
        Job.Said<Entry.PackIn> said = bench.job().packsIn().get(new Place(c.id(), Phase.TRIAL));
        List<String> named = said == null
                ? List.of()
                : said.what().pieces().getOrDefault(place.id(), List.of()).stream()
                        .map(PieceIn::piece)
                        .toList();
        if (!named.equals(List.of(thinnest.piece()))) {
            return new ClearanceActs.NamePieces(c.id(), "trial", Map.of(place.id(), thinnest.piece()));
        }
        List<Double> shown = shown(c, with(c, List.of(thinnest)));
        return wrong(bench, c, Phase.TRIAL, shown).orElseGet(() -> round(c, Phase.TRIAL, shown));
    }

    /** A round that was never read on this gauge is struck. */
    private static Optional<Act.OfJob> wrong(Workbench bench, Clearance c, Phase phase, List<Double> shown) {
        return bench.job().roundsOf(c.id(), phase).stream()
                .filter(round -> different(round.what().values(), shown))
                .findFirst()
                .map(round -> new IntakeActs.Strike(round.id(), "not what the gauge showed"));
    }

    private static boolean different(List<Double> some, List<Double> others) {
        for (int i = 0; i < others.size(); i++) {
            if (some.size() != others.size() || Math.abs(some.get(i) - others.get(i)) > STEP / 2) {
                return true;
            }
        }
        return false;
    }

    private static Act.OfJob round(Clearance c, Phase phase, List<Double> shown) {
        return new ClearanceActs.ReadRound(
                c.id(),
                phase.name().toLowerCase(Locale.ROOT),
                "",
                "",
                shown.stream()
                        .map(v -> String.format(Locale.ROOT, "%.4f", v / MM))
                        .toList());
    }

    private static List<Double> shown(Clearance c, double play) {
        double read = (play - c.readingOffset()) / c.readingFactor();
        if (c.method() == Method.FEELER) {
            double enters = Math.floor(read / STEP + 1e-9) * STEP;
            return List.of(Math.max(0, enters), Math.max(0, enters) + STEP);
        }
        double rounded = Math.round(read / STEP) * STEP;
        return c.method() == Method.DIFFERENCE
                ? List.of(SECOND + rounded, SECOND)
                : Collections.nCopies(c.indicators(), rounded);
    }

    private static List<PieceIn> pieces(Workbench bench, Position place) {
        String number = bench.job().opened().number();
        return bench.shop().pieces().values().stream()
                .filter(p -> p.family().equals(place.family()))
                .filter(p -> p.inDrawer() || number.equals(p.takenBy()))
                .map(p -> new PieceIn(p.id(), p.thickness(), p.u()))
                .sorted(Comparator.comparingDouble(PieceIn::thickness))
                .toList();
    }

    /** The thickest that still leaves the least play. */
    private PieceIn ring(Workbench bench, Clearance c, Position place) {
        List<PieceIn> all = pieces(bench, place);
        PieceIn best = all.get(0);
        for (PieceIn piece : all) {
            best = with(c, List.of(piece)) >= c.lower() + 0.5 * STEP ? piece : best;
        }
        return best;
    }

    /** The first check of the step's hold point that a person has to read. */
    private static Optional<Act.OfJob> read(Workbench bench, Step step) {
        List<Act.OfJob> acts = new ArrayList<>();
        for (HoldPoints.CheckStanding standing : HoldPoints.of(bench, step)) {
            boolean open = standing.standing() != Standing.ACCEPTED && standing.standing() != Standing.OVERRULED;
            if (open && standing.check().asked()) {
                acts.add(read(step, standing.check()));
            }
        }
        return acts.stream().findFirst();
    }

    static Act.OfJob read(Step step, Check check) {
        if (check.kind() == CheckKind.NONE) {
            return new HoldActs.ReadCheck(step.id(), step.hold(), check.id(), "", "yes", "", "", "");
        }
        double value = between(check.lower().map(Quantity::si), check.upper().map(Quantity::si));
        String unit = check.kind() == CheckKind.NUMBER
                ? ""
                : " " + check.kind().quantity().siSymbol();
        int times = check.readingsEach() * check.fields().size();
        return new HoldActs.ReadCheck(
                step.id(),
                step.hold(),
                check.id(),
                String.join("; ", Collections.nCopies(times, value + unit)),
                "",
                "",
                "a size of the walk",
                "");
    }

    /** Within the limits; below a single upper limit a size is all but that, a deviation half of it. */
    private static double between(Optional<Double> lower, Optional<Double> upper) {
        if (lower.isEmpty()) {
            double limit = upper.orElse(1.0);
            return limit > LEAST_SIZE ? limit * 0.9997 : limit * 0.5;
        }
        return upper.map(up -> (lower.get() + up) / 2).orElse(lower.get() * 1.2);
    }
}
