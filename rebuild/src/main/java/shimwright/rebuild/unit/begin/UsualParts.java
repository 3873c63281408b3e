package shimwright.rebuild.unit.begin;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;
import shimwright.rebuild.unit.begin.Construction.Shift;
import shimwright.rebuild.unit.begin.PartList.Group;

/** The parts that a box of a construction usually has; common practice, no source: every one can be renamed or taken away. */
final class UsualParts {
    private static final String CASE = "main_case";
    private static final String OUTPUT = "output_shaft";

    private final Construction built;
    private final PartList parts = new PartList();

    private UsualParts(Construction built) {
        this.built = built;
    }

    static PartList of(Construction built) {
        UsualParts usual = new UsualParts(built);
        usual.castings();
        usual.input();
        usual.output();
        usual.countershafts();
        if (built.layout().finalDrive()) {
            usual.differential();
        }
        usual.reverse();
        usual.shift();
        usual.close();
        return usual.parts;
    }

    private boolean has(Housing housing) {
        return built.housings().contains(housing);
    }

    private void castings() {
        String name = has(Housing.SPLIT) ? "case half that stands in the fixture" : "main case";
        parts.add(Group.CASE, PartKind.CASTING, CASE, name, "");
        if (has(Housing.PLATE)) {
            parts.add(Group.CASE, PartKind.CASTING, "plate", "intermediate plate", "");
        }
        parts.add(Group.CASE, PartKind.SMALL, "magnet", "magnet", CASE);
        parts.add(Group.CASE, PartKind.SMALL, "dowels", "dowels of the case joint", CASE, 2);
    }

    private void input() {
        parts.add(Group.INPUT, PartKind.SHAFT, "input_shaft", "input shaft with its fixed gears", "");
        parts.add(Group.INPUT, PartKind.BALL, "input_front_bearing", "input front bearing", "input_shaft");
        if (built.layout() == Layout.IN_LINE) {
            parts.add(Group.INPUT, PartKind.SNAP_RING, "input_ring", "ring of the input bearing", "input_shaft");
            parts.add(
                    Group.INPUT,
                    PartKind.NEEDLES,
                    "pocket_bearing",
                    "bearing of the output in the input",
                    "input_shaft");
        } else {
            parts.add(Group.INPUT, PartKind.BALL, "input_rear_bearing", "input rear bearing", "input_shaft");
        }
    }

    private List<int[]> hubs() {
        return hubs(built);
    }

    /** Gears that share a hub, in the order in which they are put on; 0 is reverse, -1 nothing. */
    static List<int[]> hubs(Construction built) {
        List<int[]> hubs = new ArrayList<>();
        for (int gear = 1; gear <= built.gears(); gear += 2) {
            hubs.add(new int[] {gear, gear + 1 <= built.gears() ? gear + 1 : -1});
        }
        if (built.reverse() == Reverse.SYNCHRONIZED) {
            int[] last = hubs.get(hubs.size() - 1);
            if (last[1] < 0) {
                last[1] = 0;
            } else {
                hubs.add(new int[] {0, -1});
            }
        }
        if (built.layout() == Layout.IN_LINE && hubs.size() > 1) {
            Collections.swap(hubs, 0, 1);
        }
        return hubs;
    }

    private static String marks(int[] hub) {
        return Names.marks(hub);
    }

    private static String words(int[] hub) {
        return Names.gear(hub[0]) + (hub[1] < 0 ? "" : " and " + Names.gear(hub[1]));
    }

