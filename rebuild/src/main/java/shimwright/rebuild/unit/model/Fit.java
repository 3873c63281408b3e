package shimwright.rebuild.unit.model;

import shimwright.mechanics.quantity.Kind;

/** Limits of a size, as deviations from the nominal. */
public record Fit(
        @Field("nominal with its class, such as 80N7") String id,
        @Field("where it is used") String where,
        @Field(value = "nominal size", kind = Kind.LENGTH) double nominal,

        @Field(value = "least deviation", kind = Kind.LENGTH)
        double least,

        @Field(value = "most deviation", kind = Kind.LENGTH) double most) {}
