package shimwright.rebuild.act;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Range;
import shimwright.rebuild.inspect.GaugeError;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.sendout.Acceptance;
import shimwright.rebuild.sendout.OtherWork;
import shimwright.rebuild.sendout.PlainSheet;
import shimwright.rebuild.sendout.SplineSheet;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.workbench.Workbench;

/** Work that is done elsewhere: written down when it goes, accepted by its numbers when it comes. */
public final class SendOutActs {
    private SendOutActs() {}

    /** A worn spline goes out to be built up and finished to its measured mate. */
    @MakesEntries(Entry.Sent.class)
    public record SendSpline(
            @ActInput(value = "part", missing = "Choose the part that goes out")
            String item,

            @ActInput("to whom") String to,

            @ActInput(value = "due", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate due,

            @ActInput(value = "days late", least = 0, most = 365)
            int late,

            @ActInput("inputs of the worksheet spline-rework, by name")
            Map<String, String> in,

            @ActInput("length, hubOutside, shaftBore, spare, ceiling, runOut, keepCool, cracks, hardLeast, hardMost")
            Map<String, String> more,

            @ActInput("note") String note)
            implements Act.OfJob {
        @Override
        public boolean saysAllAtOnce() {
            return true;
        }

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Outcome<Item> known = part(bench, item);
            List<Refusal> refusals = new ArrayList<>(known.refusals());
            Outcome<SplineSheet> sheet = SplineSheet.of(in, more, around.units());
            refusals.addAll(sheet.refusals());
            if (!refusals.isEmpty()) {
                return Outcome.refused(refusals);
            }
            SplineSheet written = sheet.orElseThrow();
            Item part = known.orElseThrow();
            return IntakeActs.kept(
                    bench,
                    new Entry.Sent(
                            part.name() + ", spline built up and cut",
                            List.of(part.id()),
                            to,
                            due,
                            late,
                            note,
                            List.of(),
                            written.work(),
                            written.numbers(),
                            written.accept(),
                            written.working()),
                    "Kept: its sheet is written, the plan waits for it");
        }
    }

    private static Outcome<Item> part(Workbench bench, String item) {
        return bench.unit().type().items().stream()
                .filter(one -> item.equalsIgnoreCase(one.id()) || item.equalsIgnoreCase(one.name()))
                .findFirst()
                .map(Outcome::ok)
                .orElseGet(() -> Outcome.refused(
                        new Refusal("item", "part " + item, "this unit has no such part", "Choose it from the list")));
    }

