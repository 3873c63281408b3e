package shimwright.mechanics.axial.reading;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.InSentence;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** End play of a shaft from indicator travel. */
public final class EndPlay {
    private static final double MARKED_TILT = 0.02e-3;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "end-play",
                    "End play",
                    "End play from indicator travel with one or two indicators, and how far it can be trusted.",
                    List.of("JCGM 100:2008 (GUM) 4.2, 4.3, 5.1, G.4", "cosine and tilt: geometry"),
                    Case.class,
                    Result.class,
                    EndPlay::work)
            .drawn(ReadingPictures::endPlay);

    private EndPlay() {}

    /**
     * End play read with one or two indicators, the shaft pushed and pulled.
     *
     * @param rounds as in {@link Readings.Case}, m
     * @param gauge the indicator's data
     * @param settleWithin as in {@link Readings.Case}, m
     * @param minimum as in {@link Readings.Case}
     * @param stylusAngle between stylus and the square position of a lever indicator, rad; 0 for a plunger along the shaft
     * @param axialForce push at each end, N; null when not noted
     * @param tiltAllowance what tilt of the shaft may add to or hide from one indicator alone, half-width, m
     */
    public record Case(
            @Input(
                    kind = Kind.LENGTH,
                    meaning = "travel by round, the two indicators of a round joined by /",
                    min = -0.05,
                    max = 0.05,
                    most = 200,
                    example = "0.24/0.32 0.25/0.31 0.24/0.31 mm")
            List<List<Double>> rounds,

            @Input(meaning = "the indicator") GaugeData gauge,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "rounds that differ by no more than this agree",
                    min = 1e-7,
                    max = 0.01,
                    orElse = "0.02 mm")
            double settleWithin,

            @Input(meaning = "rounds that must agree at the end", min = 3, max = 20, orElse = "3")
            int minimum,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "slant of a lever stylus, 0 for a plunger along the shaft",
                    min = 0,
                    max = 1.1,
                    orElse = "0°")
            double stylusAngle,

            @Input(kind = Kind.FORCE, meaning = "push at each end", min = 0, max = 5000) @Nullable
            Double axialForce,

            @Input(
                    kind = Kind.LENGTH,
                    meaning =
                            "what tilt may add to one indicator alone, half-width; 0 when it stands on the shaft axis",
                    min = 0,
                    max = 0.005,
                    orElse = "0.04 mm")
            double tiltAllowance) {
        public Case {
            rounds = rounds.stream().map(List::copyOf).toList();
        }
    }

    /**
     * End play and how far it can be trusted; see {@link Readings.Result}.
     *
     * @param value end play, m
     * @param u standard uncertainty, m
     * @param nu effective degrees of freedom
     * @param seating anything but SETTLED proves nothing
     * @param firstRoundUsed counted from 1
     * @param roundsUsed how many from there on
     * @param moreRoundsWanted 0 when settled
     * @param tilt second indicator minus first, mean of the rounds used, m; 0 with one indicator
     * @param budget the uncertainty by influence
     * @param advice one sentence: what to do
     */
    public record Result(
            @Output(kind = Kind.LENGTH, meaning = "end play", u = "u", nu = "nu", budget = "budget")
            double value,

            @Output(kind = Kind.LENGTH, meaning = "standard uncertainty", decimals = 4)
            double u,

            @Output(meaning = "degrees of freedom", decimals = 1, infinite = "no limit")
            double nu,

            @Output(meaning = "seating") Seating seating,
            @Output(meaning = "first round used") int firstRoundUsed,
            @Output(meaning = "rounds used") int roundsUsed,
            @Output(meaning = "more rounds wanted") int moreRoundsWanted,

            @Output(kind = Kind.LENGTH, meaning = "tilt between the indicators")
            double tilt,

            @Output(kind = Kind.LENGTH, meaning = "uncertainty by influence")
            Budget budget,

            @Output(meaning = "advice") String advice) {}

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
     * opposite sides cancel tilt; one alone carries the tilt allowance as uncertainty. Refused as the readings are.
     */
    public static Outcome<Worked<Result>> work(Case c) {
        return Readings.work(new Readings.Case(c.rounds(), c.gauge(), c.settleWithin(), c.minimum()))
                .map(readings -> finish(c, readings));
    }

    private static Worked<Result> finish(Case c, Worked<Readings.Result> readings) {
        Working w = new Working();
        Readings.Result r = w.include(readings);
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
        return w.worked(new Result(
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

    private static double tilt(Case c, Readings.Result r, double factor, Working w) {
        List<Double> differences = c
                .rounds()
                .subList(r.firstRoundUsed() - 1, c.rounds().size())
                .stream()
                .map(round -> (round.get(1) - round.get(0)) * factor)
                .toList();
        double tilt = w.line(
                "tilt", "mean of second − first indicator", Statistics.mean(differences), Kind.LENGTH, "geometry");
        if (Math.abs(tilt) > MARKED_TILT) {
            w.caution("The indicators differ by " + InSentence.length(Math.abs(tilt))
                    + ": the shaft tilts. Their mean counts, neither of them alone.");
        }
        return tilt;
    }
}
