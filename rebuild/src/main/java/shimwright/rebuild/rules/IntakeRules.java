package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.inspect.TradeChecks;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about the intake, the strip-down, the inspection, notes and pictures. */
final class IntakeRules {
    private static final Set<String> FACTS = Set.of("number", "owner", "remark");
    static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

    private IntakeRules() {}

    static List<Refusal> corrected(Workbench bench, Entry.IntakeCorrected e) {
        List<Refusal> refusals = new ArrayList<>(Rules.reason(e.reason(), "Say how it came about"));
        if (e.facts().isEmpty() && e.said().isEmpty()) {
            refusals.add(Refusal.at("intake", "nothing is changed", "Type what is to be different"));
        }
        e.facts().forEach((fact, text) -> {
            if (!FACTS.contains(fact)) {
                refusals.add(
                        Refusal.at("intake", "there is nothing called " + fact, "Correct number, owner or remark"));
            } else if (text.isBlank() && !fact.equals("remark")) {
                refusals.add(Refusal.of(fact, "nothing typed", "Say what it is"));
            }
        });
        return refusals;
    }

    static List<Refusal> moved(Workbench bench, Entry.UnitMoved e) {
        List<Refusal> refusals = new ArrayList<>(Rules.reason(e.reason(), "Say why the job moves to another file"));
        if (!HASH.matcher(e.unitFile()).matches()) {
            refusals.add(new Refusal("file", "unit file", "it is not kept", "Choose a file of the shop"));
        }
        return refusals;
    }

    static List<Refusal> takenOff(Workbench bench, Entry.TakenOff e) {
        return off(bench, e, bench.job().takenOff());
    }

    static List<Refusal> takenOffCorrected(Workbench bench, Entry.TakenOffCorrected e) {
        List<Said<Entry.TakenOff>> off = bench.job().takenOff();
        int at = IntStream.range(0, off.size())
                .filter(i -> off.get(i).id().equals(e.takenOff()))
                .findFirst()
                .orElse(-1);
        if (at < 0) {
            return Rules.one("takenOff", "what came off", "it is not among what came off", "Load the page again");
        }
        List<Refusal> refusals = new ArrayList<>(Rules.reason(e.reason(), "Say what was wrong before"));
        refusals.addAll(off(bench, e.now(), off.subList(0, at)));
        if (e.now().equals(off.get(at).what())) {
            refusals.add(Refusal.at("what came off", "nothing is changed", "Say what is to be different"));
        }
        return refusals;
    }

    /** Something that came off, after what came off before it. */
    private static List<Refusal> off(Workbench bench, Entry.TakenOff e, List<Said<Entry.TakenOff>> before) {
        List<Refusal> refusals = new ArrayList<>(
                Rules.needed(e.gone(), "gone", "what came off", "Name the part, as you would on a tag"));
        e.items().stream()
                .filter(item -> bench.unit().type().items().stream()
                        .noneMatch(one -> one.id().equals(item)))
                .map(item -> new Refusal(
                        "items",
                        "items of the unit",
                        "this unit has no item " + item,
                        "Take one of those that it has, or none"))
                .forEach(refusals::add);
        e.items().stream()
                .filter(item -> bench.unit().type().items().stream()
                        .anyMatch(one -> one.id().equals(item) && one.quantity() == 1))
                .filter(item ->
                        before.stream().anyMatch(said -> said.what().items().contains(item)))
                .map(item -> new Refusal(
                        "items",
                        "items of the unit",
                        bench.unit().item(item).name() + " is off already",
                        "Put right what was said of it, or strike it"))
                .forEach(refusals::add);
        Set<String> known = before.stream().map(Said::id).collect(Collectors.toCollection(HashSet::new));
        known.add(Entry.TakenOff.NOTHING);
        if (!known.containsAll(e.inTheWay())) {
            refusals.add(new Refusal(
                    "inTheWay",
                    "what was in its way",
                    "it names something that did not come off before it",
                    "Load the page again and choose from what is off"));
        }
        known.remove(Entry.TakenOff.NOTHING);
        if (!known.containsAll(e.asOneWith())) {
            refusals.add(new Refusal(
                    "asOneWith",
                    "what it came out with",
                    "it names something that did not come off before it",
                    "Load the page again and choose from what is off"));
        }
        String acts = e.shims().getOrDefault("acts", "");
        if (!Set.of("", "closes", "opens").contains(acts)) {
            refusals.add(new Refusal(
                    "shims.acts",
                    "shims found",
                    "\"" + acts + "\" says no direction",
                    "Say closes or opens, or leave it open"));
        }
        return refusals;
    }

