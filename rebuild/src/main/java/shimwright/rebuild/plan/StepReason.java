package shimwright.rebuild.plan;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * Why a step stands where it stands in a plan.
 *
 * @param step
 * @param waitsFor what it waits for, done or not, with why
 * @param heldUp steps ahead that wait for it
 * @param opens windows that it opens
 * @param closes windows that it closes
 * @param behind hold points it was put behind though it does not need them, each with the seconds of a late find that this
 *     saves on average
 * @param ahead seconds of late finds that are saved on average because the hold point at this step is read before steps that
 *     could have gone first; 0 where it has none
 * @param lastBefore the first step ahead that waits for it: it can be put off no further; empty where nothing does
 * @param putOff seconds that it costs to put it off as far as that, less than 0 where it saves; empty where it cannot be
 *     moved alone or comes there anyway
 * @param asWellAfter a matter of taste: the last step ahead after which, and after every one before it, this step could come at
 *     no more and no less cost, moved alone; empty where every place further on costs something or is not possible
 */
public record StepReason(
        Step step,
        Map<Step, Why> waitsFor,
        List<Step> heldUp,
        List<Window> opens,
        List<Window> closes,
        Map<Step, Double> behind,
        double ahead,
        String lastBefore,
        OptionalDouble putOff,
        String asWellAfter) {}
