package shimwright.bench.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import shimwright.rebuild.unit.Bearing;
import shimwright.rebuild.unit.Clearance;
import shimwright.rebuild.unit.GearPair;
import shimwright.rebuild.unit.Item;
import shimwright.rebuild.unit.Section;
import shimwright.rebuild.unit.Unit;
import shimwright.rebuild.unit.UnitType;

/** A unit with the geometry of the demo transaxle, built by hand. */
final class DemoSection {
    private static final String ITEMS = """
            main-case|main case|NONE|||
            rear-cover|rear cover|NONE|||
            bellhousing|bellhousing|NONE|||
            end-cap|end cap|NONE|||
            pinion|bevel pinion|BEVEL_GEAR|pinion|52,92|0,46.8
            head-cone|head bearing cone|TAPER_CONE|pinion|92,115|40,58
            head-cup|head bearing cup|TAPER_CUP|pinion|97.85,116.85|64,80
            sP|depth shim|SHIM|pinion|116.85,118|68,79.6
            SP|preload spacer|SPACER|pinion|115,133.3|38.2,43
            tail-cup|tail bearing cup|TAPER_CUP|pinion|132,151|59,72
            tail-cone|tail bearing cone|TAPER_CONE|pinion|133.35,156.35|35,52
            W0|clamp washer W0|WASHER|pinion|156.35,161.35|34.2,54
            sleeve4|sleeve 4|SLEEVE|pinion|161.35,195.35|34,40
            wheel4|4th wheel|GEAR|pinion|163,181|45,75.7|181,183,45,60;183,188,45,72;188,195,45,60
            hub34|hub 3/4|HUB|pinion|195.35,219.35|33,62
            ring34|sleeve ring 3/4|RING|pinion|190.35,224.35|62,77
            sleeve3|sleeve 3|SLEEVE|pinion|219.35,253.35|34,40
            wheel3|3rd wheel|GEAR|pinion|234,252|45,88.6|232,234,45,60;227,232,45,72;220,227,45,60
            Wm|middle washer Wm|WASHER|pinion|253.35,257.35|34.2,56
            sleeve2|sleeve 2|SLEEVE|pinion|257.35,293.35|34,40
            wheel2|2nd wheel|GEAR|pinion|259,279|45,104.3|279,281,45,74;281,286,45,88;286,293,45,74
            hub12|hub 1/2|HUB|pinion|293.35,319.35|33,76
            ring12|sleeve ring 1/2|RING|pinion|289.35,323.35|76,92|291,301,92,107.5
            sleeve1|sleeve 1|SLEEVE|pinion|319.35,356.35|34,40
            wheel1|1st wheel|GEAR|pinion|335,355|45,119.2|332,335,45,74;327,332,45,88;320,327,45,74
            W1|end washer W1|WASHER|pinion|356.35,361.35|34.2,54
            stack-nut|stack nut|NUT|pinion|361.35,371.35|30,46
            nu-inner|NU205 inner ring|ROLLER_INNER|pinion|373,387.955|25,31.5
            nu-outer|NU205 outer ring|ROLLER_OUTER|pinion|373,388|47,52
            S5|spacer S5|SPACER|pinion|387.955,395.955|25,34
            wheel5|5th driven wheel|GEAR|pinion|397,415|24,66.6|395.955,397,24,40;415,415.95,24,40
            sel-ring|selective ring|SNAP_RING|pinion|415.95,418.05|22,30
            if-cup|input front bearing cup|TAPER_CUP|input|129,142|47,55
            if-cone|input front bearing cone|TAPER_CONE|input|129.1,146.1|30,41
            in4|input gear 4|GEAR|input|163,181|0,80.3
            in3|input gear 3|GEAR|input|234,252|0,68.4
            in2|input gear 2|GEAR|input|259,279|0,52.7
            inR|input reverse gear|GEAR|input|290,302|0,38.75
            in1|input gear 1|GEAR|input|335,355|0,38.8
            input|input shaft|NONE|||
            ir-cone|input rear bearing cone|TAPER_CONE|input|371,386|25,38
            ir-cup|input rear bearing cup|TAPER_CUP|input|374.35,387.35|44,52
            sI|input end-play shim|SHIM|input|387.35,388.35|44,51.6
            plate|retainer plate|PLATE|input|388.4,394.4|40,150
            W5|thrust piece W5|WASHER|input|388,396.4|25,36|394.6,396.4,36,46
            sleeve5|sleeve 5|SLEEVE|input|396.4,428.4|25,32
            gear5|5th driving gear|GEAR|input|397,415|37,89.4|415,417,37,60;417,422,37,72;422,428,37,60
            hub5|hub 5|HUB|input|428.4,448.4|23,60
            ring5|sleeve ring 5|RING|input|424,452|60,72
            end-nut|end nut|NUT|input|448.4,458.4|22,36
            seal-in|input seal|SEAL|input|-70,-63|25,40
            dl-cup|left side cup|TAPER_CUP|diff|59.4,74.9|72,80
            dl-cone|left side cone|TAPER_CONE|diff|54.8,74.8|50,66
            sL|left side shim|SHIM|diff|74.8,76|68,79.6
            crown|crown wheel|BEVEL_GEAR|diff|15.7,44|100,160.9
            carrier|differential carrier|BODY|diff|-40,34|0,94|44,54,0,150;34,44,0,100
            speed-ring|speed ring|RING|diff|-52,-42|61,74
            dr-cone|right side cone|TAPER_CONE|diff|-74.8,-54.8|50,66
            dr-cup|right side cup|TAPER_CUP|diff|-74.9,-59.4|72,80
            sR|right side shim|SHIM|diff|-76,-74.8|68,79.6
            """;

