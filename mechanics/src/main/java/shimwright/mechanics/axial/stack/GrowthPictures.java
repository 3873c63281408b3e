package shimwright.mechanics.axial.stack;

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

/** Play from cold to warm. */
final class GrowthPictures {
    private GrowthPictures() {}

    /** Play from cold to warm, case and shaft warming in step. */
    static List<Diagram> growth(Growth.Case c, Growth.Result r) {
        Double cold = c.coldPlay();
        if (cold == null || c.caseRise() == 0) {
            return List.of();
        }
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve(
                "play", List.of(new Point(0, cold), new Point(c.caseRise(), cold + r.change())), Look.MAIN));
        parts.add(new Rule("no play, no preload", false, 0));
        parts.add(new Dot("cold", 0, cold));
        parts.add(new Dot("warm", c.caseRise(), cold + r.change()));
        return List.of(new Graph(
                "Play as case and shaft warm up in step",
                Scale.of("how much warmer the case is", Kind.TEMPERATURE_DIFFERENCE),
                Scale.of("play", Kind.LENGTH),
                false,
                parts));
    }
}