    private void output() {
        String name = built.layout().finalDrive() ? "output shaft with its pinion" : "output shaft";
        parts.add(Group.OUTPUT, PartKind.SHAFT, OUTPUT, name, "");
        if (built.layout() == Layout.ALONG) {
            frontBearing();
        }
        for (int[] hub : hubs()) {
            wheel(hub[0]);
            String id = "hub_" + marks(hub);
            parts.add(Group.OUTPUT, PartKind.HUB, id, "hub of " + words(hub), OUTPUT);
            parts.add(Group.OUTPUT, PartKind.SLEEVE, "sleeve_" + marks(hub), "sliding sleeve of " + words(hub), id);
            parts.add(Group.OUTPUT, PartKind.SMALL, "keys_" + marks(hub), "keys and springs of " + words(hub), id, 3);
            if (hub[1] >= 0) {
                behind(hub[1], id);
            }
        }
        if (built.layout() == Layout.ACROSS) {
            frontBearing();
        }
        parts.add(Group.OUTPUT, PartKind.BALL, "output_rear_bearing", "output rear bearing", OUTPUT);
        parts.add(Group.OUTPUT, PartKind.NUT, "output_nut", "nut of the output shaft", OUTPUT);
    }

    /** It stands behind a bevel pinion, so that it is put on before all else; of a shaft that lies across it may be put on last. */
    private void frontBearing() {
        parts.add(Group.OUTPUT, PartKind.BALL, "output_front_bearing", "output front bearing", OUTPUT);
    }

    private void wheel(int gear) {
        if (gear == built.straight() && gear > 0) {
            rings(gear, OUTPUT, false);
            return;
        }
        turning(gear);
        rings(gear, "wheel_" + Names.mark(gear), false);
    }

    /** What is put on behind its hub: the rings first, for they do not pass the wheel. */
    private void behind(int gear, String hub) {
        rings(gear, hub, true);
        if (gear != built.straight() || gear == 0) {
            turning(gear);
        }
    }

    private void turning(int gear) {
        String mark = Names.mark(gear);
        String name = Names.gear(gear);
        parts.add(Group.OUTPUT, PartKind.NEEDLES, "needles_" + mark, "needles under the wheel of " + name, OUTPUT);
        parts.add(Group.OUTPUT, PartKind.WHEEL, "wheel_" + mark, "wheel of " + name, "needles_" + mark);
    }

    private void rings(int gear, String onto, boolean outerFirst) {
        int cones = gear > 0 ? built.cones().get(gear - 1) : 0;
        String mark = Names.mark(gear);
        String of = " of " + Names.gear(gear);
        if (cones == 1) {
            parts.add(Group.OUTPUT, PartKind.RING, "ring_" + mark, "blocker ring" + of, onto);
        } else if (cones > 1) {
            String inner = "ring_" + mark + "_inner";
            String outer = "ring_" + mark + "_outer";
            String cone = "cone_" + mark;
            String first = outerFirst ? outer : inner;
            String last = outerFirst ? inner : outer;
            parts.add(
                    Group.OUTPUT, PartKind.RING, first, (outerFirst ? "outer" : "inner") + " blocker ring" + of, onto);
            parts.add(Group.OUTPUT, PartKind.RING, cone, "cone between the rings" + of, first);
            parts.add(Group.OUTPUT, PartKind.RING, last, (outerFirst ? "inner" : "outer") + " blocker ring" + of, cone);
        }
    }

    private void countershafts() {
        for (int i = 1; i <= built.countershafts(); i++) {
            String mark = built.countershafts() == 1 ? "" : "_" + i;
            String name = "countershaft" + (mark.isEmpty() ? "" : " " + i);
            String id = "counter" + mark;
            parts.add(Group.COUNTER, PartKind.SHAFT, id, name + " with its gears", "");
            parts.add(Group.COUNTER, PartKind.BALL, id + "_front_bearing", "front bearing of the " + name, id);
            parts.add(Group.COUNTER, PartKind.BALL, id + "_rear_bearing", "rear bearing of the " + name, id);
        }
    }

    private void differential() {
        String gear = built.layout() == Layout.ALONG ? "crown wheel" : "final drive wheel";
        parts.add(Group.DIFFERENTIAL, PartKind.SHAFT, "diff_case", "differential case", "");
        parts.add(Group.DIFFERENTIAL, PartKind.SMALL, "side_gears", "side gears with their washers", "diff_case", 2);
        parts.add(
                Group.DIFFERENTIAL, PartKind.SMALL, "planet_gears", "planet gears with their washers", "diff_case", 2);
        parts.add(Group.DIFFERENTIAL, PartKind.SMALL, "cross_pin", "cross pin with what locks it", "planet_gears");
        parts.add(Group.DIFFERENTIAL, PartKind.FIXED_GEAR, "final_wheel", gear, "diff_case");
        parts.add(
                Group.DIFFERENTIAL,
                PartKind.CONE,
                "diff_left_bearing",
                "left bearing of the differential",
                "diff_case");
        parts.add(
                Group.DIFFERENTIAL,
                PartKind.CONE,
                "diff_right_bearing",
                "right bearing of the differential",
                "diff_case");
    }

