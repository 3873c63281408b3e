package shimwright.rebuild.unit.model;

import java.util.Locale;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** Bolts or nuts tightened alike. */
public record Fastener(
        @Field("short id") String id,
        @Field("where") String where,
        @Field("thread and length") String thread,
        @Field(value = "property class", absent = "") String propertyClass,
        @Field("how many") int quantity,

        @Field(value = "tightening torque", kind = Kind.TORQUE)
        double torque,

        @Field(value = "nut factor K in T = K F d", absent = "0")
        double nutFactor,

        @Field(value = "preload at that torque", kind = Kind.FORCE, absent = "0 N")
        double preload,

        @Field(value = "order and stages", absent = "") String pattern,

        @Field(value = "threadlocker or sealer, by consumable", absent = "", refersTo = "consumables")
        String locker,

        @Field(value = "once only", absent = "false") boolean once,
        @Field(value = "remark", absent = "") String note,

        @Field(
                value = "where the torque comes from: printed, standard, computed, told, common practice or guess",
                absent = "")
        String origin,

        @Field(value = "item whose thread it is screwed into", absent = "", refersTo = "items")
        String into,

        @Field(
                value = "length of thread in engagement; 0 where nobody has measured it",
                kind = Kind.LENGTH,
                absent = "0 mm")
        double engagement,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {

    /** True where the file says of the torque that it is a guess. */
    public boolean guessed() {
        return Origin.guess(origin) || note.toLowerCase(Locale.ROOT).startsWith("torque: guess");
    }
}
