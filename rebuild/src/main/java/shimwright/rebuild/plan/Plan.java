package shimwright.rebuild.plan;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.unit.Step;

/**
 * A lawful order of the steps that are still to be done.
 *
 * @param total steps of this unit with the choices taken
 * @param done how many of them are done
 * @param ahead the steps to do, in order
 * @param minutes time of the steps ahead, without turning over and waiting
 */
public record Plan(int total, int done, List<Step> ahead, double minutes) {
    /** The step to do now; empty when all are done. */
    public Optional<Step> next() {
        return ahead.stream().findFirst();
    }
}
