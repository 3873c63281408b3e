package shimwright.mechanics.axial.reading;

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

/** Rounds in the order taken, and what was found from them. */
final class ReadingPictures {
    private ReadingPictures() {}

    static List<Diagram> readings(Readings.Case c, Readings.Result r) {
        return series("Rounds in the order taken", "value", c.rounds(), r.firstRoundUsed(), r.value());
    }

    static List<Diagram> endPlay(EndPlay.Case c, EndPlay.Result r) {
        return series("Travel by round", "end play", c.rounds(), r.firstRoundUsed(), r.value());
    }

    /** The mean of each round, where the used ones begin, and what was found. */
    private static List<Diagram> series(
            String title, String found, List<List<Double>> rounds, int firstUsed, double value) {
        if (rounds.size() < 2) {
            return List.of();
        }
        List<Point> means = new ArrayList<>();
        for (List<Double> round : rounds) {
            double mean =
                    round.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
            means.add(new Point(means.size() + 1, mean));
        }
        List<Part> parts = new ArrayList<>();
        parts.add(new Curve("as read, mean of a round", means, Look.MAIN));
        means.forEach(point -> parts.add(new Dot("", point.x(), point.y())));
        parts.add(new Rule(found, false, value));
        if (firstUsed > 1) {
            parts.add(new Rule("used from here", true, firstUsed));
        }
        return List.of(
                new Graph(title, Scale.of("round", Kind.NUMBER), Scale.of("reading", Kind.LENGTH), false, parts));
    }
}
