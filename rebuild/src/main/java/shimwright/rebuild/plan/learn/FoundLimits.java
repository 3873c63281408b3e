package shimwright.rebuild.plan.learn;

import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;

/**
 * What a reading as found is held against: the limits of what reads it at the end.
 *
 * @param lower SI; empty where there is none
 * @param upper SI; empty where there is none
 * @param wear true where they are those of wear, not of a setting
 */
public record FoundLimits(Optional<Double> lower, Optional<Double> upper, boolean wear) {

    /** The limits of a reading; empty where the unit has none for it. */
    public static Optional<FoundLimits> of(Unit unit, AsFound reading) {
        String again = reading.again();
        for (Clearance clearance : unit.type().clearances()) {
            if (clearance.id().equals(again)) {
                return ofClearance(clearance, reading.kind());
            }
        }
        for (WearLimit wear : unit.type().wearLimits()) {
            if (wear.id().equals(again)) {
                Optional<Double> limit = wear.limit().map(Quantity::si);
                boolean least = wear.direction() == WearLimit.Direction.MIN;
                return Optional.of(
                        new FoundLimits(least ? limit : Optional.empty(), least ? Optional.empty() : limit, true));
            }
        }
        return check(unit, again)
                .map(check -> new FoundLimits(
                        check.lower().map(Quantity::si), check.upper().map(Quantity::si), false));
    }

    private static Optional<FoundLimits> ofClearance(Clearance clearance, Kind kind) {
        if (kind == Kind.LENGTH) {
            return Optional.of(new FoundLimits(Optional.of(clearance.lower()), Optional.of(clearance.upper()), false));
        }
        List<Clearance.Drag> drags = clearance.drag();
        return drags.size() == 1
                ? Optional.of(new FoundLimits(
                        Optional.of(drags.get(0).lower()),
                        Optional.of(drags.get(0).upper()),
                        false))
                : Optional.empty();
    }

    /** The check of a name such as {@code H02/bore}; empty for any other name. */
    public static Optional<Check> check(Unit unit, String name) {
        return unit.type().holdPoints().stream()
                .flatMap(hold -> hold.checks().stream().filter(check -> name.equals(hold.id() + "/" + check.id())))
                .findFirst();
    }

    /**
     * What a reading says against them, in a sentence.
     *
     * @param value as found, SI
     */
    public String says(double value, Kind kind, UnitSystem units) {
        if (lower.isPresent() && value < lower.get()) {
            return text(lower.get() - value, kind, units) + " under " + text(lower.get(), kind, units)
                    + (wear ? ": worn out." : ", which is asked at the end: worn, or set otherwise.");
        }
        if (upper.isPresent() && value > upper.get()) {
            return text(value - upper.get(), kind, units) + " over " + text(upper.get(), kind, units)
                    + (wear ? ": worn out." : ", which is asked at the end: worn, or set otherwise.");
        }
        return "Within limits as found.";
    }

    private static String text(double si, Kind kind, UnitSystem units) {
        return Quantities.print(si, kind, units);
    }
}
