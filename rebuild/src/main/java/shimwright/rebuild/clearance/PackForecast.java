package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.axial.shim.PackOffer;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Forecast;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/** What the chosen pieces leave as everything stands now, and what changed since they were chosen. */
final class PackForecast {
    /** A nanometre: less is dust of the arithmetic. */
    private static final double DUST = 1e-9;

    private PackForecast() {}

    /**
     * The forecast.
     *
     * @param advice from the reading that foretells; null where there is none
     * @return empty where no pack is in the clearance's own place, or nothing is read
     */
    static Optional<Forecast> of(Unit unit, Job job, Clearance clearance, @Nullable Advice advice) {
        Map<String, List<PieceIn>> now = FittedPieces.now(job);
        List<PieceIn> pieces = now.get(clearance.positions().get(0).id());
        if (advice == null || pieces == null) {
            return Optional.empty();
        }
        Outcome<Worked<PackOffer>> judged = PackAdviser.judge(clearance, advice, pieces);
        if (!(judged instanceof Outcome.Ok<Worked<PackOffer>> ok)) {
            return Optional.empty();
        }
        PackOffer offer = ok.value().result();
        Optional<Said<PackChosen>> chosen = chosen(job, clearance);
        boolean same = chosen.isEmpty()
                || Math.abs(offer.predicted() - chosen.get().what().predicted()) < DUST;
        boolean decided = chosen.isPresent()
                && same
                && chosen.get().what().verdict() == offer.verdict()
                && changed(unit, job, clearance, chosen.get()).isEmpty();
        return Optional.of(new Forecast(
                offer.predicted(),
                offer.u(),
                offer.nu(),
                offer.probability(),
                offer.verdict(),
                same ? "" : because(unit, job, clearance, chosen.get(), advice, offer),
                offer.verdict() != Verdict.IN && !decided && chosen.isPresent()));
    }

    /** The choice that stands in the clearance's own place. */
    static Optional<Said<PackChosen>> chosen(Job job, Clearance clearance) {
        String own = clearance.positions().get(0).id();
        return Optional.ofNullable(job.chosen().get(new Job.Position(clearance.id(), own)));
    }

    /** Places that got other pieces since the pack was chosen, or their first, in words. */
    private static List<String> changed(Unit unit, Job job, Clearance clearance, Said<PackChosen> chosen) {
        Map<String, List<PieceIn>> then = FittedPieces.before(job, chosen.number() + 1);
        Map<String, List<PieceIn>> in = FittedPieces.now(job);
        List<String> changed = new ArrayList<>();
        for (Position position : clearance.positions()) {
            List<PieceIn> before = then.get(position.id());
            List<PieceIn> after = in.get(position.id());
            if (after != null && !after.equals(before)) {
                changed.add("place " + position.id() + " got " + tags(after)
                        + (before == null ? "" : " instead of " + tags(before)) + " (clearance "
                        + unit.clearanceOf(position.id()).id() + ")");
            }
        }
        return changed;
    }

    private static String because(
            Unit unit, Job job, Clearance clearance, Said<PackChosen> chosen, Advice advice, PackOffer now) {
        List<String> changed = changed(unit, job, clearance, chosen);
        boolean readAnew = advice.from().rounds().stream().anyMatch(round -> round.number() > chosen.number());
        if (readAnew || changed.isEmpty()) {
            changed.add("the clearance was read anew");
        }
        String verdict = switch (now.verdict()) {
            case IN -> "within limits";
            case OUT -> "out of limits: choose again";
            case NOT_PROVEN -> "no longer proven: choose again";
        };
        return "Since the pack was chosen, " + String.join(" and ", changed) + ". It was to leave "
                + mm(chosen.what().predicted()) + "; it leaves " + mm(now.predicted()) + " now, " + verdict + ".";
    }

    private static String tags(List<PieceIn> pieces) {
        return pieces.isEmpty()
                ? "no piece"
                : pieces.stream().map(PieceIn::piece).collect(Collectors.joining(" + "));
    }

    private static String mm(double length) {
        return Quantities.print(length, Units.MM, 3);
    }
}
