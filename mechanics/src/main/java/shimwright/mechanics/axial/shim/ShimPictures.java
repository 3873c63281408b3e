package shimwright.mechanics.axial.shim;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Offer;
import shimwright.mechanics.diagram.Diagram.Offers;

/** Packs beside the limits, and what stays in the drawer. */
final class ShimPictures {
    private ShimPictures() {}

    static List<Diagram> shimPack(ShimPack.Case c, ShimPack.Result r) {
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

    private static OptionalDouble maybe(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
