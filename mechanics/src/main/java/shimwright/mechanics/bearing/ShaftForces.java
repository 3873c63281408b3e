package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code shaft-forces}: any meshes on one shaft and its two bearings. */
public final class ShaftForces {
    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "shaft-forces",
            "Forces on one shaft",
            "Tooth forces of the gears on one shaft and the loads of its two bearings.",
            List.of(Shaft.SOURCE, "tooth forces: common practice, no source"),
            Case.class,
            Result.class,
            ShaftForces::work);

    private ShaftForces() {}

    /** One gear on the shaft; lengths in metres, angles in radians, torque in N·m. */
    public record Mesh(
            @Input(meaning = "name", example = "pinion") String name,

            @Input(meaning = "teeth", min = 4, max = 500, example = "18")
            int teeth,

            @Input(kind = Kind.LENGTH, meaning = "normal module", min = 5e-5, max = 0.1, example = "2.5 mm")
            double module,

            @Input(kind = Kind.LENGTH, meaning = "position along the shaft", min = -10, max = 10, example = "100 mm")
            double position,

            @Input(
                    kind = Kind.TORQUE,
                    meaning = "torque of the mesh on the shaft, + clockwise seen from the input end",
                    min = -1e5,
                    max = 1e5,
                    example = "50 N·m")
            double torque,

            @Input(kind = Kind.ANGLE, meaning = "helix angle", orElse = "0°", min = 0, max = 1.05)
            double helix,

            @Input(meaning = "hand of the helix", orElse = "right")
            Hand hand,

            @Input(
                    kind = Kind.ANGLE,
                    meaning = "direction to the mate, clockwise from any zero, the same for all",
                    orElse = "0°",
                    min = -7,
                    max = 7)
            double around,

            @Input(kind = Kind.ANGLE, meaning = "normal pressure angle", orElse = "20°", min = 0.087, max = 1.05)
            double pressureAngle) {
        double radius() {
            return teeth * module / (2 * Math.cos(helix));
        }

        Shaft.Mesh load() {
            return new Shaft.Mesh(
                    name,
                    position,
                    radius(),
                    around,
                    torque,
                    Math.tan(pressureAngle) / Math.cos(helix),
                    hand.sign() * Math.tan(helix));
        }
    }

    /** Lengths in metres, rotation in rad/s. */
    public record Case(
            @Input(
                    meaning = "gears: name: teeth: module: position: torque: helix: hand: around",
                    most = 20,
                    example = "pinion: 18: 2.5 mm: 330 mm: 50 N·m: 30°: right")
            List<Mesh> meshes,

            @Input(kind = Kind.LENGTH, meaning = "position of bearing A", min = -10, max = 10, example = "0 mm")
            double bearingA,

            @Input(kind = Kind.LENGTH, meaning = "position of bearing B", min = -10, max = 10, example = "254 mm")
            double bearingB,

            @Input(kind = Kind.ROTATION, meaning = "speed of the shaft", orElse = "0 rpm", min = 0, max = 2100)
            double speed) {}

    /** Forces in newtons on the shaft. */
    public record Gear(
            @Output(meaning = "gear") String name,

            @Output(kind = Kind.FORCE, meaning = "tangential, sign of the torque", decimals = 1)
            double tangential,

            @Output(kind = Kind.FORCE, meaning = "radial, away from the mate", decimals = 1)
            double radial,

            @Output(kind = Kind.FORCE, meaning = "axial, + to the rear", decimals = 1)
            double axial,

            @Output(kind = Kind.SPEED, meaning = "speed of the teeth", unit = "m/s", decimals = 2)
            double pitchSpeed) {}

    /** Forces in newtons. */
    public record Result(
            @Output(meaning = "gears") List<Gear> gears,
            @Output(meaning = "bearing A") Shaft.Reaction bearingA,
            @Output(meaning = "bearing B") Shaft.Reaction bearingB,

            @Output(kind = Kind.FORCE, meaning = "thrust left for a bearing, + to the rear", decimals = 1)
            double axial,

            @Output(kind = Kind.TORQUE, meaning = "torque not balanced by the gears, led through the shaft end")
            double throughTorque) {}

    /**
     * Mesh forces and bearing reactions.
     *
     * @param c the case; reference circles are taken as working circles
     * @return refused where the bearings stand at one place. Source: statics; mesh forces by tan(pressure
     *     angle)/cos(helix) and tan(helix)
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = new ArrayList<>();
        apart(c.bearingA(), c.bearingB(), faults);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        List<Shaft.Mesh> loads = c.meshes().stream().map(Mesh::load).toList();
        Shaft.Reactions found = Shaft.solve(w, loads, c.bearingA(), c.bearingB());
        List<Gear> gears = new ArrayList<>();
        for (Shaft.Mesh load : loads) {
            gears.add(new Gear(load.name(), load.tangential(), load.radial(), load.axial(), c.speed() * load.radius()));
        }
        double through = -c.meshes().stream().mapToDouble(Mesh::torque).sum();
        w.caution("Stiff shaft, losses and weight left out; reference circles taken as working circles.");
        return Outcome.ok(w.worked(new Result(gears, found.a(), found.b(), found.axial(), through)));
    }

    static void apart(double a, double b, List<Refusal> faults) {
        if (Math.abs(a - b) < 1e-3) {
            faults.add(Refusal.of(
                    "bearingB", "both bearings stand at one place", "Measure both positions from the same end"));
        }
    }
}
