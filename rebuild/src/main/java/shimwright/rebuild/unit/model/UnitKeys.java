package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Map;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.model.UnitType.Choice;
import shimwright.rebuild.unit.model.UnitType.Fluid;
import shimwright.rebuild.unit.model.UnitType.HoldPoint;
import shimwright.rebuild.unit.model.UnitType.Station;
import shimwright.rebuild.unit.model.UnitType.TellTale;
import shimwright.rebuild.unit.model.UnitType.Variant;
import shimwright.rebuild.unit.model.UnitType.Window;

/** The keys of a {@link UnitType} in their groups, each of them read as if there were none. */
public interface UnitKeys {

    Identity identity();

    Bench bench();

    Parts parts();

    Setting setting();

    Renewal renewal();

    Build build();

    Handling handling();

    /** What the unit is, and what tells its variants apart. */
    @FieldGroup
    record Identity(
            @Field("format and its version: shimwright-unit 1")
            String format,

            @Field("id of the unit type: small letters, digits and hyphens")
            String id,

            @Field("maker") String maker,

            @Field("model") String model,

            @Field("what kind of box it is, in a sentence") String about,

            @Field(value = "true for an invented unit", absent = "false")
            boolean invented,

            @Field(value = "dry mass, for lifting", kind = Kind.MASS)
            double mass,

            @Field(value = "rated input torque", kind = Kind.TORQUE)
            double ratedTorque,

            @Field("fluid") Fluid fluid,

            @Field("variants by letter or short code") Map<String, Variant> variants,

            @Field("what tells the variants apart") List<TellTale> tellTales) {}

    /** Where and with what one works. */
    @FieldGroup
    record Bench(
            @Field("stations and orientations by id") Map<String, Station> stations,

            @Field("tools and gauges by id") Map<String, String> tools) {}

    /** What the unit is made of. */
    @FieldGroup
    record Parts(
            @Field("everything that can be judged, bought or fitted; with geometry where it is drawn")
            List<Item> items,

            @Field("shafts with their steps, and the outline of the case, for the drawing")
            Section section,

            @Field(value = "gear pairs", absent = "[]") List<GearPair> gears,

            @Field(value = "bearings", absent = "[]") List<Bearing> bearings,

            @Field(value = "seals", absent = "[]") List<Seal> seals,

            @Field(value = "splines", absent = "[]") List<Spline> splines,

            @Field(value = "fits", absent = "[]") List<Fit> fits,

            @Field("fasteners") List<Fastener> fasteners,

            @Field(value = "parts that sit in or on each other, with where their sizes are read", absent = "[]")
            List<Joint> joints) {}

    /** What is set by choosing shims. */
    @FieldGroup
    record Setting(
            @Field("shim families by id") Map<String, ShimFamily> shimFamilies,

            @Field("clearances set by selection") List<Clearance> clearances,

            @Field(value = "the order in which clearances are set", refersTo = "clearances")
            List<String> settingOrder) {}

    /** When a part is renewed, and what is ordered for it. */
    @FieldGroup
    record Renewal(
            @Field("wear limits") List<WearLimit> wearLimits,

            @Field("consumables") List<Consumable> consumables,

            @Field(value = "kits", absent = "[]") List<Kit> kits) {}

    /** How it is put together and proved. */
    @FieldGroup
    record Build(
            @Field("hold points") List<HoldPoint> holdPoints,

            @Field(value = "time windows", absent = "[]") List<Window> windows,

            @Field("assembly steps") List<Step> steps,

            @Field(value = "choices between possible orders", absent = "[]")
            List<Choice> choices,

            @Field(value = "checks that prove the finished unit", absent = "[]", refersTo = "hold_points")
            List<String> proof,

            @Field(value = "readings to take before it comes apart", absent = "[]")
            List<FirstReading> firstReadings) {}

    /** Time that goes by between the steps. */
    @FieldGroup
    record Handling(
            @Field(value = "time to turn the case over, by FROM-TO", kind = Kind.TIME, absent = "{}")
            Map<String, Double> turnOver,

            @Field(
                    value = "time to lay out a tool or gauge; 0 for one that is not named",
                    kind = Kind.TIME,
                    absent = "{}",
                    refersTo = "tools")
            Map<String, Double> toolTimes,

            @Field(
                    value = "time to go from one station to another; the case in all its orientations is one station",
                    kind = Kind.TIME,
                    absent = "0 s")
            double stationChange,

            @Field(
                    value = "how many times as long turning over takes while an item is in the case, by item",
                    absent = "{}",
                    refersTo = "items")
            Map<String, Double> heavy) {}

    default String format() {
        return identity().format();
    }

    default String id() {
        return identity().id();
    }

    default String maker() {
        return identity().maker();
    }

    default String model() {
        return identity().model();
    }

    default String about() {
        return identity().about();
    }

    default boolean invented() {
        return identity().invented();
    }

    default double mass() {
        return identity().mass();
    }

    default double ratedTorque() {
        return identity().ratedTorque();
    }

    default Fluid fluid() {
        return identity().fluid();
    }

    default Map<String, Variant> variants() {
        return identity().variants();
    }

    default List<TellTale> tellTales() {
        return identity().tellTales();
    }

    default Map<String, Station> stations() {
        return bench().stations();
    }

    default Map<String, String> tools() {
        return bench().tools();
    }

    default List<Item> items() {
        return parts().items();
    }

    default Section section() {
        return parts().section();
    }

    default List<GearPair> gears() {
        return parts().gears();
    }

    default List<Bearing> bearings() {
        return parts().bearings();
    }

    default List<Seal> seals() {
        return parts().seals();
    }

    default List<Spline> splines() {
        return parts().splines();
    }

    default List<Fit> fits() {
        return parts().fits();
    }

    default List<Fastener> fasteners() {
        return parts().fasteners();
    }

    default List<Joint> joints() {
        return parts().joints();
    }

    default Map<String, ShimFamily> shimFamilies() {
        return setting().shimFamilies();
    }

    default List<Clearance> clearances() {
        return setting().clearances();
    }

    default List<String> settingOrder() {
        return setting().settingOrder();
    }

    default List<WearLimit> wearLimits() {
        return renewal().wearLimits();
    }

    default List<Consumable> consumables() {
        return renewal().consumables();
    }

    default List<Kit> kits() {
        return renewal().kits();
    }

    default List<HoldPoint> holdPoints() {
        return build().holdPoints();
    }

    default List<Window> windows() {
        return build().windows();
    }

    default List<Step> steps() {
        return build().steps();
    }

    default List<Choice> choices() {
        return build().choices();
    }

    default List<String> proof() {
        return build().proof();
    }

    default List<FirstReading> firstReadings() {
        return build().firstReadings();
    }

    default Map<String, Double> turnOver() {
        return handling().turnOver();
    }

    default Map<String, Double> toolTimes() {
        return handling().toolTimes();
    }

    default double stationChange() {
        return handling().stationChange();
    }

    default Map<String, Double> heavy() {
        return handling().heavy();
    }
}
