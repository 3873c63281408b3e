// size: every family with the ways in which people write one of it
package shimwright.rebuild.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.rebuild.part.Match.Certainty;

/**
 * The same part as different people write it: by hand, spoken, from a stamp with what stands beside it, from an order form. Ways
 * are common practice, no source; call-outs of splines DIN 5480, screws ISO 4014 and 4762 and pins ISO 2338, from memory.
 */
class WaysToWriteTest {
    private static final StandardParts PARTS = StandardParts.shipped();

    /** How a hand changes any text: what is said stays the same. */
    private static final List<UnaryOperator<String>> HANDS = List.of(
            text -> text,
            text -> text.toLowerCase(Locale.ROOT),
            text -> text.replaceAll("(?<=[0-9])[xX](?=[0-9])", "×"),
            text -> text.replaceAll("(?<=[0-9])[xX](?=[0-9])", " x "),
            text -> text.replaceAll("(?<=[0-9])[xX](?=[0-9])", " X "),
            text -> text.replaceAll("(?<=[0-9])[xX](?=[0-9])", "*"),
            text -> text.replaceAll("(?<=[0-9])[xX](?=[0-9])", " by "),
            text -> text.replaceAll("(?<=[0-9])\\.(?=[0-9])", ","),
            text -> "  " + text.replace(" ", "  ") + " ",
            text -> text.replace("-", " – "),
            text -> text.replace(' ', '\u00a0'),
            text -> text.replaceAll("(?<![0-9.])0\\.(?=[0-9])", "."),
            text -> text.replaceAll("(?<![0-9])1/2(?![0-9])", "½").replaceAll("(?<![0-9])3/8(?![0-9])", "⅜"));