    private DemoSection() {}

    static Unit unit() {
        return unit(items(), section(), clearances());
    }

    static Unit empty() {
        return unit(List.of(), new Section(List.of(), List.of()), List.of());
    }

    static Unit unit(List<Item> items, Section section, List<Clearance> clearances) {
        return new Unit(
                new UnitType(
                        "shimwright-unit 1",
                        "ambleholt-l5-74",
                        "Ambleholt",
                        "L5-74",
                        "five-speed transaxle",
                        true,
                        42.5,
                        120,
                        new UnitType.Fluid("GL-4", 2.6e-3, "lip"),
                        Map.of(),
                        List.of(),
                        Map.of(),
                        Map.of(),
                        Map.of(),
                        items,
                        section,
                        gears(),
                        bearings(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        clearances,
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        List.of(),
                        Map.of(),
                        List.of()),
                "A");
    }

    static List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (String line : ITEMS.strip().lines().toList()) {
            String[] f = line.strip().split("\\|", -1);
            List<List<Double>> also = f.length < 7
                    ? List.of()
                    : Arrays.stream(f[6].split(";")).map(DemoSection::mm).toList();
            items.add(new Item(
                    f[0], f[1], "", Item.Shape.valueOf(f[2]), f[3], mm(f[4]), mm(f[5]), also, 1, false, "", Set.of()));
        }
        return items;
    }

    private static List<Double> mm(String text) {
        return text.isEmpty()
                ? List.of()
                : Arrays.stream(text.split(","))
                        .map(Double::parseDouble)
                        .map(v -> v / 1000)
                        .toList();
    }

    private static List<List<Double>> rows(String text) {
        return Arrays.stream(text.split(";")).map(DemoSection::mm).toList();
    }

    static Section section() {
        return new Section(
                List.of(
                        new Section.Shaft(
                                "input",
                                "input shaft",
                                Section.Axis.X,
                                mm("0,74"),
                                rows(
                                        "-186,-172,14;-172,-160,17;-160,-108,22;-92,-62,25;-62,118,24;118,129,29;129,146.1,30;146.1,163,36;"
                                                + "181,234,36;252,259,36;279,290,30;302,335,26;355,366,27.5;366,371,31;371,428,25;428,448,24;448,460,22"),
                                "input",
                                true),
                        new Section.Shaft(
                                "pinion",
                                "pinion shaft",
                                Section.Axis.X,
                                mm("0,0"),
                                rows("92,116,40;116,133,38;133,157,35;157,361.4,34;361.4,373,30;373,388,25;388,424,24"),
                                "pinion",
                                true),
                        new Section.Shaft(
                                "diff",
                                "differential",
                                Section.Axis.Y,
                                mm("0,0"),
                                rows("-80,-40,50;54,80,50"),
                                "carrier",
                                true)),
                List.of(
                        outline("bellhousing", "-170,232;-160,232;-104,186;-98,186;-98,125", false),
                        outline("bellhousing", "-170,-84;-160,-84;-104,-96;-98,-96", false),
                        outline("main-case", "-98,125;80,125;97,118;140,118;154,150", false),
                        outline("main-case", "-98,-96;84,-94;100,-60;140,-56;154,-78", false),
                        outline("main-case", "97,-56;97,118;154,118;154,-56", true),
                        outline("rear-cover", "154,150;164,146;340,138;388,132", false),
                        outline("rear-cover", "154,-78;164,-72;340,-70;388,-48", false),
                        outline("rear-cover", "357,-48;357,132;388.4,132;388.4,-48", true),
                        outline("end-cap", "388.4,128;452,122;466,100;466,-20;452,-44;388.4,-46", false)));
    }

