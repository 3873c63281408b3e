package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.quantity.Kind;

/** What the sheets of this topic have to look at. */
final class BearingPictures {
    private BearingPictures() {}

    /** For each bearing that is loaded at all, its radial load in each gear; the worst gear stands out. */
    static List<Diagram> meshForces(MeshForces.Case c, MeshForces.Result r) {
        List<String> gears = r.gears().stream().map(MeshForces.Result.Row::name).toList();
        List<Diagram> graphs = new ArrayList<>();
        for (MeshForces.Result.Worst worst : r.worst()) {
            if (!(worst.radial() > 0)) {
                continue;
            }
            List<Diagram.Part> bars = new ArrayList<>();
            for (MeshForces.Result.Load load : r.loads()) {
                if (load.bearing().equals(worst.bearing())) {
                    Diagram.Look look = load.gear().equals(worst.gear()) ? Diagram.Look.MAIN : Diagram.Look.SECOND;
                    bars.add(new Diagram.Bar(load.gear(), gears.indexOf(load.gear()) + 1, 0, load.radial(), look));
                }
            }
            graphs.add(new Diagram.Graph(
                    "Radial load by gear: " + (worst.bearing().length() == 1 ? "countershaft bearing " : "")
                            + worst.bearing(),
                    Diagram.Scale.of("gear", gears),
                    Diagram.Scale.of("radial load", Kind.FORCE),
                    false,
                    bars));
        }
        return graphs;
    }

    /** The knocks of each place of damage beside the turn of one ring against the other. */
    static List<Diagram> frequencies(BearingFrequencies.Case c, BearingFrequencies.Result r) {
        List<String> names = List.of("cage", "one turn", "element", "outer ring", "inner ring");
        double[] heights = {
            r.cage().frequency(),
            r.turning(),
            r.element().frequency(),
            r.outer().frequency(),
            r.inner().frequency()
        };
        List<Diagram.Part> bars = new ArrayList<>();
        for (int i = 0; i < heights.length; i++) {
            Diagram.Look look = i == 1 ? Diagram.Look.SECOND : Diagram.Look.MAIN;
            bars.add(new Diagram.Bar(names.get(i), i + 1, 0, heights[i], look));
        }
        return List.of(new Diagram.Graph(
                "How often damage knocks, " + c.rolling().elements() + " elements",
                Diagram.Scale.of("", names),
                Diagram.Scale.of("frequency", Kind.FREQUENCY),
                false,
                bars));
    }
}
