package shimwright.bench.store.verify;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.outcome.Refusal;

/**
 * What a check of kept things came to.
 *
 * @param sound what was compared and is as it was kept
 * @param remarks what could not be compared, or may interest the person
 * @param faults what is not as it was kept; empty for something whole
 */
public record VerificationReport(List<String> sound, List<String> remarks, List<Refusal> faults) {
    public VerificationReport {
        sound = List.copyOf(sound);
        remarks = List.copyOf(remarks);
        faults = List.copyOf(faults);
    }

    /** Whether nothing was found. */
    public boolean isWhole() {
        return faults.isEmpty();
    }

    /** Gathers a report. */
    static final class Gathering {
        private static final int TOLD = 5;

        private final List<String> sound = new ArrayList<>();
        private final List<String> remarks = new ArrayList<>();
        private final List<Refusal> faults = new ArrayList<>();

        void sound(String what) {
            sound.add(what);
        }

        void remark(String what) {
            remarks.add(what);
        }

        void fault(Refusal what) {
            faults.add(what);
        }

        void faults(List<Refusal> found) {
            faults.addAll(found);
        }

        /** Says that a part is sound unless it brought faults. */
        void part(List<Refusal> found, String sentence) {
            faults.addAll(found);
            if (found.isEmpty()) {
                sound.add(sentence);
            }
        }

        VerificationReport done() {
            return new VerificationReport(few(sound), few(remarks), faults);
        }

        /** Sentences that differ by a name or a number alone are told a few times and then counted: nobody reads ten thousand. Faults are all told. */
        private static List<String> few(List<String> all) {
            Map<String, Integer> seen = new HashMap<>();
            all.forEach(sentence -> seen.merge(kind(sentence), 1, Integer::sum));
            Map<String, Integer> told = new HashMap<>();
            List<String> few = new ArrayList<>();
            for (String sentence : all) {
                String kind = kind(sentence);
                int before = told.merge(kind, 1, Integer::sum) - 1;
                int left = seen.getOrDefault(kind, 0) - TOLD;
                if (before < TOLD || left == 1) {
                    few.add(sentence);
                } else if (before == TOLD) {
                    few.add("and " + left + " more such lines");
                }
            }
            return few;
        }

        /** A sentence without what names one job, entry or moment in it. */
        private static String kind(String sentence) {
            return sentence.replaceAll("hand-back of .+ is", "hand-back is").replaceAll("[0-9][-0-9:.TZ]*", "0");
        }
    }
}
