package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Entry.Decision;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/** What was passed against the advice, as sentences with who and why, in order of the log. */
public final class OverruledAdvice {
    private record Line(long number, String sentence) {}

    private final List<Line> lines = new ArrayList<>();

    private OverruledAdvice() {}

    /** Every sentence of a job. */
    public static List<String> of(Job job) {
        OverruledAdvice overruled = new OverruledAdvice();
        if (!job.opened().overruledBecause().isBlank()) {
            overruled.lines.add(new Line(
                    0,
                    "Variant " + job.opened().variant() + " although the tell-tales do not settle it: "
                            + job.opened().overruledBecause()));
        }
        overruled.steps(job);
        overruled.clearances(job);
        overruled.findings(job);
        overruled.add(
                job.cameBack().values(),
                said -> said.what().overruledBecause().isBlank()
                        ? ""
                        : "Work that came back accepted by " + said.by() + " although its numbers do not prove it ("
                                + said.what().measured() + "): " + said.what().overruledBecause());
        return overruled.lines.stream()
                .sorted(Comparator.comparingLong(Line::number))
                .map(Line::sentence)
                .toList();
    }

    private <E extends Entry> void add(Iterable<Said<E>> entries, Function<Said<E>, String> words) {
        entries.forEach(said -> {
            String sentence = words.apply(said);
            if (!sentence.isEmpty()) {
                lines.add(new Line(said.number(), sentence));
            }
        });
    }

    private void steps(Job job) {
        add(
                job.holdsOverruled().values(),
                said -> "Hold point " + said.what().hold() + " at step "
                        + said.what().step() + " passed by " + said.by() + ": "
                        + said.what().reason());
        add(
                job.jumped().values(),
                said -> "Step " + said.what().step() + " done before a step it waits for, by " + said.by() + ": "
                        + said.what().reason());
        add(
                job.leftOut().values(),
                said -> "Step " + said.what().step() + " left out by " + said.by() + ": "
                        + said.what().reason());
        add(
                job.added().values(),
                said -> "Step " + said.what().step() + " added by " + said.by() + " ("
                        + said.what().todo() + "): " + said.what().reason());
        add(job.build().clocks(), OverruledAdvice::clock);
    }

    private static String clock(Said<Entry.TimeOverruled> said) {
        Entry.TimeOverruled e = said.what();
        double minutes = Math.abs(e.seconds().getOrDefault("by", 0.0)) / 60;
        return "Step " + e.step() + " done " + String.format(Locale.ROOT, "%.0f", Math.ceil(minutes)) + " min too "
                + e.what() + " (" + e.clock() + ") by " + said.by() + ": " + e.reason();
    }

    private void clearances(Job job) {
        add(
                job.chosen().values(),
                said -> said.what().overruledBecause().isBlank()
                        ? ""
                        : "Pack of clearance " + said.what().clearance() + " chosen by " + said.by()
                                + " against the advice: " + said.what().overruledBecause());
        add(
                job.accepted().values(),
                said -> said.what().overruledBecause().isBlank()
                        ? ""
                        : "Clearance " + said.what().clearance() + " accepted by " + said.by()
                                + " although not proven within limits: "
                                + said.what().overruledBecause());
    }

    private void findings(Job job) {
        add(job.judged().values(), said -> {
            Entry.Judged judged = said.what();
            String key = judged.limit().isBlank() ? judged.what() : judged.limit();
            Optional<Entry.Found> against = (judged.piece().isEmpty()
                            ? Findings.latest(job, key)
                            : Findings.latest(job, key, new JudgedPiece(judged.piece(), judged.what(), List.of()))
                                    .map(Said::what))
                    .filter(Findings::needsVerdict);
            String least = judged.weighed().getOrDefault("least", "");
            String dearer = least.isEmpty() || least.equals(judged.decision().name())
                    ? ""
                    : judged.what() + ": " + judged.decision().name().toLowerCase(Locale.ROOT) + " decided by "
                            + said.by()
                            + " although " + least.toLowerCase(Locale.ROOT) + " costs least by the numbers: "
                            + judged.reason();
            return against.isPresent() && judged.decision() == Decision.REUSE
                    ? judged.what() + " reused by " + said.by() + " although "
                            + (Findings.isOut(against.get()) ? "found outside" : "not proven within") + " its limit: "
                            + judged.reason() + (dearer.isEmpty() ? "" : ". " + dearer)
                    : dearer;
        });
    }
}
