package shimwright.rebuild.learn;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.rebuild.job.Basis;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;

/**
 * A pack that a job took for a place, and what would have brought the clearance to its aim.
 *
 * @param clearance by id
 * @param position by id
 * @param job its number
 * @param pieces thickness of each piece that went in, m
 * @param shortfall how far the prediction lay from the aim, m, signed as play; nothing is known where the entry kept no aim
 */
public record ShimWish(String clearance, String position, String job, List<Double> pieces, Optional<Double> shortfall) {
    public ShimWish {
        pieces = List.copyOf(pieces);
    }

    /** The packs that stand in a job. */
    static List<ShimWish> of(Job job) {
        return job.chosen().entrySet().stream()
                .map(Map.Entry::getValue)
                .map(said -> of(job.opened().number(), said.what()))
                .toList();
    }

    private static ShimWish of(String job, Entry.PackChosen chosen) {
        return new ShimWish(
                chosen.clearance(),
                chosen.position(),
                job,
                chosen.pieces().stream().map(Entry.PieceIn::thickness).toList(),
                Basis.of(chosen.basis()).map(basis -> basis.aim() - chosen.predicted()));
    }

    /** Thickness of the whole pack, m. */
    public double thickness() {
        return pieces.stream().mapToDouble(Double::doubleValue).sum();
    }

    /**
     * Thickness that would have brought it to its aim, m.
     *
     * @param effect change of the clearance per unit of thickness, not 0
     */
    public Optional<Double> wished(double effect) {
        return shortfall.map(by -> thickness() + by / effect);
    }
}
