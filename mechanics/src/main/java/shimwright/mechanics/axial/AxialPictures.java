package shimwright.mechanics.axial;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Curve;
import shimwright.mechanics.diagram.Diagram.Distribution;
import shimwright.mechanics.diagram.Diagram.Dot;
import shimwright.mechanics.diagram.Diagram.Graph;
import shimwright.mechanics.diagram.Diagram.Look;
import shimwright.mechanics.diagram.Diagram.Offer;
import shimwright.mechanics.diagram.Diagram.Offers;
import shimwright.mechanics.diagram.Diagram.Part;
import shimwright.mechanics.diagram.Diagram.Point;
import shimwright.mechanics.diagram.Diagram.Rule;
import shimwright.mechanics.diagram.Diagram.Scale;
import shimwright.mechanics.quantity.Kind;

/** What there is to look at in this topic. */
final class AxialPictures {
    private AxialPictures() {}

    static List<Diagram> conformity(ConformityCase c, ConformityResult r) {
        return List.of(new Distribution(
                "The value against its limits",
                Kind.LENGTH,
                c.value(),
                c.u(),
                c.nu() == null ? Double.POSITIVE_INFINITY : c.nu(),
                maybe(c.lower()),
                maybe(c.upper()),
                r.probability()));
    }

    static List<Diagram> shimPack(ShimPackCase c, ShimPackResult r) {
        if (r.offers().isEmpty()) {
            return List.of();
        }
        Set<String> best = Set.copyOf(r.offers().get(0).pieces());
        Double lower = c.lower();
        Double upper = c.upper();
        return List.of(new Offers(
                "What each pack would leave, and what stays in the drawer",
                maybe(lower),
                maybe(upper),
                lower == null || upper == null ? OptionalDouble.empty() : OptionalDouble.of((lower + upper) / 2),
                r.offers().stream()
                        .map(offer -> new Offer(
                                String.join(" + ", offer.pieces()), offer.predicted(), offer.u(), offer.probability()))
                        .toList(),
                c.drawer().stream().map(Piece::thickness).toList(),
                c.drawer().stream()
                        .filter(piece -> best.contains(piece.id()))
                        .map(Piece::thickness)
                        .toList()));
    }

    static List<Diagram> readings(ReadingsCase c, ReadingsResult r) {
        return series("Rounds in the order taken", "value", c.rounds(), r.firstRoundUsed(), r.value());
    }

    static List<Diagram> endPlay(EndPlayCase c, EndPlayResult r) {
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

    /** Play from cold to warm, case and shaft warming in step. */
    static List<Diagram> growth(GrowthCase c, GrowthResult r) {
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

    private static OptionalDouble maybe(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
