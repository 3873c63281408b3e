package shimwright.rebuild.record;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;

/** What went into a unit, part by part: where it came from with its number, the verdict on it, the pack beside it, and who put it in. */
public final class Fitted {
    private Fitted() {}

    /**
     * What is on the record of some items, a line each.
     *
     * @param items by id; those that the unit has not are passed over
     */
    public static List<String> lines(Unit unit, Job job, List<String> items) {
        return unit.type().items().stream()
                .filter(item -> items.contains(item.id()))
                .map(item -> line(unit, job, item))
                .toList();
    }

    private static String line(Unit unit, Job job, Item item) {
        List<String> said = new ArrayList<>();
        job.sent().values().stream()
                .filter(sent -> sent.what().items().contains(item.id()) && job.arrived(sent.id()))
                .forEach(sent -> said.add(arrived(job, sent)));
        job.supply().here().stream()
                .filter(here -> here.what().items().contains(item.id()))
                .forEach(here -> said.add(
                        "lay here: " + here.what().what() + ", " + here.what().measured() + ", " + here.by()));
        verdicts(unit, job, item).forEach(said::add);
        packs(unit, job, item).forEach(said::add);
        unit.type().steps().stream()
                .filter(step ->
                        step.installs().contains(item.id()) || step.builds().contains(item.id()))
                .flatMap(step -> put(job, step).stream())
                .forEach(said::add);
        String what = item.name() + (item.part().isBlank() ? "" : " " + item.part());
        return what + ": " + (said.isEmpty() ? "nothing is on the record" : String.join("; ", said));
    }

    private static String arrived(Job job, Said<Entry.Sent> sent) {
        Said<Entry.CameBack> came = job.cameBack().get(sent.id());
        return sent.what().what()
                + (sent.what().to().isBlank() ? "" : " from " + sent.what().to())
                + (came == null ? "" : ", " + came.what().measured() + ", looked at by " + came.by());
    }

    private static List<String> verdicts(Unit unit, Job job, Item item) {
        return Standings.all(unit, job).stream()
                .filter(standing -> standing.piece().items().contains(item.id()))
                .flatMap(standing -> standing.judged().stream())
                .map(judged -> judged.what().decision().name().toLowerCase(Locale.ROOT) + ": "
                        + judged.what().reason() + ", " + judged.by())
                .distinct()
                .toList();
    }

    /** Packs at the places that the item is drawn for. */
    private static List<String> packs(Unit unit, Job job, Item item) {
        List<String> packs = new ArrayList<>();
        for (Clearance clearance : unit.type().clearances()) {
            clearance.positions().stream()
                    .filter(position -> position.item().equals(item.id()))
                    .flatMap(position -> job.packIn(position.id()).stream())
                    .map(said -> "pack " + pieces(said.what()) + " for " + clearance.name() + ", " + said.by())
                    .forEach(packs::add);
        }
        return packs.stream().distinct().toList();
    }

    private static String pieces(Entry.PackChosen chosen) {
        return chosen.pieces().stream().map(Entry.PieceIn::piece).collect(Collectors.joining(" + "));
    }

    private static Optional<String> put(Job job, Step step) {
        return Optional.ofNullable(job.done().get(step.id()))
                .map(done -> "put in at " + step.id() + " by " + done.by());
    }
}