    private void reverse() {
        parts.add(Group.REVERSE, PartKind.SMALL, "idler", "reverse idler", CASE);
        parts.add(Group.REVERSE, PartKind.RAIL, "idler_shaft", "shaft of the reverse idler", "idler");
        if (built.reverse() == Reverse.SLIDING) {
            parts.add(Group.REVERSE, PartKind.FORK, "reverse_lever", "lever that slides the reverse idler", "idler");
        }
    }

    private void shift() {
        for (int[] hub : hubs()) {
            parts.add(
                    Group.SHIFT, PartKind.FORK, "fork_" + marks(hub), "fork of " + words(hub), "sleeve_" + marks(hub));
            if (built.shift() == Shift.RAILS) {
                parts.add(
                        Group.SHIFT,
                        PartKind.RAIL,
                        "rail_" + marks(hub),
                        "rail of " + words(hub),
                        "fork_" + marks(hub));
                parts.add(
                        Group.SHIFT,
                        PartKind.SMALL,
                        "detent_" + marks(hub),
                        "detent ball and spring of " + words(hub),
                        "rail_" + marks(hub));
            }
        }
        String first = "fork_" + marks(hubs().get(0));
        if (built.shift() != Shift.RAILS) {
            parts.add(Group.SHIFT, PartKind.RAIL, "rail", "rail of the forks", first);
            parts.add(Group.SHIFT, PartKind.SMALL, "detent", "detent ball and spring", "rail");
        }
        parts.add(Group.SHIFT, PartKind.SMALL, "interlock", "interlock", first);
        if (built.shift() == Shift.CABLES) {
            parts.add(Group.SHIFT, PartKind.RAIL, "selector_shaft", "selector shaft with its finger", "interlock");
            parts.add(Group.CLOSE, PartKind.SEAL, "selector_seal", "seal of the selector shaft", "selector_shaft");
        } else {
            parts.add(Group.SHIFT, PartKind.SMALL, "selector", "selector finger", "interlock");
        }
    }

    private void close() {
        if (has(Housing.SPLIT)) {
            parts.add(Group.CLOSE, PartKind.CASTING, "other_half", "other half of the case", CASE);
        }
        if (has(Housing.BELL)) {
            parts.add(Group.CLOSE, PartKind.CASTING, "bell", "bell housing", CASE);
        }
        if (has(Housing.END_COVER)) {
            parts.add(Group.CLOSE, PartKind.CASTING, "end_cover", "end cover", CASE);
        }
        if (has(Housing.TAIL)) {
            parts.add(Group.CLOSE, PartKind.CASTING, "tail", "tail housing", CASE);
        }
        parts.add(Group.CLOSE, PartKind.SEAL, "input_seal", "input seal", "input_shaft");
        if (built.layout().finalDrive()) {
            parts.add(Group.CLOSE, PartKind.SEAL, "left_seal", "left output seal", "diff_case");
            parts.add(Group.CLOSE, PartKind.SEAL, "right_seal", "right output seal", "diff_case");
        } else {
            parts.add(Group.CLOSE, PartKind.SEAL, "output_seal", "output seal", OUTPUT);
        }
        parts.add(Group.CLOSE, PartKind.PLUG, "drain_plug", "drain plug with its washer", CASE);
        parts.add(Group.CLOSE, PartKind.PLUG, "filler_plug", "filler plug with its washer", CASE);
        parts.add(Group.CLOSE, PartKind.PLUG, "breather", "breather", CASE);
        parts.add(Group.CLOSE, PartKind.PLUG, "reverse_switch", "reverse light switch", CASE);
    }
}
