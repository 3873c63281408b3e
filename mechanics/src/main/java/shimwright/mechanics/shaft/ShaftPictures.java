package shimwright.mechanics.shaft;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class ShaftPictures {
    private ShaftPictures() {}

    /** The bent line in the plane of the first load, with bearings and loads marked. */
    static List<Diagram> bend(ShaftBend.Case c, ShaftBend.Result r) {
        BentShaft line = ShaftBend.plane(c);
        List<Point> points = new ArrayList<>();
        line.fine().forEach(x -> points.add(new Point(x, line.deflection(x))));
        List<Diagram.Part> parts = new ArrayList<>();
        parts.add(new Diagram.Curve("", points, Diagram.Look.MAIN));
        parts.add(new Diagram.Dot("bearing", c.bearingA(), 0));
        parts.add(new Diagram.Dot("bearing", c.bearingB(), 0));
        c.loads().forEach(load -> parts.add(new Diagram.Dot(load.name(), load.at(), line.deflection(load.at()))));
        return List.of(new Diagram.Graph(
                "Bent line, in the direction of the first load",
                Diagram.Scale.of("along the shaft", Kind.LENGTH),
                Diagram.Scale.of("bent by", Kind.LENGTH),
                false,
                parts));
    }
}
