package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Bar;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.diagram.Plotting;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class FitPictures {
    private FitPictures() {}

    /** The two tolerance zones about the nominal size. */
    static List<Diagram> zones(LimitsAndFits.Case c, LimitsAndFits.Result r) {
        List<String> names = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        parts.add(new Rule("nominal size", false, 0));
        zone("hole " + c.hole(), r.hole(), names, parts, Look.SECOND);
        zone("shaft " + c.shaft(), r.shaft(), names, parts, Look.MAIN);
        return List.of(new Graph(
                "Where the sizes may lie",
                Scale.of("", names),
                Scale.of("above or below the nominal size", Kind.LENGTH),
                false,
                parts));
    }

    private static void zone(
            String name, @Nullable SizeLimits limits, List<String> names, List<Part> parts, Look look) {
        if (limits != null) {
            names.add(name);
            parts.add(new Bar(name, names.size(), limits.lower(), limits.upper(), look));
        }
    }

    /** Bore and shaft as they are, and the press force over the travel. */
    static List<Diagram> press(Interference.Case c, Interference.Result r) {
        double nominal =
                c.bore().stream().mapToDouble(Double::doubleValue).min().orElse(0);
        Graph sizes = new Graph(
                "Bore and shaft as read",
                Scale.of("", List.of("bore", "shaft")),
                Scale.of("above the smallest bore", Kind.LENGTH),
                false,
                List.of(
                        zone("bore", 1, c.bore(), nominal, Look.SECOND),
                        zone("shaft", 2, c.diameter(), nominal, Look.MAIN)));
        if (r.press().pressForceHigh() <= 0) {
            return List.of(sizes);
        }
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "most to expect",
                r.curve().stream().map(p -> new Point(p.travel(), p.high())).toList(),
                Look.MAIN));
        parts.add(new Curve(
                "least to expect",
                r.curve().stream().map(p -> new Point(p.travel(), p.low())).toList(),
                Look.SECOND));
        parts.add(new Rule("stop and look", false, r.press().stopForce()));
        return List.of(
                sizes,
                new Graph(
                        "Press force over the travel",
                        Scale.of("travel", Kind.LENGTH),
                        Scale.of("press force", Kind.FORCE),
                        false,
                        parts));
    }

    private static Bar zone(String name, int at, List<Double> readings, double nominal, Look look) {
        double low = readings.stream().mapToDouble(Double::doubleValue).min().orElse(0);
        double high = readings.stream().mapToDouble(Double::doubleValue).max().orElse(0);
        return new Bar(name, at, low - nominal, high - nominal, look);
    }

    /** Growth of the bore against its temperature, what is needed, and the ceiling. */
    static List<Diagram> heat(HeatToFit.Case c, HeatToFit.Result r) {
        double slope = r.ceiling() > c.room() ? r.growthAtCeiling() / (r.ceiling() - c.room()) : 0;
        double hottest = Math.max(r.ceiling(), r.outerTemperature());
        double needed = c.interference() + r.clearance() - r.innerShrink();
        if (slope <= 0 || hottest <= c.room()) {
            return List.of();
        }
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "growth of the bore",
                List.of(new Point(c.room(), 0), new Point(hottest, slope * (hottest - c.room()))),
                Look.MAIN));
        parts.add(new Rule("needed", false, needed));
        parts.add(new Rule("ceiling", true, r.ceiling()));
        parts.add(new Dot("heat to here", r.outerTemperature(), r.boreGrowth()));
        return List.of(new Graph(
                "How far the bore opens",
                Scale.of("temperature of the outer part", Kind.TEMPERATURE),
                Scale.of("growth", Kind.LENGTH),
                false,
                parts));
    }

    /** Cooling in the air until only the needed growth is left. */
    static List<Diagram> cooling(TimeToGrab.Case c, TimeToGrab.Result r) {
        double last = 1.3 * Math.max(Math.max(r.timeInAir(), c.carry()), 0.02 * r.timeConstant());
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "temperature of the part",
                Plotting.curve(0, last, t -> c.air() + (c.start() - c.air()) * Math.exp(-t / r.timeConstant())),
                Look.MAIN));
        parts.add(new Rule("it grabs", true, r.timeInAir()));
        parts.add(new Rule("only the needed growth is left", false, r.temperatureThen()));
        parts.add(new Dot("on arrival", c.carry(), r.temperatureOnArrival()));
        return List.of(new Graph(
                "Temperature in the air",
                Scale.of("time", Kind.TIME),
                Scale.of("temperature", Kind.TEMPERATURE),
                false,
                parts));
    }
}
