package shimwright.rebuild.clearance;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import shimwright.mechanics.axial.reading.EndPlay;
import shimwright.mechanics.axial.reading.GaugeData;
import shimwright.mechanics.axial.reading.Readings;
import shimwright.mechanics.axial.reading.Seating;
import shimwright.mechanics.measure.Budget;
import shimwright.mechanics.measure.Contribution;
import shimwright.mechanics.measure.Outliers;
import shimwright.mechanics.measure.Statistics;
import shimwright.mechanics.measure.Uncertainties;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.rebuild.clearance.Reading.Measured;
import shimwright.rebuild.job.Shop.Gauge;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Clearance.Method;

/** Rounds to clearance: picks the worksheet by the way it is read, and turns the reading into the clearance. */
final class RoundEvaluation {
    /** What tilt may add to one indicator alone, half-width, m: the largest seen in the trade's notes, common practice. */
    private static final double TILT_ALONE = 0.04e-3;

    /** A nanometre: binary dust of a decimal reading. */
    private static final double DUST = 1e-9;

    private RoundEvaluation() {}

    /**
     * What the rounds say.
     *
     * @param gauge what they were read with; of a difference the root of the sum of squares of both, see {@link GaugeChoice#of}
     * @param rounds as read, m
     * @return refused where a round has other than the places, or other than the two feelers, that it must have
     */
    static Outcome<Measured> read(Clearance clearance, Gauge gauge, List<List<Double>> rounds) {
        List<Refusal> faults = faults(clearance, rounds);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        GaugeData data = new GaugeData(gauge.step(), gauge.errorLimit(), gauge.retrace(), gauge.repeatability());
        return switch (clearance.method()) {
            case TRAVEL ->
                EndPlay.work(new EndPlay.Case(
                                rounds, data, clearance.settleWithin(), clearance.rounds(), 0.0, null, TILT_ALONE))
                        .map(worked -> travel(clearance, worked));
            case SERIES ->
                Readings.work(new Readings.Case(rounds, data, clearance.settleWithin(), clearance.rounds()))
                        .map(worked -> series(clearance, worked));
            case DIFFERENCE ->
                Readings.work(new Readings.Case(
                                differences(rounds), data, clearance.settleWithin(), clearance.rounds()))
                        .map(worked -> series(clearance, worked));
            case PLACES -> Outcome.ok(places(clearance, data, rounds));
            case FEELER -> Outcome.ok(feeler(clearance, rounds));
        };
    }

    private static List<Refusal> faults(Clearance clearance, List<List<Double>> rounds) {
        List<Refusal> faults = new ArrayList<>();
        for (int i = 0; i < rounds.size(); i++) {
            int values = rounds.get(i).size();
            String place = "round " + (i + 1);
            if (clearance.method() == Method.PLACES && values != clearance.indicators()) {
                faults.add(Refusal.at(
                        place, values + " of " + clearance.indicators() + " places read", "Read every place once"));
            } else if (clearance.method() == Method.DIFFERENCE && values != 2) {
                faults.add(new Refusal(place, place, values + " of 2 lengths read", "Read both lengths once"));
            } else if (clearance.method() == Method.FEELER && values != 2) {
                faults.add(Refusal.at(
                        place,
                        values + (values == 1 ? " feeler tried" : " feelers tried"),
                        "Give the thickest that enters and the thinnest that does not"));
            }
        }
        return faults;
    }

    /** Of each round the first length less the second; its gauge stands for both, so their errors do not cancel. */
    private static List<List<Double>> differences(List<List<Double>> rounds) {
        return rounds.stream()
                .map(round -> List.of(round.get(0) - round.get(1)))
                .toList();
    }

    /**
     * One reading at each of several places round a ring, all places in several rounds: the mean of the last rounds counts,
     * for run-out adds as much on one side as it takes on the other. Places have no order in time, so nothing is tested for
     * seating; a place that stands off the others, one that reads otherwise from round to round, or a spread beyond the
     * limit, is read again. u² = s²/n + (step twice)² + (error limit)² + (retrace)², s and n those of the places.
     */
    private static Measured places(Clearance clearance, GaugeData gauge, List<List<Double>> rounds) {
        int wanted = Math.max(1, clearance.rounds());
        List<List<Double>> last = rounds.subList(Math.max(0, rounds.size() - wanted), rounds.size());
        List<Double> places = new ArrayList<>();
        Set<Integer> outliers = new TreeSet<>();
        Set<Integer> unlike = new TreeSet<>();
        for (int place = 0; place < last.get(0).size(); place++) {
            int at = place;
            List<Double> here = last.stream().map(round -> round.get(at)).toList();
            places.add(Statistics.mean(here));
            if (Statistics.range(here) > clearance.settleWithin() + DUST) {
                unlike.add(place + 1);
            }
        }
        last.forEach(round -> Outliers.among(round, clearance.settleWithin()).forEach(i -> outliers.add(i + 1)));
        Working working = new Working();
        double value = working.line(
                "mean of " + places.size() + " places" + (last.size() > 1 ? ", " + last.size() + " rounds" : ""),
                "sum / n",
                Statistics.mean(places),
                Kind.LENGTH,
                "JCGM 100:2008 4.2.1");
        double range = working.line("spread", "largest − smallest", Statistics.range(places), Kind.LENGTH);
        List<Contribution> parts = List.of(
                Contribution.of(
                        "places", Uncertainties.ofMean(Statistics.deviation(places), places.size()), places.size() - 1),
                Contribution.of("step, read twice", Uncertainties.stepTwice(gauge.step()), Double.POSITIVE_INFINITY),
                Contribution.of("error limit", Uncertainties.rectangular(gauge.errorLimit()), Double.POSITIVE_INFINITY),
                Contribution.of("retrace", Uncertainties.rectangular(gauge.retrace()), Double.POSITIVE_INFINITY));
        Budget budget = Budget.of(parts);
        working.line("u", "root of the sum of squares of the parts", budget.u(), Kind.LENGTH, "JCGM 100:2008 5.1.2");
        int more = wanted - last.size();
        boolean even = range <= clearance.settleWithin() + DUST;
        boolean agree = even && outliers.isEmpty() && unlike.isEmpty();
        Seating seating = !agree ? Seating.SCATTERED : more > 0 ? Seating.TOO_FEW : Seating.SETTLED;
        return measured(
                clearance,
                working,
                new Raw(
                        value,
                        seating,
                        rounds.size() - last.size() + 1,
                        last.size(),
                        agree ? more : Math.max(1, more),
                        0,
                        List.copyOf(outliers),
                        budget,
                        advice(clearance, outliers, unlike, even, more)));
    }

