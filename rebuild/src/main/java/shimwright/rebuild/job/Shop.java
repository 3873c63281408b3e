package shimwright.rebuild.job;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * The shop: the drawer of loose shims and the gauges.
 *
 * @param pieces every piece ever put in the drawer, by id, in order
 * @param gauges gauges by id
 */
public record Shop(Map<String, Piece> pieces, Map<String, Gauge> gauges) {
    /** One nanometre: binary dust of a decimal reading. */
    private static final double DUST = 1e-9;

    /**
     * A loose piece.
     *
     * @param readings what the micrometer said at each place
     * @param thickness their mean
     * @param spread largest minus smallest
     * @param u standard uncertainty of the thickness
     * @param takenBy the job whose unit it is in, where it was chosen for one
     * @param goneBecause why it left the drawer for good, where it did
     */
    public record Piece(
            String id,
            String family,
            String stamp,
            List<Double> readings,
            double thickness,
            double spread,
            double u,
            @Nullable String takenBy,
            @Nullable String goneBecause) {
        /** True while it lies in the drawer. */
        public boolean inDrawer() {
            return takenBy == null && goneBecause == null;
        }

        /** True where a job could take it: it lies in the drawer, or is chosen for that job already. */
        public boolean freeFor(String number) {
            return inDrawer() || (goneBecause == null && number.equals(takenBy));
        }
    }

    /** What a gauge can do: step, error limit and retrace as half-widths, pooled standard deviation of one reading. */
    public record Gauge(
            String id,
            String name,
            Kind kind,
            double step,
            double errorLimit,
            double retrace,
            double repeatability,
            double range) {}

    /**
     * The shop of its own stream and of all jobs: a piece chosen for a clearance, or in for its last reading, is in that unit.
     * A piece without a reading has no thickness and is not taken in.
     *
     * @param stream the shop's entries in order
     * @param jobs all jobs
     */
    public static Shop of(List<Kept> stream, Collection<Job> jobs) {
        Map<String, Piece> pieces = new LinkedHashMap<>();
        Map<String, Gauge> gauges = new LinkedHashMap<>();
        for (Kept kept : stream) {
            if (kept.body() instanceof Entry.ShimAdded e && !e.readings().isEmpty()) {
                pieces.put(e.piece(), piece(e));
            } else if (kept.body() instanceof Entry.ShimRemoved e && pieces.containsKey(e.piece())) {
                pieces.computeIfPresent(e.piece(), (id, p) -> gone(p, p.takenBy(), e.reason()));
            } else if (kept.body() instanceof Entry.GaugeAdded e) {
                gauges.put(
                        e.gauge(),
                        new Gauge(
                                e.gauge(),
                                e.name(),
                                e.kind(),
                                e.step(),
                                e.errorLimit(),
                                e.retrace(),
                                e.repeatability(),
                                e.range()));
            }
        }
        for (Job job : jobs) {
            job.packsIn().forEach((place, said) -> {
                if (place.phase() == Phase.FINAL) {
                    said.what().pieces().values().stream()
                            .flatMap(List::stream)
                            .forEach(in -> pieces.computeIfPresent(
                                    in.piece(), (id, p) -> gone(p, job.opened().number(), p.goneBecause())));
                }
            });
            job.chosen()
                    .values()
                    .forEach(said -> said.what()
                            .pieces()
                            .forEach(in -> pieces.computeIfPresent(
                                    in.piece(), (id, p) -> gone(p, job.opened().number(), p.goneBecause()))));
        }
        return new Shop(java.util.Collections.unmodifiableMap(pieces), java.util.Collections.unmodifiableMap(gauges));
    }

    private static Piece piece(Entry.ShimAdded e) {
        double sum = 0;
        double least = Double.MAX_VALUE;
        double most = -Double.MAX_VALUE;
        for (double reading : e.readings()) {
            sum += reading;
            least = Math.min(least, reading);
            most = Math.max(most, reading);
        }
        double mean = sum / e.readings().size();
        return new Piece(e.piece(), e.family(), e.stamp(), e.readings(), mean, most - least, e.u(), null, null);
    }

    private static Piece gone(Piece p, @Nullable String takenBy, @Nullable String because) {
        return new Piece(
                p.id(), p.family(), p.stamp(), p.readings(), p.thickness(), p.spread(), p.u(), takenBy, because);
    }

    /** A gauge by id. */
    public Optional<Gauge> gauge(String id) {
        return Optional.ofNullable(gauges.get(id));
    }

    /**
     * Pieces of a family that lie in the drawer and are even enough to use.
     *
     * @param family the shim family
     * @param spread largest spread round a piece, m
     */
    public List<Piece> usable(String family, double spread) {
        return usable(family, spread, List.of());
    }

    /**
     * The same, with pieces that come free while a place is chosen anew.
     *
     * @param free ids of pieces that are in at that place now
     */
    public List<Piece> usable(String family, double spread, Collection<String> free) {
        List<Piece> usable = new ArrayList<>();
        for (Piece piece : pieces.values()) {
            boolean there = piece.inDrawer() || (piece.goneBecause() == null && free.contains(piece.id()));
            if (there && piece.family().equals(family) && piece.spread() <= spread + DUST) {
                usable.add(piece);
            }
        }
        return usable;
    }
}
