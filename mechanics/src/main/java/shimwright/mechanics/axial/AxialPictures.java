package shimwright.mechanics.axial;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.diagram.Diagram.Distribution;
import shimwright.mechanics.diagram.Diagram.Offer;
import shimwright.mechanics.diagram.Diagram.Offers;
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

    private static OptionalDouble maybe(@Nullable Double value) {
        return value == null ? OptionalDouble.empty() : OptionalDouble.of(value);
    }
}
