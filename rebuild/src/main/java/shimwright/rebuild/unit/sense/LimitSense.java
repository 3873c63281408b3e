package shimwright.rebuild.unit.sense;

import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/** Wear limits and hold points: readable, in the right direction and of the right size. */
final class LimitSense {
    /** A service limit this many times the new size, or this part of it, is a slipped point rather than wear. */
    private static final double TOO_FAR = 20;

    private final Ground ground;

    LimitSense(Ground ground) {
        this.ground = ground;
    }

    void check() {
        ground.type().wearLimits().stream().filter(ground::sound).forEach(this::wear);
        for (HoldPoint hold : ground.type().holdPoints()) {
            if (hold.checks().isEmpty() && ground.sound(hold)) {
                ground.fault(hold, "checks", "nothing is read", "Name at least one check");
            }
            hold.checks().stream().filter(ground::sound).forEach(this::check);
        }
    }

    private void wear(WearLimit w) {
        boolean attested = w.direction() == Direction.ATTEST;
        if (attested != (w.kind() == CheckKind.NONE)) {
            ground.fault(w, "kind", "kind none and direction attest belong together", "Change one of them");
            return;
        }
        if (attested) {
            return;
        }
        if (w.limit().isEmpty()) {
            ground.fault(w, "direction", "there is no limit", "Add limit with its unit");
            return;
        }
        if (!w.asNew().isEmpty()) {
            asNew(w, w.limit().get());
        }
        double rate = w.rate().map(Quantity::si).orElse(0.0);
        if (w.direction() == Direction.MIN ? rate > 0 : rate < 0) {
            ground.fault(
                    w,
                    "rate",
                    "it wears away from its limit",
                    "A size that shrinks has a negative rate; look at direction");
        }
    }

    private void asNew(WearLimit w, Quantity limit) {
        if (w.asNew().size() != 2) {
            ground.fault(w, "as_new", "as_new has " + w.asNew().size() + " values", "Write the least and the most");
            return;
        }
        Quantity least = w.asNew().get(0);
        Quantity most = w.asNew().get(1);
        if (least.si() > most.si()) {
            ground.fault(w, "as_new", "the least new size is above the most", "Swap them");
            return;
        }
        if (w.direction() == Direction.MIN && limit.si() > least.si()) {
            ground.fault(
                    w,
                    "limit",
                    "rejects below " + limit + ", but a new one may have " + least,
                    "Look whether the limit is a greatest size (direction max) or slipped a digit");
        } else if (w.direction() == Direction.MAX && limit.si() < most.si()) {
            ground.fault(
                    w,
                    "limit",
                    "rejects above " + limit + ", but a new one may have " + most,
                    "Look whether the limit is a least size (direction min) or slipped a digit");
        } else if (far(w.direction(), limit.si(), least.si(), most.si())) {
            ground.fault(
                    w,
                    "limit",
                    "the limit " + limit + " is far from new, " + least + " to " + most,
                    "Look at the unit and the decimal point of all three");
        }
    }

    private static boolean far(Direction direction, double limit, double least, double most) {
        return direction == Direction.MIN ? least > 0 && limit < least / TOO_FAR : most > 0 && limit > most * TOO_FAR;
    }

    private void check(Check c) {
        boolean limited = !c.stated().isEmpty();
        if (c.kind() == CheckKind.NONE) {
            if (limited || c.places() != 1) {
                ground.fault(c, "id", "limits or places without a kind", "Add kind: length, torque or what it is");
            }
            return;
        }
        if (!limited && c.clearance().isEmpty()) {
            ground.fault(c, "kind", "measured against nothing", "Add lower, upper or spread, or leave kind out");
            return;
        }
        ground.within(c, "places", c.places(), 1, 60, Kind.NUMBER);
        boolean crossed = c.lower().isPresent()
                && c.upper().isPresent()
                && c.lower().get().si() >= c.upper().get().si();
        if (crossed) {
            ground.fault(
                    c,
                    "lower",
                    "the lower limit " + c.lower().get() + " is not below the upper limit "
                            + c.upper().get(),
                    "Swap them");
        }
        c.spread()
                .filter(spread -> spread.si() <= 0)
                .ifPresent(spread -> ground.fault(
                        c, "spread", "a spread of " + spread + " cannot be met", "Write a length above 0"));
        if (c.spread().isPresent() && c.places() < 2) {
            ground.fault(c, "spread", "one reading has no spread", "Add places: 3 or more");
        }
    }
}
