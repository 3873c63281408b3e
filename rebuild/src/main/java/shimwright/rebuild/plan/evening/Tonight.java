package shimwright.rebuild.plan.evening;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.unit.model.Step;

/**
 * What of a plan is done in one evening.
 *
 * @param steps what fits, in order, with its times
 * @param stop where to stop well: the last of them; empty where nothing fits
 * @param stopBecause why it is well to stop there, as sentences
 * @param notTonight what must not be begun any more or cannot be, each with the reason, in the order of the plan
 * @param left seconds left after the last step; less than 0 where a window that is open already cannot be closed in time
 */
public record Tonight(
        List<Timed> steps, Optional<Step> stop, List<String> stopBecause, List<NotTonight> notTonight, double left) {
    public Tonight {
        steps = List.copyOf(steps);
        stopBecause = List.copyOf(stopBecause);
        notTonight = List.copyOf(notTonight);
    }

    /**
     * A step of the evening.
     *
     * @param step the step
     * @param begins seconds from now at which getting ready for it begins
     * @param ends seconds from now at which it is done
     * @param waits seconds waited in between
     */
    public record Timed(Step step, double begins, double ends, double waits) {}

    /** Why a step is not for this evening. */
    public enum Why {
        /** It opens a window that could not be closed before the end. */
        WINDOW,
        /** It takes longer than what is left. */
        TOO_LONG,
        /** What it needs has not arrived. */
        AWAITED,
        /** Something has to cure or cool first. */
        CURES,
        /** It needs more people than there are. */
        HANDS,
        /** It fits, but only with getting ready that the plan spares. */
        SPARED,
        /** It stands behind another step that is not for this evening. */
        BEHIND
    }

    /**
     * A step that is not for this evening.
     *
     * @param step the step
     * @param why the reason
     * @param words the reason as a sentence, with its times
     */
    public record NotTonight(Step step, Why why, String words) {}
}
