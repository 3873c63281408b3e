package shimwright.mechanics.synchro;

import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code cone-force}: axial force a friction cone needs for a torque. */
public final class ConeForce {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "cone-force",
            "Force on a friction cone",
            "Axial force a friction cone needs for a torque, while it slips and at rest.",
            List.of(SynchroCapacity.SOURCE),
            Case.class,
            Result.class,
            ConeForce::work);

    private ConeForce() {}

    /** Torque in N·m, length in metres, angle in radians. */
    public record Case(
            @Input(kind = Kind.TORQUE, meaning = "torque", min = 1e-3, max = 1e6, example = "430 N·m")
            double torque,

            @Input(meaning = "friction", min = 0.01, max = 0.8, example = "0.2")
            double friction,

            @Input(kind = Kind.LENGTH, meaning = "mean diameter of the cone", min = 5e-3, max = 5, example = "500 mm")
            double diameter,

            @Input(kind = Kind.ANGLE, meaning = "cone half angle", min = 0.02, max = 1.5, example = "12.5°")
            double halfAngle) {}

    /** Forces in newtons. */
    public record Result(
            @Output(kind = Kind.FORCE, meaning = "axial force while it slips round", decimals = 1)
            double slipping,

            @Output(
                    kind = Kind.FORCE,
                    meaning = "axial force to push it home at rest, friction along the cone",
                    decimals = 1)
            double engaging,

            @Output(kind = Kind.FORCE, meaning = "pull to free it at rest, 0 where it frees itself", decimals = 1)
            double freeing) {}

    /**
     * Axial force of a cone.
     *
     * @param c the case
     * @return three forces; only the first holds while the cone slips round. Source: cone statics
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Working w = new Working();
        double normal = w.line(
                "normal force",
                "2 × torque / (friction × diameter)",
                2 * c.torque() / (c.friction() * c.diameter()),
                Kind.FORCE,
                SynchroCapacity.SOURCE);
        double sin = Math.sin(c.halfAngle());
        double along = c.friction() * Math.cos(c.halfAngle());
        double slipping =
                w.line("while slipping", "normal × sin(half angle)", normal * sin, Kind.FORCE, SynchroCapacity.SOURCE);
        double engaging = w.line(
                "pushing home",
                "normal × (sin(half angle) + friction × cos(half angle))",
                normal * (sin + along),
                Kind.FORCE,
                SynchroCapacity.SOURCE);
        double freeing = w.line(
                "freeing",
                "normal × (friction × cos(half angle) − sin(half angle)), not under 0",
                Math.max(0, normal * (along - sin)),
                Kind.FORCE,
                SynchroCapacity.SOURCE);
        return Outcome.ok(w.worked(new Result(slipping, engaging, freeing)));
    }
}
