package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;

/** The way of the power through the engaged gear, shaft by shaft. */
final class PowerFlow {
    private static final String SOURCE = "kinematics and balance of torque at a mesh";

    private final Working w;
    private final List<Ratios.Stage> path = new ArrayList<>();

    private PowerFlow(Working w) {
        this.w = w;
    }

    /**
     * From the input shaft to the output shaft, or through the final drive where one is given.
     *
     * @param c the case; losses are left out, so torque × speed is the same at every stage
     * @param gear the engaged one
     */
    static List<Ratios.Stage> path(Ratios.Case c, GearTable.Gear gear, Working w) {
        PowerFlow flow = new PowerFlow(w);
        flow.path.add(new Ratios.Stage("input shaft", "given", c.inputSpeed(), c.inputTorque()));
        if (gear.direct()) {
            flow.pass(
                    "output shaft",
                    "sleeve straight through; the countershaft turns unloaded",
                    1,
                    "as the input shaft");
        } else {
            for (GearTable.Mesh mesh : c.constantMesh()) {
                flow.mesh("countershaft", "input pair", mesh.driving(), mesh.driven());
            }
            if (gear.idler() > 0) {
                flow.mesh("idler of " + gear.name(), "first mesh of " + gear.name(), gear.driving(), gear.idler());
                flow.mesh("output shaft", "second mesh of " + gear.name(), gear.idler(), gear.driven());
            } else {
                flow.mesh("output shaft", "pair of " + gear.name(), gear.driving(), gear.driven());
            }
        }
        for (GearTable.Mesh mesh : c.finalDrive()) {
            flow.pass(
                    "final drive",
                    "final drive pair, " + mesh.driving() + " driving " + mesh.driven() + "; its direction is not told",
                    (double) mesh.driven() / mesh.driving(),
                    "× " + mesh.driven() + "/" + mesh.driving());
        }
        return List.copyOf(flow.path);
    }

    private void mesh(String part, String name, int driving, int driven) {
        String by = name + ", " + driving + " driving " + driven;
        pass(part, by, -(double) driven / driving, "× " + driven + "/" + driving + ", turned round");
    }

    /** One stage more; a ratio below 0 turns round. */
    private void pass(String part, String by, double ratio, String words) {
        Ratios.Stage before = path.get(path.size() - 1);
        double speed = w.line(
                part + " speed",
                before.part() + " speed " + words.replace("×", "÷"),
                before.speed() / ratio,
                Kind.ROTATION,
                SOURCE);
        double torque = w.line(
                part + " torque", before.part() + " torque " + words, before.torque() * ratio, Kind.TORQUE, SOURCE);
        path.add(new Ratios.Stage(part, by, speed, torque));
    }
}
