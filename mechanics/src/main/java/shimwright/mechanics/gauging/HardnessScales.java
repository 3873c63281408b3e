package shimwright.mechanics.gauging;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Quantities;
import shimwright.mechanics.quantity.Units;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;
import shimwright.mechanics.worksheet.Group;
import shimwright.mechanics.worksheet.Input;
import shimwright.mechanics.worksheet.Output;
import shimwright.mechanics.worksheet.Worksheet;

/** Worksheet {@code hardness}: one scale of hardness into the others, and tensile strength, for steel. */
public final class HardnessScales {
    private static final String ISO = "ISO 18265:2013, Table A.1";
    private static final String ASTM = "ASTM E140, Table 1";
    private static final Table ISO_TABLE = Table.read("iso-18265-2013/table-a1.csv");
    private static final Table ASTM_TABLE = Table.read("astm-e140/table-1.csv");
    private static final double MPA = 1e6;

    /** Scales that the American table has as well. */
    private static final List<String> OF_ASTM = List.of("hv", "hb", "hrc");

    public static final Worksheet<Case, Result> SHEET = new Worksheet<>(
            "hardness",
            "Hardness conversion",
            "Vickers, Brinell, Rockwell and tensile strength of steel from one of them, by two printed tables.",
            List.of(ISO + ", and its like before, DIN 50150", ASTM + ", Rockwell C range"),
            Case.class,
            Result.class,
            HardnessScales::work);

    private HardnessScales() {}

    /** What was read; exactly one. */
    public record Case(
            @Input(meaning = "Rockwell C", min = 0, max = 100, example = "58") @Nullable
            Double hrc,

            @Input(meaning = "Vickers", min = 1, max = 3000) @Nullable
            Double hv,

            @Input(meaning = "Brinell", min = 1, max = 3000) @Nullable
            Double hb,

            @Input(meaning = "Rockwell B", min = 0, max = 130) @Nullable
            Double hrb,

            @Input(kind = Kind.PRESSURE, meaning = "tensile strength", min = 1e6, max = 5e9) @Nullable
            Double tensile) {}

    /** By the international table; what it does not print there is absent; strength in pascal. */
    public record International(
            @Output(meaning = "Vickers HV", decimals = 0) @Nullable
            Double vickers,

            @Output(meaning = "Brinell HB", decimals = 0) @Nullable
            Double brinell,

            @Output(meaning = "Rockwell HRB", decimals = 1) @Nullable
            Double rockwellB,

            @Output(meaning = "Rockwell HRC", decimals = 1) @Nullable
            Double rockwellC,

            @Output(kind = Kind.PRESSURE, meaning = "tensile strength, an estimate", decimals = 0) @Nullable
            Double strength) {}

    /** By both tables. */
    public record Result(
            @Group International international,

            @Output(meaning = "Vickers HV by ASTM E140", decimals = 0) @Nullable
            Double vickersAstm,

            @Output(meaning = "Brinell HB by ASTM E140", decimals = 0) @Nullable
            Double brinellAstm,

            @Output(meaning = "Rockwell HRC by ASTM E140", decimals = 1) @Nullable
            Double rockwellAstm) {}

    /**
     * Straight lines between the rows of the tables.
     *
     * @param c one hardness, or tensile strength in Pa
     * @return strength in Pa; refused: not exactly one given, a value outside the printed range of the international table
     */
    public static Outcome<Worked<Result>> work(Case c) {
        Map<String, Double> given = new LinkedHashMap<>();
        put(given, "hrc", c.hrc());
        put(given, "hv", c.hv());
        put(given, "hb", c.hb());
        put(given, "hrb", c.hrb());
        Double tensile = c.tensile();
        put(given, "tensile", tensile == null ? null : Double.valueOf(tensile / MPA));
        if (given.size() != 1) {
            return Outcome.refused(Refusal.of(
                    "hrc",
                    given.isEmpty() ? "no hardness given" : String.join(" and ", given.keySet()) + " given together",
                    "Give one reading: hrc, hv, hb, hrb or tensile"));
        }
        String scale = given.keySet().iterator().next();
        double value = given.getOrDefault(scale, Double.NaN);
        if (between(ISO_TABLE, scale, value, scale) == null) {
            List<Table.Row> rows =
                    ISO_TABLE.rows().stream().filter(row -> row.has(scale)).toList();
            return Outcome.refused(Refusal.of(
                    scale,
                    Quantities.brief(value, Units.ONE) + " is outside the printed table, "
                            + rows.get(0).text(scale) + " to "
                            + rows.get(rows.size() - 1).text(scale),
                    "No conversion is made beyond it; test with a scale that suits this hardness"));
        }
        return Outcome.ok(converted(scale, value));
    }

    private static void put(Map<String, Double> given, String key, @Nullable Double value) {
        if (value != null) {
            given.put(key, value);
        }
    }

    private static Worked<Result> converted(String scale, double value) {
        Working w = new Working();
        Double vickers = line(w, "HV", ISO_TABLE, scale, value, "hv", ISO);
        Double brinell = line(w, "HB", ISO_TABLE, scale, value, "hb", ISO);
        Double rockwellB = line(w, "HRB", ISO_TABLE, scale, value, "hrb", ISO);
        Double rockwellC = line(w, "HRC", ISO_TABLE, scale, value, "hrc", ISO);
        Double mpa = between(ISO_TABLE, scale, value, "tensile");
        Double strength = mpa == null ? null : w.line("Rm", "between rows", mpa * MPA, Kind.PRESSURE, ISO);
        boolean known = OF_ASTM.contains(scale);
        Double vickersAstm = known ? line(w, "HV", ASTM_TABLE, scale, value, "hv", ASTM) : null;
        Double brinellAstm = known ? line(w, "HB", ASTM_TABLE, scale, value, "hb", ASTM) : null;
        Double rockwellAstm = known ? line(w, "HRC", ASTM_TABLE, scale, value, "hrc", ASTM) : null;
        w.caution(
                "For unalloyed and low alloy steel, hot rolled or heat treated. Not for stainless, tool steel, cast iron, "
                        + "cold drawn bar or any other metal.");
        w.caution(
                "A converted figure never replaces the test that a drawing asks for: 25 HV or 85 MPa to either side is usual.");
        w.caution(
                "A case-hardened skin is thin: a Brinell ball or the C cone goes through a thin case and reads the core too.");
        w.caution("A file test only says hard or soft; a test mark on a flank, seat or sealing lip is damage.");
        return w.worked(new Result(
                new International(vickers, brinell, rockwellB, rockwellC, strength),
                vickersAstm,
                brinellAstm,
                rockwellAstm));
    }

    private static @Nullable Double line(
            Working w, String symbol, Table table, String from, double value, String to, String source) {
        Double found = between(table, from, value, to);
        return found == null ? null : w.line(symbol, "between rows", found, Kind.NUMBER, source);
    }

    /** The value of another column on the straight line between the rows on either side that print both; null beyond. */
    private static @Nullable Double between(Table table, String from, double value, String to) {
        List<double[]> points = new ArrayList<>();
        for (Table.Row row : table.rows()) {
            if (row.has(from) && row.has(to)) {
                points.add(new double[] {row.number(from), row.number(to)});
            }
        }
        for (int i = 1; i < points.size(); i++) {
            double[] a = points.get(i - 1);
            double[] b = points.get(i);
            if (a[0] <= value && value <= b[0]) {
                return a[1] + (b[1] - a[1]) * (value - a[0]) / (b[0] - a[0]);
            }
        }
        return null;
    }
}
