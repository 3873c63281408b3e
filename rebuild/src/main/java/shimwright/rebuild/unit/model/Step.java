package shimwright.rebuild.unit.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** One assembly operation of a unit type. */
public record Step(
        @Field("short id, printed beside the step") String id,

        @Field("what to do, as an order to the person at the bench")
        String todo,

        @Field(value = "station or orientation the case stands in", refersTo = "stations")
        String at,

        Order order,

        Time time,

        @Field(value = "tools and gauges to lay out", absent = "[]", refersTo = "tools")
        List<String> tools,

        Undoing undoing,
        Care care,
        Parts parts,
        Reading reading,

        @Field(value = "dangers whose usual cautions are shown", absent = "[]")
        List<Danger> dangers,

        @Field(value = "persons needed", absent = "1") int persons,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {

    /** What the step waits for. */
    @FieldGroup
    public record Order(
            @Field(value = "steps that must be done before, each with why", absent = "{}", refersTo = "steps")
            Map<String, Why> after,

            @Field(value = "reason, by the step it waits for", absent = "{}", refersTo = "steps")
            Map<String, String> because) {}

    /** How long the step takes. */
    @FieldGroup
    public record Time(
            @Field(value = "time for the step alone", kind = Kind.TIME)
            double duration,

            @Field(value = "where the time comes from: measured, told, common practice or guess", absent = "")
            String origin) {}

    /** What undoing the step brings. */
    @FieldGroup
    public record Undoing(
            @Field(value = "what undoing it costs", absent = "free")
            Undo undo,

            @Field(value = "time to undo it, without what stands on it", kind = Kind.TIME, absent = "0 s")
            double undoTime,

            @Field(value = "what undoing it destroys, by name", absent = "[]")
            List<String> destroys) {}

    /** What must be heeded at the step. */
    @FieldGroup
    public record Care(
            @Field(value = "hold point that must be accepted with this step", absent = "", refersTo = "hold_points")
            String hold,

            @Field(
                    value =
                            "time windows the step stands in; one that no step opens or closes is a clock of the step itself",
                    absent = "[]",
                    refersTo = "windows",
                    formerly = "window")
            List<String> windows,

            @Field(value = "the mistake that is easily made here", absent = "")
            String trap,

            @Field(value = "which way the part goes in, and what is in its way otherwise", absent = "")
            String route) {}

    /** What goes in, comes out and is used up. */
    @FieldGroup
    public record Parts(
            @Field(
                    value = "items put onto a sub-assembly here, which a later step brings into the unit",
                    absent = "[]",
                    refersTo = "items")
            List<String> builds,

            @Field(value = "items that are in the unit once it is done", absent = "[]", refersTo = "items")
            List<String> installs,

            @Field(value = "items that are taken out again (trial parts)", absent = "[]", refersTo = "items")
            List<String> removes,

            @Field(value = "fasteners tightened here", absent = "[]", refersTo = "fasteners")
            List<String> fasteners,

            @Field(
                    value = "how many of a set are tightened here, by fastener; all of those that are not named",
                    absent = "{}",
                    refersTo = "fasteners")
            Map<String, Integer> tightened,

            @Field(value = "consumables used here", absent = "[]", refersTo = "consumables")
            List<String> consumables) {}

    /** The reading of a clearance that is taken at the step. */
    @FieldGroup
    public record Reading(
            @Field(value = "clearance that is read here", absent = "", refersTo = "clearances")
            String clearance,

            @Field(value = "which reading of that clearance", absent = "none")
            Phase phase) {}

    /** Why one step must wait for another. */
    public enum Why {
        /** The same part, or its sub-assembly, must exist first. */
        SAME_PART("The part, or what it is built into, must be there first."),
        /** The later part would be blocked by geometry or covers. */
        BLOCKED("It could not go in afterwards."),
        /** It must be read before it is shut in. */
        MEASURE_FIRST("It must be read before it is shut in."),
        /** Heat or force of the earlier step would destroy the later part. */
        WOULD_BE_KILLED("Heat or force of the earlier step would destroy it."),
        /** It waits for a cure, a cooling or a delivery. */
        WAITS("It has to cure, to cool or to arrive first."),
        /** Habit only; may be dropped. */
        HABIT("Habit only; it may be dropped.");

        private final String words;

        Why(String words) {
            this.words = words;
        }

        /** The reason in general words. */
        public String words() {
            return words;
        }
    }

    /** What undoing a step costs. */
    public enum Undo {
        FREE,
        SLOW,
        HEAT,
        DESTROYS
    }

    /** Which reading of a clearance is taken at a step. */
    public enum Phase {
        NONE,
        /** With a trial pack, to choose the pack. */
        TRIAL,
        /** With the chosen pack, to accept the clearance. */
        FINAL,
        /** Once more after something that could have moved it. */
        AGAIN
    }

    /** A danger whose usual cautions are shown. */
    public enum Danger {
        PRESS,
        HEAT,
        COLD,
        SPRING,
        LIFT,
        AIR,
        SOLVENT,
        CHEMICAL,
        EDGE
    }

    /**
     * A step of a job's own that the unit file does not have: one person, undone freely, waiting by habit.
     *
     * @param duration s
     */
    public static Step own(String id, String todo, String at, double duration, List<String> after) {
        Map<String, Why> needs = new LinkedHashMap<>();
        after.forEach(step -> needs.put(step, Why.HABIT));
        return new Step(
                id,
                todo,
                at,
                new Order(Map.copyOf(needs), Map.of()),
                new Time(duration, ""),
                List.of(),
                new Undoing(Undo.FREE, 0, List.of()),
                new Care("", List.of(), "", ""),
                new Parts(List.of(), List.of(), List.of(), List.of(), Map.of(), List.of()),
                new Reading("", Phase.NONE),
                List.of(),
                1,
                Set.of());
    }

    /** How many of a set this step tightens. */
    public int tightens(Fastener fastener) {
        return tightened().getOrDefault(fastener.id(), fastener.quantity());
    }

    /** True where undoing the step destroys something: a one-way step. */
    public boolean oneWay() {
        return undo() == Undo.DESTROYS;
    }

    /** The steps that must be done before, each with why. */
    public Map<String, Why> after() {
        return order.after();
    }

    /** The reason in words, by the step it waits for. */
    public Map<String, String> because() {
        return order.because();
    }

    /** Time for the step alone, s. */
    public double duration() {
        return time.duration();
    }

    /** Where that time comes from; may be empty. */
    public String origin() {
        return time.origin();
    }

    /** What undoing the step costs. */
    public Undo undo() {
        return undoing.undo();
    }

    /** Time to undo it without what stands on it, s. */
    public double undoTime() {
        return undoing.undoTime();
    }

    /** What undoing it destroys, by name. */
    public List<String> destroys() {
        return undoing.destroys();
    }

    /** Its mark with the first sentence of what is done, as another sentence names it. */
    public String named() {
        int end = todo().indexOf(". ");
        String first = end < 0 ? todo() : todo().substring(0, end);
        return id() + " (" + (first.endsWith(".") ? first.substring(0, first.length() - 1) : first) + ")";
    }

    /** The hold point accepted with the step; empty for none. */
    public String hold() {
        return care.hold();
    }

    /** The time windows the step stands in. */
    public List<String> windows() {
        return care.windows();
    }

    /** The mistake that is easily made here; may be empty. */
    public String trap() {
        return care.trap();
    }

    /** Which way the part goes in; may be empty. */
    public String route() {
        return care.route();
    }

    /** Items put onto a sub-assembly here. */
    public List<String> builds() {
        return parts.builds();
    }

    /** Items that are in the unit once the step is done. */
    public List<String> installs() {
        return parts.installs();
    }

    /** Items that are taken out again. */
    public List<String> removes() {
        return parts.removes();
    }

    /** Fasteners tightened here. */
    public List<String> fasteners() {
        return parts.fasteners();
    }

    /** How many of a set are tightened here, by fastener; all of those not named. */
    public Map<String, Integer> tightened() {
        return parts.tightened();
    }

    /** Consumables used here. */
    public List<String> consumables() {
        return parts.consumables();
    }

    /** The clearance that is read here; empty for none. */
    public String clearance() {
        return reading.clearance();
    }

    /** Which reading of that clearance is taken. */
    public Phase phase() {
        return reading.phase();
    }
}
