package shimwright.rebuild.unit.model;

import shimwright.mechanics.quantity.Kind;

/** Shims, spacers or selective rings that can stand in for each other. */
public record ShimFamily(
        @Field("name") String name,

        @Field(value = "outer diameter", kind = Kind.LENGTH, absent = "0 mm")
        double outer,

        @Field(value = "inner diameter", kind = Kind.LENGTH, absent = "0 mm")
        double inner,

        @Field(value = "thinnest that is made", kind = Kind.LENGTH)
        double thinnest,

        @Field(value = "thickest that is made", kind = Kind.LENGTH)
        double thickest,

        @Field(
                value = "readings round a piece may differ by this, else it is stoned and read again",
                kind = Kind.LENGTH)
        double spread) {}
