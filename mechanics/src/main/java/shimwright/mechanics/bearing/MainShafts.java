package shimwright.mechanics.bearing;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Working;

/**
 * Input and output shaft of a countershaft gearbox, on one line, one running in the other by a spigot bearing. Where the
 * output shaft has one bearing of its own it is worked out first and its spigot force is laid on the input shaft; where
 * the input shaft has one, the other way round.
 */
final class MainShafts {
    /** How far the place of an idler may miss its teeth: shifted teeth run at a little over the sum of reference radii. */
    private static final double IDLER_MISS = 0.08;

    private final MeshForces.Case c;

    MainShafts(MeshForces.Case c) {
        this.c = c;
    }

    /** Whether these shafts are asked for at all. */
    boolean given() {
        return c.spigot() != null
                || !c.inputBearings().isEmpty()
                || !c.outputBearings().isEmpty();
    }

    /** Why their loads cannot be found by statics. */
    List<Refusal> faults() {
        List<Refusal> faults = new ArrayList<>();
        if (!given()) {
            return faults;
        }
        int own = c.inputBearings().size() + c.outputBearings().size();
        Double spigot = c.spigot();
        boolean known = spigot != null
                ? own == 3
                : c.inputBearings().size() == 2 && c.outputBearings().size() == 2;
        if (!known) {
            faults.add(Refusal.of(
                    "outputBearings",
                    own + (own == 1 ? " bearing" : " bearings") + (spigot == null ? " and no spigot" : " and a spigot")
                            + " on the two shafts leave their loads open",
                    "With a spigot give 2 bearings of one shaft and 1 of the other; without, 2 of each"));
            return faults;
        }
        apart("inputBearings", c.inputBearings(), faults);
        apart("outputBearings", c.outputBearings(), faults);
        for (MeshForces.Gear gear : c.gears()) {
            gear(gear, faults);
        }
        return faults;
    }

    private void apart(String place, List<Double> own, List<Refusal> faults) {
        Double spigot = c.spigot();
        double second = own.size() == 2 ? own.get(1) : spigot == null ? Double.NaN : spigot;
        if (Math.abs(own.get(0) - second) < 1e-3) {
            faults.add(Refusal.of(
                    place,
                    "both bearings of this shaft stand at one place",
                    "Measure all positions from the same end, the spigot's too"));
        }
    }

    private void gear(MeshForces.Gear gear, List<Refusal> faults) {
        if (gear.direct()) {
            return;
        }
        if (gear.driven() < 4) {
            faults.add(Refusal.of(
                    "gears",
                    gear.name() + " has " + gear.driven() + " teeth on the output shaft",
                    "Give 4 or more: the loads of the output shaft hang on its radius"));
            return;
        }
        if (gear.idler() == 0 && Math.hypot(Math.sin(gear.around()), Math.cos(gear.around()) - 1) > 1e-6) {
            faults.add(Refusal.of(
                    "gears",
                    gear.name() + " does not face the main line",
                    "Leave around away, or give the teeth of the idler that stands there"));
        }
        if (gear.idler() > 0) {
            double miss = Math.hypot(idlerAlong(gear) - distance(), idlerAcross(gear))
                    / (radius(gear, gear.idler()) + radius(gear, gear.driven()));
            if (Math.abs(miss - 1) > IDLER_MISS) {
                faults.add(Refusal.of(
                        "gears", gear.name() + ": at this angle the idler does not reach both gears", reach(gear)));
            }
        }
    }

    /** At which angle the idler would touch both. */
    private String reach(MeshForces.Gear gear) {
        double near = radius(gear, gear.driving()) + radius(gear, gear.idler());
        double far = radius(gear, gear.driven()) + radius(gear, gear.idler());
        double cosine = (near * near + distance() * distance() - far * far) / (2 * near * distance());
        if (!(Math.abs(cosine) <= 1)) {
            return "At no angle does it, with these teeth: count them and look at the module";
        }
        long degrees = Math.round(Math.toDegrees(Math.acos(cosine)));
        return "By its teeth it stands at " + degrees + "° or −" + degrees + "° (around)";
    }

    private double distance() {
        return (c.inputTeeth() + c.drivenTeeth()) * CountershaftMeshes.module(c) / (2 * Math.cos(c.helix()));
    }

    private double radius(MeshForces.Gear gear, int teeth) {
        return CountershaftMeshes.radius(c, gear, teeth);
    }

