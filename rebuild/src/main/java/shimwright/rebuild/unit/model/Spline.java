package shimwright.rebuild.unit.model;

import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** A spline and its size over pins. */
public record Spline(
        @Field("short id") String id,
        @Field("where") String where,
        @Field("teeth") int teeth,
        @Field(value = "module", kind = Kind.LENGTH) double module,

        @Field(value = "size over pins at basic thickness", kind = Kind.LENGTH)
        double overPins,

        @Field(value = "pin diameter", kind = Kind.LENGTH) double pin,

        @Field(value = "change over pins per change of tooth thickness", absent = "0")
        double slope,

        @Field(value = "fit", absent = "") String fit,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {}
