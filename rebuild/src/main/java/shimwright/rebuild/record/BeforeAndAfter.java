package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.clearance.DragAdvice;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.plan.learn.AsFound;
import shimwright.rebuild.plan.learn.FoundLimits;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Unit;

/**
 * A reading as it was found beside the same at the end.
 *
 * @param reading what is read, and what ends it
 * @param found as read before it came apart; empty where it was not read
 * @param now what it is now, SI; empty where it is not read yet
 * @param shims what was found and what is fitted at the place that sets it; empty where there is none
 */
public record BeforeAndAfter(
        AsFound reading, Optional<Said<Entry.Found>> found, Optional<Double> now, Optional<Shims> shims) {

    /**
     * Shims found and fitted at the place that sets a clearance.
     *
     * @param found thickness together, m
     * @param now thickness together, m
     * @param effect change of the clearance per thickness
     */
    public record Shims(double found, double now, double effect) {}

    /** Every reading that was taken as found, or ended without. */
    public static List<BeforeAndAfter> of(Job job, Unit unit) {
        return AsFound.of(unit, job).stream()
                .map(reading -> of(job, unit, reading))
                .filter(row -> row.found().isPresent() || row.reading().missed())
                .toList();
    }

    /** The one of a clearance, where it was read as found. */
    public static Optional<BeforeAndAfter> of(Job job, Unit unit, Clearance clearance) {
        return of(job, unit).stream()
                .filter(row -> row.reading().again().equals(clearance.id()))
                .filter(row -> row.value().isPresent())
                .findFirst();
    }

    private static BeforeAndAfter of(Job job, Unit unit, AsFound reading) {
        Optional<Said<Entry.Found>> found = job.found().stream()
                .filter(said -> said.what().what().equals(AsFound.LEAD + reading.name()))
                .max(Comparator.comparingLong(Said::number));
        return new BeforeAndAfter(reading, found, now(job, unit, reading), shims(job, unit, reading));
    }

    /** The mean of what was read as found, SI; empty where only words were kept. */
    public Optional<Double> value() {
        return found.map(said -> said.what().values())
                .filter(values -> !values.isEmpty())
                .map(BeforeAndAfter::mean);
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(value -> value).average().orElse(0);
    }

    private static Optional<Double> now(Job job, Unit unit, AsFound reading) {
        String again = reading.again();
        Optional<Clearance> clearance = clearance(unit, again);
        if (clearance.isPresent() && reading.kind() == Kind.LENGTH) {
            Said<Entry.ClearanceAccepted> accepted = job.accepted().get(again);
            return accepted == null
                    ? Optional.empty()
                    : Optional.of(accepted.what().value());
        }
        if (clearance.isPresent()) {
            return unit.type().holdPoints().stream()
                    .flatMap(hold -> hold.checks().stream()
                            .filter(check -> DragAdvice.of(unit, check)
                                    .filter(drag -> drag.clearance().id().equals(again))
                                    .isPresent())
                            .map(check -> hold.id() + "/" + check.id()))
                    .map(name -> read(job, unit, name))
                    .flatMap(Optional::stream)
                    .max(Comparator.comparingLong(Last::number))
                    .map(Last::value);
        }
        return read(job, unit, again).map(Last::value);
    }

    private record Last(long number, double value) {}

    /** The newest reading of a check or of a wear limit. */
    private static Optional<Last> read(Job job, Unit unit, String name) {
        List<Last> all = new ArrayList<>();
        FoundLimits.check(unit, name)
                .ifPresent(check -> job.checks().values().stream()
                        .filter(said -> name.equals(
                                said.what().hold() + "/" + said.what().check()))
                        .forEach(said ->
                                last(check, said.number(), said.what().values()).ifPresent(all::add)));
        unit.type().wearLimits().stream()
                .filter(wear -> wear.id().equals(name))
                .forEach(wear -> job.found().stream()
                        .filter(said -> said.what().limit().equals(name))
                        .forEach(said ->
                                last(wear, said.number(), said.what().values()).ifPresent(all::add)));
        return all.stream().max(Comparator.comparingLong(Last::number));
    }

    private static Optional<Last> last(Measurable what, long number, List<Double> values) {
        return values.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Last(number, mean(values.stream().map(what::value).toList())));
    }

    private static Optional<Clearance> clearance(Unit unit, String id) {
        return unit.type().clearances().stream()
                .filter(one -> one.id().equals(id))
                .findFirst();
    }

    private static Optional<Shims> shims(Job job, Unit unit, AsFound reading) {
        Optional<Position> place =
                clearance(unit, reading.again()).map(one -> one.positions().get(0));
        double found = place.map(at -> found(job, at.item())).orElse(0.0);
        double now = place.flatMap(at -> job.packIn(at.id()))
                .map(pack -> pack.what().pieces().stream()
                        .mapToDouble(Entry.PieceIn::thickness)
                        .sum())
                .orElse(0.0);
        return found > 0 && now > 0 ? place.map(at -> new Shims(found, now, at.effect())) : Optional.empty();
    }

    /** The shims that came off with an item, together; 0 where nobody said any. */
    private static double found(Job job, String item) {
        double sum = 0;
        for (Said<Entry.TakenOff> said : job.takenOff()) {
            if (!item.isEmpty() && said.what().items().contains(item)) {
                for (String part : said.what().shims().getOrDefault("sizes", "").split(";")) {
                    if (Quantities.parse(part.strip(), Kind.LENGTH, Units.MM, "shim")
                            instanceof Outcome.Ok<ParsedQuantity> ok) {
                        sum += ok.value().si();
                    }
                }
            }
        }
        return sum;
    }

    /** What changed, in words; empty while one of the two is not read. */
    public String changed(UnitSystem units) {
        Optional<Double> before = value();
        if (before.isEmpty() || now.isEmpty()) {
            return "";
        }
        double change = now.get() - before.get();
        String words = signed(change, units);
        if (shims.isPresent() && reading.kind() == Kind.LENGTH) {
            Shims lay = shims.get();
            double byShims = lay.effect() * (lay.now() - lay.found());
            words += ": " + signed(byShims, units) + " by shims (" + text(lay.found(), units) + " found, "
                    + text(lay.now(), units) + " now), " + signed(change - byShims, units)
                    + " by new parts, seats and wear";
        }
        return words;
    }

    /** The found one in words, and what the same parts would have asked for. */
    public String says(Clearance clearance, UnitSystem units) {
        double before = value().orElse(0.0);
        Position place = clearance.positions().get(0);
        String as = "As found " + text(before, units);
        if (reading.kind() != Kind.LENGTH || place.effect() == 0) {
            return as + ".";
        }
        double more = (clearance.aim() - before) / place.effect();
        return as + ": with the same parts a pack " + text(Math.abs(more), units)
                + (more > 0 ? " thicker" : " thinner") + " than the one found would have brought it to "
                + text(clearance.aim(), units) + ".";
    }

    private String signed(double change, UnitSystem units) {
        return (change < 0 ? "−" : "+") + text(Math.abs(change), units);
    }

    private String text(double si, UnitSystem units) {
        return Quantities.print(si, reading.kind(), units);
    }
}
