package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code mesh-forces}: the countershaft of a gearbox and its bearings in each gear. */
public final class MeshForces {
    private static final double INCH = 0.0254;

    private MeshForces() {}

    /** Which way the power goes. */
    public enum Pull {
        DRIVE,
        COAST
    }

    /** A pair that takes the power off the countershaft; lengths in metres, angles in radians. */
    public record Gear(
            @Input(meaning = "name", example = "1st") String name,

            @Input(meaning = "teeth on the countershaft; 0 in a direct gear", min = 0, max = 500, example = "17")
            int driving,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "its position along the countershaft",
                    min = -10,
                    max = 10,
                    example = "110 mm")
            double position,

            @Input(kind = Kind.ANGLE, meaning = "helix angle", orElse = "0°", min = 0, max = 1.05)
            double helix,

            @Input(meaning = "hand of the helix on the countershaft", orElse = "right")
            Hand hand,

            @Input(kind = Kind.LENGTH, meaning = "normal module, if not that of the input pair", min = 5e-5, max = 0.1)
            @Nullable
            Double module,

            @Input(
                    kind = Kind.ANGLE,
                    meaning =
                            "direction to its mate against that to the input gear, clockwise; 0 with all on the main line",
                    orElse = "0°",
                    min = -7,
                    max = 7)
            double around) {}

    /** Lengths in metres, angles in radians, torque in N·m; x from the input end to the rear. */
    public record Case(
            @Input(
                    kind = Kind.TORQUE,
                    meaning = "torque at the input shaft",
                    min = 1e-3,
                    max = 1e5,
                    example = "200 N·m")
            double inputTorque,

            @Input(meaning = "teeth of the input gear", min = 4, max = 500, example = "24")
            int inputTeeth,

            @Input(meaning = "teeth of the countershaft gear it drives", min = 4, max = 500, example = "29")
            int drivenTeeth,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "normal module of the input pair",
                    min = 5e-5,
                    max = 0.1,
                    example = "3 mm")
            @Nullable
            Double module,

            @Input(meaning = "diametral pitch of the input pair, teeth per inch", min = 0.2, max = 500) @Nullable
            Double diametralPitch,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "normal pressure angle of all pairs",
                    orElse = "20°",
                    min = 0.087,
                    max = 1.05)
            double pressureAngle,

            @Input(kind = Kind.ANGLE, meaning = "helix angle of the input pair", min = 0, max = 1.05, example = "25°")
            double helix,

            @Input(meaning = "hand of the helix of the driven gear on the countershaft", orElse = "right")
            Hand hand,

            @Input(kind = Kind.LENGTH, meaning = "position of the driven gear", min = -10, max = 10, example = "25 mm")
            double position,

            @Input(
                    meaning = "gears: name: countershaft teeth: position: helix: hand",
                    most = 20,
                    example = "1st: 17: 110 mm: 25°: right")
            List<Gear> gears,

            @Input(kind = Kind.LENGTH, meaning = "position of bearing A", min = -10, max = 10, example = "0 mm")
            double bearingA,

            @Input(kind = Kind.LENGTH, meaning = "position of bearing B", min = -10, max = 10, example = "150 mm")
            double bearingB,

            @Input(meaning = "drive or coast", orElse = "drive")
            Pull pull) {}

    /** One gear's forces in newtons. */
    public record Row(
            @Output(meaning = "gear") String name,

            @Output(kind = Kind.FORCE, meaning = "input mesh, tangential", decimals = 1)
            double inputTangential,

            @Output(kind = Kind.FORCE, meaning = "input mesh, radial", decimals = 1)
            double inputRadial,

            @Output(kind = Kind.FORCE, meaning = "input mesh, axial on the countershaft, + to the rear", decimals = 1)
            double inputAxial,

            @Output(kind = Kind.FORCE, meaning = "gear mesh, tangential", decimals = 1)
            double tangential,

            @Output(kind = Kind.FORCE, meaning = "gear mesh, radial", decimals = 1)
            double radial,

            @Output(kind = Kind.FORCE, meaning = "gear mesh, axial on the countershaft, + to the rear", decimals = 1)
            double axial,

            @Output(meaning = "bearing A") Shaft.Reaction bearingA,
            @Output(meaning = "bearing B") Shaft.Reaction bearingB,

            @Output(kind = Kind.FORCE, meaning = "thrust left on the countershaft, + to the rear", decimals = 1)
            double thrust,

            @Output(
                    kind = Kind.ANGLE,
                    meaning = "helix of this gear that would leave no thrust, same hand",
                    decimals = 3)
            double balancedHelix) {}

    /** Rows in the order of the gears. */
    public record Result(
            @Output(meaning = "gears") List<Row> gears,

            @Output(meaning = "gear that loads bearing A most")
            String worstA,

            @Output(meaning = "gear that loads bearing B most")
            String worstB) {}

    /**
     * Countershaft forces in each gear; the engine turns clockwise seen from the input end.
     *
     * @param c the case; reference circles are taken as working circles, losses left out; a direct gear leaves the
     *     countershaft unloaded
     * @return refused where the bearings stand at one place, no tooth size is given or a gear has 1 to 3 teeth. Source:
     *     statics
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        ShaftForces.apart(c.bearingA(), c.bearingB(), faults);
        if ((c.module() == null) == (c.diametralPitch() == null)) {
            faults.add(new Refusal(
                    "module",
                    c.module() == null ? "no tooth size given" : "module and diametralPitch both given",
                    "Give module, or diametralPitch for inch teeth, one of them"));
        }
        for (Gear gear : c.gears()) {
            if (gear.driving() > 0 && gear.driving() < 4) {
                faults.add(new Refusal(
                        "gears",
                        gear.name() + " has " + gear.driving() + " teeth",
                        "Give 4 or more, or 0" + " for a direct gear"));
            }
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        List<Row> rows = c.gears().stream().map(gear -> row(c, w, gear)).toList();
        w.caution("Stiff shaft, losses left out; the spigot between input and main shaft is not in this balance.");
        return Outcome.ok(w.worked(new Result(rows, worst(rows, true), worst(rows, false))));
    }

    private static String worst(List<Row> rows, boolean a) {
        Row worst = rows.get(0);
        for (Row row : rows) {
            double here = a ? row.bearingA().radial() : row.bearingB().radial();
            double most = a ? worst.bearingA().radial() : worst.bearingB().radial();
            worst = here > most ? row : worst;
        }
        return worst.name();
    }

    private static double module(Case c) {
        Double module = c.module();
        Double pitch = c.diametralPitch();
        return module != null ? module : pitch == null ? 0 : INCH / pitch;
    }

    private static Row row(Case c, Working w, Gear gear) {
        int way = c.pull() == Pull.DRIVE ? 1 : -1;
        boolean direct = gear.driving() == 0;
        double torque = direct ? 0 : way * c.inputTorque() * c.drivenTeeth() / c.inputTeeth();
        w.line(gear.name() + ": countershaft torque", "input torque × driven / input teeth", torque, Kind.TORQUE);
        double inputRadius = c.drivenTeeth() * module(c) / (2 * Math.cos(c.helix()));
        Double own = gear.module();
        double module = own != null ? own : module(c);
        double radius = Math.max(4, gear.driving()) * module / (2 * Math.cos(gear.helix()));
        Shaft.Mesh in = new Shaft.Mesh(
                gear.name() + ", input mesh",
                c.position(),
                inputRadius,
                0,
                -torque,
                Math.tan(c.pressureAngle()) / Math.cos(c.helix()),
                c.hand().sign() * Math.tan(c.helix()));
        Shaft.Mesh out = new Shaft.Mesh(
                gear.name() + ", gear mesh",
                gear.position(),
                radius,
                gear.around(),
                torque,
                Math.tan(c.pressureAngle()) / Math.cos(gear.helix()),
                gear.hand().sign() * Math.tan(gear.helix()));
        Shaft.Reactions found = Shaft.solve(w, List.of(in, out), c.bearingA(), c.bearingB());
        double balanced = Math.atan(Math.tan(c.helix()) * radius / inputRadius);
        return new Row(
                gear.name(),
                Math.abs(in.tangential()),
                in.radial(),
                in.axial(),
                Math.abs(out.tangential()),
                out.radial(),
                out.axial(),
                found.a(),
                found.b(),
                found.axial(),
                balanced);
    }

    /** The worksheet. */
    static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "mesh-forces",
            "Mesh forces of a countershaft gearbox",
            "Tooth forces, bearing loads and thrust of the countershaft in each gear, pulling or coasting.",
            List.of(Shaft.SOURCE, "tooth forces: common practice, no source"),
            Case.class,
            Result.class,
            MeshForces::work);
}
