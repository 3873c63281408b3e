package shimwright.mechanics.oil;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Plotting;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class OilPictures {
    private OilPictures() {}

    /** How the oil thins between the points known and asked for. */
    static List<Diagram> viscosity(OilViscosity.Case c, OilViscosity.Result r) {
        OilViscosity.Points p = c.points();
        double from = Math.min(c.wanted(), Math.min(p.first(), p.second()));
        double to = Math.max(c.wanted(), Math.max(p.first(), p.second()));
        Walther oil = Walther.through(p.first(), p.viscosity(), p.second(), p.secondViscosity());
        List<Point> points = new ArrayList<>(Plotting.curve(from, to, oil::at));
        return List.of(new Diagram.Graph(
                "Viscosity over temperature",
                Diagram.Scale.of("temperature", Kind.TEMPERATURE),
                Diagram.Scale.of("viscosity", Kind.VISCOSITY),
                false,
                List.of(
                        new Diagram.Curve("", points, Diagram.Look.MAIN),
                        new Diagram.Dot("", p.first(), p.viscosity()),
                        new Diagram.Dot("", p.second(), p.secondViscosity()),
                        new Diagram.Dot("asked for", c.wanted(), r.viscosity()))));
    }
}