    /** All ways of all parts by {@code -Dshimwright.figures=true}, else each part in every twentieth way. */
    @Test
    void everyPartIsFoundHoweverItIsWritten() {
        int every = Boolean.getBoolean("shimwright.figures") ? 1 : 20;
        List<String> lost = new ArrayList<>();
        int asked = 0;
        int turn = 0;
        for (StandardPart part : PARTS.all()) {
            for (String way : ways(part)) {
                turn++;
                if (turn % every == 0) {
                    String text = HANDS.get(asked++ % HANDS.size()).apply(way);
                    if (!isFound(part, text)) {
                        lost.add(text + " is " + part.designation());
                    }
                }
            }
        }
        assertThat(asked).isGreaterThan(58000 / every);
        assertThat(lost).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "DIN 5480 W 30x1.25x22x8f, DIN 5480 W 30 x 1.25 x 22 / N 30 x 1.25 x 22, Fit of the flanks 8f.",
        "DIN 5480 - N 30 x 2 x 30 x 14 x 9H, DIN 5480 W 30 x 2 x 14 / N 30 x 2 x 14, Fit of the flanks 9H.",
        "sealing washer 16x20, DIN 7603 A 16x20x1.5, The thickness was not said: this one has 1.5 mm.",
        "seal 25x47, lip seal 25x47x7, The width was not said: this one has 7 mm.",
        "drain plug M16, DIN 910 M16x1.5, The pitch was not said: this one has 1.5 mm.",
        "25x47x7 FKM, lip seal 25x47x7, FKM: fluoro rubber.",
        "MADE 6206 C3, 6206, Not read: MADE.",
        "M8 88, M8, Strength class 8.8.",
        "3/8-16 x 1 1/4, 3/8-16 UNC, Length 1 1/4 in.",
    })
    void whatIsNotSaidAndWhatStandsBesideIsRemarked(String typed, String name, String remark) {
        assertThat(PARTS.byStamp(typed).orElseThrow().matches()).anySatisfy(match -> {
            assertThat(match.part().designation()).isEqualTo(name);
            assertThat(match.remarks()).contains(remark);
            assertThat(match.certainty()).isIn(Certainty.STAMPED, Certainty.ONE_OF_SEVERAL);
        });
    }

    @ParameterizedTest
    @CsvSource({
        "62?6-2RS C3, 6206",
        "3O2O6, 30206",
        "62O6-2RS, 6206",
        "2?x47x7, lip seal 25x47x7",
        "6l806 ZZ, 61806",
        "HK25?6, HK2516",
        "NU2O5 C3, NU205",
    })
    void halfReadStampsAreOfferedAsNearWithWhatStandsBehindThem(String typed, String name) {
        assertThat(PARTS.byStamp(typed).orElseThrow().matches())
                .allMatch(match -> match.certainty() == Certainty.NEAR)
                .anyMatch(match -> match.part().designation().equals(name));
    }

    @Test
    void whatTellsTwoApartIsNotLost() {
        assertThat(names("6220-2RS")).containsExactly("6220");
        assertThat(names("62202-RS")).containsExactly("62202");
        assertThat(names("62202RS")).containsExactlyInAnyOrder("6220", "62202");
        assertThat(names("internal circlip 62")).containsExactly("DIN 472 62x2");
        assertThat(names("ball 1 1/16 in")).containsExactly("ball 1 1/16 in");
        assertThat(names("ball 11/16 in")).containsExactly("ball 11/16 in");
        assertThat(names("M8 flange bolt 10.9")).containsExactly("M8 flange");
        assertThat(names("6 20 7")).doesNotContain("6206");
        // a bearing with a bore of 110, no part of any table: nothing is read as the one with a bore of 22
        assertThat(PARTS.byStamp("NA4922").orElseThrow().matches())
                .allMatch(match -> match.certainty() == Certainty.NEAR);
    }

    private static List<String> names(String typed) {
        return PARTS.byStamp(typed).orElseThrow().matches().stream()
                .map(match -> match.part().designation())
                .distinct()
                .toList();
    }

    private static boolean isFound(StandardPart part, String text) {
        var found = PARTS.byStamp(text);
        return found.isOk()
                && found.orElseThrow().matches().stream()
                        .anyMatch(match -> match.certainty() != Certainty.NEAR
                                && match.certainty() != Certainty.SIZES_ONLY
                                && match.part().equals(part));
    }

    // size: a line for each family
    private static List<String> ways(StandardPart part) {
        String name = part.designation();
        return switch (part.family()) {
            case DEEP_GROOVE ->
                Stream.of(
                                "%s",
                                "%s-2RS",
                                "%s 2RS1 C3",
                                "%s-2RSH/C3",
                                "%sZZ",
                                "%s-2Z",
                                "%s 2Z C3",
                                "%sDDU",
                                "%s LLU",
                                "%s/C3",
                                "%s C 3",
                                "%s P6",
                                "%s N",
                                "%s NR",
                                "bearing %s",
                                "brg %s C3",
                                "ball bearing %s",
                                "%s bearing",
                                "no. %s",
                                "OTHER %s JAPAN",
                                "%s.2RS",
                                "%s_C3",
                                "%s TN9",
                                "%s-RS",
                                "%sRS",
                                "%sZ")
                        .map(way -> way.replace("%s", name))
                        .toList();
            case ANGULAR_CONTACT ->
                Stream.of("%s", "%sB", "%s BEP", "%s-B-TVP", "%s A-2RS", "bearing %s", "%s AC", "%s C P4")
                        .map(way -> way.replace("%s", name))
                        .toList();
            case CYLINDRICAL_ROLLER -> roller(part);
            case TAPERED ->
                Stream.of(
                                "%s",
                                "%sA",
                                "%s J2/Q",
                                "%s-A",
                                "%s XA",
                                "taper bearing %s",
                                "tapered roller bearing %s",
                                "%s X",
                                "taper %s",
                                "%s cone",
                                "%s cup")
                        .map(way -> way.replace("%s", name))
                        .toList();
            case THRUST_BALL ->
                Stream.of("%s", "thrust bearing %s", "%s P6", "thrust ball bearing %s")
                        .map(way -> way.replace("%s", name))
                        .toList();
            case NEEDLE -> needle(part);
            case THRUST_NEEDLE -> thrust(part);
            case LIP_SEAL ->
                sized(
                        part,
                        "d_shaft_mm D_bore_mm b_width_mm",
                        "%s",
                        "%s TC",
                        "TC %s",
                        "oil seal %s",
                        "%s NBR",
                        "%s A FKM",
                        "seal %s",
                        "%s shaft seal",
                        "Ø%s",
                        "lip seal %s mm",
                        "rotary shaft seal %s",
                        "DIN 3760 A %s",
                        "%s ACM",
                        "radial shaft seal %s");
            case O_RING -> oRing(part);
            case SHAFT_RING -> ring(part, "DIN 471", "shaft", "external");
            case BORE_RING -> ring(part, "DIN 472", "bore", "internal");
            case KEY ->
                sized(
                        part,
                        "b_mm h_mm",
                        "%s",
                        "key %s",
                        "%sx32",
                        "DIN 6885 A %sx32",
                        "DIN 6885-A-%sx32",
                        "A %sx32",
                        "parallel key %s",
                        "%sx32 key",
                        "feather key %s",
                        "DIN 6885-1 A%sx32",
                        "%sx32 DIN 6885");
            case BALL -> ball(part);
            case DOWEL ->
                sized(
                        part,
                        "d_mm",
                        "dowel %s",
                        "dowel pin %sx20",
                        "%sx20 dowel",
                        "ISO 2338 %s m6 x 20",
                        "pin %s m6x20",
                        "%s mm dowel",
                        "ISO 2338-%sx20",
                        "DIN 7 %s m6x20",
                        "parallel pin %s",
                        "Ø%s pin");
            case HEX_SCREW, SOCKET_SCREW -> screw(part);
            case PLUG -> plug(part);
            case SEALING_WASHER ->
                sized(
                        part,
                        "d_nominal_mm d2_mm h_mm",
                        "%s",
                        "washer %s",
                        "sealing washer %s",
                        "copper washer %s",
                        "%s Cu",
                        "Cu %s",
                        "DIN 7603 A %s",
                        "DIN 7603-A%s",
                        "%s copper",
                        "drain plug washer %s",
                        "crush washer %s",
                        "sealing ring %s",
                        "aluminium washer %s",
                        "%s DIN 7603");
            case SHIM_RING ->
                sized(
                        part,
                        "d_mm D_mm",
                        "%s",
                        "PS %s",
                        "shim %sx0.3",
                        "PS %sx0.25",
                        "DIN 988 PS %sx0.5",
                        "shim ring %s",
                        "%s shim",
                        "%sx0.2 PS",
                        "DIN 988 %sx0.1",
                        "shim washer %sx0.3",
                        "%s mm shim");
            case SPLINE -> spline(part);
        };
    }

    private static List<String> sized(StandardPart part, String columns, String... ways) {
        List<String> sizes = Stream.of(columns.split(" "))
                .map(column -> millimetres(part, column))
                .toList();
        List<String> all = new ArrayList<>();
        for (String way : ways) {
            all.add(way.replace("%s", String.join("x", sizes)));
        }
        if (sizes.size() > 1) {
            String word = ways[1].replaceAll("%s.*", "");
            all.add(word + String.join(" ", sizes));
            all.add(word + String.join("mm x ", sizes) + "mm");
            all.add(word + String.join("/", sizes));
            all.add(String.join("-", sizes) + " " + part.family().words());
            all.add(word
                    + String.join(
                            "x",
                            sizes.stream()
                                    .map(size -> size.contains(".") ? size + "0" : size + ".0")
                                    .toList()));
        }
        return all;
    }

    private static String millimetres(StandardPart part, String column) {
        double value = part.size(column).orElseThrow() * (column.equals("z") ? 1 : 1e3);
        return String.format(Locale.ROOT, "%.3f", value).replaceFirst("\\.?0+$", "");
    }

    private static List<String> roller(StandardPart part) {
        List<String> all = new ArrayList<>();
        for (String way : List.of("%s", "%sCP", "%s/C3", "bearing %s", "roller bearing %s", "%s TVP2 C3", "%sM")) {
            all.add(way.replace("%s", part.designation()));
            all.add(way.replace("%s", part.designation().replaceFirst("(?<=[A-Z])(?=[0-9])", " ")));
        }
        return all;
    }

    private static List<String> needle(StandardPart part) {
        List<String> all = new ArrayList<>();
        String name = part.designation();
        for (String way : List.of(
                "%s", "needle %s", "needle bearing %s", "%s bearing", "needle roller bearing %s", "needle cage %s")) {
            all.add(way.replace("%s", name));
        }
        all.add(name.replaceFirst("(?<=[A-Z])(?=[0-9])", " "));
        all.add(name.replaceFirst("(?<=[A-Z])(?=[0-9])", "-"));
        if (name.startsWith("HK") || name.startsWith("BK")) {
            all.add(name + " 2RS");
            all.add(name.substring(0, 2) + " " + name.substring(2, 4) + " " + name.substring(4));
            all.add(name.substring(0, 2) + " " + millimetres(part, "Fw_mm") + "x" + millimetres(part, "D_mm") + "x"
                    + millimetres(part, "width_mm"));
        }
        if (name.startsWith("NK") && name.contains("/")) {
            all.add(name.replace("/", " "));
            all.add(name.replace("/", "-"));
            all.add(name.replace("/", "x"));
        }
        return all;
    }

    private static List<String> thrust(StandardPart part) {
        String name = part.designation();
        String letters = name.replaceAll("[0-9].*", "");
        String sizes = millimetres(part, "d_mm") + "x" + millimetres(part, "D_mm");
        return List.of(
                name,
                letters + " " + name.substring(letters.length()),
                letters + "-" + name.substring(letters.length()),
                letters + " " + sizes,
                letters + " " + sizes + "x" + millimetres(part, "thickness_mm"),
                "thrust washer " + name,
                "thrust bearing " + name,
                "needle thrust bearing " + name,
                letters + " " + sizes.replace("x", " "));
    }

    private static List<String> oRing(StandardPart part) {
        List<String> all = new ArrayList<>(sized(
                part,
                "id_mm cs_mm",
                "%s",
                "o-ring %s",
                "%s o ring",
                "OR %s",
                "%s NBR 70",
                "oring %s FKM",
                "%s mm o-ring"));
        if (part.designation().startsWith("ISO 3601")) {
            String dash = part.designation().substring(9);
            all.addAll(List.of(
                    "o-ring -" + dash, "AS568-" + dash, "AS 568A " + dash, "ISO 3601-1 " + dash, "o-ring no. " + dash));
        }
        return all;
    }

    private static List<String> ring(StandardPart part, String standard, String place, String side) {
        String size = millimetres(part, "d1_mm");
        List<String> all = new ArrayList<>(sized(
                part,
                "d1_mm s_mm",
                "%s",
                standard + " %s",
                "%s " + standard,
                place + " ring %s",
                side + " circlip %s",
                "circlip %s",
                "snap ring %s",
                "retaining ring %s",
                place + " circlip %s",
                standard + "-%s",
                "ring %s"));
        for (String way : List.of(
                "circlip %s",
                "%s mm circlip",
                place + " circlip %s",
                standard + " %s",
                side + " snap ring %s mm",
                "Ø%s circlip",
                "circlip for " + (place.equals("bore") ? "a bore" : "a shaft") + " %s",
                standard + "-%s",
                "C-clip %s")) {
            all.add(way.replace("%s", size));
        }
        return all;
    }

    private static List<String> ball(StandardPart part) {
        String name = part.designation().substring(5);
        List<String> all = new ArrayList<>(List.of(
                "ball " + name,
                "steel ball " + name,
                name + " ball",
                "detent ball " + name,
                "ball Ø" + name,
                "bearing ball " + name));
        if (name.endsWith(" in")) {
            String bare = name.replace(" in", "");
            all.addAll(List.of(
                    "ball " + bare,
                    "ball " + bare + "\"",
                    bare + " inch ball",
                    bare + "″ ball",
                    "ball " + bare.replace(" ", "-") + " in",
                    bare + "in ball"));
            all.add("ball "
                    + String.format(Locale.ROOT, "%.4f", part.size("D_mm").orElseThrow() / 0.0254) + " in");
        } else {
            all.addAll(List.of(
                    "ball " + name.replace(" ", ""),
                    "ball " + name.replace(" mm", ""),
                    name.replace(" mm", ".0 mm ball")));
        }
        return all;
    }

    // size: a line for each way to write one
    private static List<String> screw(StandardPart part) {
        String name = part.designation();
        boolean flange = name.contains("flange");
        String bare = name.replace(" flange", "");
        List<String> all = new ArrayList<>();
        boolean socket = part.family() == Family.SOCKET_SCREW;
        if (bare.startsWith("M")) {
            boolean coarse = !bare.contains("x");
            String pitched = coarse ? bare + "x" + millimetres(part, "pitch_mm") : bare;
            for (String text : new LinkedHashSet<>(List.of(bare, pitched))) {
                for (String way : List.of(
                        "%s",
                        "%s 8.8",
                        "%s-10.9",
                        "%sx25",
                        "%sx25 8.8",
                        "%s x 25 - 12.9",
                        "bolt %s",
                        "%s bolt 10.9",
                        "%sx25 grade 8.8",
                        "screw %s",
                        "%s 10.9 bolt x 40",
                        "%s-6g",
                        "thread %s",
                        "%sx25mm",
                        "%s 88",
                        "%sx40 A2-70")) {
                    all.add(way.replace("%s", text) + (flange ? " flange" : ""));
                }
                for (String way : socket
                        ? List.of(
                                "ISO 4762 %sx25",
                                "DIN 912 %s", "allen bolt %s", "%s cap screw", "%s allen", "socket screw %s")
                        : flange
                                ? List.of("DIN 6921 %sx25", "flange bolt %s", "%s flanged bolt")
                                : List.of(
                                        "ISO 4014 %sx80",
                                        "DIN 931 %s",
                                        "DIN 933 %sx25",
                                        "ISO 4017 %sx25",
                                        "hex bolt %s",
                                        "hexagon head screw %s",
                                        "%s hex")) {
                    all.add(way.replace("%s", text));
                }
            }
            all.add(bare.replace("M", "M "));
        } else {
            String thread = bare.split(" ")[0];
            String inch = thread.split("-")[0];
            String per = thread.split("-")[1];
            String form = bare.split(" ")[1];
            for (String way : List.of(
                    thread,
                    bare,
                    inch + " " + form,
                    inch + "\"-" + per,
                    inch + "\" " + form,
                    inch + " in " + form,
                    inch + "\"-" + per + " " + form,
                    form + " " + inch,
                    thread + "x1",
                    thread + " x 1 1/4",
                    thread + " bolt",
                    "bolt " + thread,
                    bare + " grade 5",
                    inch + " x " + per,
                    thread + "x1.5 " + form,
                    thread + " " + form + "-2A",
                    inch + form)) {
                all.add(way);
            }
        }
        return all;
    }

    private static List<String> plug(StandardPart part) {
        String name = part.designation();
        String bare = name.replaceFirst("^DIN \\d+( A)? ", "");
        List<String> all = new ArrayList<>(
                List.of(name, bare, "plug " + bare, bare + " plug", "drain plug " + bare, "filler plug " + bare));
        String inch = bare.replaceAll("[^0-9/]", "");
        if (bare.startsWith("G")) {
            all.addAll(List.of(
                    "G " + inch,
                    inch + " BSP",
                    "BSP " + inch,
                    inch + "\" BSP",
                    "G " + inch + " A",
                    inch + " BSPP",
                    "G" + inch + "\"",
                    "ISO 228 G" + inch));
        } else if (bare.startsWith("R")) {
            all.addAll(List.of("R " + inch, inch + " BSPT", "BSPT " + inch, "R" + inch + "\"", "ISO 7 R" + inch));
        } else if (bare.endsWith("NPT")) {
            all.addAll(List.of(
                    "NPT " + inch,
                    inch + "\" NPT",
                    inch + "NPT",
                    inch + " in NPT",
                    inch + "-"
                            + part.size("tpi").stream()
                                    .mapToObj(tpi -> String.valueOf(tpi).replaceFirst("\\.0$", ""))
                                    .findFirst()
                                    .orElseThrow()
                            + " NPT"));
        } else {
            all.addAll(List.of(
                    "plug " + bare.replaceFirst("x.*", ""),
                    bare + " drain plug",
                    "oil drain plug " + bare,
                    "magnetic plug " + bare,
                    bare.replace("M", "M ") + " plug"));
        }
        return all;
    }

    private static List<String> spline(StandardPart part) {
        List<String> all = new ArrayList<>(sized(
                part,
                "d_B_mm m_mm z",
                "%s",
                "spline %s",
                "W%s",
                "W %s",
                "N %s",
                "DIN 5480 W %s",
                "DIN 5480 W %sx8f",
                "DIN 5480 - W %s x 8f",
                "W%s 8f",
                "N %sx9H",
                "N%s 9H",
                "DIN 5480 N %sx9H",
                "%s spline",
                "%s DIN 5480",
                "involute spline %s",
                "W %s x 7h",
                "%s teeth",
                "%sx8f"));
        String sizes = millimetres(part, "d_B_mm") + "x" + millimetres(part, "m_mm");
        String z = millimetres(part, "z");
        all.add("W " + sizes + "x30x" + z + "x8f");
        all.add("DIN 5480 " + sizes + " " + z + " teeth");
        all.add("spline " + sizes + " z" + z);
        all.add("spline " + sizes);
        return all;
    }
}
