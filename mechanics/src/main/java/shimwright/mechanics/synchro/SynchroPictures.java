package shimwright.mechanics.synchro;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Bar;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.quantity.Kind;

/** What the sheets of this topic have to look at. */
final class SynchroPictures {
    private SynchroPictures() {}

    /** What blocks against what pushes through, and the speeds running together. */
    static List<Diagram> capacity(SynchroCapacity.Case c, SynchroCapacity.Result r) {
        List<Diagram> pictures = new ArrayList<>();
        // the reserve is the least cone torque by the worst index torque
        double least = r.reserve() * r.indexTorqueWorst();
        pictures.add(new Graph(
                "The ring blocks while its cone torque is the larger",
                Scale.of("", List.of("cone, least", "index, worst", "index, with friction")),
                Scale.of("torque", Kind.TORQUE),
                false,
                List.<Part>of(
                        new Bar("cone torque, least", 1, 0, least, Look.MAIN),
                        new Bar("index torque, worst case", 2, 0, r.indexTorqueWorst(), Look.SECOND),
                        new Bar("index torque with chamfer friction", 3, 0, r.indexTorque(), Look.FAINT))));
        Double difference = r.speedDifference();
        Double time = r.slipTime();
        if (difference != null && time != null && time > 0) {
            pictures.add(new Graph(
                    "Speeds running together",
                    Scale.of("time", Kind.TIME),
                    Scale.of("speed difference", Kind.ROTATION),
                    false,
                    List.<Part>of(
                            new Curve("difference", List.of(new Point(0, difference), new Point(time, 0)), Look.MAIN),
                            new Rule("slip time", true, time))));
        }
        return pictures;
    }
}
