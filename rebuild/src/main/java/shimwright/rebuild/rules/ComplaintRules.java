package shimwright.rebuild.rules;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.complaint.CauseTables;
import shimwright.rebuild.complaint.CheckQuestion;
import shimwright.rebuild.complaint.Suspect;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.workbench.Workbench;

/** What forbids an entry about the complaint and what was looked at for it. */
final class ComplaintRules {
    private ComplaintRules() {}

    static List<Refusal> said(Workbench bench, Entry.ComplaintSaid e) {
        CauseTables tables = CauseTables.shipped();
        List<Refusal> refusals = new ArrayList<>();
        if (e.answers().isEmpty() && e.symptoms().isEmpty()) {
            refusals.add(Refusal.at("complaint", "nothing is answered", "Answer one question, or tap a symptom"));
        }
        e.answers().forEach((id, answer) -> {
            Optional<CheckQuestion> question = tables.question(id);
            if (question.isEmpty()) {
                refusals.add(
                        new Refusal("answers." + id, "complaint", "there is no question " + id, "Load the page again"));
            } else if (!question.get().answers().containsKey(answer)) {
                refusals.add(new Refusal(
                        "answers." + id,
                        question.get().asks(),
                        "\"" + answer + "\" is none of its answers",
                        "Tap one of them, or leave it open"));
            }
        });
        e.symptoms().stream()
                .filter(symptom -> bench.unit().type().symptoms().stream()
                        .noneMatch(one -> one.id().equals(symptom)))
                .map(symptom -> new Refusal(
                        "symptoms", "symptoms", "this unit has no symptom " + symptom, "Load the page again"))
                .forEach(refusals::add);
        if (!e.apart().isEmpty() && tables.opening(e.apart()).isEmpty()) {
            refusals.add(new Refusal(
                    "apart", "how far it is apart", "\"" + e.apart() + "\" says nothing", "Tap one of those shown"));
        }
        return refusals;
    }

    static List<Refusal> looked(Workbench bench, Entry.SuspectLooked e) {
        List<Refusal> refusals =
                new ArrayList<>(Rules.needed(e.name(), "name", "what was looked for", "Say what it is"));
        if (!known(bench, e.suspect())) {
            refusals.add(new Refusal(
                    "suspect",
                    "what was looked for",
                    "nothing of that name is suspected here",
                    "Load the page again, or type it under something else"));
        }
        return refusals;
    }

    private static boolean known(Workbench bench, String suspect) {
        if (suspect.startsWith(Entry.SuspectLooked.OTHER)) {
            return suspect.length() > Entry.SuspectLooked.OTHER.length();
        }
        return CauseTables.shipped().cause(suspect).isPresent()
                || bench.unit().type().symptoms().stream()
                        .flatMap(symptom -> symptom.causes().keySet().stream())
                        .anyMatch(name -> suspect.equals(Suspect.OWN + name));
    }
}
