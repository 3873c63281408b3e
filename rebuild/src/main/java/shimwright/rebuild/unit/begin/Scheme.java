package shimwright.rebuild.unit.begin;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;

/**
 * The section of a first unit as a scheme, in mm: every shaft on its own axis, gears in mesh, bearings in the walls, forks on
 * their rails in the grooves of their sleeves. It shows how such a box is put together; none of its sizes was measured.
 */
final class Scheme {
    /** Pitch radius of a wheel on the output shaft, by gear; reverse first. What is left of the centres is its mate's. */
    private static final int[] WHEEL = {46, 56, 50, 44, 40, 37, 35, 33};

    private static final int CENTERS = 84;
    private static final int TIP = 2;
    private static final int WALL = 16;
    private static final int WIDE = 18;
    private static final int RING = 8;
    private static final int PLAIN = 28;
    private static final int DRIVE_GEAR = 36;
    private static final int REVERSE_FIXED = 22;
    private static final int REVERSE_IDLER = 24;
    private static final int FIRST_RAIL = 70;
    private static final int NEXT_RAIL = 15;
    private static final int BESIDE = 90;

    private final Construction built;
    private final PartList parts;
    private final boolean inLine;
    private final boolean crossing;
    private final Map<String, String> drawn = new LinkedHashMap<>();
    private final List<String> shafts = new ArrayList<>();
    private final Castings castings = new Castings();
    private final List<int[]> fixed = new ArrayList<>();
    private final Map<String, Integer> hubs = new LinkedHashMap<>();
    private final int mates;
    private int at;

    private Scheme(Construction built, PartList parts) {
        this.built = built;
        this.parts = parts;
        this.inLine = built.layout() == Layout.IN_LINE;
        this.crossing = built.layout() == Layout.ALONG;
        this.mates = inLine ? -CENTERS : CENTERS;
    }

    /** The scheme of a box of a construction with its parts. */
    static Scheme of(Construction built, PartList parts) {
        Scheme scheme = new Scheme(built, parts);
        scheme.wheels();
        int rear = scheme.at;
        scheme.inputAndOutput(rear);
        scheme.reverse(rear);
        scheme.finalDrive();
        scheme.rails(rear);
        scheme.castings(rear);
        return scheme;
    }

    /** Keys of an item that say what is drawn for it; empty for what the section does not show. */
    String of(String item) {
        return drawn.getOrDefault(item, "");
    }

    /** The section of the file. */
    String section() {
        return "section:\n  scheme: true\n  shafts:\n" + String.join("", shafts) + "  castings:\n" + castings.text();
    }

    private void draw(String item, String shape, String line, int from, int to, int inner, int outer) {
        if (parts.has(item)) {
            drawn.put(
                    item,
                    String.format(
                            Locale.ROOT,
                            ", shape: %s, shaft: %s, along: %d %d mm, diameters: %d %d mm",
                            shape,
                            line,
                            from,
                            to,
                            inner,
                            outer));
        }
    }

    private void shaft(String id, String name, String place, String steps, String bores, String item) {
        shafts.add("    - {id: " + id + ", name: " + name + ", " + place + " mm, steps: [" + steps + "]"
                + (bores.isEmpty() ? "" : ", bores: [" + bores + "]") + ", item: " + item + "}\n");
    }

    private static String step(int from, int to, int diameter) {
        return from + " " + to + " " + diameter + " mm";
    }

