package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about the intake, the strip-down, the inspection, notes and pictures. */
final class IntakeRules {
    private static final Set<String> FACTS = Set.of("number", "owner", "remark");
    private static final Pattern HASH = Pattern.compile("[0-9a-f]{64}");

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
        return Rules.needed(e.gone(), "gone", "what came off", "Name the part, as you would on a tag");
    }

    static List<Refusal> found(Workbench bench, Entry.Found e) {
        if (e.limit().isBlank()) {
            return Rules.needed(e.what(), "what", "item", "Name the part or feature");
        }
        List<Refusal> refusals = new ArrayList<>(limit(bench, e.limit()));
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
                        : limit(bench, e.limit()));
        return refusals;
    }

    private static List<Refusal> limit(Workbench bench, String id) {
        Optional<WearLimit> known = bench.unit().type().wearLimits().stream()
                .filter(wear -> wear.id().equals(id))
                .findFirst();
        return known.isPresent()
                ? List.of()
                : Rules.one("limit", "limit " + id, "this unit has no such limit", "Go back to the inspection");
    }

    static List<Refusal> note(Workbench bench, Entry.NoteMade e) {
        return Rules.needed(e.text(), "text", "note", "Type the note");
    }

    static List<Refusal> picture(Workbench bench, Entry.PictureAdded e) {
        return HASH.matcher(e.picture()).matches() && e.size() > 0
                ? List.of()
                : Rules.one("picture", "picture", "it is not kept", "Take or choose it again");
    }
}
