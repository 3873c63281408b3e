package shimwright.rebuild.act;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.complaint.CauseTables;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.workbench.Workbench;

/** The complaint: what is wrong, as a short check puts it, and what was looked at for it. */
public final class ComplaintActs {
    private ComplaintActs() {}

    /** What is complained of is said, all of it: what was said before does not hold any more. */
    @MakesEntries(Entry.ComplaintSaid.class)
    public record SayComplaint(
            @ActInput("answers") Map<String, String> answers,
            @ActInput("symptoms") List<String> symptoms,
            @ActInput("how far it is apart") String apart)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            Map<String, String> said = new LinkedHashMap<>();
            answers.forEach((question, answer) -> {
                if (!answer.isBlank()) {
                    said.put(question, answer);
                }
            });
            return IntakeActs.kept(
                    bench,
                    new Entry.ComplaintSaid(said, symptoms, apart, words(bench, said)),
                    "Kept: what is complained of");
        }

        private List<String> words(Workbench bench, Map<String, String> said) {
            List<String> words = new ArrayList<>();
            bench.unit().type().symptoms().stream()
                    .filter(symptom -> symptoms.contains(symptom.id()))
                    .forEach(symptom -> words.add(symptom.says()));
            CauseTables.shipped().questions().stream()
                    .map(question -> question.answers().getOrDefault(said.getOrDefault(question.id(), ""), ""))
                    .filter(answer -> !answer.isEmpty())
                    .forEach(words::add);
            return words;
        }
    }

    /** A suspect was looked at. */
    @MakesEntries(Entry.SuspectLooked.class)
    public record LookAt(
            @ActInput("suspect") String suspect,

            @ActInput(value = "what was looked for", missing = "Say what it is")
            String name,

            @ActInput(value = "what the look came to", missing = "Say found, in order or cannot tell")
            Entry.Seen seen,

            @ActInput("what you saw") String words)
            implements Act.OfJob {
        @Override
        public Outcome<ActResult> on(Workbench bench, ActContext around) {
            String id = suspect.isBlank() ? Entry.SuspectLooked.OTHER + name : suspect;
            return IntakeActs.kept(bench, new Entry.SuspectLooked(id, name, seen, words), "Kept: " + name);
        }
    }
}
