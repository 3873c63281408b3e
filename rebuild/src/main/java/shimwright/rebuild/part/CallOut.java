package shimwright.rebuild.part;

import java.math.BigDecimal;
import java.math.RoundingMode;
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
            case ANGULAR_CONTACT, THRUST_BALL -> alone(name);
            case NEEDLE -> needle(part, row);
            case THRUST_NEEDLE -> thrust(row);
            case CYLINDRICAL_ROLLER -> roller(row);
            case LIP_SEAL -> withoutLast(row, "width", "d_shaft_mm", "D_bore_mm", "b_width_mm");
            case O_RING -> ring(row);
            case SHAFT_RING, BORE_RING -> withShort(sizes(row, "d1_mm", "s_mm"), sizes(row, "d1_mm"));
            case KEY -> withShort(sizes(row, "b_mm", "h_mm"), sizes(row, "b_mm"));
            case BALL -> ball(row);
            case DOWEL -> withShort("", sizes(row, "d_mm"));
            case HEX_SCREW, SOCKET_SCREW -> thread(row);
            case PLUG -> plug(row);
            case SEALING_WASHER -> washer(row);
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

    /** Sizes, and the same without the last one, which then has to be looked at. */
    private static List<CallOut> withoutLast(Table.Row row, String what, String first, String second, String last) {
        List<CallOut> ways = new ArrayList<>(alone(sizes(row, first, second, last)));
        String remark = "The " + what + " was not said: this one has " + row.text(last) + " mm.";
        ways.add(new CallOut(compact(sizes(row, first, second)), true, remark));
        return ways;
    }

    private static List<CallOut> washer(Table.Row row) {
        List<CallOut> ways = new ArrayList<>(withoutLast(row, "thickness", "d_nominal_mm", "d2_mm", "h_mm"));
        if (row.has("d1_actual_mm")) {
            ways.addAll(alone(sizes(row, "d1_actual_mm", "d2_mm", "h_mm")));
        }
        return ways;
    }

    /** By its number, or its letters with the sizes in full. */
    private static List<CallOut> needle(StandardPart part, Table.Row row) {
        String name = row.text("designation");
        String letters = name.replaceFirst("[^A-Z].*", "");
        Set<String> ways = new LinkedHashSet<>(List.of(name));
        part.family().measured().stream()
                .filter(columns -> columns.stream().allMatch(row::has))
                .findFirst()
                .ifPresent(columns -> ways.add(letters + sizes(row, columns.toArray(String[]::new))));
        if (letters.equals("NK") || letters.equals("NKI")) {
            ways.add(name.replace("/", ""));
            ways.add(name.replace('/', 'X'));
        }
        return alone(ways.toArray(String[]::new));
    }

    private static List<CallOut> thrust(Table.Row row) {
        String letters = row.text("designation").replaceFirst("[^A-Z].*", "");
        return alone(
                row.text("designation"),
                letters + sizes(row, "d_mm", "D_mm"),
                letters + sizes(row, "d_mm", "D_mm", "thickness_mm"));
    }

    private static List<CallOut> ball(Table.Row row) {
        if (!row.has("inch_fraction")) {
            return withShort("", row.text("D_mm"));
        }
        String fraction = row.text("inch_fraction");
        double inch = row.number("D_mm") / 25.4;
        String decimal = plainNumber(inch, 4);
        return Stream.of(
                        fraction.replace(' ', '+'),
                        fraction.contains("/") ? "" : fraction + "IN",
                        row.text("D_mm"),
                        fraction.contains("/") ? decimal : "",
                        fraction.contains("/") ? decimal + "IN" : "",
                        fraction.contains("/") ? plainNumber(inch, 3) + "IN" : "")
                .filter(text -> !text.isEmpty())
                .distinct()
                .map(text -> new CallOut(text, false, ""))
                .toList();
    }

    private static String plainNumber(double value, int digits) {
        return BigDecimal.valueOf(value)
                .setScale(digits, RoundingMode.HALF_UP)
                .stripTrailingZeros()
                .toPlainString();
    }

    private static List<CallOut> thread(Table.Row row) {
        String name = row.text("designation").replace(" flange", "");
        Set<String> ways = new LinkedHashSet<>(List.of(name));
        if (!name.startsWith("M")) {
            String[] words = name.split("[- ]");
            ways.addAll(List.of(
                    words[0] + words[1],
                    words[0] + "X" + words[1],
                    words[0] + words[2],
                    words[2] + words[0],
                    words[0] + words[1] + words[2]));
        } else if (row.text("series").equals("coarse") || !name.contains("x")) {
            ways.add("M" + sizes(row, "thread_d_mm", "pitch_mm"));
        }
        return alone(ways.toArray(String[]::new));
    }

    private static List<CallOut> plug(Table.Row row) {
        String name = row.text("designation").replaceFirst("^DIN \\d+( A)? ", "");
        String inch = name.replaceAll("[^0-9/]", "");
        Set<String> ways = new LinkedHashSet<>(List.of(name));
        if (name.endsWith(" NPT")) {
            ways.addAll(List.of("NPT" + inch, inch + row.text("tpi") + "NPT"));
        } else if (name.startsWith("M")) {
            List<CallOut> all = new ArrayList<>(alone(name));
            all.add(new CallOut(
                    compact(name.replaceFirst("x.*", "")),
                    false,
                    "The pitch was not said: this one has " + row.text("pitch_mm") + " mm."));
            return all;
        } else {
            for (String word : List.of("BSP", name.startsWith("G") ? "BSPP" : "BSPT", name.substring(0, 1))) {
                ways.addAll(List.of(inch + word, word + inch));
            }
        }
        return alone(ways.toArray(String[]::new));
    }

    private static List<CallOut> spline(Table.Row row) {
        String whole = sizes(row, "d_B_mm", "m_mm", "z");
        String angle = sizes(row, "d_B_mm", "m_mm") + "X30X" + row.text("z");
        List<CallOut> ways = new ArrayList<>();
        for (String sizes : List.of(whole, angle)) {
            ways.addAll(alone(sizes, "W" + sizes, "N" + sizes));
        }
        ways.add(new CallOut(
                compact(sizes(row, "d_B_mm", "m_mm")), true, "Count the teeth: this one has " + row.text("z") + "."));
        return ways;
    }
}
