package shimwright.rebuild.unit.sense;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Consumable;
import shimwright.rebuild.unit.model.Fastener;
import shimwright.rebuild.unit.model.Fit;
import shimwright.rebuild.unit.model.GearPair;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Item.Shape;
import shimwright.rebuild.unit.model.Section.Outline;
import shimwright.rebuild.unit.model.Section.Shaft;
import shimwright.rebuild.unit.model.ShimFamily;
import shimwright.rebuild.unit.model.Spline;
import shimwright.rebuild.unit.model.UnitType;

/** Items, section, gears, bearings, splines, fits, fasteners, shims and materials: shape and size. */
final class PartSense {
    private static final double MM = 1e-3;
    private static final Pattern THREAD = Pattern.compile("M(\\d+(?:\\.\\d+)?).*");

    private final SenseContext context;

    PartSense(SenseContext context) {
        this.context = context;
    }

    void check() {
        UnitType type = context.type();
        type.items().stream().filter(context::sound).forEach(this::item);
        type.section().shafts().stream().filter(context::sound).forEach(this::shaft);
        type.section().castings().stream().filter(context::sound).forEach(this::outline);
        type.gears().stream().filter(context::sound).forEach(this::gear);
        type.bearings().stream().filter(context::sound).forEach(this::bearing);
        type.splines().stream().filter(context::sound).forEach(this::spline);
        type.fits().stream().filter(context::sound).forEach(this::fit);
        type.fasteners().stream().filter(context::sound).forEach(this::fastener);
        type.shimFamilies().values().stream().filter(context::sound).forEach(this::family);
        type.materials().values().stream().filter(context::sound).forEach(this::material);
        for (Consumable c : type.consumables()) {
            context.within(c, "open", c.open(), 0, 24 * 3600, Kind.TIME);
            context.within(c, "cure", c.cure(), 0, 14 * 24 * 3600, Kind.TIME);
        }
    }

    private void item(Item item) {
        context.within(item, "quantity", item.quantity(), 1, 200, Kind.NUMBER);
        if (item.shape() != Shape.NONE) {
            if (item.shaft().isEmpty()) {
                context.fault(item, "shape", "it is drawn but on no shaft", "Add shaft, or leave shape out");
            }
            range(item, "along", item.along(), -3, 3);
            range(item, "diameters", item.diameters(), 0, 2);
        } else if (!item.along().isEmpty() || !item.diameters().isEmpty()) {
            context.fault(item, "id", "it has measures but no shape", "Add shape, such as gear, washer or body");
        }
        for (List<Double> ring : item.also()) {
            if (ring.size() != 4 || ring.get(0) >= ring.get(1) || ring.get(2) >= ring.get(3) || ring.get(2) < 0) {
                context.fault(
                        item,
                        "also",
                        "a further ring needs from, to, inner and outer diameter",
                        "Write it as 92 115 40 58 mm");
            }
        }
    }

    private void range(Record record, String key, List<Double> values, double least, double most) {
        if (values.size() != 2 || values.get(0) >= values.get(1)) {
            context.fault(
                    record,
                    key,
                    values.isEmpty() ? key + " is missing" : key + " must be two values, the smaller first",
                    "Write it as 92 115 mm");
            return;
        }
        context.within(record, key, values.get(0), least, most, Kind.LENGTH);
        context.within(record, key, values.get(1), least, most, Kind.LENGTH);
    }

    private void shaft(Shaft shaft) {
        bores(shaft);
        if (shaft.at().size() != 2) {
            context.fault(shaft, "at", "an axis lies at two coordinates", "Write them as 0 74 mm");
        }
        for (List<Double> step : shaft.steps()) {
            if (step.size() != 3 || step.get(0) >= step.get(1) || step.get(2) <= 0) {
                context.fault(shaft, "steps", "a step needs from, to and diameter", "Write it as 92 116 40 mm");
            }
        }
    }

    /** A bore lies in the shaft and is smaller than what is round it. */
    private void bores(Shaft shaft) {
        for (List<Double> bore : shaft.bores()) {
            if (bore.size() != 3 || bore.get(0) >= bore.get(1) || bore.get(2) <= 0) {
                context.fault(shaft, "bores", "a bore needs from, to and diameter", "Write it as 0 30 12 mm");
                continue;
            }
            List<List<Double>> round = shaft.steps().stream()
                    .filter(step -> step.size() == 3 && step.get(0) < bore.get(1) && step.get(1) > bore.get(0))
                    .toList();
            double from = round.stream().mapToDouble(step -> step.get(0)).min().orElse(Double.POSITIVE_INFINITY);
            double to = round.stream().mapToDouble(step -> step.get(1)).max().orElse(Double.NEGATIVE_INFINITY);
            if (bore.get(0) < from || bore.get(1) > to) {
                context.fault(shaft, "bores", "a bore reaches out of the shaft", "Look at from and to of both");
            } else if (round.stream().anyMatch(step -> step.get(2) <= bore.get(2))) {
                context.fault(
                        shaft,
                        "bores",
                        "a bore of " + SenseContext.text(bore.get(2), Kind.LENGTH)
                                + " leaves nothing of the shaft round it",
                        "Look at both diameters");
            }
        }
    }

