package shimwright.bench.picture.section;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import shimwright.rebuild.unit.model.Item;

/**
 * What the section drawing shows of a job.
 *
 * @param fitted items that are in the unit
 * @param inHand items of the step at hand
 * @param clearance the clearance whose loop is drawn below the section; empty for none
 * @param trial items that are in for a trial only
 * @param verdicts how items stand at an inspection, by id; where there are any, nothing else is shown
 */
public record SectionState(
        Set<String> fitted,
        Set<String> inHand,
        Optional<String> clearance,
        Set<String> trial,
        Map<String, Stand> verdicts) {

    /** Nothing fitted yet. */
    public static final SectionState EMPTY = new SectionState(Set.of(), Set.of(), Optional.empty(), Set.of(), Map.of());

    public SectionState {
        fitted = Set.copyOf(fitted);
        inHand = Set.copyOf(inHand);
        trial = Set.copyOf(trial);
        verdicts = Map.copyOf(verdicts);
    }

    /** The same with these items fitted. */
    public SectionState withFitted(Set<String> items) {
        return new SectionState(items, inHand, clearance, trial, verdicts);
    }

    /** The same with these items in the hand. */
    public SectionState withInHand(Set<String> items) {
        return new SectionState(fitted, items, clearance, trial, verdicts);
    }

    /** The same with the loop of this clearance. */
    public SectionState withClearance(String id) {
        return new SectionState(fitted, inHand, Optional.of(id), trial, verdicts);
    }

    /** The same with these items in for a trial only. */
    public SectionState withTrial(Set<String> items) {
        return new SectionState(fitted, inHand, clearance, items, verdicts);
    }

    /** The same as an inspection has it. */
    public SectionState withVerdicts(Map<String, Stand> items) {
        return new SectionState(fitted, inHand, clearance, trial, items);
    }

    /** How an item stands; a fitted one that the unit file calls a trial part is in for the trial only. */
    Stand of(Item item) {
        if (!verdicts.isEmpty()) {
            return verdicts.getOrDefault(item.id(), Stand.COMING);
        }
        if (inHand.contains(item.id())) {
            return Stand.IN_HAND;
        }
        if (trial.contains(item.id()) || (item.trial() && fitted.contains(item.id()))) {
            return Stand.TRIAL;
        }
        return fitted.contains(item.id()) ? Stand.FITTED : Stand.COMING;
    }

    /** How an item stands, and so how it is drawn. */
    public enum Stand {
        COMING("still to come"),
        FITTED("fitted"),
        TRIAL("in for the trial only"),
        IN_HAND("in your hand"),
        GOOD("good, or reused"),
        OPEN("to be decided"),
        REWORK("to be reworked"),
        REPLACE("to be replaced");

        private final String words;

        Stand(String words) {
            this.words = words;
        }

        String words() {
            return words;
        }
    }
}