    private double idlerAlong(MeshForces.Gear gear) {
        return (radius(gear, gear.driving()) + radius(gear, gear.idler())) * Math.cos(gear.around());
    }

    private double idlerAcross(MeshForces.Gear gear) {
        return (radius(gear, gear.driving()) + radius(gear, gear.idler())) * Math.sin(gear.around());
    }

    /**
     * Loads in one gear.
     *
     * @param in the input mesh as it acts on the countershaft
     * @param out the gear mesh as it acts on the countershaft
     * @param loads to which those of these bearings are added
     */
    MeshForces.Result.Main solve(
            Working w, MeshForces.Gear gear, Shaft.Mesh in, Shaft.Mesh out, List<MeshForces.Result.Load> loads) {
        double inputRadius = in.radius() * c.inputTeeth() / c.drivenTeeth();
        Shaft.Mesh input = new Shaft.Mesh(
                gear.name() + ", input gear",
                in.position(),
                inputRadius,
                in.around() + Math.PI,
                in.tangential() * inputRadius,
                in.separation(),
                -in.thrust());
        int turn = gear.idler() > 0 ? -1 : 1;
        double outputRadius = radius(gear, Math.max(4, gear.driven()));
        Shaft.Mesh output = new Shaft.Mesh(
                gear.name() + ", output gear",
                out.position(),
                outputRadius,
                gear.idler() > 0 ? Math.atan2(idlerAcross(gear), idlerAlong(gear) - distance()) : Math.PI,
                turn * out.tangential() * outputRadius,
                out.separation(),
                -turn * out.thrust());
        List<MeshForces.Result.Load> held = new ArrayList<>();
        boolean outputFirst = c.outputBearings().size() < 2;
        if (outputFirst) {
            Shaft.Push spigot = hold(gear, "output", List.of(output), List.of(), c.outputBearings(), held);
            hold(gear, "input", List.of(input), List.of(spigot), c.inputBearings(), held);
        } else if (c.inputBearings().size() < 2) {
            Shaft.Push spigot = hold(gear, "input", List.of(input), List.of(), c.inputBearings(), held);
            hold(gear, "output", List.of(output), List.of(spigot), c.outputBearings(), held);
        } else {
            hold(gear, "input", List.of(input), List.of(), c.inputBearings(), held);
            hold(gear, "output", List.of(output), List.of(), c.outputBearings(), held);
        }
        if (gear.idler() > 0) {
            held.add(MeshForces.Result.Load.of(
                    gear,
                    "idler pin",
                    out.position(),
                    Shaft.Reaction.of(out.along() + output.along(), out.across() + output.across())));
        }
        for (MeshForces.Result.Load load : held) {
            w.line(
                    gear.name() + ": " + load.bearing(),
                    load.bearing().startsWith("idler") ? "its two meshes" : "balance of forces and moments",
                    load.radial(),
                    Kind.FORCE,
                    Shaft.SOURCE);
        }
        double torque = w.line(
                gear.name() + ": output torque",
                gear.direct() ? "input torque" : "tangential × output radius",
                gear.direct() ? c.way() * c.inputTorque() : output.torque(),
                Kind.TORQUE);
        w.line(gear.name() + ": thrust of the input shaft", "+ to the rear", input.axial(), Kind.FORCE, Shaft.SOURCE);
        w.line(gear.name() + ": thrust of the output shaft", "+ to the rear", output.axial(), Kind.FORCE, Shaft.SOURCE);
        loads.addAll(held);
        return new MeshForces.Result.Main(gear.name(), torque, input.axial(), output.axial());
    }

    /** Adds the supports of one shaft; gives the force of this shaft on the other at the spigot. */
    private Shaft.Push hold(
            MeshForces.Gear gear,
            String shaft,
            List<Shaft.Mesh> meshes,
            List<Shaft.Push> pushes,
            List<Double> own,
            List<MeshForces.Result.Load> held) {
        Double spigot = c.spigot();
        double first = own.get(0);
        double second = own.size() == 2 ? own.get(1) : spigot == null ? Double.NaN : spigot;
        Shaft.Reactions found = Shaft.balance(meshes, pushes, first, second);
        held.add(MeshForces.Result.Load.of(gear, shaft + " bearing" + (own.size() == 2 ? " 1" : ""), first, found.a()));
        held.add(MeshForces.Result.Load.of(
                gear,
                own.size() == 2 ? shaft + " bearing 2" : "spigot, on the " + shaft + " shaft",
                second,
                found.b()));
        return new Shaft.Push(second, -found.b().along(), -found.b().across());
    }
}
