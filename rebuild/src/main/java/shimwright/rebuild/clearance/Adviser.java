package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.axial.shim.Piece;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/** Which pack: brings the trial reading to the packs already chosen elsewhere, then asks the worksheet. */
final class Adviser {
    /** How sure a pack must be to count as proven; the decision rule stored with every choice. */
    static final double RULE = 0.95;

    private static final int OFFERS = 4;

    private Adviser() {}

    static Advice advise(
            Unit unit, Clearance clearance, Job job, Shop shop, Reading trial, Map<String, List<PieceIn>> proposed) {
        Measured measured = Objects.requireNonNull(trial.measured());
        Position own = clearance.positions().get(0);
        Working working = new Working();
        double value = measured.value();
        double variance = measured.u() * measured.u();
        for (Position other :
                clearance.positions().subList(1, clearance.positions().size())) {
            List<PieceIn> pieces = proposed.containsKey(other.id())
                    ? Objects.requireNonNull(proposed.get(other.id()))
                    : job.packIn(other.id()).map(said -> said.what().pieces()).orElse(List.of());
            if (!pieces.isEmpty()) {
                double change = pieces.stream().mapToDouble(PieceIn::thickness).sum() - trial.thickness(other.id());
                value = working.line(
                        "play with " + other.id() + " as chosen",
                        "play + effect × (chosen − trial) at " + other.id(),
                        value + other.effect() * change,
                        Kind.LENGTH);
                double doubt = Math.pow(trial.thicknessDoubt(other.id()), 2)
                        + pieces.stream().mapToDouble(p -> p.u() * p.u()).sum();
                variance += other.effect() * other.effect() * doubt;
            }
        }
        Set<String> places = new TreeSet<>(proposed.keySet());
        places.add(own.id());
        List<Shop.Piece> drawer =
                shop.usable(own.family(), unit.shimFamily(own.family()).spread(), in(job, places));
        return ask(clearance, own, trial, working, value, Math.sqrt(variance), measured.nu(), drawer);
    }

    /** Pieces of this unit that come free when these places are chosen anew. */
    static List<String> in(Job job, Set<String> places) {
        return places.stream()
                .flatMap(place -> job.packIn(place).stream())
                .flatMap(said -> said.what().pieces().stream())
                .map(PieceIn::piece)
                .toList();
    }

    private static Advice ask(
            Clearance clearance,
            Position own,
            Reading trial,
            Working working,
            double value,
            double u,
            double nu,
            List<Shop.Piece> drawer) {
        List<Line> before = working.worked(value).working();
        List<Piece> pieces = drawer.stream()
                .map(p -> new Piece(p.id(), p.thickness(), p.u()))
                .toList();
        Outcome<Worked<ShimPack.Result>> outcome = ShimPack.work(new ShimPack.Case(
                value,
                u,
                nu,
                trial.thickness(own.id()),
                trial.thicknessDoubt(own.id()),
                own.effect(),
                clearance.lower(),
                clearance.upper(),
                RULE,
                pieces,
                own.fewest(),
                own.most(),
                OFFERS));
        if (outcome instanceof Outcome.Ok<Worked<ShimPack.Result>> ok) {
            ShimPack.Result result = working.include(ok.value());
            Worked<ShimPack.Result> done = working.worked(result);
            return new Advice(own, result, drawer, value, u, before, done.working(), done.cautions(), List.of());
        }
        return new Advice(own, null, drawer, value, u, before, before, List.of(), outcome.refusals());
    }

    /**
     * One pack judged by the same worksheet that seeks them: the drawer holds its pieces alone.
     *
     * @return an offer also where the pack leaves the clearance outside, with the verdict OUT
     */
    static Outcome<Worked<PackOffer>> judge(Clearance clearance, Advice advice, Reading trial, List<PieceIn> pieces) {
        Position own = advice.position();
        List<Piece> only = pieces.stream()
                .map(p -> new Piece(p.piece(), p.thickness(), p.u()))
                .toList();
        double nu = Objects.requireNonNull(trial.measured()).nu();
        Outcome<Worked<ShimPack.Result>> outcome = ShimPack.work(new ShimPack.Case(
                advice.measured(),
                advice.u(),
                nu,
                trial.thickness(own.id()),
                trial.thicknessDoubt(own.id()),
                own.effect(),
                clearance.lower(),
                clearance.upper(),
                RULE,
                only,
                only.size(),
                only.size(),
                1));
        return outcome.map(worked -> {
            Working working = new Working();
            working.include(new Worked<>(advice, advice.before(), List.of()));
            ShimPack.Result result = working.include(worked);
            PackOffer offer = result.offers().stream()
                    .findFirst()
                    .orElseGet(() -> outside(clearance, advice, trial, pieces, nu, working));
            return working.worked(offer);
        });
    }

    /** A pack that the worksheet does not offer because it leaves the nominal outside. */
    private static PackOffer outside(
            Clearance clearance, Advice advice, Reading trial, List<PieceIn> pieces, double nu, Working working) {
        Position own = advice.position();
        double thickness = working.line(
                "pack",
                pieces.stream().map(PieceIn::piece).collect(Collectors.joining(" + ")),
                pieces.stream().mapToDouble(PieceIn::thickness).sum(),
                Kind.LENGTH);
        double uPack = Math.sqrt(pieces.stream().mapToDouble(p -> p.u() * p.u()).sum());
        double predicted = working.line(
                "clearance",
                "measured + effect × (pack − trial)",
                advice.measured() + own.effect() * (thickness - trial.thickness(own.id())),
                Kind.LENGTH);
        double u = working.line(
                "u",
                "√(u measured² + effect² × (u pack² + u trial²))",
                Math.hypot(advice.u(), own.effect() * Math.hypot(uPack, trial.thicknessDoubt(own.id()))),
                Kind.LENGTH,
                "JCGM 100:2008 5.1.2");
        double freedom = Double.isInfinite(nu) ? nu : nu * Math.pow(u / advice.u(), 4);
        double probability = working.line(
                "probability",
                "chance of lying within the limits",
                Conformity.probability(predicted, u, freedom, new Limits(clearance.lower(), clearance.upper())),
                Kind.NUMBER,
                "JCGM 106:2012 7.4");
        return new PackOffer(
                pieces.stream().map(PieceIn::piece).toList(),
                thickness,
                uPack,
                predicted,
                u,
                freedom,
                probability,
                Verdict.OUT,
                0);
    }
}
