package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.quantity.Kind;

/** The whole of a unit file: one model with its variants. Every list may be restricted to variants by {@code only}. */
public record UnitType(
        Identity identity,
        @Field("materials by id") Map<String, Material> materials,
        Bench bench,
        Parts parts,
        Setting setting,
        Renewal renewal,
        Build build,

        @Field(value = "symptoms and their causes", absent = "[]")
        List<Symptom> symptoms,

        Handling handling,

        @Field(value = "reasons why one step waits for another, by id", absent = "{}")
        Map<String, String> reasons,

        @Field(value = "lessons of earlier jobs", absent = "[]")
        List<String> lessons,

        @Field(
                value = "openings through which items are reached without taking apart what stands on them",
                absent = "[]")
        List<Opening> openings)
        implements UnitKeys {

    /**
     * The unit of one variant: everything that holds for other variants only is gone, and so is every mention of it.
     *
     * @param variant a key of {@link #variants()}; any other is a bug and throws
     */
    public Unit resolve(String variant) {
        if (!variants().containsKey(variant)) {
            throw new IllegalArgumentException(id() + " has no variant " + variant);
        }
        UnitType kept = VariantFilter.filter(this, variant);
        return new Unit(kept, variant)
                .withClearances(kept.clearances().stream()
                        .map(clearance -> LoopGrowth.stated(clearance, kept))
                        .toList());
    }

    /** One variant. */
    public record Variant(
            @Field("full name") String name,

            @Field(value = "what is different", absent = "[]")
            List<String> differs,

            @Field(value = "kit to order", absent = "", refersTo = "kits")
            String kit) {}

    /** What tells variants apart; a strong one is built into the unit, a weak one travels with a swapped part. */
    public record TellTale(
            @Field("short id") String id,
            @Field("where to look or what to do") String look,
            @Field("strong or weak") Weight weight,

            @Field(value = "what each variant shows; a number where it is counted or measured", refersTo = "variants")
            Map<String, String> shows,

            @Field(value = "a counted number may differ by this", absent = "0")
            double within,

            @Field(value = "remark", absent = "") String note) {}

    /** How far a tell-tale can be trusted. */
    public enum Weight {
        STRONG,
        WEAK
    }

    /** Oil to fill. */
    public record Fluid(
            @Field("specification and grade") String spec,
            @Field(value = "fill", kind = Kind.VOLUME) double volume,
            @Field("where the level is read") String level) {}

    /** A material of the unit. */
    public record Material(
            @Field("name") String name,

            @Field(value = "linear expansion", kind = Kind.EXPANSION)
            double expansion,

            @Field(value = "rise above 20 degC at working heat", kind = Kind.TEMPERATURE_DIFFERENCE)
            double hotRise,

            @Field(value = "material of the worksheets that it is like, such as aluminum a380", absent = "")
            Optional<shimwright.mechanics.fit.Material> like) {}

    /** A station or an orientation of the case. */
    public record Station(
            @Field("name shown to the person") String name,

            @Field(value = "true where the case itself stands in it", absent = "false")
            boolean holdsCase,

            @Field(
                    value = "how many steps can be done there at the same time; on the case it is always one",
                    absent = "1")
            int room) {}

    /** Time windows. */
    public record Window(
            @Field("short id") String id,
            @Field("what the window is") String name,

            @Field(
                    value = "longest time from the end of the opening step to the end of the closing step",
                    kind = Kind.TIME)
            double longest,

            @Field(value = "step that opens it; the step itself when absent", absent = "", refersTo = "steps")
            String opens,

            @Field(value = "step that closes it; the step itself when absent", absent = "", refersTo = "steps")
            String closes,

            @Field("why") String why) {}

    /** A choice between possible orders. */
    public record Choice(
            @Field("short id") String id,
            @Field("what is chosen") String about,
            @Field("the sides by name") Map<String, Side> sides,

            @Field("the side taken unless the person says otherwise")
            String usual) {}

    /** One side of a choice: order that it adds and drops, steps that it leaves out. */
    public record Side(
            @Field(value = "pairs: first before second", absent = "[]", refersTo = "steps")
            List<List<String>> before,

            @Field(value = "pairs no longer needed", absent = "[]", refersTo = "steps")
            List<List<String>> drops,

            @Field(value = "steps left out", absent = "[]", refersTo = "steps")
            List<String> skips,

            @Field(
                    value = "extra time against the steps that are left; less than 0 where it saves",
                    kind = Kind.TIME,
                    absent = "0 min")
            double extra,

            @Field("why one would take it") String why) {}

    /** A symptom with its causes and their rough shares in percent. */
    public record Symptom(
            @Field("short id") String id,
            @Field("what the driver says") String says,
            @Field("causes with their share in percent") Map<String, Double> causes) {}

    /** What must be read and accepted before the next one-way step. */
    public record HoldPoint(
            @Field("short id") String id,
            @Field("what is read") String what,
            @Field("the readings, all of them") List<Check> checks,

            @Field(
                    value = "chance that it is not accepted at the first reading, 0 to 1; 0 where nobody says",
                    absent = "0")
            double chance,

            @Field(
                    value = "steps that are done again when it is not accepted; what stands on them comes apart",
                    absent = "[]",
                    refersTo = "steps")
            List<String> reopens,

            @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
            Set<String> only) {}

    /** One reading of a hold point: measured against limits, a clearance accepted, or attested yes. */
    public record Check(
            @Field("short id, unique within the hold point") String id,
            @Field("what is read and how") String what,

            @Field(value = "kind of quantity; none for an attested check", absent = "NONE")
            CheckKind kind,

            @Field(value = "lower limit with unit", absent = "", kindFrom = "kind")
            Optional<Quantity> lower,

            @Field(value = "upper limit with unit", absent = "", kindFrom = "kind")
            Optional<Quantity> upper,

            @Field(
                    value = "what it is meant to be, with unit; a reading far from all of them is asked about",
                    absent = "[]",
                    kindFrom = "kind")
            List<Quantity> nominal,

            @Field(
                    value = "how far from its nominal a reading can be at all, with unit",
                    absent = "",
                    kindFrom = "kind")
            Optional<Quantity> within,

            @Field(value = "hold point and check, as H08/depth, to whose reading the limits are added", absent = "")
            String relativeTo,

            @Field(value = "how many places are read; of each piece where pieces are named", absent = "1")
            int places,

            @Field(value = "pieces read one by one, by name", absent = "[]")
            List<String> pieces,

            @Field(value = "largest minus smallest may be this, with unit", absent = "", kindFrom = "kind")
            Optional<Quantity> spread,

            @Field(value = "what of the readings is judged", absent = "each")
            Statistic judgedOn,

            @Field(value = "value = reading x this + offset", absent = "1")
            double readingFactor,

            @Field(value = "value = reading x factor + this, with unit", absent = "", kindFrom = "kind")
            Optional<Quantity> readingOffset,

            @Field(value = "tool or gauge it is read with", absent = "", refersTo = "tools")
            String gauge,

            @Field(value = "clearance whose acceptance is meant", absent = "", refersTo = "clearances")
            String clearance,

            @Field(value = "what answers it without being asked; none where a person reads or says it", absent = "none")
            WorkedOut workedOut,

            @Field(
                    value = "where the limits come from: printed, standard, measured, told, common practice or guess",
                    absent = "")
            String origin,

            @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
            Set<String> only)
            implements Measurable {

        @Override
        public List<Quantity> stated() {
            Stream<Quantity> limits = Stream.of(lower, upper, spread).flatMap(Optional::stream);
            return Stream.concat(limits, nominal.stream()).toList();
        }

        /** True where a person reads it or says yes or no to it at the hold point itself. */
        public boolean asked() {
            return clearance.isBlank() && workedOut == WorkedOut.NONE;
        }

        /** True where it has limits and the file says of them that they are a guess. */
        public boolean guessed() {
            return !stated().isEmpty() && Origin.guess(origin);
        }

        /** Its limits in words, {@code 0.8 N.m to 1.9 N.m}; empty where it has none. */
        public String limits() {
            if (lower.isPresent() && upper.isPresent()) {
                return lower.get() + " to " + upper.get();
            }
            return lower.map(limit -> "at least " + limit)
                    .or(() -> upper.map(limit -> "at most " + limit))
                    .orElse("");
        }
    }

    /** A check that follows from readings which are kept already. */
    public enum WorkedOut {
        /** Read or said by a person. */
        NONE,
        /** The backlash answered to the change of the trial pack as the effects ask, of the check's clearance. */
        SLOPE,
        /** No place of the trial reading stands off the others, of the check's clearance. */
        NO_ODD_PLACE,
        /** Every pack of clearances that share shims is chosen and leaves its clearance within limits, or was decided on. */
        CHOICES,
        /** Every other hold point of a step to be done is read and accepted, or passed with a reason. */
        HOLD_POINTS
    }

    /** What kind of reading a check or a wear limit is. */
    public enum CheckKind {
        /** Attested yes. */
        NONE(Kind.NUMBER),
        LENGTH(Kind.LENGTH),
        TORQUE(Kind.TORQUE),
        FORCE(Kind.FORCE),
        PRESSURE(Kind.PRESSURE),
        ANGLE(Kind.ANGLE),
        NUMBER(Kind.NUMBER);

        private final Kind quantity;

        CheckKind(Kind quantity) {
            this.quantity = quantity;
        }

        /** The kind of quantity that is read; a plain number for an attested check, which reads none. */
        public Kind quantity() {
            return quantity;
        }
    }
}
