package shimwright.rebuild.unit.model;

import java.util.List;
import java.util.Set;
import shimwright.mechanics.quantity.Kind;

/** A pair (or a reverse train without its idler) of gears. */
public record GearPair(
        @Field("short id, such as g1 or final") String id,
        @Field("what it is") String name,

        @Field(value = "straight through: both are coupled and turn as one, no tooth of theirs runs", absent = "false")
        boolean straight,

        @Field(value = "teeth of the driver; left out for one straight through", absent = "0")
        int driver,

        @Field(value = "teeth of the driven; left out for one straight through", absent = "0")
        int driven,

        @Field(value = "teeth of an idler between them; 0 for none", absent = "0")
        int idler,

        @Field(value = "normal module", kind = Kind.LENGTH, absent = "0 mm")
        double module,

        @Field(value = "helix or spiral angle", kind = Kind.ANGLE, absent = "0 deg")
        double helix,

        @Field(value = "working centre distance; 0 for a bevel pair", kind = Kind.LENGTH, absent = "0 mm")
        double centreDistance,

        @Field(value = "profile shift factors of driver and driven", absent = "[]")
        List<Double> shifts,

        @Field(value = "common face width; 0 where not given", kind = Kind.LENGTH, absent = "0 mm")
        double face,

        @Field(value = "item of the driver", absent = "", refersTo = "items")
        String driverItem,

        @Field(value = "item of the driven", absent = "", refersTo = "items")
        String drivenItem,

        @Field(value = "remark", absent = "") String note,

        @Field(value = "variants this holds for; all when absent", absent = "[]", refersTo = "variants")
        Set<String> only) {

    /** Turns of the driver for one turn of the driven; an idler drops out, straight through is 1. */
    public double ratio() {
        return straight ? 1 : (double) driven / driver;
    }
}
