package shimwright.rebuild.plan;

import java.util.List;
import java.util.Optional;
import shimwright.rebuild.plan.model.Cost;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * A possible order of the steps that are still to be done, and how good it is.
 *
 * @param total steps of this unit with the choices taken
 * @param done how many of them are done
 * @param ahead the steps to do, in order
 * @param minutes time of the steps ahead, without turning over and waiting
 * @param cost what the order costs, by part, in seconds
 * @param bound seconds that the cost of no possible order is below
 * @param proven true where no possible order costs less, what it costs to finish what is begun left out
 * @param finishing seconds that it costs more than the cheapest order found, so that sub-assemblies begun are finished
 * @param left how often a sub-assembly is left begun all the same though it could be gone on with
 * @param because why each step ahead stands where it does, in the same order
 * @param broken steps done before what they had to wait for
 * @param late windows open now that no order can close in time any more
 * @param remarks what the figures leave out, as sentences
 */
public record Plan(
        int total,
        int done,
        List<Step> ahead,
        double minutes,
        Cost cost,
        double bound,
        boolean proven,
        double finishing,
        int left,
        List<StepReason> because,
        List<OrderBreach> broken,
        List<Window> late,
        List<String> remarks) {
    /** The step to do now; empty when all are done. */
    public Optional<Step> next() {
        return ahead.stream().findFirst();
    }

    /** Minutes of everything that is priced: at the bench, late finds, and waiting at its price. */
    public double value() {
        return cost.total() / 60;
    }

    /** Minutes by which another order could be better at most. */
    public double gap() {
        return proven ? 0 : Math.max(0, cost.total() - finishing - bound) / 60;
    }
}
