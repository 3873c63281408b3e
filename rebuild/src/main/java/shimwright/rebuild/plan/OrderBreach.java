package shimwright.rebuild.plan;

import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Step.Why;

/**
 * A step that was done before what it had to wait for.
 *
 * @param step that was done
 * @param needed what it had to wait for
 * @param why
 * @param mended true where that was done since
 */
public record OrderBreach(Step step, Step needed, Why why, boolean mended) {}
