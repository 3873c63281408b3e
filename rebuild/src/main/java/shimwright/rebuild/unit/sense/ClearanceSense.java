package shimwright.rebuild.unit.sense;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Drag;
import shimwright.rebuild.unit.model.Clearance.Length;
import shimwright.rebuild.unit.model.Clearance.Method;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Clearance.Sense;
import shimwright.rebuild.unit.model.LoopGrowth;
import shimwright.rebuild.unit.model.UnitType;

/** Each clearance for itself: order and sign of limits, size, the direction of each shim against the loop, growth, drag. */
final class ClearanceSense {
    private static final double MM = 1e-3;
    /** Wear of rounding: a loop may miss a limit by this and still be called inside. */
    private static final double DUST = 1e-9;

    private final SenseContext context;

    ClearanceSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        for (Clearance c : context.type().clearances()) {
            if (context.sound(c)) {
                limits(c);
                reading(c);
                c.positions().forEach(p -> position(c, p));
                if (c.lower() < c.upper()) {
                    loop(c);
                }
                c.drag().forEach(d -> drag(c, d));
            }
        }
    }

    private void limits(Clearance c) {
        if (!(c.lower() < c.upper())) {
            boolean signs = c.sense() == Sense.PRELOAD;
            context.fault(
                    c,
                    "lower",
                    "the lower limit " + mm(c.lower()) + " is not below the upper limit " + mm(c.upper()),
                    signs
                            ? "Signed as play: a preload of 0.02 to 0.06 has the limits -0.06 mm and -0.02 mm"
                            : "Look whether the two are swapped");
            return;
        }
        if (c.aim() < c.lower() || c.aim() > c.upper()) {
            context.fault(
                    c, "aim", "the aim " + mm(c.aim()) + " lies outside the limits", "Aim at a value between them");
        }
        if (c.sense() == Sense.PRELOAD && c.upper() > 0) {
            context.fault(
                    c, "upper", "a preload is negative here, signed as play", "Write -0.02 mm for a preload of 0.02");
        } else if (c.sense() != Sense.PRELOAD && c.lower() < 0) {
            context.fault(
                    c,
                    "lower",
                    "the lower limit of " + words(c.sense()) + " is negative",
                    "Only a preload is negative; look at the sign and at sense");
        }
        boolean distance = c.sense() == Sense.DISTANCE;
        context.within(c, "lower", c.lower(), distance ? MM : -2 * MM, distance ? 1 : 2 * MM, Kind.LENGTH);
        context.within(c, "upper", c.upper(), distance ? MM : -2 * MM, distance ? 1 : 2 * MM, Kind.LENGTH);
        double room = c.upper() - c.lower();
        if (room < 0.002 * MM || room > 2 * MM) {
            context.fault(
                    c,
                    "upper",
                    "the limits are " + mm(room) + " apart",
                    "Plausible is 0.002 mm to 2 mm; look at the unit");
        }
        context.within(c, "etched_step", c.etchedStep(), 0, 0.1 * MM, Kind.LENGTH);
        etched(c);
    }

    private void etched(Clearance c) {
        if (c.etchedBy().isEmpty() != (c.etchedStep() == 0)) {
            context.fault(
                    c,
                    c.etchedBy().isEmpty() ? "etched_step" : "etched_by",
                    "etched_step and etched_by belong together",
                    "Write etched_step: 0.01 mm and etched_by: HOLD/CHECK, or neither");
        } else if (!c.etchedBy().isEmpty()) {
            List<String> known = context.type().holdPoints().stream()
                    .flatMap(hold -> hold.checks().stream()
                            .filter(check -> check.kind() == UnitType.CheckKind.NUMBER)
                            .map(check -> hold.id() + "/" + check.id()))
                    .toList();
            if (!known.contains(c.etchedBy())) {
                context.fault(
                        c,
                        "etched_by",
                        "\"" + c.etchedBy() + "\" is no check that reads a number",
                        Spelling.hint(c.etchedBy(), known, "such checks"));
            }
        }
    }

    private static String words(Sense sense) {
        return (sense == Sense.END_PLAY ? "an " : "a ")
                + sense.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    private void reading(Clearance c) {
        context.within(c, "settle_within", c.settleWithin(), 0.001 * MM, 0.2 * MM, Kind.LENGTH);
        context.within(c, "rounds", c.rounds(), 1, 20, Kind.NUMBER);
        int least = c.method() == Method.PLACES ? 2 : 1;
        int most = c.method() == Method.TRAVEL ? 2 : c.method() == Method.PLACES ? 36 : 1;
        context.within(c, "indicators", c.indicators(), least, most, Kind.NUMBER);
        if (c.method() == Method.DIFFERENCE && c.difference().size() != 2) {
            context.fault(
                    c,
                    "difference",
                    "method difference reads two lengths, " + c.difference().size() + " stand here",
                    "Name the one that is counted first, then the one that is taken from it");
        } else if (c.method() != Method.DIFFERENCE && !c.difference().isEmpty()) {
            context.fault(c, "difference", "the two lengths belong to method difference", "Write method: difference");
        }
        if (c.readingFactor() == 0) {
            context.fault(c, "reading_factor", "a factor of 0 makes every reading the same", "Leave it out for 1");
        }
        if (c.positions().isEmpty()) {
            context.fault(c, "positions", "there is no place for a shim", "Name at least one position");
        }
    }

    private void position(Clearance c, Position p) {
        if (p.effect() == 0 || Math.abs(p.effect()) > 2) {
            context.fault(
                    p,
                    "effect",
                    "the effect is " + p.effect() + " of a shim's thickness",
                    "-1 closes one for one, +1 opens; a share is smaller, never 0 and never over 2");
        }
        if (p.fewest() < 0 || p.most() < Math.max(1, p.fewest()) || p.most() > 6) {
            context.fault(
                    p,
                    "most",
                    "from " + p.fewest() + " to " + p.most() + " pieces",
                    "One to three is usual, six the most");
        }
        for (Length length : c.loop()) {
            boolean same = !p.item().isEmpty() && p.item().equals(length.item());
            if (same && Math.signum(length.sign()) != Math.signum(p.effect())) {
                context.fault(
                        p,
                        "effect",
                        "the effect says that a thicker piece " + way(p.effect()) + ", the loop says that it "
                                + way(length.sign()),
                        "The sign belongs to the loop; settle which one is right before anybody picks a shim by it");
            }
        }
    }

    private static String way(double sign) {
        return sign < 0 ? "closes" : "opens";
    }

    private void loop(Clearance c) {
        if (c.loop().isEmpty()) {
            return;
        }
        double sum = 0;
        for (Length length : c.loop()) {
            if (Math.abs(length.sign()) != 1) {
                context.fault(
                        length,
                        "sign",
                        "the sign is " + length.sign(),
                        "Write 1 where it opens and -1 where it closes");
                return;
            }
            context.within(length, "nominal", length.nominal(), 0.01 * MM, 2, Kind.LENGTH);
            sum += length.sign() * length.nominal();
        }
        if (sum < c.lower() - DUST || sum > c.upper() + DUST) {
            context.fault(
                    c,
                    "loop",
                    "the lengths of the loop add up to " + mm(sum) + ", the limits are " + mm(c.lower()) + " to "
                            + mm(c.upper()),
                    "Look at the signs and at the nominal of each length");
        }
        growth(c);
    }

    private void growth(Clearance c) {
        OptionalDouble growth = LoopGrowth.of(c, context.type());
        if (growth.isEmpty() || !context.at().written(c).contains("growth")) {
            return;
        }
        if (Math.abs(growth.getAsDouble() - c.growth()) > Math.max(0.002 * MM, 0.1 * Math.abs(growth.getAsDouble()))) {
            context.fault(
                    c,
                    "growth",
                    "the growth is " + mm(c.growth()) + ", the materials of the loop give " + mm(growth.getAsDouble()),
                    "Look at the sign, the materials and their hot rise");
        }
    }

    private void drag(Clearance c, Drag d) {
        if (c.sense() != Sense.PRELOAD) {
            context.fault(d, "where", "drag proves a preload, clearance " + c.id() + " is none", "Leave drag out");
            return;
        }
        if (!(d.lower() < d.upper())) {
            context.fault(d, "lower", "the least drag is not below the most", "Look whether the two are swapped");
            return;
        }
        if (d.rise() > 0) {
            agree(d, "lower", d.lower(), d.atZero() + d.rise() * -c.upper());
            agree(d, "upper", d.upper(), d.atZero() + d.rise() * -c.lower());
        }
    }

    private void agree(Drag d, String key, double limit, double expected) {
        if (Math.abs(limit - expected) > 0.1 * expected) {
            context.fault(
                    d,
                    key,
                    key + " is " + SenseContext.text(limit, Kind.TORQUE)
                            + ", at that limit of the preload at_zero and rise give "
                            + SenseContext.text(expected, Kind.TORQUE),
                    "They must agree within a tenth");
        }
    }

    private static String mm(double metres) {
        return SenseContext.text(metres, Kind.LENGTH);
    }
}