    static List<Refusal> found(Workbench bench, Entry.Found e) {
        if (e.limit().isBlank()) {
            return Rules.needed(e.what(), "what", "item", "Name the part or feature");
        }
        List<Refusal> refusals = new ArrayList<>(limit(bench, e.limit(), e.piece()));
        if (e.values().stream().anyMatch(value -> !Double.isFinite(value))) {
            refusals.add(new Refusal("values", e.what(), "a reading is not a number", "Read it again"));
        }
        return refusals;
    }

    static List<Refusal> judged(Workbench bench, Entry.Judged e) {
        List<Refusal> refusals =
                new ArrayList<>(Rules.reason(e.reason(), "Say why, so that the record can be stood behind"));
        refusals.addAll(
                e.limit().isBlank()
                        ? Rules.needed(e.what(), "what", "item", "Say which item")
                        : limit(bench, e.limit(), e.piece()));
        return refusals;
    }

    static List<Refusal> limit(Workbench bench, String id, String piece) {
        boolean part = id.equals(Entry.Judged.PART) || id.startsWith(Entry.Found.TRADE);
        if (part && JudgedPiece.part(bench.unit(), piece).isEmpty()) {
            return Rules.one("piece", "part " + piece, "this unit has no such part", "Go back to the parts");
        }
        if (id.equals(Entry.Judged.PART) || TradeChecks.find(id).isPresent()) {
            return List.of();
        }
        Optional<WearLimit> known = bench.unit().type().wearLimits().stream()
                .filter(wear -> wear.id().equals(id))
                .findFirst();
        if (known.isEmpty()) {
            return Rules.one("limit", "limit " + id, "this unit has no such limit", "Go back to the inspection");
        }
        return piece.isEmpty()
                        || JudgedPiece.of(bench.unit(), known.get()).stream()
                                .anyMatch(one -> one.id().equals(piece))
                ? List.of()
                : Rules.one("piece", "limit " + id, "it judges no piece " + piece, "Load the page again");
    }

    static List<Refusal> note(Workbench bench, Entry.NoteMade e) {
        return Rules.needed(e.text(), "text", "note", "Type the note");
    }

    static List<Refusal> picture(Workbench bench, Entry.PictureAdded e) {
        return HASH.matcher(e.picture()).matches() && e.size() > 0
                ? List.of()
                : Rules.one("picture", "picture", "it is not kept", "Take or choose it again");
    }

    static List<Refusal> marked(Workbench bench, Entry.PictureMarked e) {
        List<Refusal> refusals = new ArrayList<>();
        if (bench.job().picture(e.on()).isEmpty()) {
            refusals.add(new Refusal(
                    "on", "picture", "this job has no such picture, or it was struck", "Go back to the pictures"));
        }
        if (!(e.tall() > 0 && Double.isFinite(e.tall()))) {
            refusals.add(new Refusal("tall", "picture", "nobody says how tall it is", "Load the page again"));
        }
        if (e.marks().isEmpty()) {
            refusals.add(new Refusal("marks", "marks", "nothing is drawn", "Draw an arrow, a ring, a line or a text"));
        }
        for (int i = 0; i < e.marks().size(); i++) {
            Entry.Mark mark = e.marks().get(i);
            String key = "marks[" + i + "]";
            boolean inside = mark.at().stream().allMatch(share -> share >= 0 && share <= 1);
            if (!inside) {
                refusals.add(new Refusal(key, "mark " + (i + 1), "it lies beside the picture", "Draw it again"));
            }
            if (!points(mark)) {
                refusals.add(new Refusal(
                        key,
                        "mark " + (i + 1),
                        "it has " + mark.at().size() + " numbers for its points",
                        "Two for each point: one point for a text, two for arrow and ring, two or more for a line"));
            }
            if ((mark.shape() == Entry.MarkShape.TEXT) == mark.text().isBlank()) {
                refusals.add(new Refusal(
                        key,
                        "mark " + (i + 1),
                        mark.text().isBlank() ? "the text says nothing" : "only a text has words",
                        "Type what is to stand there"));
            }
        }
        return refusals;
    }

    private static boolean points(Entry.Mark mark) {
        int numbers = mark.at().size();
        return switch (mark.shape()) {
            case TEXT -> numbers == 2;
            case ARROW, RING -> numbers == 4;
            case LINE -> numbers >= 4 && numbers % 2 == 0;
        };
    }
}
