package shimwright.rebuild.part;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Stream;
import shimwright.mechanics.reference.Table;

/**
 * One way in which a part is called.
 *
 * @param text in capitals without blanks and dashes
 * @param alone true where it says a part by itself; false for a bare number, which wants the family in words
 * @param remark what to look at where this was stamped; may be empty
 */
record CallOut(String text, boolean alone, String remark) {
    /** All ways in which the part of a row is called. */
    static List<CallOut> of(StandardPart part, Table.Row row) {
        String name = row.text("designation");
        return switch (part.family()) {
            case DEEP_GROOVE, TAPERED -> alone(name, row.has("alias") ? row.text("alias") : "");
            case ANGULAR_CONTACT, NEEDLE, THRUST_NEEDLE, THRUST_BALL -> alone(name);
            case CYLINDRICAL_ROLLER -> roller(row);
            case LIP_SEAL -> alone(sizes(row, "d_shaft_mm", "D_bore_mm", "b_width_mm"));
            case O_RING -> ring(row);
            case SHAFT_RING, BORE_RING -> withShort(sizes(row, "d1_mm", "s_mm"), sizes(row, "d1_mm"));
            case KEY -> alone(sizes(row, "b_mm", "h_mm"));
            case BALL -> ball(row);
            case DOWEL -> withShort("", sizes(row, "d_mm"));
            case HEX_SCREW, SOCKET_SCREW -> thread(row);
            case PLUG -> plug(row);
            case SEALING_WASHER -> alone(sizes(row, "d_nominal_mm", "d2_mm", "h_mm"));
            case SHIM_RING -> alone(sizes(row, "d_mm", "D_mm"));
            case SPLINE -> spline(row);
        };
    }

    /** A text as call-outs are kept: capitals, a point for a decimal comma, no blanks and no dashes. */
    static String compact(String text) {
        return text.toUpperCase(Locale.ROOT).replaceAll("[\\s_-]", "");
    }

    private static List<CallOut> alone(String... texts) {
        return Stream.of(texts)
                .filter(text -> !text.isEmpty())
                .map(text -> new CallOut(compact(text), true, ""))
                .toList();
    }

    private static List<CallOut> withShort(String whole, String number) {
        List<CallOut> ways = new ArrayList<>(alone(whole));
        ways.add(new CallOut(compact(number), false, ""));
        return ways;
    }

    private static String sizes(Table.Row row, String... columns) {
        return String.join("X", Stream.of(columns).map(row::text).toList());
    }

    /** The types of cylindrical roller bearing share bore, outside and width; E tells another raceway. */
    private static List<CallOut> roller(Table.Row row) {
        boolean reinforced = row.text("design").equals("E");
        String types = row.has("types_seen") ? row.text("types_seen") : "NU";
        List<CallOut> ways = new ArrayList<>();
        for (String type : types.split("/")) {
            String bare = type + row.text("size_code");
            if (reinforced) {
                ways.add(new CallOut(bare + "E", true, ""));
                ways.add(new CallOut(bare, true, "Made with larger rollers; look for an E behind the number."));
            } else {
                ways.add(new CallOut(bare, true, ""));
            }
        }
        return ways;
    }

    private static List<CallOut> ring(Table.Row row) {
        if (row.has("dash_no")) {
            String inch = sizes(row, "id_mm", "cs_mm");
            return withShort(inch, row.text("dash_no"));
        }
        return alone(sizes(row, "id_mm", "cs_mm"));
    }

    private static List<CallOut> ball(Table.Row row) {
        if (row.has("inch_fraction")) {
            return withShort("", row.text("inch_fraction"));
        }
        return withShort("", row.text("D_mm"));
    }

    private static List<CallOut> thread(Table.Row row) {
        String name = row.text("designation");
        Set<String> ways = new LinkedHashSet<>(List.of(name));
        if (row.has("tpi")) {
            ways.add(name.split(" ")[0]);
            ways.add(name.replaceFirst("-\\d+", ""));
        } else if (name.contains("-")) {
            ways.add(name.split(" ")[0]);
            ways.add(name.replaceFirst("-\\d+", ""));
        } else if (row.text("series").equals("coarse")) {
            String flange = name.contains("flange") ? " flange" : "";
            ways.add("M" + sizes(row, "thread_d_mm", "pitch_mm") + flange);
        }
        return alone(ways.toArray(String[]::new));
    }

    private static List<CallOut> plug(Table.Row row) {
        String name = row.text("designation").replaceFirst("^DIN \\d+( A)? ", "");
        Set<String> ways = new LinkedHashSet<>(List.of(name));
        if (name.endsWith(" NPT")) {
            ways.add("NPT" + name.replace(" NPT", ""));
        }
        return alone(ways.toArray(String[]::new));
    }

    private static List<CallOut> spline(Table.Row row) {
        String whole = sizes(row, "d_B_mm", "m_mm", "z");
        List<CallOut> ways = new ArrayList<>(alone(whole, "W" + whole, "N" + whole));
        ways.add(new CallOut(
                compact(sizes(row, "d_B_mm", "m_mm")), true, "Count the teeth: this one has " + row.text("z") + "."));
        return ways;
    }
}
