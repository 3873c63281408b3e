package shimwright.mechanics.tooth;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code ratios}: ratios of a gearbox from its tooth table, and who turns how fast in a gear. */
public final class Ratios {
    private static final String SOURCE = "kinematics: driven teeth by driving teeth";
    private static final double ODD_SHIFT = 1.5;

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
                    "ratios",
                    "Ratios and power flow",
                    "Ratios and steps of a gearbox from its tooth counts, and speeds and torques in the engaged gear.",
                    List.of(SOURCE),
                    Case.class,
                    Result.class,
                    Ratios::work)
            .drawn(ToothPictures::ratios);

    private Ratios() {}

    /** Lengths in metres, rotation in rad/s, torque in N·m. */
    public record Case(
            @Input(
                    meaning = "input pair of a three-shaft box: driving: driven; left out for two shafts",
                    fewest = 0,
                    most = 1,
                    example = "24: 29")
            List<GearTable.Mesh> constantMesh,

            @Input(
                    meaning = "gears, lowest first: name: driving: driven: idler",
                    most = 20,
                    example = "1st: 17: 36; 2nd: 19: 30; 3rd: 22: 27; 4th: 0: 0")
            List<GearTable.Gear> gears,

            @Input(meaning = "final drive: driving: driven", fewest = 0, most = 1)
            List<GearTable.Mesh> finalDrive,

            @Input(meaning = "name of the gear engaged, for the power flow", orElse = "", example = "1st")
            String engaged,

            @Input(
                    kind = Kind.ROTATION,
                    meaning = "speed of the input shaft",
                    orElse = "1000 rpm",
                    min = 0,
                    max = 2100,
                    example = "3000 rpm")
            double inputSpeed,

            @Input(
                    kind = Kind.TORQUE,
                    meaning = "torque at the input shaft, losses left out",
                    orElse = "1 N·m",
                    min = 0,
                    max = 1e5,
                    example = "150 N·m")
            double inputTorque,

            @Input(kind = Kind.LENGTH, meaning = "centre distance of the shafts", min = 1e-3, max = 2) @Nullable
            Double centreDistance) {}

    /** One gear's figures. */
    public record Row(
            @Output(meaning = "gear") String name,

            @Output(meaning = "ratio, input turns by output turns")
            double ratio,

            @Output(meaning = "turns backward") boolean backward,

            @Output(meaning = "ratio with the final drive") double overall,

            @Output(meaning = "step from the gear before, by this gear") @Nullable
            Double step,

            @Output(meaning = "common factor of its tooth counts")
            int commonFactor,

            @Output(meaning = "sum of profile shifts its centre distance asks for") @Nullable
            Double shiftSum) {}

    /** A gear that runs loose while another is engaged. */
    public record Idling(
            @Output(meaning = "gear") String name,

            @Output(kind = Kind.ROTATION, meaning = "its own speed", decimals = 1)
            double speed,

            @Output(kind = Kind.ROTATION, meaning = "slip on its shaft, signed", decimals = 1)
            double slip) {}

    /**
     * One place on the way of the power. Speed and torque carry one sign, so that their product is the power everywhere.
     */
    public record Stage(
            @Output(meaning = "part") String part,

            @Output(meaning = "how the power came to it") String by,

            @Output(kind = Kind.ROTATION, meaning = "speed, + the way the input turns", decimals = 1)
            double speed,

            @Output(kind = Kind.TORQUE, meaning = "torque passed on about its own axis, sign of the speed")
            double torque) {}

    /** Rotation in rad/s, torque in N·m; speeds are positive the way the input turns. */
    public record Result(
            @Output(meaning = "gears") List<Row> gears,

            @Output(meaning = "final drive ratio") double finalRatio,
            @Output(meaning = "input pair ratio") double inputRatio,

            @Output(kind = Kind.ROTATION, meaning = "countershaft speed, as an amount", decimals = 1)
            double countershaftSpeed,

            @Output(kind = Kind.ROTATION, meaning = "output shaft speed in the engaged gear", decimals = 1) @Nullable
            Double outputSpeed,

            @Output(kind = Kind.TORQUE, meaning = "output shaft torque in the engaged gear") @Nullable
            Double outputTorque,

            @Output(kind = Kind.TORQUE, meaning = "countershaft torque in the engaged gear") @Nullable
            Double countershaftTorque,

            @Output(kind = Kind.POWER, meaning = "power, the same all the way", decimals = 3) @Nullable
            Double power,

            @Output(meaning = "way of the power in the engaged gear")
            List<Stage> path,

            @Output(meaning = "gears that run loose then") List<Idling> idling) {}

    /**
     * Ratios, steps and, for an engaged gear, speeds and torques.
     *
     * @param c the case; in a two-shaft box the input shaft is the driving shaft and no constantMesh is given
     * @return refused for a name given twice or unknown, a gear with one count missing, or a direct gear without a
     *     countershaft. Losses are left out. Source: kinematics; the way of the power by the balance of torque at a mesh
     */
    public static Outcome<Worked<Result>> work(Case c) {
        List<Refusal> faults = faults(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        Working w = new Working();
        double input = w.line("input pair", "driven / driving", GearTable.ratio(c.constantMesh()), Kind.NUMBER, SOURCE);
        double last = w.line("final drive", "driven / driving", GearTable.ratio(c.finalDrive()), Kind.NUMBER, SOURCE);
        List<Row> rows = new ArrayList<>();
        Double before = null;
        for (GearTable.Gear gear : c.gears()) {
            double ratio = w.line(
                    gear.name(),
                    gear.direct()
                            ? "direct"
                            : "input pair × driven / driving" + (gear.idler() > 0 ? ", turned round" : ""),
                    ratio(gear, input),
                    Kind.NUMBER,
                    SOURCE);
            Double step = before == null || gear.idler() > 0 ? null : (Double) (before / ratio);
            int factor = gear.direct() ? 1 : ToothingPair.commonFactor(gear.driving(), gear.driven());
            rows.add(new Row(gear.name(), ratio, gear.idler() > 0, ratio * last, step, factor, shift(c, gear)));
            before = gear.idler() > 0 ? before : (Double) ratio;
        }
        cautions(c, w, rows);
        return Outcome.ok(flow(c, w, rows, input, last));
    }

    private static List<Refusal> faults(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Set<String> names = new HashSet<>();
        for (GearTable.Gear gear : c.gears()) {
            if (!names.add(plain(gear.name()))) {
                faults.add(Refusal.of("gears", gear.name() + " is given twice", "Give each gear its own name"));
            }
            boolean small = (gear.driving() > 0 && gear.driving() < 4) || (gear.driven() > 0 && gear.driven() < 4);
            if ((gear.driving() == 0) != (gear.driven() == 0) || small) {
                faults.add(Refusal.of(
                        "gears",
                        gear.name() + " has " + gear.driving() + " and " + gear.driven() + " teeth",
                        "Give both counts, 4 or more, or 0: 0 for a direct gear"));
            }
            if (gear.direct() && c.constantMesh().isEmpty()) {
                faults.add(Refusal.of(
                        "gears", gear.name() + " is direct, but there is no countershaft", "Give constantMesh"));
            }
            if (gear.direct() && gear.idler() > 0) {
                faults.add(Refusal.of("gears", gear.name() + " is direct and has an idler", "Give its tooth counts"));
            }
        }
        if (!c.engaged().isBlank() && engaged(c).isEmpty()) {
            faults.add(Refusal.of(
                    "engaged",
                    "there is no gear \"" + c.engaged() + "\"",
                    "Known: "
                            + String.join(
                                    ", ",
                                    c.gears().stream().map(GearTable.Gear::name).toList())));
        }
        return faults;
    }

    private static String plain(String name) {
        return name.strip().toLowerCase(Locale.ROOT);
    }

    private static Optional<GearTable.Gear> engaged(Case c) {
        return c.gears().stream()
                .filter(gear -> plain(gear.name()).equals(plain(c.engaged())))
                .findFirst();
    }

    /** As an amount; an idler's teeth drop out. */
    private static double ratio(GearTable.Gear gear, double input) {
        return gear.direct() ? 1 : input * gear.driven() / gear.driving();
    }

    private static @Nullable Double shift(Case c, GearTable.Gear gear) {
        Double distance = c.centreDistance();
        Double module = gear.module();
        if (distance == null || module == null || gear.direct() || gear.idler() > 0) {
            return null;
        }
        ToothingPair pair = new ToothingPair(
                new Toothing(gear.driving(), module, Math.PI / 9, gear.helix()),
                new Toothing(gear.driven(), module, Math.PI / 9, gear.helix()));
        double least = pair.reference() * Math.cos(pair.at());
        return distance > least ? (Double) pair.shiftSum(pair.angle(distance)) : null;
    }

    private static void cautions(Case c, Working w, List<Row> rows) {
        List<Row> forward = rows.stream().filter(row -> !row.backward()).toList();
        for (int i = 1; i < forward.size(); i++) {
            if (forward.get(i).ratio() >= forward.get(i - 1).ratio()) {
                w.caution(forward.get(i).name() + " is not higher than "
                        + forward.get(i - 1).name() + ": wrong order, wrong count or a wrong gear.");
            }
            Double step = forward.get(i).step();
            Double before = forward.get(i - 1).step();
            if (step != null && before != null && step > before * 1.02) {
                w.caution("The step into " + forward.get(i).name() + " is wider than the one before; usually steps get"
                        + " smaller toward the top. Count again.");
            }
        }
        for (Row row : rows) {
            if (row.commonFactor() > 1) {
                w.caution(row.name() + ": tooth counts share the factor " + row.commonFactor()
                        + ", so mark worn gears and mate them tooth to tooth.");
            }
            Double shift = row.shiftSum();
            if (shift != null && Math.abs(shift) > ODD_SHIFT) {
                w.caution(row.name() + " does not fit this centre distance: wrong count, module, helix or gear.");
            }
        }
        boolean unfit = c.centreDistance() != null
                && c.gears().stream()
                        .anyMatch(gear ->
                                gear.module() != null && !gear.direct() && gear.idler() == 0 && shift(c, gear) == null);
        if (unfit) {
            w.caution("A pair is too large for the centre distance altogether: wrong count, module, helix or gear.");
        }
        w.caution("Losses are left out of torques.");
    }

    private static Worked<Result> flow(Case c, Working w, List<Row> rows, double input, double last) {
        double counter = c.inputSpeed() / input;
        Optional<GearTable.Gear> found = engaged(c);
        if (found.isEmpty()) {
            return w.worked(new Result(rows, last, input, counter, null, null, null, null, List.of(), List.of()));
        }
        GearTable.Gear gear = found.get();
        double ratio = signed(gear, input);
        w.line("countershaft speed", "input speed / input pair", counter, Kind.ROTATION, SOURCE);
        double output = w.line("output speed", "input speed / ratio", c.inputSpeed() / ratio, Kind.ROTATION, SOURCE);
        double torque = w.line("output torque", "input torque × ratio", c.inputTorque() * ratio, Kind.TORQUE, SOURCE);
        double power = w.line("power", "input torque × input speed", c.inputTorque() * c.inputSpeed(), Kind.POWER);
        List<Stage> path = PowerFlow.path(c, gear, w);
        List<Idling> idling = idling(c, w, gear, input, output);
        double counterTorque = gear.direct() ? 0 : c.inputTorque() * input;
        return w.worked(new Result(rows, last, input, counter, output, torque, counterTorque, power, path, idling));
    }

    /** Turns of the input by turns of the output, below 0 through an idler. */
    private static double signed(GearTable.Gear gear, double input) {
        return (gear.idler() > 0 ? -1 : 1) * ratio(gear, input);
    }

    private static List<Idling> idling(Case c, Working w, GearTable.Gear engaged, double input, double output) {
        double counter = c.inputSpeed() / input;
        List<Idling> idling = new ArrayList<>();
        for (GearTable.Gear other : c.gears()) {
            if (other.direct() || other.equals(engaged) || other.loose() == GearTable.Loose.NONE) {
                continue;
            }
            double own = signed(other, input);
            boolean onOutput = other.loose() == GearTable.Loose.DRIVEN;
            double speed = onOutput ? c.inputSpeed() / own : output * own / input;
            double slip = speed - (onOutput ? output : counter);
            w.line(
                    other.name() + " slips on its shaft",
                    onOutput
                            ? "input speed / its ratio − output speed"
                            : "output speed × its pair − countershaft speed",
                    slip,
                    Kind.ROTATION,
                    SOURCE);
            idling.add(new Idling(other.name(), speed, slip));
        }
        return idling;
    }
}
