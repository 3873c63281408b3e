package shimwright.bench.store.verify;

import java.util.ArrayList;
import java.util.List;
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
            return new VerificationReport(sound, remarks, faults);
        }
    }
}
