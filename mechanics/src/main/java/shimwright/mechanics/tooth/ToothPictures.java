package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Area;
import shimwright.mechanics.diagram.Diagram.Bar;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Disc;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.diagram.Plotting;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. Teeth are drawn in the transverse section, the pin's space upright. */
final class ToothPictures {
    private static final Scale LENGTH = Scale.of("", Kind.LENGTH);

    private ToothPictures() {}

    static List<Diagram> overPins(OverPins.Case c, OverPins.Result r) {
        double module = module(c.module(), c.diametralPitch());
        double reference = c.teeth() * module / 2;
        DoubleUnaryOperator tooth = half(reference, c.pressureAngle(), r.thicknessTransverse());
        return section(
                c.helix(),
                c.teeth(),
                c.pin(),
                reference,
                c.pressureAngle(),
                r.centreAngle(),
                r.contactDiameter() / 2,
                radius -> Math.PI / c.teeth() - tooth.applyAsDouble(radius),
                Math.max(reference + 0.6 * module, 0.51 * r.contactDiameter()),
                reference - module);
    }

    static List<Diagram> betweenPins(BetweenPins.Case c, BetweenPins.Result r) {
        double module = module(c.module(), c.diametralPitch());
        double reference = c.teeth() * module / 2;
        return section(
                c.helix(),
                c.teeth(),
                c.pin(),
                reference,
                c.pressureAngle(),
                r.centreAngle(),
                r.contactDiameter() / 2,
                half(reference, c.pressureAngle(), r.spaceTransverse()),
                reference + 0.9 * module,
                Math.min(reference - 0.5 * module, 0.49 * r.contactDiameter()));
    }

    private static double module(@Nullable Double module, @Nullable Double pitch) {
        return module != null ? module : pitch != null ? Toothing.INCH / pitch : 0;
    }

    /** Half of a thickness or space width as an angle, by radius (ISO 21771-1:2022). */
    private static DoubleUnaryOperator half(double reference, double angle, double arc) {
        double base = reference * Math.cos(angle);
        double middle = arc / (2 * reference) + Involute.of(angle);
        return radius -> middle - Involute.of(Math.acos(Math.min(1, base / radius)));
    }

    /** A space between its two flanks with the pin in it; nothing for helical teeth, whose pin is no circle here. */
    private static List<Diagram> section(
            double helix,
            int teeth,
            double pin,
            double reference,
            double angle,
            double centreAngle,
            double contact,
            DoubleUnaryOperator space,
            double outside,
            double inside) {
        double base = reference * Math.cos(angle);
        double centre = base / Math.cos(centreAngle);
        double low = Math.max(inside, base * 1.0001);
        double high = Math.max(outside, low * 1.001);
        if (helix != 0 || space.applyAsDouble(high) <= 0 || space.applyAsDouble(low) <= 0) {
            return List.of();
        }
        List<Part> parts = new ArrayList<>();
        parts.add(tooth(1, low, high, space, teeth));
        parts.add(tooth(-1, low, high, space, teeth));
        double sweep = 1.1 * Math.PI / teeth;
        parts.add(new Curve(
                "reference circle",
                Plotting.curve(-sweep, sweep, a -> a).stream()
                        .map(p -> at(reference, p.x()))
                        .toList(),
                Look.FAINT));
        parts.add(new Disc("pin", 0, centre, pin / 2, Look.MAIN));
        double touch = space.applyAsDouble(Math.max(contact, low));
        parts.add(new Dot("touches here", contact * Math.sin(touch), contact * Math.cos(touch)));
        parts.add(new Dot("", -contact * Math.sin(touch), contact * Math.cos(touch)));
        return List.of(new Graph("The pin between two flanks", LENGTH, LENGTH, true, parts));
    }

    /** Half a tooth beside the space: its flank, and its middle line. */
    private static Area tooth(int side, double low, double high, DoubleUnaryOperator space, int teeth) {
        List<Point> outline = new ArrayList<>(Plotting.curve(low, high, radius -> radius).stream()
                .map(p -> at(p.x(), side * space.applyAsDouble(p.x())))
                .toList());
        List<Point> middle =
                new ArrayList<>(List.of(at(low, side * Math.PI / teeth), at(high, side * Math.PI / teeth)));
        Collections.reverse(middle);
        outline.addAll(middle);
        return new Area("", outline, Look.SECOND);
    }

