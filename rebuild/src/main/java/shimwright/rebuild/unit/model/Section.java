package shimwright.rebuild.unit.model;

import java.util.List;
import shimwright.mechanics.quantity.Kind;

/**
 * Geometry for the section drawing. x runs along the unit, y to the left, z up; a shaft's axis lies along x (with y and
 * z of its axis) or along y (with x and z).
 */
public record Section(
        @Field("shafts") List<Shaft> shafts,
        @Field("outlines of castings") List<Outline> castings,

        @Field(value = "true where places and lengths are a scheme and not measured", absent = "false")
        boolean scheme) {
    /** A section whose lengths are those of the unit. */
    public Section(List<Shaft> shafts, List<Outline> castings) {
        this(shafts, castings, false);
    }

    /** A shaft: its axis and its steps. */
    public record Shaft(
            @Field("short id") String id,
            @Field("name") String name,

            @Field(value = "direction of the axis", absent = "x")
            Axis axis,

            @Field(value = "where the axis lies: the two other coordinates in order", kind = Kind.LENGTH)
            List<Double> at,

            @Field(value = "steps: from, to, diameter", kind = Kind.LENGTH)
            List<List<Double>> steps,

            @Field(value = "bores in it from either end: from, to, diameter", kind = Kind.LENGTH, absent = "[]")
            List<List<Double>> bores,

            @Field(value = "item that carries the shaft itself", absent = "", refersTo = "items")
            String item,

            @Field(value = "drawn in the main section", absent = "true")
            boolean drawn) {}

    /** Direction of an axis. */
    public enum Axis {
        X,
        Y
    }

    /** An outline of a casting in the section plane: points of x and height. */
    public record Outline(
            @Field("name") String name,

            @Field(value = "item it belongs to", absent = "", refersTo = "items")
            String item,

            @Field(value = "points: x, height", kind = Kind.LENGTH)
            List<List<Double>> points,

            @Field(value = "closed and hatched", absent = "false")
            boolean closed) {}
}
