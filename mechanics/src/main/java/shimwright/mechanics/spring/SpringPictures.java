package shimwright.mechanics.spring;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class SpringPictures {
    private SpringPictures() {}

    /** Load over length from free to solid. */
    static List<Diagram> load(Springs.Case c, Springs.Result r) {
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "load", List.of(new Point(r.solidLength(), r.solidLoad()), new Point(c.freeLength(), 0)), Look.MAIN));
        parts.add(new Rule("solid", true, r.solidLength()));
        parts.add(new Rule("the wire yields", false, r.yieldLoad()));
        if (c.workingLength() != null && r.load() != null) {
            parts.add(new Dot("at work", c.workingLength(), r.load()));
        }
        return List.of(new Graph(
                "Load over length", Scale.of("length", Kind.LENGTH), Scale.of("load", Kind.FORCE), false, parts));
    }
}