    private void outline(Outline outline) {
        boolean pairs = outline.points().stream().allMatch(p -> p.size() == 2);
        if (!pairs || outline.points().size() < (outline.closed() ? 3 : 2)) {
            context.fault(
                    outline,
                    "points",
                    "outline \"" + outline.name() + "\" needs points of x and height, at least "
                            + (outline.closed() ? "three" : "two"),
                    "Write a point as 97 118 mm");
        }
    }

    private void gear(GearPair g) {
        if (g.straight()) {
            if (g.driver() != 0 || g.driven() != 0 || g.idler() != 0) {
                context.fault(g, "straight", "straight through no tooth runs", "Leave the teeth out, or straight");
            }
            return;
        }
        context.within(g, "driver", g.driver(), 4, 300, Kind.NUMBER);
        context.within(g, "driven", g.driven(), 4, 300, Kind.NUMBER);
        context.within(g, "ratio of driven to driver", g.ratio(), 0.2, 12, Kind.NUMBER);
        context.within(g, "helix", g.helix(), 0, Math.PI / 3, Kind.ANGLE);
        if (g.module() > 0 && g.centreDistance() > 0 && g.idler() == 0) {
            double reference = g.module() * (g.driver() + g.driven()) / (2 * Math.cos(g.helix()));
            if (Math.abs(g.centreDistance() / reference - 1) > 0.06) {
                context.fault(
                        g,
                        "centre_distance",
                        "centre distance " + SenseContext.text(g.centreDistance(), Kind.LENGTH)
                                + ", but module, teeth and helix give " + SenseContext.text(reference, Kind.LENGTH),
                        "Profile shift explains a few percent at most; look at all four");
            }
        }
    }

    private void bearing(Bearing b) {
        context.within(b, "width", b.width(), 0, 0.3, Kind.LENGTH);
        if (!b.widthTolerance().isEmpty()) {
            range(b, "width_tolerance", b.widthTolerance(), -2 * MM, 2 * MM);
        }
    }

    private void spline(Spline s) {
        double pitch = s.module() * s.teeth();
        context.within(s, "over_pins", s.overPins(), pitch, pitch + 6 * s.module(), Kind.LENGTH);
        context.within(s, "pin", s.pin(), s.module(), 3 * s.module(), Kind.LENGTH);
        context.within(s, "slope", s.slope(), 0, 4, Kind.NUMBER);
    }

    private void fit(Fit f) {
        if (f.least() > f.most()) {
            context.fault(f, "least", "the least deviation is above the most", "Swap them");
        }
        context.within(f, "least", f.least(), -f.nominal() / 50, f.nominal() / 50, Kind.LENGTH);
        context.within(f, "most", f.most(), -f.nominal() / 50, f.nominal() / 50, Kind.LENGTH);
    }

    /**
     * T = K F d within 5 %; and a torque must be one that the thread could carry or feel: between 1 and 200 MPa of
     * T/d³ (common practice, no source).
     */
    private void fastener(Fastener f) {
        context.within(f, "quantity", f.quantity(), 1, 200, Kind.NUMBER);
        Matcher thread = THREAD.matcher(f.thread());
        if (!thread.matches()) {
            return;
        }
        double d = Double.parseDouble(thread.group(1)) * MM;
        double cube = d * d * d;
        context.within(f, "torque", f.torque(), 1e6 * cube, 200e6 * cube, Kind.TORQUE);
        double expected = f.nutFactor() * f.preload() * d;
        if (expected > 0 && Math.abs(f.torque() / expected - 1) > 0.05) {
            context.fault(
                    f,
                    "preload",
                    "torque " + SenseContext.text(f.torque(), Kind.TORQUE) + ", but nut factor x preload x diameter is "
                            + SenseContext.text(expected, Kind.TORQUE),
                    "The three must agree within 5 %");
        }
    }

    private void family(ShimFamily f) {
        if (!(f.thinnest() < f.thickest())) {
            context.fault(f, "thinnest", "the thinnest is not thinner than the thickest", "Swap them");
        }
        context.within(f, "thinnest", f.thinnest(), 0.005 * MM, 0.1, Kind.LENGTH);
        context.within(f, "thickest", f.thickest(), 0.005 * MM, 0.1, Kind.LENGTH);
        context.within(f, "spread", f.spread(), 0.001 * MM, 0.05 * MM, Kind.LENGTH);
        if (f.outer() > 0 && f.inner() >= f.outer()) {
            context.fault(f, "inner", "the inner diameter is not below the outer", "Swap them");
        }
    }

    private void material(UnitType.Material m) {
        context.within(m, "expansion", m.expansion(), 1e-6, 40e-6, Kind.EXPANSION);
        context.within(m, "hot_rise", m.hotRise(), 0, 200, Kind.TEMPERATURE_DIFFERENCE);
    }
}
