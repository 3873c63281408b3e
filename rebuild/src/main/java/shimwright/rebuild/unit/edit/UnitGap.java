package shimwright.rebuild.unit.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;

/**
 * One thing that a unit file does not say yet.
 *
 * @param ability what cannot be done without it
 * @param lacks what is not known, in a sentence
 * @param kind which form of the unit's page mends it
 */
public record UnitGap(String ability, String lacks, Kind kind) {
    private static final int NAMED = 4;

    /** What is asked for, by the form that takes it. */
    public enum Kind {
        CLEARANCE("#clearance"),
        FASTENER("#fastener"),
        FLUID("#fluid"),
        MASS("#mass"),
        PART("#part"),
        ORDER("/steps"),
        UNREAD("/steps"),
        WEAR("/wear_limits"),
        PROOF("/hold_points"),
        DRAWING("/unit"),
        VARIANT("/tell_tales");

        private final String at;

        Kind(String at) {
            this.at = at;
        }

        /** Where it is mended, behind the address of the unit type: a place of its page, or the page of a section. */
        public String at() {
            return at;
        }
    }

    /**
     * What a unit file lacks, the most useful fact first; empty for a file that can do everything the program has.
     *
     * @param type as it stands
     */
    public static List<UnitGap> of(UnitType type) {
        List<UnitGap> gaps = new ArrayList<>();
        if (type.mass() == 0) {
            gaps.add(new UnitGap("Lift it", "Nobody has said what it weighs.", Kind.MASS));
        }
        long habit = type.steps().stream()
                .filter(step -> step.after().containsValue(Step.Why.HABIT))
                .count();
        if (habit > 0) {
            gaps.add(new UnitGap(
                    "Plan the build",
                    habit + " steps wait for another by habit alone; the strip-down tells what they wait for.",
                    Kind.ORDER));
        }
        if (type.clearances().isEmpty()) {
            gaps.add(new UnitGap("Set clearances", "No clearance with its limits and shims is there.", Kind.CLEARANCE));
        }
        if (type.fasteners().isEmpty()) {
            gaps.add(new UnitGap("Tighten", "No bolt with thread, count and torque is there.", Kind.FASTENER));
        }
        if (type.fluid().volume() == 0) {
            gaps.add(new UnitGap("Fill", "Nobody has said which oil and how much.", Kind.FLUID));
        }
        List<Item> bare = type.items().stream()
                .filter(item -> item.renew() && item.part().isBlank())
                .toList();
        if (!bare.isEmpty()) {
            String names = bare.stream().limit(NAMED).map(Item::name).collect(Collectors.joining(", "));
            String more = bare.size() > NAMED ? " and " + (bare.size() - NAMED) + " more" : "";
            gaps.add(new UnitGap("Order", "Renewed parts without number or stamp: " + names + more + ".", Kind.PART));
        }
        if (type.wearLimits().isEmpty()) {
            gaps.add(new UnitGap("Inspect", "No wear limit is there.", Kind.WEAR));
        }
        if (type.holdPoints().isEmpty()) {
            gaps.add(new UnitGap("Prove", "No hold point and no proof is there.", Kind.PROOF));
        }
        if (type.section().scheme()) {
            gaps.add(new UnitGap(
                    "Draw to scale",
                    "The drawing is a scheme: measure shafts and parts, then say that it is none.",
                    Kind.DRAWING));
        }
        if (type.tellTales().isEmpty() && type.variants().size() > 1) {
            gaps.add(new UnitGap(
                    "Tell variants apart", "What would tell another variant is not written.", Kind.VARIANT));
        }
        unread(type, gaps);
        return List.copyOf(gaps);
    }

    /** What stands in the file and no step reads yet. */
    private static void unread(UnitType type, List<UnitGap> gaps) {
        List<String> clearances = type.clearances().stream()
                .filter(c ->
                        type.steps().stream().noneMatch(step -> step.clearance().equals(c.id())))
                .map(Clearance::name)
                .toList();
        if (!clearances.isEmpty()) {
            gaps.add(new UnitGap(
                    "Set clearances",
                    "No step reads " + String.join(", ", clearances) + ": name it under the clearance of a step.",
                    Kind.UNREAD));
        }
        List<String> holds = type.holdPoints().stream()
                .filter(hold -> !type.proof().contains(hold.id())
                        && type.steps().stream().noneMatch(step -> step.hold().equals(hold.id())))
                .map(UnitType.HoldPoint::id)
                .toList();
        if (!holds.isEmpty()) {
            gaps.add(new UnitGap(
                    "Prove",
                    "No step stands in hold point " + String.join(", ", holds) + ": name it under the hold of a step.",
                    Kind.UNREAD));
        }
    }
}