    /** Other work than on a spline goes out: a seat, a bore, a seal track, a face, or a look for cracks. */
    @MakesEntries(Entry.Sent.class)
    public record SendWork(
            @ActInput(value = "part", missing = "Choose the part that goes out")
            String item,

            @ActInput(value = "work", missing = "Choose what is to be done")
            OtherWork work,

            @ActInput("to whom") String to,

            @ActInput(value = "due", missing = "Choose the day, or type it as 2026-12-24")
            LocalDate due,

            @ActInput(value = "days late", least = 0, most = 365)
            int late,

            @ActInput("what its sheet says, by name") Map<String, String> more,
            @ActInput("note") String note)
            implements Act.OfJob {
        @Override
        public boolean saysAllAtOnce() {
            return true;
        }

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Outcome<Item> known = part(bench, item);
            List<Refusal> refusals = new ArrayList<>(known.refusals());
            Map<String, List<Double>> readings = new LinkedHashMap<>();
            for (OtherWork.Fact fact : work.facts()) {
                String typed = more.getOrDefault(fact.name(), "");
                if (fact.typed() == OtherWork.Typed.READINGS && !typed.isBlank()) {
                    Outcome<List<Double>> read = TypedReadings.parse(
                                    typed,
                                    fact.kind(),
                                    around.units().display(fact.kind()).unit(),
                                    fact.label())
                            .placed("more." + fact.name(), fact.label());
                    refusals.addAll(read.refusals());
                    if (read.isOk()) {
                        readings.put(fact.name(), read.orElseThrow());
                    }
                }
            }
            Outcome<PlainSheet> sheet = PlainSheet.of(work, more, readings, around.units());
            sheet.refusals().stream()
                    .filter(more -> refusals.stream().noneMatch(one -> one.key().equals(more.key())))
                    .toList()
                    .forEach(refusals::add);
            if (!refusals.isEmpty()) {
                return Outcome.refused(refusals);
            }
            PlainSheet written = sheet.orElseThrow();
            Item part = known.orElseThrow();
            return IntakeActs.kept(
                    bench,
                    new Entry.Sent(
                            part.name() + ", " + work.words(),
                            List.of(part.id()),
                            to,
                            due,
                            late,
                            note,
                            List.of(),
                            written.work(),
                            written.numbers(),
                            written.accept(),
                            written.working()),
                    "Kept: its sheet is written, the plan waits for it");
        }
    }

    /** Work came back: each thing that its sheet asks for is read, and the numbers say whether it may go in. */
    @MakesEntries(Entry.CameBack.class)
    public record TakeWork(
            @ActInput(value = "order", missing = "Load the page again")
            String sent,

            @ActInput("readings, by what is asked for") Map<String, String> values,

            @ActInput("looked at, yes or no, by what is asked for")
            Map<String, String> attest,

            @ActInput("gauge, by what is asked for") Map<String, String> gauges,

            @ActInput("standard uncertainty where no gauge of the shop has it")
            Map<String, String> uncertainty,

            @ActInput("why it may go in all the same") String overruledBecause,
            @ActInput("why an unlikely size is right") String confirmed)
            implements Act.OfJob {
        private static final Range STANDARD = new Range(0, 10);

        @Override
        public boolean saysAllAtOnce() {
            return true;
        }

        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Said<Entry.Sent> out = bench.job().sent().get(sent);
            if (out == null || out.what().accept().isEmpty()) {
                return Outcome.refused(new Refusal(
                        "sent",
                        "order",
                        "nothing was asked for in writing with it",
                        "Say under Orders what you measured"));
            }
            List<Refusal> refusals = new ArrayList<>();
            List<Entry.AcceptRead> read = new ArrayList<>();
            for (Entry.Accept accept : out.what().accept()) {
                Outcome<Entry.AcceptRead> one = accept.limits().isEmpty() ? seen(accept) : measured(accept, around);
                refusals.addAll(one.refusals());
                read.addAll(one.isOk() ? List.of(one.orElseThrow()) : List.of());
            }
            if (!refusals.isEmpty()) {
                return Outcome.refused(refusals);
            }
            boolean proven = read.stream().allMatch(one -> one.verdict() == Verdict.IN);
            boolean good = proven || !overruledBecause.isBlank();
            return IntakeActs.kept(
                    bench,
                    new Entry.CameBack(
                            sent,
                            good,
                            TypedReadings.remark(Acceptance.summary(read), confirmed),
                            List.copyOf(read),
                            proven ? "" : overruledBecause),
                    good ? "Kept: it may go in" : "Kept: not as asked for, its steps go on waiting");
        }

        private Outcome<Entry.AcceptRead> seen(Entry.Accept accept) {
            String said = attest.getOrDefault(accept.id(), "");
            return said.equals("yes") || said.equals("no")
                    ? Outcome.ok(Acceptance.seen(accept, said.equals("yes")))
                    : Outcome.refused(new Refusal(
                            "attest." + accept.id(), accept.what(), "nothing chosen", "Look at it: " + accept.how()));
        }

        private Outcome<Entry.AcceptRead> measured(Entry.Accept accept, ActContext around) {
            String key = "values." + accept.id();
            Outcome<List<Double>> typed = TypedReadings.parse(
                    values.getOrDefault(accept.id(), ""),
                    accept.kind(),
                    around.units().display(accept.kind()).unit(),
                    accept.what());
            List<Refusal> refusals = new ArrayList<>();
            typed.refusals().forEach(refusal -> refusals.add(refusal.placed(key, accept.what())));
            if (typed.isOk() && confirmed.isBlank()) {
                Acceptance.asked(accept, typed.orElseThrow(), around.units())
                        .forEach(asked -> refusals.add(asked.placed(key, accept.what())));
            }
            Outcome<Double> u = uncertaintyOf(accept, around);
            refusals.addAll(u.refusals());
            return refusals.isEmpty()
                    ? Outcome.ok(Acceptance.read(accept, typed.orElseThrow(), u.orElseThrow(), around.units()))
                    : Outcome.refused(refusals);
        }

        private Outcome<Double> uncertaintyOf(Entry.Accept accept, ActContext around) {
            String gauge = gauges.getOrDefault(accept.id(), "");
            String typed = uncertainty.getOrDefault(accept.id(), "");
            if (!gauge.isBlank()) {
                return around.floor()
                        .shop()
                        .inUse(gauge)
                        .filter(known -> known.kind() == accept.kind())
                        .map(known -> Outcome.ok(GaugeError.of(known).ofMean(1)))
                        .orElseGet(() -> Outcome.refused(new Refusal(
                                "gauges." + accept.id(),
                                "gauge " + gauge,
                                "this shop has no such gauge in use that reads "
                                        + accept.kind().words(),
                                "Look at the list of gauges")));
            }
            if (typed.isBlank()) {
                return Outcome.refused(new Refusal(
                        "gauges." + accept.id(),
                        accept.what(),
                        "nobody says what it was read with, so its uncertainty is not known",
                        "Choose the gauge, or type the standard uncertainty of a reading"));
            }
            Kind kind = accept.kind();
            return Quantities.parse(typed, kind, around.units().display(kind).unit(), accept.what(), STANDARD)
                    .placed("uncertainty." + accept.id(), accept.what())
                    .map(parsed -> parsed.si());
        }
    }
}
