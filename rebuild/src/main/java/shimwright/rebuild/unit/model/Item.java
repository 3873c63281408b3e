package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** A part or feature that can be judged, bought or fitted; drawn where it has a shape. */
public record Item(
        @Field("short id") String id,
        @Field("name") String name,
        @Field(value = "part number", absent = "") String part,

        @Field(value = "what is drawn for it", absent = "none")
        Shape shape,

        @Field(value = "shaft whose axis it turns about", absent = "", refersTo = "shafts")
        String shaft,

        @Field(value = "along the axis, from and to", kind = Kind.LENGTH, absent = "[]")
        List<Double> along,

        @Field(value = "inner and outer diameter", kind = Kind.LENGTH, absent = "[]")
        List<Double> diameters,

        @Field(
                value = "further rings drawn with it: from, to, inner and outer diameter",
                kind = Kind.LENGTH,
                absent = "[]")
        List<List<Double>> also,

        @Field(value = "pieces in one unit", absent = "1") int quantity,

        @Field(value = "stands in for a trial and comes out again", absent = "false")
        boolean trial,

        @Field(value = "always renewed when it has been out", absent = "false")
        boolean renew,

        @Field(value = "goes in across its axis, from the side", absent = "false")
        boolean sideways,

        @Field(value = "material", absent = "", refersTo = "materials")
        String material,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {

    /** An item of which its name, stamp and count are known and nothing else. */
    public static Item plain(String id, String name, String part, int quantity) {
        return new Item(
                id,
                name,
                part,
                Shape.NONE,
                "",
                List.of(),
                List.of(),
                List.of(),
                quantity,
                false,
                false,
                false,
                "",
                Set.of());
    }

    /** What is drawn for an item. */
    public enum Shape {
        NONE,
        GEAR,
        BEVEL_GEAR,
        TAPER_CONE,
        TAPER_CUP,
        ROLLER_INNER,
        ROLLER_OUTER,
        NEEDLES,
        WASHER,
        SHIM,
        SPACER,
        SLEEVE,
        HUB,
        RING,
        NUT,
        SNAP_RING,
        SEAL,
        PLATE,
        BODY,
        FORK
    }
}
