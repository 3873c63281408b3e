package shimwright.rebuild.unit.sense;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.Statistic;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.WorkedOut;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/** Wear limits and hold points: readable, in the right direction and of the right size. */
final class LimitSense {
    /** A service limit this many times the new size, or this part of it, is a slipped point rather than wear. */
    private static final double TOO_FAR = 20;

    private final SenseContext context;

    LimitSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        context.type().wearLimits().stream().filter(context::sound).forEach(this::wear);
        for (HoldPoint hold : context.type().holdPoints()) {
            if (hold.checks().isEmpty() && context.sound(hold)) {
                context.fault(hold, "checks", "nothing is read", "Name at least one check");
            }
            hold.checks().stream().filter(context::sound).forEach(check -> check(hold, check));
        }
    }

    private void wear(WearLimit w) {
        boolean attested = w.direction() == Direction.ATTEST;
        if (attested != (w.kind() == CheckKind.NONE)) {
            context.fault(w, "kind", "kind none and direction attest belong together", "Change one of them");
            return;
        }
        if (attested) {
            attested(w, false);
            return;
        }
        if (w.limit().isEmpty()) {
            context.fault(w, "direction", "there is no limit", "Add limit with its unit");
            return;
        }
        measured(w);
        if (!w.asNew().isEmpty()) {
            asNew(w, w.limit().get());
        }
        double rate = w.rate().map(Quantity::si).orElse(0.0);
        if (w.direction() == Direction.MIN ? rate > 0 : rate < 0) {
            context.fault(
                    w,
                    "rate",
                    "it wears away from its limit",
                    "A size that shrinks has a negative rate; look at direction");
        }
    }

    private void asNew(WearLimit w, Quantity limit) {
        if (w.asNew().size() != 2) {
            context.fault(w, "as_new", "as_new has " + w.asNew().size() + " values", "Write the least and the most");
            return;
        }
        Quantity least = w.asNew().get(0);
        Quantity most = w.asNew().get(1);
        if (least.si() > most.si()) {
            context.fault(w, "as_new", "the least new size is above the most", "Swap them");
            return;
        }
        if (w.direction() == Direction.MIN && limit.si() > least.si()) {
            context.fault(
                    w,
                    "limit",
                    "rejects below " + limit + ", but a new one may have " + least,
                    "Look whether the limit is a greatest size (direction max) or slipped a digit");
        } else if (w.direction() == Direction.MAX && limit.si() < most.si()) {
            context.fault(
                    w,
                    "limit",
                    "rejects above " + limit + ", but a new one may have " + most,
                    "Look whether the limit is a least size (direction min) or slipped a digit");
        } else if (far(w.direction(), limit.si(), least.si(), most.si())) {
            context.fault(
                    w,
                    "limit",
                    "the limit " + limit + " is far from new, " + least + " to " + most,
                    "Look at the unit and the decimal point of all three");
        }
    }

    private static boolean far(Direction direction, double limit, double least, double most) {
        return direction == Direction.MIN ? least > 0 && limit < least / TOO_FAR : most > 0 && limit > most * TOO_FAR;
    }

    private void check(HoldPoint hold, Check c) {
        boolean limited = !c.stated().isEmpty();
        boolean ofClearance = c.workedOut() == WorkedOut.SLOPE || c.workedOut() == WorkedOut.NO_ODD_PLACE;
        if (c.workedOut() != WorkedOut.NONE
                && (c.kind() != CheckKind.NONE || ofClearance == c.clearance().isEmpty())) {
            context.fault(
                    c,
                    "worked_out",
                    "it is worked out, and read or said as well, or it does not say of which clearance",
                    "Leave kind out; slope and no_odd_place need a clearance, hold_points has none");
            return;
        }
        if (c.kind() == CheckKind.NONE) {
            attested(c, limited || !c.relativeTo().isEmpty());
            return;
        }
        if (!limited && c.clearance().isEmpty()) {
            context.fault(c, "kind", "measured against nothing", "Add lower, upper or spread, or leave kind out");
            return;
        }
        measured(c);
        nominal(c);
        relative(hold, c);
        boolean crossed = c.lower().isPresent()
                && c.upper().isPresent()
                && c.lower().get().si() >= c.upper().get().si();
        if (crossed) {
            context.fault(
                    c,
                    "lower",
                    "the lower limit " + c.lower().get() + " is not below the upper limit "
                            + c.upper().get(),
                    "Swap them");
        }
        c.spread()
                .filter(spread -> spread.si() <= 0)
                .ifPresent(spread -> context.fault(
                        c, "spread", "a spread of " + spread + " cannot be met", "Write a length above 0"));
        if (c.spread().isPresent() && c.judgedOn() == Statistic.RANGE) {
            context.fault(c, "spread", "range and spread say the same", "Write the limit as upper, or as spread");
        } else if (c.spread().isPresent() && c.places() < 2) {
            context.fault(c, "spread", "one reading has no spread", "Add places: 3 or more");
        }
    }

    private <M extends Record & Measurable> void attested(M m, boolean limited) {
        boolean read =
                m.places() != 1 || m.judgedOn() != Statistic.EACH || !m.pieces().isEmpty();
        if (limited || read || m.readingFactor() != 1 || !m.gauge().isEmpty()) {
            context.fault(
                    m,
                    "id",
                    "places, pieces or a gauge without a kind",
                    "Add kind: length, torque or what it is; one check for each piece where it is only attested");
        }
    }

    /** What is read and how often. */
    private <M extends Record & Measurable> void measured(M m) {
        context.within(m, "places", m.places(), 1, 60, Kind.NUMBER);
        List<String> pieces = m.pieces();
        if (new HashSet<>(pieces).size() < pieces.size() || pieces.stream().anyMatch(String::isBlank)) {
            context.fault(m, "pieces", "a piece has no name or that of another", "Give each its own, such as left");
        }
        if (!(Math.abs(m.readingFactor()) >= 1e-3 && Math.abs(m.readingFactor()) <= 1e3)) {
            context.fault(
                    m,
                    "reading_factor",
                    "the value is " + m.readingFactor() + " times the reading",
                    "Plausible is 0.001 to 1000 and never 0; leave it out for 1");
        }
        if (m.judgedOn() == Statistic.RANGE && m.places() < 2) {
            context.fault(m, "judged_on", "one reading has no range", "Add places: 3 or more");
        }
        boolean pair = pieces.size() == 2 || (pieces.isEmpty() && m.places() == 1);
        if (m.judgedOn() == Statistic.DIFFERENCE && !pair) {
            context.fault(
                    m,
                    "judged_on",
                    "a difference is that of two readings",
                    "Name two pieces, first less second, or none and leave places out");
        }
    }

    private void nominal(Check c) {
        if (!c.nominal().isEmpty() && !c.relativeTo().isEmpty()) {
            context.fault(c, "nominal", "the reading before says already what is expected", "Leave nominal out");
            return;
        }
        for (Quantity nominal : c.nominal()) {
            boolean below = c.lower().filter(l -> nominal.si() < l.si()).isPresent();
            boolean above = c.upper().filter(u -> nominal.si() > u.si()).isPresent();
            if (below || above) {
                context.fault(
                        c, "nominal", "the nominal " + nominal + " lies outside the limits", "Look which is right");
            }
        }
        boolean fits = c.pieces().isEmpty()
                || c.nominal().size() <= 1
                || c.nominal().size() == c.pieces().size();
        if (!fits) {
            context.fault(
                    c,
                    "nominal",
                    c.nominal().size() + " nominals of " + c.pieces().size() + " pieces",
                    "Write one for all, or one for each in the order of pieces");
        }
        if (c.within().isPresent() && (c.nominal().isEmpty() || c.within().get().si() <= 0)) {
            context.fault(c, "within", "it belongs to a nominal and is above 0", "Add nominal, or leave it out");
        }
    }

    private void relative(HoldPoint hold, Check c) {
        if (c.relativeTo().isEmpty()) {
            return;
        }
        String own = hold.id() + "/" + c.id();
        List<String> known = context.type().holdPoints().stream()
                .flatMap(h -> h.checks().stream()
                        .filter(check -> check.kind() == c.kind())
                        .map(check -> h.id() + "/" + check.id()))
                .filter(name -> !name.equals(own))
                .distinct()
                .toList();
        if (!known.contains(c.relativeTo())) {
            context.fault(
                    c,
                    "relative_to",
                    "\"" + c.relativeTo() + "\" is no other check that reads the same kind of quantity",
                    Spelling.hint(c.relativeTo(), known, "such checks"));
            return;
        }
        Optional<Check> earlier = context.type().holdPoints().stream()
                .flatMap(h -> h.checks().stream().filter(check -> c.relativeTo().equals(h.id() + "/" + check.id())))
                .findFirst();
        if (earlier.isPresent() && !earlier.get().pieces().equals(c.pieces())) {
            context.fault(c, "pieces", "they are not those of " + c.relativeTo(), "Name the same pieces in both");
        }
        if (c.lower().isEmpty() && c.upper().isEmpty()) {
            context.fault(c, "relative_to", "there is no limit to add to that reading", "Add lower or upper");
        }
    }
}
