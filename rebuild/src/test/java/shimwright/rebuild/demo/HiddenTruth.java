package shimwright.rebuild.demo;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.clearance.Decisions;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.inspect.Checks;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.plan.Plan;
import shimwright.rebuild.plan.Planner;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Phase;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;

/**
 * A unit with true sizes that nobody in the shop sees, built to its hand-back: gauges answer from the truth, packs are those
 * advised. For units whose clearances have one place for shims each.
 */
final class HiddenTruth {
    private static final double STEP = 1e-5;

    private static final double LEAST_SIZE = 0.01;
    /** The second of two lengths whose difference is read, m. */
    private static final double SECOND = 5e-3;

    private final DemoWorkbench bench;
    private final Map<String, Double> unshimmed;
    private final Map<String, List<PieceIn>> in = new LinkedHashMap<>();

    /**
     * A unit to be built.
     *
     * @param bench with the job opened
     * @param unshimmed what each clearance would be without its shim, m, by clearance
     */
    HiddenTruth(DemoWorkbench bench, Map<String, Double> unshimmed) {
        this.bench = bench;
        this.unshimmed = unshimmed;
    }

    /** True clearance with what is in, m. */
    double play(String clearance) {
        Position place = bench.unit().clearance(clearance).positions().get(0);
        double thick = Objects.requireNonNull(in.get(place.id())).stream()
                .mapToDouble(PieceIn::thickness)
                .sum();
        return Objects.requireNonNull(unshimmed.get(clearance)) + place.effect() * thick;
    }

    void build() {
        bench.lay(DemoWorkbench.allHere(bench.unit()));
        Plan plan = Planner.lay(bench.unit(), Map.of(), Set.of()).orElseThrow();
        for (Step step : plan.ahead()) {
            if (!step.clearance().isEmpty()) {
                set(step);
            }
            if (!step.hold().isEmpty()) {
                bench.unit().holdPoint(step.hold()).checks().forEach(check -> read(step, check));
            }
            bench.keep(new Entry.StepDone(step.id(), ""));
        }
        bench.keep(new Entry.HandedBack("12 months", "", "quiet"));
    }

    private void set(Step step) {
        Clearance c = bench.unit().clearance(step.clearance());
        Position place = c.positions().get(0);
        boolean tried = !bench.unit().stepsReading(c.id(), Phase.TRIAL).isEmpty();
        if (step.phase() == Phase.TRIAL) {
            put(c, place, Phase.TRIAL, false);
        } else if (step.phase() == Phase.FINAL && !tried) {
            put(c, place, Phase.FINAL, true);
        } else if (step.phase() == Phase.FINAL) {
            choose(c, place);
        }
        for (int i = 0; i < c.rounds(); i++) {
            bench.keep(Decisions.round(
                            bench.session(c.id()), step.phase(), c.gauges(step.phase()), bench.shop(), shown(c), "")
                    .orElseThrow());
        }
        if (step.phase() != Phase.TRIAL) {
            Session session = bench.session(c.id());
            Outcome<Entry.ClearanceAccepted> accepted = Decisions.accept(session, "");
            if (!accepted.isOk()) {
                throw new IllegalStateException(step.id() + ": " + session.say() + " " + accepted.refusals());
            }
            bench.keep(accepted.orElseThrow());
        }
    }

    /** One round as the gauge shows it: the same at every indicator; of blades the thickest that enters and the next. */
    private List<Double> shown(Clearance c) {
        double read = (play(c.id()) - c.readingOffset()) / c.readingFactor();
        if (c.method() == Method.FEELER) {
            double enters = Math.floor(read / STEP + 1e-9) * STEP;
            return List.of(enters, enters + STEP);
        }
        if (c.method() == Method.DIFFERENCE) {
            return List.of(SECOND + Math.round(read / STEP) * STEP, SECOND);
        }
        return Collections.nCopies(c.indicators(), Math.round(read / STEP) * STEP);
    }

    /** The thinnest piece for a trial; for a ring tried from the thick end the thickest that still leaves the least play. */
    private void put(Clearance c, Position place, Phase phase, boolean thick) {
        List<PieceIn> fitting = bench.shop().pieces().values().stream()
                .filter(p -> p.family().equals(place.family()))
                .map(p -> bench.piece(p.id()))
                .sorted((a, b) -> Double.compare(a.thickness(), b.thickness()))
                .toList();
        PieceIn best = fitting.get(0);
        for (PieceIn piece : thick ? fitting : List.<PieceIn>of()) {
            double left = Objects.requireNonNull(unshimmed.get(c.id())) + place.effect() * piece.thickness();
            best = left >= c.lower() + 0.5 * STEP ? piece : best;
        }
        in.put(place.id(), List.of(best));
        bench.keep(new Entry.PackIn(c.id(), phase, Map.of(place.id(), List.of(best))));
    }

    private void choose(Clearance c, Position place) {
        Session session = bench.session(c.id());
        PackOffer offer = Objects.requireNonNull(
                        Objects.requireNonNull(session.advice()).result())
                .offers()
                .get(0);
        List<PieceIn> pieces = offer.pieces().stream().map(bench::piece).toList();
        Outcome<Entry.PackChosen> chosen = Decisions.choose(session, pieces, "");
        if (!chosen.isOk()) {
            throw new IllegalStateException(offer + " " + chosen.refusals());
        }
        bench.keep(chosen.orElseThrow());
        in.put(place.id(), pieces);
    }

    private void read(Step step, Check check) {
        if (!check.asked()) {
            return;
        }
        if (check.kind() == CheckKind.NONE) {
            bench.in(step.id(), check.id());
            return;
        }
        double value = between(check.lower().map(Quantity::si), check.upper().map(Quantity::si));
        List<Double> values = Collections.nCopies(check.places(), value);
        Checks.Judged judged = Checks.judge(check, values, UnitSystem.METRIC).orElseThrow();
        bench.keep(new Entry.CheckRead(
                step.id(),
                step.hold(),
                check.id(),
                values,
                check.kind().quantity(),
                false,
                judged.verdict(),
                judged.say(),
                judged.working()));
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
