package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** A bearing and its fits. */
public record Bearing(
        @Field("short id") String id,
        @Field("where it sits") String where,
        @Field("designation and size") String size,

        @Field(value = "assembled width; 0 where it has none", kind = Kind.LENGTH, absent = "0 mm")
        double width,

        @Field(value = "assembled width tolerance, least and most over nominal", kind = Kind.LENGTH, absent = "[]")
        List<Double> widthTolerance,

        @Field(value = "fit of the inner ring", absent = "") String innerFit,
        @Field(value = "fit of the outer ring", absent = "") String outerFit,

        @Field(value = "arrangement with its partner", absent = "")
        String arrangement,

        @Field(value = "items it consists of", absent = "[]", refersTo = "items")
        List<String> items,

        @Field(value = "a look-alike that is often in the wrong box", absent = "")
        String twin,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {}
