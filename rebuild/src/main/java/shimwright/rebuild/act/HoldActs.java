package shimwright.rebuild.act;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.clearance.DragAdvice;
import shimwright.rebuild.inspect.Checks;
import shimwright.rebuild.inspect.GaugeReadings;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.UnitType.CheckKind;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.workbench.Workbench;

/** Hold points. */
public final class HoldActs {
    private HoldActs() {}

    /** One check of a hold point is read, or answered by yes or no. */
    @MakesEntries(Entry.CheckRead.class)
    public record ReadCheck(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "hold point", missing = "Go back to the build page")
            String hold,

            @ActInput(value = "check", missing = "Go back to the build page")
            String check,

            @ActInput("readings") String values,
            @ActInput("yes or no") String attest,
            @ActInput("gauge") String gauge,
            @ActInput("why an unlikely size is right") String confirmed,
            @ActInput("remark") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Optional<HoldPoint> point = bench.unit().type().holdPoints().stream()
                    .filter(h -> h.id().equals(hold))
                    .findFirst();
            Optional<Check> found = point.flatMap(
                    h -> h.checks().stream().filter(c -> c.id().equals(check)).findFirst());
            if (point.isEmpty() || found.isEmpty()) {
                return Outcome.refused(new Refusal(
                        point.isEmpty() ? "hold" : "check",
                        "hold point " + hold,
                        point.isEmpty() ? "this unit has no such hold point" : "it has no check " + check,
                        "Go back to the build page"));
            }
            return (found.get().kind() == CheckKind.NONE ? attested(found.get()) : measured(bench, found.get(), around))
                    .map(read -> new Entry.CheckRead(
                            step,
                            hold,
                            check,
                            read.values(),
                            read.kind(),
                            read.attested(),
                            read.verdict(),
                            read.words(),
                            read.working(),
                            basis(point.get(), found.get())))
                    .flatMap(entry -> IntakeActs.kept(bench, entry, "Reading kept"));
        }

        private static Map<String, String> basis(HoldPoint hold, Check check) {
            Map<String, String> basis = new LinkedHashMap<>();
            basis.put("hold", hold.what());
            basis.put("what", check.what());
            check.lower().ifPresent(limit -> basis.put("lower", limit.toString()));
            check.upper().ifPresent(limit -> basis.put("upper", limit.toString()));
            check.spread().ifPresent(limit -> basis.put("spread", limit.toString()));
            if (!check.origin().isBlank() && !check.limits().isBlank()) {
                basis.put("origin", check.origin());
            }
            return basis;
        }

        private Outcome<Entry.CheckRead> attested(Check of) {
            if (!attest.equals("yes") && !attest.equals("no")) {
                return Outcome.refused(new Refusal("attest", of.what(), "nothing chosen", "Say yes or no"));
            }
            boolean yes = attest.equals("yes");
            return Outcome.ok(new Entry.CheckRead(
                    step, hold, check, List.of(), Kind.NUMBER, yes, yes ? Verdict.IN : Verdict.OUT, words, List.of()));
        }

        private Outcome<Entry.CheckRead> measured(Workbench bench, Check of, ActContext around) {
            Kind kind = of.kind().quantity();
            return TypedReadings.parse(values, kind, of.bareUnit(), of.what())
                    .flatMap(read -> TypedReadings.read(read, gauge, of.gauge(), around))
                    .map(read -> read.after(bench.job(), of).confirmedBecause(confirmed))
                    .flatMap(read -> Checks.judge(of, read, around.units())
                            .map(judged -> new Entry.CheckRead(
                                    step,
                                    hold,
                                    check,
                                    read.values(),
                                    kind,
                                    false,
                                    judged.verdict(),
                                    said(judged.say() + advice(bench, of, read, judged.verdict(), around)),
                                    judged.working())));
        }

        /** What to change for a drag that is out. */
        private static String advice(
                Workbench bench, Check of, GaugeReadings read, Verdict verdict, ActContext around) {
            if (of.kind() != CheckKind.TORQUE || verdict != Verdict.OUT) {
                return "";
            }
            double mean =
                    read.values().stream().mapToDouble(of::value).average().orElseThrow();
            boolean high = of.upper().map(limit -> mean > limit.si()).orElse(false);
            return DragAdvice.of(bench.unit(), of)
                    .flatMap(drag -> drag.says(mean, around.units()))
                    .or(() -> DragAdvice.look(of, high))
                    .map(words -> " " + words)
                    .orElse("");
        }

        private String said(String judged) {
            String remark = TypedReadings.remark(words, confirmed);
            return remark.isEmpty() ? judged : remark + " " + judged;
        }
    }

    /** A hold point is passed although it is not met. */
    @MakesEntries(Entry.HoldOverruled.class)
    public record PassHold(
            @ActInput(value = "step", missing = "Go back to the build page")
            String step,

            @ActInput(value = "hold point", missing = "Go back to the build page")
            String hold,

            @ActInput(value = "reason", missing = "Say why it may be passed; it stands on the record")
            String reason)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            return IntakeActs.kept(
                    bench,
                    new Entry.HoldOverruled(step, hold, reason),
                    "Kept: passed by your decision, it stands on the record");
        }
    }
}
