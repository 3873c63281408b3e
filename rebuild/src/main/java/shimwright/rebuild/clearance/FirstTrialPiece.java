package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.FittedPieces;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Length;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Unit;

/** The piece to try first where nothing is read with a trial piece: a snap ring, by the nominal lengths of its loop. */
final class FirstTrialPiece {
    private FirstTrialPiece() {}

    /**
     * One piece of the drawer whose thickness comes nearest to what the nominal lengths ask for; where two do, the thinner,
     * for it goes in.
     *
     * @return empty where the loop does not name the piece, or the drawer holds none
     */
    static List<PieceIn> of(Unit unit, Clearance clearance, Job job, Shop shop) {
        Position own = clearance.positions().get(0);
        List<Length> loop = clearance.loop();
        List<Length> place = loop.stream()
                .filter(length -> !own.item().isEmpty() && length.item().equals(own.item()))
                .toList();
        if (place.size() != 1 || own.effect() == 0) {
            return List.of();
        }
        double nominal = loop.stream().mapToDouble(l -> l.sign() * l.nominal()).sum();
        Map<String, List<PieceIn>> fitted = FittedPieces.now(job);
        for (Position other :
                clearance.positions().subList(1, clearance.positions().size())) {
            List<PieceIn> pieces = fitted.get(other.id());
            if (pieces != null) {
                double in = pieces.stream().mapToDouble(PieceIn::thickness).sum();
                nominal += other.effect() * (in - drawn(loop, other));
            }
        }
        double wanted = place.get(0).nominal() + (clearance.aim() - nominal) / own.effect();
        List<String> free = fitted.getOrDefault(own.id(), List.of()).stream()
                .map(PieceIn::piece)
                .toList();
        List<Shop.Piece> drawer = new ArrayList<>(
                shop.usable(own.family(), unit.shimFamily(own.family()).spread(), free));
        return drawer.stream()
                .min(Comparator.comparingDouble((Shop.Piece p) -> Math.abs(p.thickness() - wanted))
                        .thenComparingDouble(Shop.Piece::thickness))
                .map(p -> List.of(new PieceIn(p.id(), p.thickness(), p.u())))
                .orElse(List.of());
    }

    private static double drawn(List<Length> loop, Position place) {
        return loop.stream()
                .filter(length -> !place.item().isEmpty() && length.item().equals(place.item()))
                .mapToDouble(Length::nominal)
                .sum();
    }
}
