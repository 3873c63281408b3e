package shimwright.rebuild.plan.blocking;

import shimwright.rebuild.unit.model.Step;

/**
 * What the drawing says of two steps.
 *
 * @param kind how the file compares
 * @param first the step that must come first by the drawing; with {@link Kind#NEITHER} the one that the file puts first
 * @param then the other step
 * @param item name of the item that the first step puts in
 * @param other name of the item that the other step puts in
 * @param why the measures that stop it
 */
public record Finding(Kind kind, Step first, Step then, String item, String other, String why) {

    /** How the file compares with the drawing. */
    public enum Kind {
        /** The file has the order already. */
        AGREES,
        /** The file leaves the two free. */
        MISSING,
        /** Neither passes the other along the axis, and the file names no other route for the later one. */
        NEITHER,
        /** The file has it the other way round. */
        CONTRADICTED
    }

    /** True where a person should look at it. */
    public boolean differs() {
        return kind != Kind.AGREES;
    }

    String key() {
        return first.id() + " " + then.id();
    }

    /** The finding in a sentence. */
    public String sentence() {
        String stops = "the " + item + " cannot pass the " + other + " along its axis: " + why;
        return switch (kind) {
            case AGREES -> first.id() + " comes before " + then.id() + ": " + stops + ".";
            case MISSING ->
                "by the drawing " + first.id() + " must come before " + then.id() + ": " + stops + ". Add " + first.id()
                        + " to after of " + then.id() + ", or look at the measures.";
            case NEITHER ->
                stops + ", and the other way round. Say under route of the later step (" + first.id() + " or "
                        + then.id() + ") which way it goes in, or look at the measures.";
            case CONTRADICTED ->
                "the file has " + then.id() + " before " + first.id() + ", but " + stops
                        + ". Turn the order round, say another route, or look at the measures.";
        };
    }
}
