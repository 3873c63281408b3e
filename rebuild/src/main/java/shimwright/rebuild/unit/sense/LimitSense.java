package shimwright.rebuild.unit.sense;

import shimwright.mechanics.quantity.Kind;
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
            if (!w.limit().isEmpty() || !w.asNew().isEmpty()) {
                ground.fault(w, "limit", "an attested check has no limit", "Leave limit and as_new out");
            }
            return;
        }
        if (w.limit().isEmpty()) {
            ground.fault(w, "direction", "there is no limit", "Add limit with its unit");
            return;
        }
        double limit = ground.limit(w, "limit", w.limit(), w.kind());
        if (!w.asNew().isEmpty()) {
            asNew(w, limit);
        }
        if (!w.rate().isEmpty()) {
            double rate = ground.limit(w, "rate", w.rate(), w.kind());
            if (w.direction() == Direction.MIN ? rate > 0 : rate < 0) {
                ground.fault(
                        w,
                        "rate",
                        "it wears away from its limit",
                        "A size that shrinks has a negative rate; look at direction");
            }
        }
    }

    private void asNew(WearLimit w, double limit) {
        if (w.asNew().size() != 2) {
            ground.fault(w, "as_new", "as_new has " + w.asNew().size() + " values", "Write the least and the most");
            return;
        }
        double least = ground.limit(w, "as_new", w.asNew().get(0), w.kind());
        double most = ground.limit(w, "as_new", w.asNew().get(1), w.kind());
        if (least > most) {
            ground.fault(w, "as_new", "the least new size is above the most", "Swap them");
            return;
        }
        if (w.direction() == Direction.MIN && limit > least) {
            ground.fault(
                    w,
                    "limit",
                    "rejects below " + w.limit() + ", but a new one may have "
                            + w.asNew().get(0),
                    "Look whether the limit is a greatest size (direction max) or slipped a digit");
        } else if (w.direction() == Direction.MAX && limit < most) {
            ground.fault(
                    w,
                    "limit",
                    "rejects above " + w.limit() + ", but a new one may have "
                            + w.asNew().get(1),
                    "Look whether the limit is a least size (direction min) or slipped a digit");
        } else if (far(w.direction(), limit, least, most)) {
            ground.fault(
                    w,
                    "limit",
                    "the limit " + w.limit() + " is far from new, " + w.asNew().get(0) + " to "
                            + w.asNew().get(1),
                    "Look at the unit and the decimal point of all three");
        }
    }

    private static boolean far(Direction direction, double limit, double least, double most) {
        return direction == Direction.MIN ? least > 0 && limit < least / TOO_FAR : most > 0 && limit > most * TOO_FAR;
    }

    private void check(Check c) {
        boolean limited =
                !c.lower().isEmpty() || !c.upper().isEmpty() || !c.spread().isEmpty();
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
        double lower = c.lower().isEmpty() ? Double.NaN : ground.limit(c, "lower", c.lower(), c.kind());
        double upper = c.upper().isEmpty() ? Double.NaN : ground.limit(c, "upper", c.upper(), c.kind());
        if (lower >= upper) {
            ground.fault(
                    c,
                    "lower",
                    "the lower limit " + c.lower() + " is not below the upper limit " + c.upper(),
                    "Swap them");
        }
        if (!c.spread().isEmpty() && ground.limit(c, "spread", c.spread(), c.kind()) <= 0) {
            ground.fault(c, "spread", "a spread of " + c.spread() + " cannot be met", "Write a length above 0");
        }
        if (!c.spread().isEmpty() && c.places() < 2) {
            ground.fault(c, "spread", "one reading has no spread", "Add places: 3 or more");
        }
    }
}
