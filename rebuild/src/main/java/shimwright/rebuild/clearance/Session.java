package shimwright.rebuild.clearance;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.axial.shim.ShimPack;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Line;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.job.Entry.PackChosen;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.job.Shop.Piece;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Position;
import shimwright.rebuild.unit.model.Step.Phase;

/**
 * The setting of one clearance as it stands, from the job's log: nothing here is stored, all of it is computed again from
 * the readings.
 *
 * @param clearance what is set
 * @param inHand the gauge in hand, of a difference one for each length; empty where the shop has none that will do
 * @param gauges gauges of the shop that can prove it, the one that the unit file names first
 * @param stage where the conversation stands
 * @param say one sentence: what to do next
 * @param readings the readings as far as they were taken
 * @param pieces pieces at hand before a pack is chosen
 * @param choice packs on offer and packs chosen
 * @param end how the last reading was judged
 */
public record Session(
        Clearance clearance,
        List<Gauge> inHand,
        List<Gauge> gauges,
        Stage stage,
        String say,
        Readings readings,
        Pieces pieces,
        Choice choice,
        End end) {

    /**
     * The readings of the clearance.
     *
     * @param trial the reading with trial pieces
     * @param last the reading with the chosen pack
     * @param again the reading after something could have moved it
     * @param slope how the backlash answered to the pack that was changed between two readings; null where it was read once
     * @param trialWanted true where the unit file has a step that reads this clearance with trial pieces
     */
    public record Readings(
            Reading trial,
            Reading last,
            Reading again,
            @Nullable BacklashSlope slope,
            boolean trialWanted) {}

    /**
     * Pieces before a pack is chosen.
     *
     * @param known shims that this job has fitted at other places of the loop: they count as in, where no trial piece is named
     * @param toName places of which it must be said which piece is in before the trial reading counts
     * @param tryFirst pieces to try first, where there is no trial reading; by the nominal lengths, so it proves nothing
     */
    public record Pieces(Map<String, List<PieceIn>> known, List<String> toName, List<PieceIn> tryFirst) {}

    /**
     * The choice of a pack.
     *
     * @param advice packs on offer; null until there is a reading that is proof
     * @param chosen packs chosen, by position
     * @param forecast what the pieces chosen now leave, worked out anew; null where none are chosen or nothing is read
     * @param change what stands in the way of another choice, and what it brings
     */
    public record Choice(
            @Nullable Advice advice,
            Map<String, PackChosen> chosen,
            @Nullable Forecast forecast,
            Change change) {}

    /**
     * The end of the setting.
     *
     * @param closing the last reading against limits and prediction; null until it has settled
     * @param accepted the acceptance that stands; null where none does
     * @param reopened why an earlier acceptance no longer stands; empty where it does or there was none
     */
    public record End(@Nullable Closing closing, @Nullable Said<ClearanceAccepted> accepted, String reopened) {}

    /** Where the conversation stands. */
    public enum Stage {
        /** Say which pieces are in for the trial. */
        TRIAL_PACK,
        /** Read with the trial pieces. */
        READ_TRIAL,
        /** Choose the pack. */
        CHOOSE,
        /** Say which pieces are in, where none were chosen by a trial. */
        LAST_PACK,
        /** Fit the pack and read again. */
        READ_LAST,
        /** Accept, or find out why not. */
        ACCEPT,
        /** Read once more after what may have moved it. */
        READ_AGAIN,
        /** Accept what was read once more. */
        ACCEPT_AGAIN,
        /** The pack is chosen; what it leaves is proved by another reading, such as drag. */
        PROVED_OTHERWISE,
        /** Set and accepted. */
        DONE
    }

    /**
     * Packs on offer for the first position.
     *
     * @param position where the pack goes
     * @param from the reading that they are sought from: trial, or final with another pack in
     * @param result offers in order, or what would help
     * @param drawer pieces that could be used
     * @param measured that reading brought to the packs chosen elsewhere, m
     * @param u its standard uncertainty, m
     * @param before the lines that bring the reading to the packs chosen elsewhere
     * @param working the lines of the whole calculation
     * @param cautions to be read with it
     * @param refusals why no pack could be sought
     */
    public record Advice(
            Position position,
            Reading from,
            ShimPack.@Nullable Result result,
            List<Piece> drawer,
            double measured,
            double u,
            List<Line> before,
            List<Line> working,
            List<String> cautions,
            List<Refusal> refusals) {}

    /**
     * What the pieces that are chosen now leave: the choice as it was kept does not follow when another place is chosen anew.
     *
     * @param value m, signed as play
     * @param u standard uncertainty, m
     * @param nu effective degrees of freedom
     * @param probability that it lies within the limits
     * @param verdict in, out or not proven
     * @param because what changed since the pack was chosen and what follows; empty where it stands as chosen
     * @param stale true where the pack is no longer proven and nobody has decided so
     */
    public record Forecast(
            double value, double u, double nu, double probability, Verdict verdict, String because, boolean stale) {}

    /**
     * Changing the choice.
     *
     * @param closedBy the one-way step that closes over the pack; empty where another can be chosen now
     * @param undoFirst steps done that stand on the pack, by id, in order of undoing
     * @param undoing what undoing the step of this reading brings; empty where it was not read
     * @param renaming what naming other pieces for this reading brings; empty where it was not read
     */
    public record Change(String closedBy, List<String> undoFirst, String undoing, String renaming) {
        /** True where another pack can be chosen now. */
        public boolean open() {
            return closedBy.isEmpty();
        }
    }

    /**
     * The last reading judged.
     *
     * @param phase final or again
     * @param value the clearance, signed as play, m
     * @param u standard uncertainty, m
     * @param nu its effective degrees of freedom
     * @param rule probability that counts as proof
     * @param probability that it lies within the limits
     * @param verdict in, out or not proven
     * @param predicted what the chosen pack was to leave, m; NaN-free: equals value where nothing was predicted
     * @param difference value less predicted, m
     * @param jointU standard uncertainty of the difference, m
     * @param finding a sentence where the difference is beyond its uncertainty, else empty
     * @param hot the clearance at working heat, m
     * @param advice what to do
     * @param working the lines of the calculation
     */
    public record Closing(
            Phase phase,
            double value,
            double u,
            double nu,
            double rule,
            double probability,
            Verdict verdict,
            double predicted,
            double difference,
            double jointU,
            String finding,
            double hot,
            String advice,
            List<Line> working) {}

    /** The gauge in hand; null where the shop has none that will do. */
    public @Nullable Gauge gauge() {
        return inHand.isEmpty() ? null : inHand.get(0);
    }

    /** The reading that is being taken now. */
    public Reading current() {
        return switch (stage) {
            case TRIAL_PACK, READ_TRIAL, CHOOSE -> trial();
            case LAST_PACK, READ_LAST, ACCEPT -> last();
            case READ_AGAIN, ACCEPT_AGAIN -> again();
            case PROVED_OTHERWISE -> trial();
            case DONE -> !again().rounds().isEmpty() ? again() : last().rounds().isEmpty() ? trial() : last();
        };
    }

    /**
     * True where the trial reading is proof by rounds read after an entry alone: a second reading at a later step is its own.
     *
     * @param number of that entry
     */
    public boolean trialReadSince(long number) {
        long fresh = trial().rounds().stream()
                .filter(round -> round.number() > number)
                .count();
        return trial().settled() && fresh >= clearance.rounds();
    }

    /** The reading with trial pieces. */
    public Reading trial() {
        return readings.trial();
    }

    /** The reading with the chosen pack. */
    public Reading last() {
        return readings.last();
    }

    /** The reading after something could have moved it. */
    public Reading again() {
        return readings.again();
    }

    /** How the backlash answered to the pack that was changed; null where it was read once. */
    public @Nullable BacklashSlope slope() {
        return readings.slope();
    }

    /** True where the unit file has a step that reads this clearance with trial pieces. */
    public boolean trialWanted() {
        return readings.trialWanted();
    }

    /** Shims that this job has fitted at other places of the loop, by place. */
    public Map<String, List<PieceIn>> known() {
        return pieces.known();
    }

    /** Places of which it must be said which piece is in before the trial reading counts. */
    public List<String> toName() {
        return pieces.toName();
    }

    /** Pieces to try first, by the nominal lengths; they prove nothing. */
    public List<PieceIn> tryFirst() {
        return pieces.tryFirst();
    }

    /** Packs on offer; null until there is a reading that is proof. */
    public @Nullable Advice advice() {
        return choice.advice();
    }

    /** Packs chosen, by position. */
    public Map<String, PackChosen> chosen() {
        return choice.chosen();
    }

    /** What the pieces chosen now leave; null where none are chosen or nothing is read. */
    public @Nullable Forecast forecast() {
        return choice.forecast();
    }

    /** What stands in the way of another choice, and what it brings. */
    public Change change() {
        return choice.change();
    }

    /** The last reading against limits and prediction; null until it has settled. */
    public @Nullable Closing closing() {
        return end.closing();
    }

    /** The acceptance that stands; null where none does. */
    public @Nullable Said<ClearanceAccepted> accepted() {
        return end.accepted();
    }

    /** Why an earlier acceptance no longer stands; empty where it does or there was none. */
    public String reopened() {
        return end.reopened();
    }
}