    /** Wheels, rings, hubs and sleeves one after another along the output, the gear that runs straight through in front. */
    private void wheels() {
        at = inLine ? 40 : built.layout() == Layout.ACROSS ? 58 : 22;
        List<int[]> order = new ArrayList<>(UsualParts.hubs(built));
        order.stream()
                .filter(hub -> straight(hub[0]) || straight(hub[1]))
                .findFirst()
                .ifPresent(hub -> Collections.swap(order, 0, order.indexOf(hub)));
        for (int[] hub : order) {
            String marks = Names.marks(hub);
            int front = straight(hub[1]) ? hub[1] : hub[0];
            int behind = straight(hub[1]) ? hub[0] : hub[1];
            wheel(front);
            rings(front);
            draw("hub_" + marks, "hub", "output_line", at, at + WIDE, PLAIN, 60);
            draw("sleeve_" + marks, "sleeve", "output_line", at - 3, at + WIDE + 3, 60, 76);
            hubs.put(marks, at + WIDE / 2);
            at += WIDE;
            rings(behind);
            wheel(behind);
            at += 4;
        }
        if (built.reverse() == Reverse.SLIDING) {
            at += WIDE;
        }
    }

    private boolean straight(int gear) {
        return gear > 0 && gear == built.straight();
    }

    private void wheel(int gear) {
        if (gear < 0 || straight(gear)) {
            return;
        }
        String mark = Names.mark(gear);
        int radius = WHEEL[gear];
        draw("needles_" + mark, "needles", "output_line", at, at + WIDE, PLAIN, 34);
        draw("wheel_" + mark, "gear", "output_line", at, at + WIDE, 34, 2 * (radius + TIP));
        int mate = gear == 0 ? REVERSE_FIXED : CENTERS - radius;
        fixed.add(new int[] {at, at + WIDE, mate + TIP});
        at += WIDE;
    }

    private void rings(int gear) {
        if (gear > 0 && built.cones().get(gear - 1) > 0) {
            String mark = Names.mark(gear);
            draw("ring_" + mark, "ring", "output_line", at + 1, at + RING - 1, 50, 59);
            draw("ring_" + mark + "_inner", "ring", "output_line", at + 1, at + RING - 1, 42, 47);
            draw("cone_" + mark, "ring", "output_line", at + 1, at + RING - 1, 47, 52);
            draw("ring_" + mark + "_outer", "ring", "output_line", at + 1, at + RING - 1, 52, 59);
        }
        at += gear > 0 ? RING : 2;
    }

    private void inputAndOutput(int rear) {
        int front = front() - 70;
        bearing("input_front_bearing", "input_line", 0);
        bearing("output_rear_bearing", "output_line", rear);
        int nut = rear + WALL;
        draw("output_nut", "nut", "output_line", nut, nut + 8, PLAIN, 44);
        draw("input_seal", "seal", "input_line", front() - 8, front(), PLAIN, 44);
        if (inLine) {
            int end = outputEnd(rear);
            shaft(
                    "input_line",
                    "input shaft",
                    "at: 0 0",
                    step(front, 17, PLAIN) + ", " + step(17, 40, 40),
                    step(24, 40, 26),
                    "input_shaft");
            draw("input_shaft", "gear", "input_line", 20, 38, 40, 2 * (DRIVE_GEAR + TIP));
            draw("input_ring", "snap_ring", "input_line", -2, 0, PLAIN, 38);
            draw("pocket_bearing", "needles", "input_line", 26, 38, 20, 26);
            shaft(
                    "output_line",
                    "output shaft",
                    "at: 0 0",
                    step(25, 40, 20) + ", " + step(40, end, PLAIN),
                    "",
                    "output_shaft");
            draw("output_seal", "seal", "output_line", end - 30, end - 22, PLAIN, 48);
            fixed.add(0, new int[] {20, 38, CENTERS - DRIVE_GEAR + TIP});
            counter(rear);
            return;
        }
        bearing("input_rear_bearing", "input_line", rear);
        shaft("input_line", "input shaft", "at: 0 " + mates, step(front, rear + WALL, PLAIN), "", "input_shaft");
        gears("input_shaft", "input_line");
        bearing("output_front_bearing", "output_line", 0);
        int pinion = crossing ? -63 : -2;
        shaft("output_line", "output shaft", "at: 0 0", step(pinion, nut + 8, PLAIN), "", "output_shaft");
    }

    private void bearing(String item, String line, int from) {
        draw(item, "roller_outer", line, from, from + WALL, PLAIN, 62);
    }

