package shimwright.mechanics.axial;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** End play of a shaft from indicator travel. */
public final class EndPlay {
    private static final double MARKED_TILT = 0.02e-3;

    private EndPlay() {}

    /**
     * True end play of a lever indicator: reading × cos(slant); the error has one sign, a slanting lever reads too much.
     *
     * @param reading m
     * @param angle rad, 0 to 1.1
     */
    public static double leverTravel(double reading, double angle) {
        return reading * Math.cos(angle);
    }

    /**
     * Reading of a plunger tilted against a flat square to the movement: true / cos(tilt), never less than the truth.
     *
     * @param travel true movement, m
     * @param tilt rad, below π/2
     */
    public static double tiltedPlungerReading(double travel, double tilt) {
        return travel / Math.cos(tilt);
    }

    /**
     * End play from rounds of readings: the settled value of {@link Readings#work}, times cos(slant). Two indicators on
     * opposite sides cancel tilt; one alone carries the tilt allowance as doubt. Refused as the readings are.
     */
    public static Outcome<Worked<EndPlayResult>> work(EndPlayCase c) {
        return Readings.work(new ReadingsCase(c.rounds(), c.gauge(), c.settleWithin(), c.minimum()))
                .map(readings -> finish(c, readings));
    }

    private static Worked<EndPlayResult> finish(EndPlayCase c, Worked<ReadingsResult> readings) {
        Working w = new Working();
        ReadingsResult r = w.include(readings);
        double factor = Math.cos(c.stylusAngle());
        double value = r.value();
        if (c.stylusAngle() > 0) {
            w.line("cos", "cos(slant of the lever)", factor, Kind.NUMBER, "geometry");
            value = w.line("end play", "value × cos", leverTravel(r.value(), c.stylusAngle()), Kind.LENGTH, "geometry");
        }
        boolean two = c.rounds().get(0).size() == 2;
        List<Contribution> parts = new ArrayList<>();
        for (Contribution part : r.budget().contributions()) {
            parts.add(Contribution.of(part.name(), part.u(), part.sensitivity() * factor, part.nu()));
        }
        double tilt = 0;
        if (two) {
            tilt = tilt(c, r, factor, w);
        } else {
            w.caution(
                    "One indicator alone cannot tell end play from tilt. Use two on opposite sides of the shaft, or one"
                            + " on its axis.");
            parts.add(Contribution.of(
                    "tilt, one indicator", Uncertainties.rectangular(c.tiltAllowance()), Double.POSITIVE_INFINITY));
        }
        if (c.axialForce() == null) {
            w.caution("Push with the same force each way and note it: end play grows with the push.");
        }
        Budget budget = Budget.of(parts);
        if (r.seating() != Seating.SETTLED) {
            w.caution("Not settled: this value proves nothing yet.");
        }
        return w.worked(new EndPlayResult(
                value,
                budget.u(),
                budget.nu(),
                r.seating(),
                r.firstRoundUsed(),
                r.roundsUsed(),
                r.moreRoundsWanted(),
                tilt,
                budget,
                r.advice()));
    }

    private static double tilt(EndPlayCase c, ReadingsResult r, double factor, Working w) {
        List<Double> differences = c
                .rounds()
                .subList(r.firstRoundUsed() - 1, c.rounds().size())
                .stream()
                .map(round -> (round.get(1) - round.get(0)) * factor)
                .toList();
        double tilt = w.line(
                "tilt", "mean of second − first indicator", Statistics.mean(differences), Kind.LENGTH, "geometry");
        if (Math.abs(tilt) > MARKED_TILT) {
            w.caution("The indicators differ by " + Words.length(Math.abs(tilt))
                    + ": the shaft tilts. Their mean counts, neither of them alone.");
        }
        return tilt;
    }
}
