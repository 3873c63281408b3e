package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/** Which clearance is chosen first, where one shim moves several: the setting order of the unit file says it. */
record ChoiceOrder(Unit unit, Job job, Shop shop) {

    /**
     * The clearance whose pack at this place must be chosen before.
     *
     * @param place a place of this clearance that has no pack yet
     * @return empty where the place belongs to a clearance that is set later, and moves this one then
     */
    Optional<Clearance> waitsFor(Clearance clearance, Position place) {
        Clearance owner = unit.clearanceOf(place.id());
        List<String> order = unit.type().settingOrder();
        boolean chosenThere = owner.positions().get(0).id().equals(place.id());
        return chosenThere && order.indexOf(owner.id()) < order.indexOf(clearance.id())
                ? Optional.of(owner)
                : Optional.empty();
    }

    /** That the clearance waits, for which one, and what it will come to as far as that can be said. */
    Refusal refusal(Clearance clearance, Clearance first, Position place) {
        OptionalDouble there = wanted(first);
        OptionalDouble here = wanted(unit.clearance(clearance.id()));
        String about = there.isEmpty() || here.isEmpty()
                ? ""
                : ". With " + place.id() + " at the " + mm(there.getAsDouble()) + " wanted there, about "
                        + mm(here.getAsDouble()) + " will be wanted here";
        return new Refusal(
                "clearance",
                "clearance " + first.id() + ", " + first.name(),
                "its shim " + place.id() + " moves this one too and is not chosen yet",
                "Choose " + first.id() + " first, or choose them together" + about);
    }

    /**
     * The thickness that a clearance will want: places chosen already count as they are, places that are chosen before it as
     * they will be wanted.
     *
     * @return empty where a reading is missing
     */
    private OptionalDouble wanted(Clearance unmoved) {
        Clearance clearance = EtchedDeviation.of(unmoved, job);
        JobReadings readings = new JobReadings(unit, job, shop, clearance);
        Reading from = readings.latestProof(readings.trial(), null).orElse(null);
        if (from == null) {
            return OptionalDouble.empty();
        }
        Map<String, List<PieceIn>> fitted = FittedPieces.now(job);
        double value = Objects.requireNonNull(from.measured()).value();
        for (Position other :
                clearance.positions().subList(1, clearance.positions().size())) {
            List<PieceIn> pieces = fitted.get(other.id());
            double thickness = from.thickness(other.id());
            if (pieces != null) {
                thickness = pieces.stream().mapToDouble(PieceIn::thickness).sum();
            } else {
                Optional<Clearance> first = waitsFor(clearance, other);
                if (first.isPresent()) {
                    OptionalDouble there = wanted(first.get());
                    if (there.isEmpty()) {
                        return there;
                    }
                    thickness = there.getAsDouble();
                }
            }
            value += other.effect() * (thickness - from.thickness(other.id()));
        }
        Position own = clearance.positions().get(0);
        return OptionalDouble.of(from.thickness(own.id()) + (clearance.aim() - value) / own.effect());
    }

    private static String mm(double length) {
        return Quantities.print(length, Units.MM, 3);
    }
}
