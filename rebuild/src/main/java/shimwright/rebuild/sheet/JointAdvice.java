package shimwright.rebuild.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.fit.HeatToFit;
import shimwright.mechanics.fit.Interference;
import shimwright.mechanics.fit.LimitsAndFits;
import shimwright.mechanics.fit.TimeToGrab;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.MeasureUnit;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.unit.model.Joint;
import shimwright.rebuild.unit.model.Unit;

/**
 * What a joint says in a line at its step: what fit the measured parts make, what heat or cold, what force and how many seconds it
 * takes.
 *
 * @param joint which
 * @param says the line; empty where nothing is known yet
 * @param amiss true where the parts as measured are loose although their classes never are
 * @param asks what it still asks, in words; the first is the one to answer
 */
public record JointAdvice(Joint joint, String says, boolean amiss, List<String> asks) {
    /** How many things it asks beside the first. */
    public int asksBeside() {
        return Math.max(0, asks.size() - 1);
    }

    /** The line of a joint. */
    public static JointAdvice of(Job job, Unit unit, Joint joint, UnitSystem units) {
        List<JobSheet> sheets = JointFacts.sheets(job, unit, joint, units);
        Optional<JointFacts.Gap> gap = JointFacts.gap(job, unit, joint, units);
        Optional<LimitsAndFits.Result> classes = result(LimitsAndFits.SHEET, sheets, units);
        List<String> say = new ArrayList<>();
        gap.ifPresent(measured -> say.add(measured(measured, classes, units)));
        boolean loose = gap.map(g -> g.tightest() <= 0).orElse(false);
        boolean amiss = loose
                && classes.map(r -> r.kind() == LimitsAndFits.Result.FitKind.INTERFERENCE_FIT)
                        .orElse(false);
        if (gap.isPresent() && !loose) {
            result(HeatToFit.SHEET, sheets, units)
                    .map(heat -> heat(heat, sheets, units))
                    .or(() -> noHeat(sheets, units))
                    .ifPresent(say::add);
            result(Interference.SHEET, sheets, units).ifPresent(press -> say.add(press(press.press(), units)));
        }
        return new JointAdvice(
                joint, String.join(" ", say), amiss, gap.isPresent() && loose ? List.of() : asks(sheets, units));
    }

    private static String measured(JointFacts.Gap gap, Optional<LimitsAndFits.Result> classes, UnitSystem units) {
        boolean tight = gap.loosest() > 0;
        boolean loose = gap.tightest() <= 0;
        String kind = tight ? "an interference fit" : loose ? "a clearance fit" : "a transition fit";
        String measured = loose
                ? range(-gap.tightest(), -gap.loosest(), units) + " of play"
                : tight
                        ? range(gap.loosest(), gap.tightest(), units) + " tight"
                        : length(-gap.loosest(), units) + " of play to " + length(gap.tightest(), units) + " tight";
        return "Measured " + measured + ": " + kind + "."
                + classes.map(c -> byClass(c, units)).orElse("");
    }

    private static String byClass(LimitsAndFits.Result classes, UnitSystem units) {
        Double tightest = classes.tightest();
        Double loosest = classes.loosest();
        if (tightest == null || loosest == null) {
            return "";
        }
        return " By their classes from " + side(loosest, units) + " to " + side(tightest, units) + ".";
    }

    private static String side(double interference, UnitSystem units) {
        return length(Math.abs(interference), units) + (interference < 0 ? " of play" : " tight");
    }

    private static String heat(HeatToFit.Result heat, List<JobSheet> sheets, UnitSystem units) {
        String cold = heat.innerShrink() > 0 ? ", the inner one at " + temperature(heat.innerTemperature(), units) : "";
        String time =
                result(TimeToGrab.SHEET, sheets, units).map(JointAdvice::time).orElse("");
        return "Outer part to " + temperature(heat.outerTemperature(), units) + cold + time + ".";
    }

    /** In the air, and once it touches: by the same fall of the growth, quicker as the time constants are. */
    private static String time(TimeToGrab.Result grab) {
        double touching = grab.timeInAir() * grab.contactTimeConstant() / grab.timeConstant();
        return ", then " + Quantities.print(grab.timeInAir(), Units.SECOND, 0) + " in the air until it grabs, about "
                + Quantities.print(touching, Units.SECOND, touching < 10 ? 1 : 0) + " once it touches";
    }

    private static String press(Interference.Result.PressForce press, UnitSystem units) {
        return "Cold it takes " + force(press.pressForceLow(), units) + " to " + force(press.pressForceHigh(), units)
                + " at the press: above that stop and look, never over " + force(press.stopForce(), units) + ".";
    }

    /** What the sheets lack, the sizes first. */
    private static List<String> asks(List<JobSheet> sheets, UnitSystem units) {
        List<String> asks = new ArrayList<>();
        for (Worksheet<?, ?> sheet : List.of(Interference.SHEET, HeatToFit.SHEET)) {
            sheets.stream()
                    .filter(one -> one.sheet().equals(sheet))
                    .flatMap(one -> one.asks(units).stream())
                    .filter(ask -> !ask.startsWith("interference"))
                    .filter(ask -> !asks.contains(ask))
                    .forEach(asks::add);
        }
        return List.copyOf(asks);
    }

    private static <C extends Record, R extends Record> Optional<R> result(
            Worksheet<C, R> sheet, List<JobSheet> sheets, UnitSystem units) {
        Outcome<Worked<R>> worked = sheets.stream()
                .filter(one -> one.sheet().equals(sheet))
                .findFirst()
                .map(one -> sheet.read(one.typed(), units)
                        .flatMap(bound -> sheet.compute().apply(bound.value())))
                .orElseThrow();
        return worked instanceof Outcome.Ok<Worked<R>> ok
                ? Optional.of(ok.value().result())
                : Optional.empty();
    }

    private static String range(double low, double high, UnitSystem units) {
        MeasureUnit unit = units.display(Kind.LENGTH).unit();
        String least = length(low, units);
        String most = length(high, units);
        return least.equals(most) ? least : least.replace(" " + unit.symbol(), "") + " to " + most;
    }

    private static String length(double metres, UnitSystem units) {
        return Quantities.print(metres, Kind.LENGTH, units);
    }

    /** Why no heat does it, where all that it asks for is known. */
    private static Optional<String> noHeat(List<JobSheet> sheets, UnitSystem units) {
        return sheets.stream()
                .filter(one -> one.sheet().equals(HeatToFit.SHEET))
                .filter(one -> one.asks(units).isEmpty())
                .flatMap(one -> one.answer(units).refusals().stream())
                .map(refusal -> "By heat: " + refusal.fact() + ".")
                .findFirst();
    }

    private static String temperature(double kelvin, UnitSystem units) {
        return Quantities.print(kelvin, units.display(Kind.TEMPERATURE).unit(), 0);
    }

    private static String force(double newtons, UnitSystem units) {
        return units == UnitSystem.INCH
                ? Quantities.print(newtons, Kind.FORCE, units)
                : Quantities.print(newtons, Units.KILONEWTON, 1);
    }
}
