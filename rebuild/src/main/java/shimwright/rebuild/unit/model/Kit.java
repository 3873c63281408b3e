package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;

/** A kit and what should be in it. */
public record Kit(
        @Field("kit number") String id,
        @Field("contents") List<Line> contents,
        @Field(value = "price of the whole", absent = "0") double price,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {
    /** One line of a kit. */
    public record Line(
            @Field("part number") String part,
            @Field("what it is") String name,
            @Field("pieces") int quantity,
            @Field("price a piece") double price,
            @Field(value = "supplier", absent = "") String from,

            @Field(value = "item it replaces", absent = "", refersTo = "items")
            String item) {}
}
