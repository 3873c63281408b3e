package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.bearing.MeshForces.Result.InputMesh;
import shimwright.mechanics.bearing.MeshForces.Result.Load;
import shimwright.mechanics.bearing.MeshForces.Result.Main;
import shimwright.mechanics.bearing.MeshForces.Result.Row;
import shimwright.mechanics.bearing.MeshForces.Result.Worst;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code mesh-forces}: the shafts of a countershaft gearbox and their bearings in each gear. */
public final class MeshForces {

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "mesh-forces",
                    "Mesh forces of a countershaft gearbox",
                    "Tooth forces, thrusts and bearing loads of countershaft, input and output shaft in each gear, pulling"
                            + " or coasting.",
                    List.of(Shaft.SOURCE, "tooth forces: common practice, no source"),
                    Case.class,
                    Result.class,
                    MeshForces::work)
            .drawn(BearingPictures::meshForces);

    private MeshForces() {}

    /**
     * What {@code mesh-forces} finds; rows in the order of the gears.
     *
     * @param input the input mesh
     * @param gears forces on the countershaft by gear
     * @param main input and output shaft by gear; empty where their bearings were not given
     * @param loads of every bearing in every gear
     * @param worst each bearing where it is loaded most
     */
    public record Result(
            @Output(meaning = "input mesh, in every gear but a direct one")
            InputMesh input,

            @Output(meaning = "gears, on the countershaft") List<Row> gears,

            @Output(meaning = "input and output shaft") List<Main> main,

            @Output(meaning = "bearings of the countershaft, A and B, and of the main shafts")
            List<Load> loads,

            @Output(meaning = "each bearing where it is loaded most")
            List<Worst> worst) {
        public Result {
            gears = List.copyOf(gears);
            main = List.copyOf(main);
            loads = List.copyOf(loads);
            worst = List.copyOf(worst);
        }

        /** Amounts in newtons; the axial force as it acts on the countershaft. */
        public record InputMesh(
                @Output(kind = Kind.FORCE, meaning = "tangential", decimals = 1)
                double tangential,

                @Output(kind = Kind.FORCE, meaning = "radial", decimals = 1)
                double radial,

                @Output(kind = Kind.FORCE, meaning = "axial on the countershaft, + to the rear", decimals = 1)
                double axial) {}

        /** Input and output shaft in one gear; torque in N·m, forces in newtons. */
        public record Main(
                @Output(meaning = "gear") String name,

                @Output(kind = Kind.TORQUE, meaning = "output torque, + clockwise seen from the input end")
                double torque,

                @Output(kind = Kind.FORCE, meaning = "thrust left on the input shaft, + to the rear", decimals = 1)
                double inputThrust,

                @Output(kind = Kind.FORCE, meaning = "thrust left on the output shaft, + to the rear", decimals = 1)
                double outputThrust) {}

        /** One gear's forces on the countershaft in newtons. */
        public record Row(
                @Output(meaning = "gear") String name,

                @Output(kind = Kind.FORCE, meaning = "tangential", decimals = 1)
                double tangential,

                @Output(kind = Kind.FORCE, meaning = "radial", decimals = 1)
                double radial,

                @Output(kind = Kind.FORCE, meaning = "axial, + to the rear", decimals = 1)
                double axial,

                @Output(kind = Kind.FORCE, meaning = "thrust left on the countershaft, + to the rear", decimals = 1)
                double thrust,

                @Output(
                        kind = Kind.ANGLE,
                        meaning = "helix of this gear that would leave no thrust, same hand",
                        decimals = 3)
                @Nullable
                Double balancedHelix) {}

        /**
         * Force of a bearing on its shaft in one gear; of a spigot on the shaft that has one bearing of its own, of the idler
         * pin on the idler.
         */
        public record Load(
                @Output(meaning = "gear") String gear,
                @Output(meaning = "bearing") String bearing,

                @Output(kind = Kind.LENGTH, meaning = "position")
                double position,

                @Output(kind = Kind.FORCE, meaning = "radial load", decimals = 1)
                double radial,

                @Output(kind = Kind.FORCE, meaning = "part in the direction of angle 0", decimals = 1)
                double along,

                @Output(kind = Kind.FORCE, meaning = "part a quarter turn clockwise from it", decimals = 1)
                double across) {
            static Load of(MeshForces.Gear gear, String bearing, double position, Shaft.Reaction force) {
                return new Load(gear.name(), bearing, position, force.radial(), force.along(), force.across());
            }
        }

        /** Where a bearing is loaded most. */
        public record Worst(
                @Output(meaning = "bearing") String bearing,
                @Output(meaning = "gear that loads it most") String gear,

                @Output(kind = Kind.FORCE, meaning = "radial load then", decimals = 1)
                double radial) {}
    }

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
                    meaning = "teeth on the output shaft; 0 in a direct gear or where that shaft is left out",
                    min = 0,
                    max = 500,
                    example = "36")
            int driven,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "its position along the shafts",
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

            @Input(meaning = "teeth of a reverse idler between them, 0 for none", orElse = "0", min = 0, max = 500)
            int idler,

            @Input(
                    kind = Kind.ANGLE,
                    meaning =
                            "direction to its mate against that to the input gear, clockwise; 0 with all on the main line",
                    orElse = "0°",
                    min = -7,
                    max = 7)
            double around) {
        boolean direct() {
            return driving == 0;
        }
    }

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
                    meaning = "gears: name: countershaft teeth: output teeth: position: helix: hand",
                    most = 20,
                    example = "1st: 17: 36: 110 mm: 25°: right; 4th: 0: 0: 0 mm")
            List<Gear> gears,

            @Input(kind = Kind.LENGTH, meaning = "position of bearing A", min = -10, max = 10, example = "0 mm")
            double bearingA,

            @Input(kind = Kind.LENGTH, meaning = "position of bearing B", min = -10, max = 10, example = "150 mm")
            double bearingB,

            @Input(meaning = "drive or coast", orElse = "drive")
            Pull pull,

            @Input(
                    kind = Kind.LENGTH,
                    meaning =
                            "positions of the bearings that hold the input shaft in case and crankshaft, not the spigot",
                    fewest = 0,
                    most = 2,
                    min = -10,
                    max = 10,
                    example = "-150 mm, 0 mm")
            List<Double> inputBearings,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "position of the spigot bearing between input and output shaft",
                    min = -10,
                    max = 10,
                    example = "30 mm")
            @Nullable
            Double spigot,

            @Input(
                    kind = Kind.LENGTH,
                    meaning = "positions of the bearings that hold the output shaft in the case",
                    fewest = 0,
                    most = 2,
                    min = -10,
                    max = 10,
                    example = "150 mm")
            List<Double> outputBearings) {
        public Case {
            gears = List.copyOf(gears);
            inputBearings = List.copyOf(inputBearings);
            outputBearings = List.copyOf(outputBearings);
        }

        int way() {
            return pull == Pull.DRIVE ? 1 : -1;
        }
    }

    /**
     * Forces on the shafts in each gear; the engine turns clockwise seen from the input end. Positions count from one
     * end to the rear, alike for all shafts. Angle 0 points from the countershaft to the input shaft, angles count
     * clockwise seen from the input end; forces are those on the shaft, thrusts are + to the rear.
     *
     * @param c the case; reference circles are taken as working circles, losses left out; a direct gear leaves the
     *     countershaft unloaded and goes through the main shafts as torque alone; the main shafts are worked out where
     *     their bearings are given
     * @return refused where the bearings of a shaft stand at one place or leave its loads open, no tooth size is given, a
     *     gear has 1 to 3 teeth, or an idler does not reach both gears. Source: statics
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        ShaftForces.apart(c.bearingA(), c.bearingB(), faults);
        if ((c.module() == null) == (c.diametralPitch() == null)) {
            faults.add(Refusal.of(
                    "module",
                    c.module() == null ? "no tooth size given" : "module and diametralPitch both given",
                    "Give module, or diametralPitch for inch teeth, one of them"));
        }
        for (Gear gear : c.gears()) {
            if (gear.driving() > 0 && gear.driving() < 4) {
                faults.add(Refusal.of(
                        "gears",
                        gear.name() + " has " + gear.driving() + " teeth",
                        "Give 4 or more, or 0" + " for a direct gear"));
            }
        }
        MainShafts main = new MainShafts(c);
        if (faults.isEmpty()) {
            faults.addAll(main.faults());
        }
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        List<Row> rows = new ArrayList<>();
        List<Main> mains = new ArrayList<>();
        List<Load> loads = new ArrayList<>();
        Shaft.Mesh always = CountershaftMeshes.input(c, "input mesh", CountershaftMeshes.torque(c));
        for (Gear gear : c.gears()) {
            rows.add(row(c, w, gear, loads));
            if (main.given()) {
                mains.add(main.solve(
                        w, gear, CountershaftMeshes.input(c, gear), CountershaftMeshes.output(c, gear), loads));
            }
        }
        w.caution(
                "Stiff shafts, losses, weight and a push of clutch or propeller shaft left out; reference circles taken"
                        + " as working circles.");
        if (!main.given()) {
            w.caution("Only the countershaft: give inputBearings, spigot and outputBearings for the other two shafts.");
        }
        return Outcome.ok(w.worked(new Result(
                new InputMesh(Math.abs(always.tangential()), always.radial(), always.axial()),
                rows,
                mains,
                loads,
                worst(loads))));
    }

    private static List<Worst> worst(List<Load> loads) {
        Map<String, Worst> worst = new LinkedHashMap<>();
        for (Load load : loads) {
            Worst here = new Worst(load.bearing(), load.gear(), load.radial());
            worst.merge(load.bearing(), here, (old, found) -> found.radial() > old.radial() ? found : old);
        }
        return List.copyOf(worst.values());
    }

    private static Row row(Case c, Working w, Gear gear, List<Load> loads) {
        Shaft.Mesh in = CountershaftMeshes.input(c, gear);
        Shaft.Mesh out = CountershaftMeshes.output(c, gear);
        w.line(gear.name() + ": countershaft torque", "input torque × driven / input teeth", out.torque(), Kind.TORQUE);
        Shaft.Reactions found = Shaft.solve(w, List.of(in, out), c.bearingA(), c.bearingB());
        loads.add(Load.of(gear, "A", c.bearingA(), found.a()));
        loads.add(Load.of(gear, "B", c.bearingB(), found.b()));
        return new Row(
                gear.name(),
                Math.abs(out.tangential()),
                out.radial(),
                out.axial(),
                found.axial(),
                gear.direct() ? null : (Double) Math.atan(Math.tan(c.helix()) * out.radius() / in.radius()));
    }
}
