package shimwright.rebuild.rules;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about something ordered or sent out, and what such a thing forbids. */
final class OrderRules {
    private static final int LATEST = 365;

    private OrderRules() {}

    static List<Refusal> sent(Workbench bench, Entry.Sent e) {
        Job job = bench.job();
        Unit unit = bench.unit();
        List<Refusal> refusals = new ArrayList<>();
        if (e.what().isBlank()) {
            refusals.add(Refusal.of("what", "nothing typed", "Say what was ordered or sent out"));
        }
        refusals.addAll(days(job, e.due(), e.late()));
        refusals.addAll(items(job, unit, e.items(), e.pieces()));
        return refusals;
    }

    private static List<Refusal> items(Job job, Unit unit, List<String> items, List<String> pieces) {
        List<Refusal> refusals = new ArrayList<>();
        Set<String> stood = job.stepsStood();
        Set<String> in = unit.itemsIn(
                job.stepsDone().stream().filter(id -> !stood.contains(id)).toList());
        for (int i = 0; i < items.size(); i++) {
            item(job, unit, in, "items[" + i + "]", items.get(i), pieces).ifPresent(refusals::add);
        }
        pieces.stream()
                .filter(piece -> JudgedPiece.part(unit, piece).isEmpty() || !items.contains(JudgedPiece.item(piece)))
                .forEach(piece -> refusals.add(new Refusal(
                        "pieces", "piece " + piece, "it is none of the parts of this order", "Load the page again")));
        return refusals;
    }

    static List<Refusal> liesHere(Workbench bench, Entry.LiesHere e) {
        List<Refusal> refusals = new ArrayList<>(items(bench.job(), bench.unit(), e.items(), e.pieces()));
        refusals.addAll(Rules.needed(
                e.measured(),
                "measured",
                "measured",
                "Say what you measured or looked at on it; a shelf can hold the wrong one"));
        return refusals;
    }

    private static List<Refusal> days(Job job, LocalDate due, int late) {
        List<Refusal> refusals = new ArrayList<>();
        if (late < 0 || late > LATEST) {
            refusals.add(new Refusal(
                    "late", "days late", late + " is out of range", "Give a whole number from 0 to " + LATEST));
        }
        // a day begins up to 14 hours earlier somewhere than in UTC
        LocalDate opened = job.openedAt().atOffset(ZoneOffset.UTC).toLocalDate().minusDays(1);
        if (due.isBefore(opened)) {
            refusals.add(Refusal.of("due", due + " is before the unit came in", "Look at the date"));
        }
        return refusals;
    }

    private static Optional<Refusal> item(
            Job job, Unit unit, Set<String> in, String key, String item, List<String> pieces) {
        if (unit.type().items().stream().map(Item::id).noneMatch(item::equals)) {
            return Optional.of(new Refusal(
                    key,
                    "item " + item,
                    "this unit has no such item",
                    "Choose from the list, or leave the field empty"));
        }
        if (in.contains(item)) {
            return Optional.of(new Refusal(
                    key,
                    "item " + item,
                    unit.item(item).name() + " is in the unit",
                    "Undo the step that fitted it first, or leave it out of this order"));
        }
        return job.awaited().stream()
                .filter(said -> said.what().items().contains(item))
                .filter(said -> pieces.isEmpty()
                        || said.what().pieces().isEmpty()
                        || !Collections.disjoint(said.what().pieces(), pieces))
                .findFirst()
                .map(said -> new Refusal(
                        key,
                        "item " + item,
                        unit.item(item).name() + " is awaited already: "
                                + said.what().what(),
                        "Say first what became of that"));
    }

    private static List<Refusal> isAwaited(Job job, String sent) {
        return job.awaited().stream().map(Said::id).anyMatch(sent::equals)
                ? List.of()
                : Rules.one(
                        "sent",
                        "order",
                        "nothing of that name is awaited",
                        "Load the page again; it may have been kept already");
    }

    /** Only what was said to be not right goes back: what never came is struck, or its day moved. */
    static List<Refusal> sentBack(Workbench bench, Entry.SentBack e) {
        List<Refusal> refusals = new ArrayList<>(isAwaited(bench.job(), e.sent()));
        refusals.addAll(Rules.reason(e.reason(), "Say what is wrong with it"));
        if (refusals.isEmpty() && !bench.job().cameBack().containsKey(e.sent())) {
            refusals.addAll(Rules.one(
                    "sent", "order", "it has not come yet", "Move its day, or strike it if it was never ordered"));
        }
        return refusals;
    }

    static List<Refusal> dueMoved(Workbench bench, Entry.DueMoved e) {
        List<Refusal> refusals = new ArrayList<>(isAwaited(bench.job(), e.sent()));
        refusals.addAll(days(bench.job(), e.due(), e.late()));
        return refusals;
    }

    static List<Refusal> cameBack(Workbench bench, Entry.CameBack e) {
        Job job = bench.job();
        List<Refusal> refusals = new ArrayList<>(isAwaited(job, e.sent()));
        if (e.measured().isBlank()) {
            refusals.add(Refusal.of(
                    "measured",
                    "nothing typed",
                    "Say what you measured or looked at on it; what comes back is checked"));
        }
        Said<Entry.Sent> sent = job.sent().get(e.sent());
        if (sent != null && e.good()) {
            refusals.addAll(numbers(sent.what(), e));
        }
        return refusals;
    }

    /** What was asked for in writing is accepted by its numbers, or by somebody who says why. */
    private static List<Refusal> numbers(Entry.Sent sent, Entry.CameBack back) {
        Set<String> read = back.read().stream().map(Entry.AcceptRead::id).collect(Collectors.toSet());
        List<Refusal> refusals = new ArrayList<>();
        sent.accept().stream()
                .filter(accept -> !read.contains(accept.id()))
                .forEach(accept -> refusals.add(new Refusal(
                        "values." + accept.id(),
                        accept.what(),
                        "not read",
                        "It is accepted by what its sheet asks for")));
        boolean proven = back.read().stream().allMatch(one -> one.verdict() == Verdict.IN);
        if (!proven && back.overruledBecause().isBlank()) {
            refusals.add(new Refusal(
                    "overruledBecause",
                    "acceptance",
                    "its numbers do not prove that it is as asked for",
                    "Send it back, or say why it may go in all the same"));
        }
        return refusals;
    }

    /** A step that fits what is not here yet cannot be done. */
    static List<Refusal> awaited(Job job, Step step) {
        return job.awaited(step).stream()
                .map(said -> new Refusal(
                        "step",
                        "step " + step.id(),
                        said.what().what() + " is awaited, due on "
                                + said.what().due(),
                        "Check it and say so under Orders when it is here"))
                .toList();
    }

    /** A step that fits what must be new cannot be done with what came out. */
    static List<Refusal> missing(Workbench bench, Step step) {
        return bench.heldUp().getOrDefault(step.id(), List.of()).stream()
                .map(need -> new Refusal(
                        "step",
                        "step " + step.id(),
                        need.name() + " must be new (" + String.join("; ", need.why())
                                + ") and is neither ordered nor here",
                        "Order it, or look at it and say that it lies here"))
                .toList();
    }
}
