package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.axial.reading.Seating;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Entry.RoundRead;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * One reading of a clearance: its rounds and what they say.
 *
 * @param phase trial, final or again
 * @param pack the pieces that are in, by position
 * @param rounds the rounds that count, in order
 * @param measured what they say; null while there is nothing to compute
 * @param refusals why nothing could be computed, where that is so
 */
public record Reading(
        Phase phase,
        Map<String, List<PieceIn>> pack,
        List<Said<RoundRead>> rounds,
        @Nullable Measured measured,
        List<Refusal> refusals) {

    /**
     * What a series of rounds says about the clearance, signed as play.
     *
     * @param value the clearance, m
     * @param u standard uncertainty, m
     * @param nu effective degrees of freedom
     * @param seating how the series stands
     * @param firstUsed number of the first round that was used, from 1
     * @param used how many rounds were used
     * @param more how many more rounds are wanted, 0 when enough
     * @param tilt difference between the two indicators, m; 0 with one
     * @param outliers numbers of rounds or places that are outliers, from 1
     * @param budget where the uncertainty comes from
     * @param advice one sentence: what to do
     * @param working the lines of the calculation
     * @param cautions to be read with the result
     */
    public record Measured(
            double value,
            double u,
            double nu,
            Seating seating,
            int firstUsed,
            int used,
            int more,
            double tilt,
            List<Integer> outliers,
            Budget budget,
            String advice,
            List<Line> working,
            List<String> cautions) {
        /** True where the series is proof: enough rounds, and settled. */
        public boolean settled() {
            return seating == Seating.SETTLED;
        }
    }

    /** True where it is proof: enough rounds, and settled. */
    public boolean settled() {
        return measured != null && measured.settled();
    }

    /** Thickness that is in at a position, m. */
    public double thickness(String position) {
        return pack.getOrDefault(position, List.of()).stream()
                .mapToDouble(PieceIn::thickness)
                .sum();
    }

    /** Standard uncertainty of that thickness, pieces measured independently, m. */
    public double thicknessUncertainty(String position) {
        return Math.sqrt(pack.getOrDefault(position, List.of()).stream()
                .mapToDouble(piece -> piece.u() * piece.u())
                .sum());
    }
}
