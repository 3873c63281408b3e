package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import shimwright.mechanics.axial.ShimPack;
import shimwright.mechanics.axial.ShimPackCase;
import shimwright.mechanics.axial.ShimPackResult;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.job.Shop.Piece;
import shimwright.rebuild.unit.Clearance;
import shimwright.rebuild.unit.Clearance.Position;
import shimwright.rebuild.unit.Unit;

/** Which pack: brings the trial reading to the packs already chosen elsewhere, then asks the worksheet. */
final class Adviser {
    /** How sure a pack must be to count as proven; the decision rule stored with every choice. */
    static final double RULE = 0.95;

    private static final int OFFERS = 4;

    private Adviser() {}

    static Advice advise(Unit unit, Clearance clearance, Job job, Shop shop, Reading trial) {
        Measured measured = Objects.requireNonNull(trial.measured());
        Position own = clearance.positions().get(0);
        Working working = new Working();
        double value = measured.value();
        double variance = measured.u() * measured.u();
        for (Position other : clearance.positions().subList(1, clearance.positions().size())) {
            Optional<Said<PackChosen>> elsewhere = job.packIn(other.id());
            if (elsewhere.isPresent()) {
                List<PieceIn> pieces = elsewhere.get().what().pieces();
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
        List<Piece> drawer = shop.usable(own.family(), unit.shimFamily(own.family()).spread());
        return ask(clearance, own, trial, working, value, Math.sqrt(variance), measured.nu(), drawer);
    }

    private static Advice ask(
            Clearance clearance,
            Position own,
            Reading trial,
            Working working,
            double value,
            double u,
            double nu,
            List<Piece> drawer) {
        List<shimwright.mechanics.axial.Piece> pieces = drawer.stream()
                .map(p -> new shimwright.mechanics.axial.Piece(p.id(), p.thickness(), p.u()))
                .toList();
        Outcome<Worked<ShimPackResult>> outcome = ShimPack.work(new ShimPackCase(
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
        if (outcome instanceof Outcome.Ok<Worked<ShimPackResult>> ok) {
            ShimPackResult result = working.include(ok.value());
            Worked<ShimPackResult> done = working.worked(result);
            return new Advice(own, result, drawer, value, u, done.working(), done.cautions(), List.of());
        }
        return new Advice(own, null, drawer, value, u, working.worked(value).working(), List.of(), outcome.refusals());
    }
}
