package shimwright.rebuild.money;

import java.util.List;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;

/**
 * How it stands with the owner.
 *
 * @param say in a sentence
 * @param ask true where the owner is to be asked, for the first time or again
 * @param why what changed since the owner agreed; empty where nothing did
 */
public record Consent(String say, boolean ask, List<String> why) {
    public Consent {
        why = List.copyOf(why);
    }

    /**
     * The standing of a job.
     *
     * @param reckoned hundredths of the currency that it comes to as far as is known now; 0 where no rate is kept
     */
    public static Consent of(Job job, long reckoned) {
        Said<Entry.Quoted> quoted = job.money().quoted();
        Said<Entry.OwnerAnswered> answered = job.money().answered();
        if (quoted == null) {
            return new Consent("The owner was not told yet what it may cost.", true, List.of());
        }
        if (answered == null || answered.number() < quoted.number()) {
            return new Consent(
                    answered == null ? "The owner was told and has not answered." : "The owner was told anew.",
                    true,
                    List.of());
        }
        if (answered.what().says() == Entry.OwnerSays.DECLINED) {
            return new Consent("The owner wants it back as it is.", false, List.of());
        }
        List<String> since = job.judged().values().stream()
                .filter(said -> said.number() > answered.number())
                .filter(said -> said.what().decision() != Entry.Decision.REUSE)
                .filter(said -> quoted.what().lines().stream()
                        .noneMatch(line -> line.what().endsWith(said.what().what())))
                .map(said -> said.what().what() + ": " + said.what().reason())
                .toList();
        boolean over = reckoned > answered.what().upTo();
        boolean again = over || !since.isEmpty();
        String agreed = answered.what().says() == Entry.OwnerSays.LESS ? "agreed to less" : "agreed";
        return new Consent(
                again
                        ? "The owner " + agreed + ", but "
                                + (over ? "it comes to more than that by now." : "more was found since.")
                        : "The owner " + agreed + ".",
                again,
                since);
    }
}
