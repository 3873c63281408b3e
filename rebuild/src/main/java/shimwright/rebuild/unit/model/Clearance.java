package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/**
 * Something set by selection. Values are signed as play: an end play is positive, a preload negative. A distance (such
 * as a pinion's mounting distance) is the distance itself.
 */
public record Clearance(
        @Field("short id") String id,
        @Field("name in the trade's words") String name,
        @Field("what kind of clearance it is") Sense sense,
        Limits limits,
        Measuring measuring,

        @Field("where shims go, the position chosen for this clearance first")
        List<Position> positions,

        @Field(
                value =
                        "lengths whose signed sum is the clearance; their nominals must add up to a value within the limits",
                absent = "[]")
        List<Length> loop,

        Heating heating,

        @Field(value = "clearances that must be set before this one", absent = "[]", refersTo = "clearances")
        List<String> dependsOn,

        @Field(value = "turning torque that proves a preload", absent = "[]")
        List<Drag> drag,

        @Field(value = "further limits or couplings in words", absent = "[]")
        List<String> notes,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {

    /** The values allowed, signed as play. */
    @FieldGroup
    public record Limits(
            @Field(value = "lower limit, signed as play", kind = Kind.LENGTH)
            double lower,

            @Field(value = "upper limit, signed as play", kind = Kind.LENGTH)
            double upper,

            @Field(value = "value aimed at, signed as play", kind = Kind.LENGTH)
            double aim,

            @Field(
                    value = "how far one digit etched on the part moves limits and aim; 0 for none",
                    kind = Kind.LENGTH,
                    absent = "0 mm")
            double etchedStep,

            @Field(value = "check that reads the etched digits, as hold point/check", absent = "")
            String etchedBy,

            @Field(
                    value = "where the limits come from: printed, standard, measured, told, common practice or guess",
                    absent = "")
            String origin) {}

    /** How the clearance is read. */
    @FieldGroup
    public record Measuring(
            @Field("how it is read") Method method,

            @Field(value = "gauge it is read with", refersTo = "tools")
            String gauge,

            @Field(
                    value = "gauge for the reading with trial pieces, where it is another",
                    absent = "",
                    refersTo = "tools")
            String trialGauge,

            @Field(
                    value = "gauge for the readings with the chosen pack, where it is another",
                    absent = "",
                    refersTo = "tools")
            String finalGauge,

            @Field(
                    value = "method difference: the two lengths that are read, the first less the second counts",
                    absent = "[]")
            List<ReadLength> difference,

            @Field(value = "indicators read at once (1 or 2), or places round the ring for method places", absent = "1")
            int indicators,

            @Field(value = "fewest rounds that count as proof", absent = "3")
            int rounds,

            @Field(value = "readings that agree within this are settled", kind = Kind.LENGTH)
            double settleWithin,

            @Field(value = "clearance = reading x this + offset", absent = "1")
            double readingFactor,

            @Field(value = "clearance = reading x factor + this", kind = Kind.LENGTH, absent = "0 mm")
            double readingOffset,

            @Field("how to seat and read, one order per line")
            List<String> how,

            @Field(value = "where the reading is taken, for the record", absent = "")
            String place) {}

    /** One of two lengths whose difference is the reading. */
    public record ReadLength(
            @Field("what is read, from where to where") String name,

            @Field(value = "gauge it is read with; that of the clearance when absent", absent = "", refersTo = "tools")
            String gauge) {}

    /** What becomes of it at working heat. */
    @FieldGroup
    public record Heating(
            @Field(
                    value =
                            "change of the clearance at working heat, signed; when absent, by the loop and its materials",
                    kind = Kind.LENGTH,
                    absent = "0 mm")
            double growth,

            @Field(value = "how the growth comes about", absent = "")
            String growthNote) {}

    /** The gauge that the file names for a reading; of a difference that of the first length. */
    public String gauge(Step.Phase phase) {
        return gauges(phase).get(0);
    }

    /** The gauges that the file names for a reading: one, or of a difference one for each of its two lengths. */
    public List<String> gauges(Step.Phase phase) {
        String own = phase == Step.Phase.TRIAL ? trialGauge() : finalGauge();
        String usual = own.isEmpty() ? gauge() : own;
        return method() == Method.DIFFERENCE
                ? difference().stream()
                        .map(length -> length.gauge().isEmpty() ? usual : length.gauge())
                        .toList()
                : List.of(usual);
    }

    /** How many numbers one round has. */
    public int numbers() {
        return method() == Method.FEELER || method() == Method.DIFFERENCE ? 2 : indicators();
    }

    /** The clearance that the numbers of one round stand for where they are one reading; their mean, or their difference. */
    public double value(List<Double> round) {
        double reading = method() == Method.DIFFERENCE
                ? round.get(0) - round.get(1)
                : round.stream().mapToDouble(v -> v).average().orElseThrow();
        return reading * readingFactor() + readingOffset();
    }

    /** True where the file says of the limits that they are a guess. */
    public boolean guessed() {
        return Origin.guess(origin())
                || notes.stream()
                        .map(note -> note.toLowerCase(Locale.ROOT))
                        .anyMatch(note -> note.startsWith("limits:") && note.contains("guess"));
    }

    /** The same clearance with limits and aim moved, as a deviation etched on the part asks. */
    public Clearance movedBy(double metres) {
        Limits moved =
                new Limits(lower() + metres, upper() + metres, aim() + metres, etchedStep(), etchedBy(), origin());
        return new Clearance(id, name, sense, moved, measuring, positions, loop, heating, dependsOn, drag, notes, only);
    }

    /** The same clearance with limits, aim and growth as they were at another time; m, signed as play. */
    public Clearance as(double lower, double upper, double aim, double growth) {
        Limits then = new Limits(lower, upper, aim, etchedStep(), etchedBy(), origin());
        Heating heat = new Heating(growth, heating.growthNote());
        return new Clearance(id, name, sense, then, measuring, positions, loop, heat, dependsOn, drag, notes, only);
    }

    /** The same clearance with another growth. */
    Clearance heated(Heating hot) {
        return new Clearance(id, name, sense, limits, measuring, positions, loop, hot, dependsOn, drag, notes, only);
    }

    /** What kind of clearance it is. */
    public enum Sense {
        END_PLAY,
        PRELOAD,
        BACKLASH,
        DISTANCE,
        RING_PLAY
    }

    /** How it is read. */
    public enum Method {
        /** Travel of a shaft pushed and pulled, one or two indicators. */
        TRAVEL,
        /** A single reading repeated while the parts are tapped home. */
        SERIES,
        /** One reading at each of several places round a ring; the mean counts. */
        PLACES,
        /** Feelers: the thickest that enters. */
        FEELER,
        /** Two lengths read one after the other, each with its gauge: the first less the second. */
        DIFFERENCE
    }

    /**
     * A place for shims.
     *
     * @param effect change of this clearance for one unit of added thickness: -1 where a thicker shim closes, +1 where it
     *     opens
     */
    public record Position(
            @Field("short id of the place") String id,
            @Field("where it is") String where,

            @Field(value = "shim family that fits there", refersTo = "shim_families")
            String family,

            @Field(value = "fewest pieces", absent = "1") int fewest,
            @Field(value = "most pieces", absent = "1") int most,

            @Field("change of the clearance per unit of thickness, -1 closes, +1 opens")
            double effect,

            @Field(value = "the item drawn for it", absent = "", refersTo = "items")
            String item) {}

    /**
     * Turning torque that proves a preload: torque = atZero + rise x preload.
     *
     * @param rise N.m per m of preload, which is N; 1 kN is 1 N.m per mm
     */
    public record Drag(
            @Field("where it is read and in what condition") String where,
            @Field(value = "least", kind = Kind.TORQUE) double lower,
            @Field(value = "most", kind = Kind.TORQUE) double upper,

            @Field(value = "torque without preload", kind = Kind.TORQUE, absent = "0 N.m")
            double atZero,

            @Field(value = "rise per preload; 1 kN is 1 N.m per mm; 0 where unknown", kind = Kind.FORCE, absent = "0 N")
            double rise,

            @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
            Set<String> only) {}

    /** One length of a loop; its sign says whether it opens (+1) or closes (-1) the clearance. */
    public record Length(
            @Field("name of the length") String name,

            @Field(value = "nominal length", kind = Kind.LENGTH)
            double nominal,

            @Field("+1 opens, -1 closes") int sign,

            @Field(value = "material; that of its item when absent", absent = "", refersTo = "materials")
            String material,

            @Field(value = "item it belongs to", absent = "", refersTo = "items")
            String item) {}

    /** Lower limit, signed as play, m. */
    public double lower() {
        return limits.lower();
    }

    /** Upper limit, signed as play, m. */
    public double upper() {
        return limits.upper();
    }

    /** Value aimed at, signed as play, m. */
    public double aim() {
        return limits.aim();
    }

    /** How far one etched digit moves limits and aim, m; 0 for none. */
    public double etchedStep() {
        return limits.etchedStep();
    }

    /** The check that reads the etched digits, as "hold point/check"; empty for none. */
    public String etchedBy() {
        return limits.etchedBy();
    }

    /** Where the limits come from; may be empty. */
    public String origin() {
        return limits.origin();
    }

    /** How the clearance is read. */
    public Method method() {
        return measuring.method();
    }

    /** The kind of gauge it is read with. */
    public String gauge() {
        return measuring.gauge();
    }

    /** The kind of gauge for the reading with trial pieces; empty where it is the same. */
    public String trialGauge() {
        return measuring.trialGauge();
    }

    /** The kind of gauge for the reading with the chosen pack; empty where it is the same. */
    public String finalGauge() {
        return measuring.finalGauge();
    }

    /** The two lengths whose difference it is; empty where it is read as such. */
    public List<ReadLength> difference() {
        return measuring.difference();
    }

    /** Indicators read at once, or places round the ring. */
    public int indicators() {
        return measuring.indicators();
    }

    /** The fewest rounds that count as proof. */
    public int rounds() {
        return measuring.rounds();
    }

    /** Readings that agree within this have settled, m. */
    public double settleWithin() {
        return measuring.settleWithin();
    }

    /** Clearance = reading × this + {@link #readingOffset()}. */
    public double readingFactor() {
        return measuring.readingFactor();
    }

    /** What is added to a reading times its factor, m. */
    public double readingOffset() {
        return measuring.readingOffset();
    }

    /** How to seat and read, one order a line. */
    public List<String> how() {
        return measuring.how();
    }

    /** Change of the clearance at working heat, signed, m. */
    public double growth() {
        return heating.growth();
    }

    /** How the growth comes about; may be empty. */
    public String growthNote() {
        return heating.growthNote();
    }
}