    /** The gears that are one with a shaft, drawn with it. */
    private void gears(String item, String line) {
        if (!parts.has(item) || fixed.isEmpty()) {
            return;
        }
        int[] first = fixed.get(0);
        draw(item, "body", line, first[0], first[1], PLAIN, 2 * first[2]);
        if (fixed.size() > 1) {
            drawn.merge(
                    item,
                    fixed.stream()
                            .skip(1)
                            .map(ring -> ring[0] + " " + ring[1] + " " + PLAIN + " " + 2 * ring[2] + " mm")
                            .collect(Collectors.joining(", ", ", also: [", "]")),
                    String::concat);
        }
    }

    private void counter(int rear) {
        String item = parts.has("counter") ? "counter" : "counter_1";
        shaft("counter_line", "countershaft", "at: 0 " + mates, step(-2, rear + WALL + 2, PLAIN), "", item);
        bearing(item + "_front_bearing", "counter_line", 0);
        bearing(item + "_rear_bearing", "counter_line", rear);
        gears(item, "counter_line");
    }

    /** The idler outside of the shaft that drives it, so that it is seen; its true place is beside the section. */
    private void reverse(int rear) {
        int from = fixed.stream()
                .filter(ring -> ring[2] == REVERSE_FIXED + TIP)
                .mapToInt(ring -> ring[0])
                .findFirst()
                .orElse(rear - WIDE - 2);
        int height = mates + (inLine ? -1 : 1) * (REVERSE_FIXED + REVERSE_IDLER);
        shaft("idler_line", "reverse idler", "at: 0 " + height, step(from - 20, rear + WALL, 16), "", "idler_shaft");
        draw("idler", "gear", "idler_line", from, from + WIDE - 2, 16, 2 * (REVERSE_IDLER + TIP));
    }

    private void finalDrive() {
        if (inLine) {
            return;
        }
        if (crossing) {
            draw("output_shaft", "bevel_gear", "output_line", -63, -7, 0, 48);
            shaft(
                    "diff_line",
                    "differential",
                    "axis: y, at: -80 0",
                    step(-62, -40, 40) + ", " + step(40, 62, 40),
                    "",
                    "diff_case");
            draw("diff_case", "body", "diff_line", -40, 40, 0, 72);
            draw("final_wheel", "bevel_gear", "diff_line", 18, 40, 72, 112);
            draw("diff_left_bearing", "taper_cone", "diff_line", 42, 58, 40, 66);
            draw("diff_right_bearing", "taper_cone", "diff_line", -58, -42, 40, 66);
            draw("left_seal", "seal", "diff_line", 62, 70, 30, 48);
            draw("right_seal", "seal", "diff_line", -70, -62, 30, 48);
            return;
        }
        draw("output_shaft", "gear", "output_line", 20, 38, PLAIN, 52);
        shaft("diff_line", "differential", "at: 0 -84", step(0, 20, 36) + ", " + step(62, 80, 36), "", "diff_case");
        draw("final_wheel", "gear", "diff_line", 20, 38, 60, 124);
        draw("diff_case", "body", "diff_line", 20, 62, 0, 60);
        draw("diff_left_bearing", "taper_cone", "diff_line", 2, 16, 36, 58);
        draw("diff_right_bearing", "taper_cone", "diff_line", 64, 78, 36, 58);
        draw("left_seal", "seal", "diff_line", -8, 0, 30, 48);
        draw("right_seal", "seal", "diff_line", 82, 90, 30, 48);
    }