    private static Point at(double radius, double angle) {
        return new Point(radius * Math.sin(angle), radius * Math.cos(angle));
    }

    /** Ratios side by side, and the engine's speed over the output's as one shifts up at the same speed. */
    static List<Diagram> ratios(Ratios.Case c, Ratios.Result r) {
        List<Part> bars = new ArrayList<>();
        List<String> names = new ArrayList<>();
        List<Double> forward = new ArrayList<>();
        for (Ratios.Row gear : r.gears()) {
            names.add(gear.name());
            bars.add(new Bar(gear.name(), names.size(), 0, gear.ratio(), gear.backward() ? Look.FAINT : Look.MAIN));
            if (!gear.backward()) {
                forward.add(gear.ratio());
            }
        }
        List<Diagram> diagrams = new ArrayList<>();
        diagrams.add(new Graph("Ratio by gear", Scale.of("gear", names), Scale.of("ratio", Kind.NUMBER), false, bars));
        forward.sort(Collections.reverseOrder());
        if (forward.size() > 1 && forward.get(forward.size() - 1) > 0) {
            diagrams.add(sawtooth(forward));
        }
        return diagrams;
    }

    private static Graph sawtooth(List<Double> ratios) {
        List<Point> points = new ArrayList<>(List.of(new Point(0, 0)));
        for (int i = 0; i < ratios.size(); i++) {
            double out = 1 / ratios.get(i);
            if (i > 0) {
                double before = 1 / ratios.get(i - 1);
                points.add(new Point(before, before * ratios.get(i)));
            }
            points.add(new Point(out, 1));
        }
        return new Graph(
                "Shifting up: each gear to the same engine speed",
                Scale.of("output speed, as a share of the shift speed", Kind.NUMBER),
                Scale.of("engine speed, as a share of the shift speed", Kind.NUMBER),
                false,
                List.of(new Curve("", points, Look.MAIN)));
    }

    static List<Diagram> roadSpeed(RoadSpeed.Case c, RoadSpeed.Result r) {
        if (c.engineSpeed() <= 0) {
            return List.of();
        }
        double most = 1.5 * c.engineSpeed();
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "unloaded diameter", List.of(new Point(0, 0), new Point(most, r.speed() * 1.5)), Look.MAIN));
        if (r.rollingSpeed() != null) {
            parts.add(new Curve(
                    "rolling circumference",
                    List.of(new Point(0, 0), new Point(most, r.rollingSpeed() * 1.5)),
                    Look.SECOND));
        }
        parts.add(new Dot("asked for", c.engineSpeed(), r.speed()));
        return List.of(new Graph(
                "Road speed in this gear",
                Scale.of("engine speed", Kind.ROTATION),
                Scale.of("road speed", Kind.SPEED),
                false,
                parts));
    }

    /** What is heard and at which frequency: turns low, the mesh with a side band of each shaft beside it. */
    static List<Diagram> meshFrequencies(MeshFrequencies.Case c, MeshFrequencies.Result r) {
        List<String> names =
                List.of("driven turn", "driving turn", "mesh − driving", "mesh", "mesh + driving", "2 × mesh");
        double[] heights = {
            r.drivenTurn(),
            r.drivingTurn(),
            r.mesh() - r.drivingTurn(),
            r.mesh(),
            r.mesh() + r.drivingTurn(),
            2 * r.mesh()
        };
        List<Part> parts = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            parts.add(new Diagram.Bar(names.get(i), i + 1, 0, heights[i], i == 3 ? Look.MAIN : Look.SECOND));
        }
        return List.of(new Graph(
                "What a pair of " + c.driving() + " and " + c.driven() + " teeth lets be heard",
                Scale.of("", names),
                Scale.of("frequency", Kind.FREQUENCY),
                false,
                parts));
    }
}
