package shimwright.rebuild.clearance;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.clearance.Session.Advice;
import shimwright.rebuild.clearance.Session.Closing;
import shimwright.rebuild.clearance.Session.Forecast;
import shimwright.rebuild.clearance.Session.Stage;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step.Phase;

/** The one sentence that says what to do next. */
final class Instruction {
    private Instruction() {}

    /** What a sentence is made from. */
    record Facts(
            Clearance clearance,
            Phase phase,
            boolean noGauge,
            Reading trial,
            Reading judged,
            @Nullable Advice advice,
            @Nullable Forecast forecast,
            @Nullable Closing closing,
            List<PieceIn> tryFirst,
            List<String> waitingFor) {}

    static String say(Stage stage, Facts f) {
        boolean reads = stage != Stage.DONE && stage != Stage.PROVED_OTHERWISE;
        if (f.noGauge() && reads) {
            return "The shop has no gauge that can prove this clearance, such as "
                    + String.join(" and ", new java.util.TreeSet<>(f.clearance().gauges(f.phase())))
                    + ": enter one with its step and error limit before you read.";
        }
        return switch (stage) {
            case TRIAL_PACK ->
                "Say which pieces are in for the trial. Take pieces that leave play, so that there is something to read.";
            case READ_TRIAL -> waiting(f, f.trial()) + reading(f.clearance(), f.trial());
            case CHOOSE -> choose(f);
            case LAST_PACK -> first(f);
            case PROVED_OTHERWISE ->
                "The pack is chosen. What it leaves is proved by the turning torque at its hold point.";
            case READ_LAST, READ_AGAIN -> waiting(f, f.judged()) + reading(f.clearance(), f.judged());
            case ACCEPT, ACCEPT_AGAIN ->
                f.closing() == null ? "Read the clearance." : f.closing().advice();
            case DONE -> "Set and accepted. Go on with the build.";
        };
    }

    private static String waiting(Facts f, Reading reading) {
        return f.waitingFor().isEmpty() || !reading.rounds().isEmpty()
                ? ""
                : "This reading waits for step " + String.join(", ", f.waitingFor()) + ". ";
    }

    private static String choose(Facts f) {
        String since = f.forecast() == null ? "" : f.forecast().because();
        String before = since.isEmpty() ? "" : since + " ";
        Advice advice = f.advice();
        if (advice == null) {
            return before + "No pack can be sought yet: see the reasons below.";
        }
        return before
                + (advice.result() == null
                        ? advice.refusals().get(0).sentence()
                        : advice.result().advice());
    }

    private static String first(Facts f) {
        String ring = f.tryFirst().stream().map(PieceIn::piece).collect(Collectors.joining(" + "));
        return ring.isEmpty()
                ? "Say which piece is in, then read what it leaves."
                : "Try " + ring
                        + " first: by the nominal lengths it comes nearest. Say which piece is in, then read what it "
                        + "leaves; the reading decides.";
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
