package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;
import shimwright.mechanics.fit.Chilling;
import shimwright.mechanics.fit.HeatedPart;
import shimwright.mechanics.quantity.Kind;

/** Two parts of which one sits in or on the other, where their sizes are read, and how they go together. */
public record Joint(
        @Field("short id") String id,
        @Field("what sits in or on what") String where,

        @Field(value = "item with the bore", refersTo = "items")
        String outer,

        @Field(value = "item that goes in", refersTo = "items")
        String inner,

        @Field(value = "nominal diameter", kind = Kind.LENGTH)
        double nominal,

        @Field(value = "class of the bore, such as N7; bearing or taper for the bore of a bearing", absent = "")
        String hole,

        @Field(value = "class of what goes in, such as k6; bearing or taper for the outside of a bearing", absent = "")
        String shaft,

        @Field(value = "what reads the bore: wear limits by id, checks as H02/bore", absent = "[]")
        List<String> boreRead,

        @Field(value = "what reads the diameter that goes in, likewise", absent = "[]")
        List<String> diameterRead,

        @Field(value = "length of the seat; 0 takes that of the ring as drawn", kind = Kind.LENGTH, absent = "0 mm")
        double length,

        @Field(
                value = "outside diameter of what is around the bore; 0 takes that of the ring as drawn",
                kind = Kind.LENGTH,
                absent = "0 mm")
        double around,

        @Field(
                value = "clearance wanted while it goes together; 0 where nobody has said",
                kind = Kind.LENGTH,
                absent = "0 mm")
        double slip,

        @Field(value = "everything that gets hot when it is heated", absent = "[]")
        List<HeatedPart> heated,

        @Field(value = "strongest cold for what goes in", absent = "none")
        Chilling cold,

        @Field(value = "whether what goes in is hardened", absent = "not said")
        Hardened hardened,

        @Field(value = "steps at which it goes together", absent = "[]", refersTo = "steps")
        List<String> steps,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {

    /** Whether a part is hardened, so that deep cold would change it. */
    public enum Hardened {
        NOT_SAID,
        YES,
        NO
    }

    /** True where one of the items is that one. */
    public boolean joins(String item) {
        return outer.equals(item) || inner.equals(item);
    }
}
