package shimwright.rebuild.demo;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import shimwright.rebuild.clearance.Reading;
import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.job.Entry.PieceIn;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.record.Findings;
import shimwright.rebuild.rules.HoldPoints;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.workbench.Workbench;

/** What a job comes to, by name, so that two logs can be compared that tell the same job with and without a wrong tap. */
final class Meaning {
    private Meaning() {}

    /** Everything that a page or a rule can tell apart, entry numbers and hours left aside. */
    static Map<String, String> of(Workbench bench) {
        Map<String, String> meaning = end(bench);
        Job job = bench.job();
        for (Clearance c : bench.unit().type().clearances()) {
            Session s = bench.session(c.id());
            meaning.put("stage of " + c.id(), s.stage() + " " + s.reopened());
            meaning.put("readings of " + c.id(), values(s.trial()) + values(s.last()) + values(s.again()));
            meaning.put("slope of " + c.id(), s.slope() == null ? "" : s.slope().say());
            meaning.put(
                    "pack of " + c.id(),
                    new TreeMap<>(s.chosen())
                            .values().stream()
                                    .map(chosen -> chosen.position() + tags(chosen.pieces()))
                                    .toList()
                                    .toString());
        }
        meaning.put("in", job.piecesIn().toString());
        meaning.put("trial pieces", job.packsIn().toString().replaceAll("Said\\[id=[^,]*, number=\\d+, at=[^,]*,", ""));
        return meaning;
    }

    /** What stands at the end, however it was come to. */
    static Map<String, String> end(Workbench bench) {
        Job job = bench.job();
        Map<String, String> meaning = new LinkedHashMap<>();
        meaning.put("done", new TreeSet<>(job.stepsDone()).toString());
        meaning.put("out of order", new TreeSet<>(job.build().jumped().keySet()).toString());
        meaning.put("left out", new TreeSet<>(job.leftOut().keySet()).toString());
        meaning.put("own steps", new TreeSet<>(job.build().added().keySet()).toString());
        meaning.put("cannot", new TreeSet<>(job.build().cannot().keySet()).toString());
        meaning.put("sides", new TreeMap<>(job.sides()).toString());
        meaning.put(
                "awaited",
                job.awaited().stream().map(s -> s.what().what()).toList().toString());
        meaning.put(
                "taken off",
                job.inspection().takenOff().stream()
                        .map(s -> s.what().gone())
                        .toList()
                        .toString());
        meaning.put(
                "found",
                job.inspection().found().stream()
                        .map(s -> s.what().what() + s.what().values())
                        .toList()
                        .toString());
        meaning.put("undecided", Findings.undecided(job).toString());
        meaning.put(
                "judged",
                new TreeMap<>(job.inspection().judged())
                        .entrySet().stream()
                                .map(e -> e.getKey() + " " + e.getValue().what().decision())
                                .toList()
                                .toString());
        meaning.put(
                "notes",
                new TreeMap<>(job.notes())
                        .values().stream()
                                .flatMap(List::stream)
                                .map(s -> s.what().text())
                                .toList()
                                .toString());
        meaning.put("pictures", new TreeSet<>(job.pictures().keySet()).toString());
        meaning.put("intake", job.opened() + " " + job.variant() + " " + job.unitFile());
        meaning.put(
                "after",
                job.end().followedUp().stream()
                        .map(s -> s.what().said())
                        .toList()
                        .toString());
        meaning.put("closed", String.valueOf(job.closed()));
        for (Step step : bench.order().steps().values()) {
            String holds = HoldPoints.of(bench, step).stream()
                    .map(h -> h.check().id() + " " + h.standing())
                    .toList()
                    .toString();
            meaning.put("hold of " + step.id(), step.phase() == Step.Phase.TRIAL && job.closed() ? "" : holds);
        }
        return meaning;
    }

    private static String values(Reading reading) {
        return reading.rounds().stream()
                .map(round -> round.what().values())
                .toList()
                .toString();
    }

    private static String tags(List<PieceIn> pieces) {
        return pieces.stream().map(PieceIn::piece).toList().toString();
    }
}