    private static Section.Outline outline(String item, String points, boolean closed) {
        return new Section.Outline(item, item, rows(points), closed);
    }

    private static List<GearPair> gears() {
        return List.of(
                pair("g1", 12, 43, 2.5, "in1", "wheel1"),
                pair("g2", 19, 40, 2.25, "in2", "wheel2"),
                pair("g3", 25, 33, 2.25, "in3", "wheel3"),
                pair("g4", 33, 31, 2, "in4", "wheel4"),
                pair("g5", 37, 27, 2, "gear5", "wheel5"),
                pair("reverse", 13, 41, 2.5, "inR", "ring12"),
                pair("final", 9, 38, 4.2105, "pinion", "crown"));
    }

    private static GearPair pair(String id, int z1, int z2, double module, String driver, String driven) {
        return new GearPair(id, id, z1, z2, 0, module / 1000, 0, 0.074, driver, driven, "", Set.of());
    }

    private static List<Bearing> bearings() {
        return List.of(
                bearing("PH", "head-cone", "head-cup"),
                bearing("PT", "tail-cone", "tail-cup"),
                bearing("IF", "if-cone", "if-cup"),
                bearing("IR", "ir-cone", "ir-cup"),
                bearing("DL", "dl-cone", "dl-cup"),
                bearing("DR", "dr-cone", "dr-cup"));
    }

    private static Bearing bearing(String id, String... items) {
        return new Bearing(id, id, "", 0, List.of(), "", "", "", List.of(items), "", Set.of());
    }

    static List<Clearance> clearances() {
        return List.of(
                clearance(
                        "a",
                        "pinion depth",
                        Clearance.Sense.DISTANCE,
                        51.97,
                        52.03,
                        "sP",
                        "lip to crown axis,118,1,main-case;"
                                + "depth shim sP,1.15,-1,sP;head bearing T,24.85,-1,head-cup;nose to back face,40,-1,pinion"),
                clearance(
                        "b",
                        "pinion bearing preload",
                        Clearance.Sense.PRELOAD,
                        -0.06,
                        -0.02,
                        "SP",
                        "head cone B,23,1,head-cone;spacer SP,18.31,1,SP;tail cone B,23,1,tail-cone;head bearing T,24.85,-1,head-cone;"
                                + "depth shim sP,1.15,-1,sP;lip,14,-1,main-case;tail bearing T,24.35,-1,tail-cone"),
                clearance(
                        "c",
                        "input shaft end play",
                        Clearance.Sense.END_PLAY,
                        0.02,
                        0.08,
                        "sI",
                        "seat to joint face,25,1,main-case;rear cover length,234.4,1,rear-cover;front bearing T,17.1,-1,if-cone;"
                                + "shaft between shoulders,224.9,-1,input;rear bearing T,16.35,-1,ir-cone;shim sI,1,-1,sI"),
                clearance(
                        "d",
                        "side bearing preload",
                        Clearance.Sense.PRELOAD,
                        -0.25,
                        -0.15,
                        "sL",
                        "case width,172,1,;left cover depth,10,-1,;right cover depth,10,-1,;left bearing T,20.1,-1,dl-cone;"
                                + "carrier between shoulders,109.6,-1,carrier;right bearing T,20.1,-1,dr-cone;left shim sL,1.2,-1,sL;right shim sR,1.2,-1,sR"));
    }

    private static Clearance clearance(
            String id, String name, Clearance.Sense sense, double low, double high, String item, String loop) {
        List<Clearance.Length> lengths = Arrays.stream(loop.split(";"))
                .map(row -> {
                    String[] f = row.split(",", -1);
                    return new Clearance.Length(
                            f[0], Double.parseDouble(f[1]) / 1000, Integer.parseInt(f[2]), "", f[3]);
                })
                .toList();
        return new Clearance(
                id,
                name,
                sense,
                low / 1000,
                high / 1000,
                (low + high) / 2000,
                Clearance.Method.TRAVEL,
                "DI",
                2,
                3,
                1e-5,
                1,
                0,
                List.of(),
                "",
                List.of(new Clearance.Position(item, "under the cup", "SH", 1, 1, -1, item)),
                lengths,
                0,
                "",
                List.of(),
                List.of(),
                Set.of());
    }
}
