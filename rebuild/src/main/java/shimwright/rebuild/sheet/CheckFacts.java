package shimwright.rebuild.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import shimwright.mechanics.bearing.PreloadDrag;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.ParsedQuantity;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.seal.LeakProofs;
import shimwright.mechanics.spring.SpringTester;
import shimwright.mechanics.worksheet.Worksheet;
import shimwright.rebuild.clearance.DragAdvice;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Bearing;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;

/** What the checks of a hold point and their readings know for the sheets of springs, air test and drag. */
record CheckFacts(Job job, Unit unit, UnitSystem units) {
    static final String CHECK = "check ";
    private static final String FILE = "unit file";
    private static final Pattern AT_LENGTH = Pattern.compile("at ([0-9.]+ ?mm|[0-9.]+ ?in)");
    private static final Pattern START = Pattern.compile("from ([0-9.]+ ?(?:bar|kPa|psi))");
    private static final Pattern SPRING = Pattern.compile("(?i)spring");
    private static final Pattern AIR =
            Pattern.compile("(?i)from [0-9.]+ ?(?:bar|kPa|psi)|leak|tight|\\bair\\b|\\blos[st]");
    private static final Pattern DURATION = Pattern.compile("([0-9.]+ ?(?:min|s|h))\\b");
    private static final Pattern BORE = Pattern.compile("([0-9]+(?:\\.[0-9]+)?)[x×]");
    private static final double MM = 1e-3;

    /** The sheets of a check, by what it reads; most have none. */
    List<JobSheet> of(HoldPoint hold, Check check) {
        return sheet(hold, check).stream().toList();
    }

    private Optional<JobSheet> sheet(HoldPoint hold, Check check) {
        if (check.kind() == CheckKind.FORCE && ofSpring(check)) {
            return Optional.of(made(hold, check, SpringTester.SHEET, spring(hold, check), "rate", "load", "verdict"));
        }
        if (check.kind() == CheckKind.PRESSURE && AIR.matcher(check.what()).find()) {
            return Optional.of(made(hold, check, LeakProofs.SHEET, leak(hold, check), "leak", "verdict"));
        }
        Optional<DragAdvice> drag = check.kind() == CheckKind.TORQUE ? DragAdvice.of(unit, check) : Optional.empty();
        return drag.isPresent() || (check.kind() == CheckKind.TORQUE && DragAdvice.turns(check))
                ? Optional.of(
                        made(hold, check, PreloadDrag.SHEET, drag(hold, check, drag), "preloadLow", "preloadHigh"))
                : Optional.empty();
    }

    private static boolean ofSpring(Check check) {
        return SPRING.matcher(check.what()).find();
    }

    private JobSheet made(
            HoldPoint hold, Check check, Worksheet<?, ?> sheet, Map<String, Fact> facts, String... tells) {
        String about = CHECK + hold.id() + "/" + check.id();
        KeptFacts.of(job, about, sheet.name()).forEach(facts::putIfAbsent);
        return new JobSheet(about, check.what(), sheet, facts, List.of(tells));
    }

    /** Of the weakest spring that was read: its load, and its free length where that was read as well. */
    private Map<String, Fact> spring(HoldPoint hold, Check check) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        Matcher length = AT_LENGTH.matcher(check.what());
        String at = length.find() ? length.group(1) : "";
        if (!at.isEmpty()) {
            facts.put("workingLength", new Fact(at, FILE));
        }
        check.lower().ifPresent(limit -> facts.put("limitLoad", new Fact(limit.text(), FILE)));
        List<Double> loads = read(hold, check);
        if (!loads.isEmpty() && !at.isEmpty()) {
            int weakest = loads.indexOf(Collections.min(loads));
            String load = Quantities.brief(
                    loads.get(weakest), units.display(Kind.FORCE).unit());
            String from = "weakest of " + loads.size() + " at " + hold.id();
            facts.put("readings", new Fact(at + ": " + load, from));
            List<Double> lengths = hold.checks().stream()
                    .filter(other -> other.kind() == CheckKind.LENGTH && ofSpring(other))
                    .findFirst()
                    .map(other -> read(hold, other))
                    .orElse(List.of());
            if (lengths.size() == loads.size()) {
                facts.put("freeLength", Fact.of(lengths.get(weakest), Kind.LENGTH, units, from));
            }
        }
        return facts;
    }

    private Map<String, Fact> leak(HoldPoint hold, Check check) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        Matcher start = START.matcher(check.what());
        Matcher time = DURATION.matcher(check.what());
        if (time.find()) {
            facts.put("time", new Fact(time.group(1), FILE));
        }
        if (start.find()) {
            facts.put("startPressure", new Fact(start.group(1), FILE));
            List<Double> loss = read(hold, check);
            Outcome<ParsedQuantity> from =
                    Quantities.parse(start.group(1), Kind.PRESSURE, Units.KPA, "start", new Range(0, 1e7));
            if (!loss.isEmpty() && from instanceof Outcome.Ok<ParsedQuantity> ok) {
                String end = Quantities.brief(ok.value().si() - loss.get(0), Units.KPA);
                facts.put("endPressure", new Fact(end, "start less what was lost at " + hold.id()));
            }
        }
        return facts;
    }

    private Map<String, Fact> drag(HoldPoint hold, Check check, Optional<DragAdvice> drag) {
        Map<String, Fact> facts = new LinkedHashMap<>();
        List<String> items = drag.stream()
                .flatMap(advice -> advice.clearance().loop().stream())
                .map(Clearance.Length::item)
                .toList();
        List<String> bearings = new ArrayList<>();
        for (Bearing bearing : unit.type().bearings()) {
            Matcher bore = BORE.matcher(bearing.size());
            boolean taper = bearing.items().stream()
                    .anyMatch(item -> unit.item(item).shape().name().startsWith("TAPER"));
            if (taper && bearing.items().stream().anyMatch(items::contains) && bore.find()) {
                bearings.add("taper: " + Quantities.brief(Double.parseDouble(bore.group(1)) * MM, Units.MM));
            }
        }
        if (!bearings.isEmpty()) {
            facts.put("bearings", new Fact(String.join("; ", bearings), FILE));
        }
        List<Double> read = read(hold, check);
        if (!read.isEmpty()) {
            double mean = read.stream().mapToDouble(check::value).average().orElseThrow();
            facts.put("torque", Fact.of(mean, Kind.TORQUE, units, hold.id() + ", mean as read"));
        }
        return facts;
    }

    /** The readings of a check at whichever step it was read last. */
    private List<Double> read(HoldPoint hold, Check check) {
        return job.checks().values().stream()
                .filter(said -> said.what().hold().equals(hold.id())
                        && said.what().check().equals(check.id()))
                .max(Comparator.comparingLong(Said::number))
                .map(Said::what)
                .map(Entry.CheckRead::values)
                .orElse(List.of());
    }
}
