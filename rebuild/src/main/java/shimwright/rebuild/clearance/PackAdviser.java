package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.axial.shim.Piece;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.conformity.Conformity;
import shimwright.mechanics.conformity.Limits;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Line;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/** Which pack: brings a reading to the packs already chosen elsewhere, then asks the worksheet. */
final class PackAdviser {
    /** How sure a pack must be to count as proven; the decision rule stored with every choice. */
    static final double RULE = 0.95;

    private static final int OFFERS = 4;

    private PackAdviser() {}

    /**
     * Packs for a clearance, from a reading of it.
     *
     * @param from the reading, which is proof
     * @param proposed packs that are being chosen elsewhere at the same time, by position
     */
    static Advice advise(
            Unit unit, Clearance clearance, Job job, Shop shop, Reading from, Map<String, List<PieceIn>> proposed) {
        Measured measured = Objects.requireNonNull(from.measured());
        Position own = clearance.positions().get(0);
        Map<String, List<PieceIn>> fitted = FittedPieces.now(job);
        Working working = new Working();
        double value = measured.value();
        double variance = measured.u() * measured.u();
        List<Position> open = new ArrayList<>();
        for (Position other :
                clearance.positions().subList(1, clearance.positions().size())) {
            List<PieceIn> pieces = proposed.containsKey(other.id()) ? proposed.get(other.id()) : fitted.get(other.id());
            if (pieces == null) {
                open.add(other);
                continue;
            }
            List<PieceIn> before = from.pack().getOrDefault(other.id(), List.of());
            double change = thickness(pieces) - thickness(before);
            if (change != 0) {
                value = working.line(
                        "play with " + other.id() + " as chosen",
                        "play + effect × (chosen − read with) at " + other.id(),
                        value + other.effect() * change,
                        Kind.LENGTH);
            }
            variance += other.effect() * other.effect() * exchanged(pieces, before);
        }
        Set<String> places = new TreeSet<>(proposed.keySet());
        places.add(own.id());
        List<Shop.Piece> drawer =
                shop.usable(own.family(), unit.shimFamily(own.family()).spread(), in(job, places));
        ChoiceOrder order = new ChoiceOrder(unit, job, shop);
        List<Refusal> waits = new ArrayList<>();
        for (Position other : open) {
            order.waitsFor(clearance, other).ifPresent(first -> waits.add(order.refusal(clearance, first, other)));
        }
        return ask(clearance, own, from, working, new Known(value, Math.sqrt(variance), measured.nu()), drawer, waits);
    }

    private static double thickness(List<PieceIn> pieces) {
        return pieces.stream().mapToDouble(PieceIn::thickness).sum();
    }

    /** Variance of the change of thickness: a piece that stays counts for nothing. */
    private static double exchanged(List<PieceIn> now, List<PieceIn> before) {
        return Stream.concat(
                        now.stream().filter(piece -> !before.contains(piece)),
                        before.stream().filter(piece -> !now.contains(piece)))
                .mapToDouble(piece -> piece.u() * piece.u())
                .sum();
    }

    /** Pieces of this unit that come free when these places are chosen anew. */
    static List<String> in(Job job, Set<String> places) {
        Map<String, List<PieceIn>> fitted = FittedPieces.now(job);
        return places.stream()
                .flatMap(place -> fitted.getOrDefault(place, List.of()).stream())
                .map(PieceIn::piece)
                .toList();
    }

    /** The clearance brought to the packs chosen elsewhere. */
    private record Known(double value, double u, double nu) {}

    private static Advice ask(
            Clearance clearance,
            Position own,
            Reading from,
            Working working,
            Known known,
            List<Shop.Piece> drawer,
            List<Refusal> waits) {
        List<Line> before = working.worked(known).working();
        if (!waits.isEmpty()) {
            return new Advice(own, from, null, drawer, known.value(), known.u(), before, before, List.of(), waits);
        }
        List<Piece> pieces = drawer.stream()
                .map(p -> new Piece(p.id(), p.thickness(), p.u()))
                .toList();
        Outcome<Worked<ShimPack.Result>> outcome = ShimPack.work(new ShimPack.Case(
                known.value(),
                known.u(),
                known.nu(),
                from.thickness(own.id()),
                from.thicknessUncertainty(own.id()),
                own.effect(),
                clearance.lower(),
                clearance.upper(),
                clearance.aim(),
                RULE,
                pieces,
                own.fewest(),
                own.most(),
                OFFERS));
        if (outcome instanceof Outcome.Ok<Worked<ShimPack.Result>> ok) {
            ShimPack.Result result = working.include(ok.value());
            Worked<ShimPack.Result> done = working.worked(result);
            return new Advice(
                    own,
                    from,
                    result,
                    drawer,
                    known.value(),
                    known.u(),
                    before,
                    done.working(),
                    done.cautions(),
                    List.of());
        }
        return new Advice(
                own, from, null, drawer, known.value(), known.u(), before, before, List.of(), outcome.refusals());
    }

    /**
     * One pack judged by the same worksheet that seeks them: the drawer holds its pieces alone.
     *
     * @return an offer also where the pack leaves the clearance outside, with the verdict OUT
     */
    static Outcome<Worked<PackOffer>> judge(Clearance clearance, Advice advice, List<PieceIn> pieces) {
        Reading trial = advice.from();
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
                trial.thicknessUncertainty(own.id()),
                own.effect(),
                clearance.lower(),
                clearance.upper(),
                clearance.aim(),
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
                Math.hypot(advice.u(), own.effect() * Math.hypot(uPack, trial.thicknessUncertainty(own.id()))),
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
