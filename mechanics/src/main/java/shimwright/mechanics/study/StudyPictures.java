package shimwright.mechanics.study;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Bar;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.quantity.Kind;

/** What the sheets of this topic have to look at. */
final class StudyPictures {
    private StudyPictures() {}

    /** The gap against its limits, taken as normal, and who brings how much of the spread. */
    static List<Diagram> loop(ToleranceLoop.Case c, ToleranceLoop.Result r) {
        List<Diagram> pictures = new ArrayList<>();
        Double drawn = r.outsideDrawn();
        if (drawn != null) {
            pictures.add(new Diagram.Distribution(
                    "Gap against its limits",
                    Kind.LENGTH,
                    r.middle(),
                    r.deviation(),
                    Double.POSITIVE_INFINITY,
                    limit(c.least()),
                    limit(c.most()),
                    1 - drawn));
        }
        List<String> names = new ArrayList<>();
        List<Part> bars = new ArrayList<>();
        for (ToleranceLoop.Result.LinkShare link : r.links()) {
            names.add(link.name());
            bars.add(new Bar(link.name(), names.size(), 0, 100 * link.share(), Look.MAIN));
        }
        pictures.add(new Graph(
                "Who brings the spread",
                Scale.of("link", names),
                Scale.of("share of the square, %", Kind.NUMBER),
                false,
                bars));
        return pictures;
    }

    private static OptionalDouble limit(@Nullable Double limit) {
        return limit == null ? OptionalDouble.empty() : OptionalDouble.of(limit);
    }

    /** Standard deviations side by side. */
    static List<Diagram> gauge(GaugeStudy.Case c, GaugeStudy.Result r) {
        List<String> names = new ArrayList<>();
        List<Part> bars = new ArrayList<>();
        boolean days = c.form() == GaugeStudy.Case.Form.NESTED;
        bar(names, bars, "repeats", r.repeatability(), Look.SECOND);
        bar(names, bars, days ? "days" : "persons", r.reproducibility(), Look.SECOND);
        bar(names, bars, days ? "runs" : "persons × parts", r.interaction(), Look.SECOND);
        bar(names, bars, "gauge in all", r.gauge(), Look.MAIN);
        bar(names, bars, "parts", r.parts(), Look.FAINT);
        return List.of(new Graph(
                "What makes the readings differ",
                Scale.of("cause", names),
                Scale.of("standard deviation", Kind.LENGTH),
                false,
                bars));
    }

    private static void bar(List<String> names, List<Part> bars, String name, @Nullable Double size, Look look) {
        if (size != null) {
            names.add(name);
            bars.add(new Bar(name, names.size(), 0, size, look));
        }
    }
}