    /** Rails one above the other where the section shows no other shaft; they lie beside what turns. */
    private void rails(int rear) {
        int side = inLine ? 1 : -1;
        int count = 0;
        for (Map.Entry<String, Integer> hub : hubs.entrySet()) {
            boolean own = parts.has("rail_" + hub.getKey());
            if (own || count == 0) {
                String item = own ? "rail_" + hub.getKey() : "rail";
                rail(
                        own ? "rail_line_" + hub.getKey() : "rail_line",
                        item,
                        rear,
                        side * (FIRST_RAIL + NEXT_RAIL * count++));
            }
            String line = own ? "rail_line_" + hub.getKey() : "rail_line";
            draw("fork_" + hub.getKey(), "fork", line, hub.getValue() - 9, hub.getValue() + 9, 14, 22);
        }
        if (parts.has("selector_shaft")) {
            rail("selector_line", "selector_shaft", rear, side * (FIRST_RAIL + NEXT_RAIL * count));
            draw("selector_seal", "seal", "selector_line", rear + WALL + 6, rear + WALL + 12, 14, 26);
        }
    }

    private void rail(String id, String item, int rear, int height) {
        int from = hubs.values().stream().mapToInt(Integer::intValue).min().orElse(0) - 22;
        shaft(
                id,
                parts.has(item) ? parts.name(item) : item,
                "at: " + BESIDE + " " + height,
                step(from, rear + WALL + 12, 14),
                "",
                item);
    }

    private int front() {
        return crossing ? -150 : -8;
    }

    private int outputEnd(int rear) {
        return rear + WALL + (parts.has("tail") ? 150 : 70);
    }

    private void castings(int rear) {
        int rails = parts.has("rail") ? 1 : hubs.size();
        int outside = FIRST_RAIL + NEXT_RAIL * rails + 22;
        int beyond = CENTERS + REVERSE_FIXED + 2 * REVERSE_IDLER + 16;
        int top = inLine ? outside : beyond;
        int bottom = inLine ? -beyond : -Math.max(outside, built.layout() == Layout.ACROSS ? 84 + 62 + 16 : 0);
        int end = rear + WALL;
        String below = parts.has("other_half") ? "other_half" : "main_case";
        castings.skin("case above", "main_case", front(), top, end, top);
        castings.skin("case below", below, front(), bottom, end, bottom);
        castings.wall("front wall", "main_case", 0, WALL, bottom, top);
        castings.wall("rear wall", parts.has("plate") ? "plate" : "main_case", rear, end, bottom, top);
        if (parts.has("bell")) {
            castings.skin("bell housing above", "bell", front() - 90, top + 40, front(), top);
            castings.skin("bell housing below", "bell", front() - 90, bottom - 40, front(), bottom);
        }
        if (parts.has("end_cover")) {
            castings.cap("end cover", "end_cover", end, end + 24, bottom + 20, top - 20, !inLine);
        }
        if (parts.has("tail")) {
            castings.skin("tail housing above", "tail", end, top - 20, outputEnd(rear) - 20, 40);
            castings.skin("tail housing below", "tail", end, bottom + 20, outputEnd(rear) - 20, -40);
        }
    }

    /** Outlines of castings as they stand in the file. */
    private static final class Castings {
        private final StringBuilder out = new StringBuilder();

        private void add(String name, String item, String points, boolean closed) {
            out.append("    - {name: ").append(name).append(", item: ").append(item);
            out.append(", points: [").append(points).append(closed ? "], closed: true}\n" : "]}\n");
        }

        private static String point(int x, int height) {
            return x + " " + height + " mm";
        }

        void skin(String name, String item, int x1, int y1, int x2, int y2) {
            add(name, item, point(x1, y1) + ", " + point(x2, y2), false);
        }

        void wall(String name, String item, int from, int to, int low, int high) {
            add(
                    name,
                    item,
                    point(from, low) + ", " + point(from, high) + ", " + point(to, high) + ", " + point(to, low),
                    true);
        }

        void cap(String name, String item, int from, int to, int low, int high, boolean shut) {
            if (shut) {
                add(
                        name,
                        item,
                        point(from, high) + ", " + point(to, high) + ", " + point(to, low) + ", " + point(from, low),
                        false);
            } else {
                skin(name + " above", item, from, high, to, high);
                skin(name + " below", item, from, low, to, low);
            }
        }

        String text() {
            return out.toString();
        }
    }
}