    private static String advice(
            Clearance clearance, Set<Integer> outliers, Set<Integer> unlike, boolean even, int more) {
        if (!outliers.isEmpty()) {
            return "Place " + listed(outliers) + " stands off the others: read it again before the mean counts.";
        }
        if (!unlike.isEmpty()) {
            return "Place " + listed(unlike)
                    + " reads otherwise from round to round: look at the seat and the gauge, then " + "read all again.";
        }
        if (!even) {
            return "The places spread over more than " + Quantities.print(clearance.settleWithin(), Units.MM, 2)
                    + ": look at run-out and dirt, then read all again.";
        }
        return more > 0
                ? "Read all places " + (more == 1 ? "one more time." : more + " more times.")
                : "The places agree; their mean counts.";
    }

    private static String listed(Set<Integer> places) {
        return places.stream().map(String::valueOf).collect(Collectors.joining(", "));
    }

    private static Measured travel(Clearance clearance, Worked<EndPlay.Result> worked) {
        EndPlay.Result r = worked.result();
        Working working = new Working();
        working.include(worked);
        return measured(
                clearance,
                working,
                new Raw(
                        r.value(),
                        r.seating(),
                        r.firstRoundUsed(),
                        r.roundsUsed(),
                        r.moreRoundsWanted(),
                        r.tilt(),
                        List.of(),
                        r.budget(),
                        r.advice()));
    }

    private static Measured series(Clearance clearance, Worked<Readings.Result> worked) {
        Readings.Result r = worked.result();
        Working working = new Working();
        working.include(worked);
        return measured(
                clearance,
                working,
                new Raw(
                        r.value(),
                        r.seating(),
                        r.firstRoundUsed(),
                        r.roundsUsed(),
                        r.moreRoundsWanted(),
                        0,
                        r.outliers(),
                        r.budget(),
                        r.advice()));
    }

    private record Raw(
            double value,
            Seating seating,
            int first,
            int used,
            int more,
            double tilt,
            List<Integer> outliers,
            Budget budget,
            String advice) {}

    private static Measured measured(Clearance clearance, Working working, Raw raw) {
        double factor = clearance.readingFactor();
        double offset = clearance.readingOffset();
        double value = factor == 1 && offset == 0
                ? raw.value()
                : working.line(
                        clearance.name(),
                        "reading × " + trimmed(factor) + " + offset",
                        raw.value() * factor + offset,
                        Kind.LENGTH);
        Worked<Double> done = working.worked(value);
        return new Measured(
                value,
                raw.budget().u() * Math.abs(factor),
                raw.budget().nu(),
                raw.seating(),
                raw.first(),
                raw.used(),
                raw.more(),
                raw.tilt(),
                raw.outliers(),
                raw.budget(),
                raw.advice(),
                done.working(),
                done.cautions());
    }

    private static String trimmed(double number) {
        return number == Math.rint(number) ? Long.toString((long) number) : Double.toString(number);
    }

    /**
     * Feelers: the clearance lies between the thickest that enters and the thinnest that does not, anywhere alike, so u =
     * half the difference / √3 (JCGM 100:2008 4.3.7). Of several rounds the narrowest bracket that all agree with counts.
     */
    private static Measured feeler(Clearance clearance, List<List<Double>> rounds) {
        double enters = Double.NEGATIVE_INFINITY;
        double not = Double.POSITIVE_INFINITY;
        for (List<Double> round : rounds) {
            enters = Math.max(enters, round.get(0));
            not = Math.min(not, round.get(round.size() - 1));
        }
        boolean agree = enters <= not;
        Working working = new Working();
        working.line("thickest feeler that enters", "largest of the rounds", enters, Kind.LENGTH);
        working.line("thinnest that does not enter", "smallest of the rounds", not, Kind.LENGTH);
        double value = working.line("reading", "middle between the two", (enters + not) / 2, Kind.LENGTH);
        double u = working.line(
                "u(reading)",
                "half the difference / √3",
                Math.abs(not - enters) / 2 / Math.sqrt(3),
                Kind.LENGTH,
                "JCGM 100:2008 4.3.7");
        int more = Math.max(0, clearance.rounds() - rounds.size());
        Seating seating = !agree ? Seating.SCATTERED : more > 0 ? Seating.TOO_FEW : Seating.SETTLED;
        String advice = !agree
                ? "One feeler entered that did not enter another time: clean the faces and try both again."
                : more > 0
                        ? "Try the feelers " + more + (more == 1 ? " more time." : " more times.")
                        : "The feelers agree.";
        Budget budget = Budget.of(List.of(Contribution.of("feeler steps", u, Double.POSITIVE_INFINITY)));
        List<Integer> outliers = new ArrayList<>();
        return measured(
                clearance, working, new Raw(value, seating, 1, rounds.size(), more, 0, outliers, budget, advice));
    }
}
