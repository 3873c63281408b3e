package shimwright.rebuild.clearance;

import org.jspecify.annotations.Nullable;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Clearance;

/** The one sentence that says what to do next. */
final class Instruction {
    private Instruction() {}

    static String say(
            Stage stage,
            Clearance clearance,
            @Nullable Gauge gauge,
            Reading trial,
            Reading judged,
            @Nullable Advice advice,
            @Nullable Closing closing) {
        if (gauge == null) {
            return "The shop has no data of gauge " + clearance.gauge()
                    + ": enter its step and error limit before you read.";
        }
        return switch (stage) {
            case TRIAL_PACK ->
                "Say which pieces are in for the trial. Take pieces that leave play, so that there is something to read.";
            case READ_TRIAL -> reading(clearance, trial);
            case CHOOSE ->
                advice == null || advice.result() == null
                        ? "No pack can be sought yet: see the reasons below."
                        : advice.result().advice();
            case LAST_PACK -> "Say which piece is in, then read what it leaves.";
            case PROVED_OTHERWISE ->
                "The pack is chosen. What it leaves is proved by the turning torque at its hold point.";
            case READ_LAST, READ_AGAIN -> reading(clearance, judged);
            case ACCEPT, ACCEPT_AGAIN -> closing == null ? "Read the clearance." : closing.advice();
            case DONE -> "Set and accepted. Go on with the build.";
        };
    }

    private static String reading(Clearance clearance, Reading reading) {
        Measured measured = reading.measured();
        if (measured == null) {
            return reading.refusals().isEmpty()
                    ? "Seat the parts, then read. At least " + clearance.rounds() + " rounds count as proof."
                    : reading.refusals().get(0).sentence();
        }
        return measured.advice();
    }
}
