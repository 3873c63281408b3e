package shimwright.mechanics.fit;

import static java.util.Objects.requireNonNull;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static shimwright.mechanics.fit.FitAnswers.limitsOf;

import java.util.List;
import java.util.Locale;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.fit.LimitsAndFits.Result.FitKind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.reference.Table;
import shimwright.mechanics.reference.Table.Row;

class LimitsAndFitsTest {
    private static LimitsAndFits.Result fit(String nominal, String hole, String shaft) {
        return FitAnswers.result(LimitsAndFits.SHEET, "nominal", nominal, "hole", hole, "shaft", shaft);
    }

    private static String mm(double mm) {
        return String.format(Locale.ROOT, "%.3f mm", mm);
    }

    // Demo unit data, fits_limits_um; the same cells stand in JIS B 0401:1999 and ISO 492.
    @ParameterizedTest
    @CsvSource({
        "25, k6, 2, 15", "30, k6, 2, 15", "40, k6, 2, 18", "50, k6, 2, 18", "35, h5, -11, 0", "34, h6, -16, 0",
        "52, H7, 0, 30", "52, N7, -39, -9", "55, P7, -51, -21", "72, P7, -51, -21", "80, N7, -39, -9", "88, H7, 0, 35",
        // Boundary cells; ISO 286-1:2010 3.2, "over a, up to and including b".
        "3, n6, 4, 10", "3.001, n6, 8, 16", "500, H7, 0, 63", "3, N9, -29, -4", "50, N9, -62, 0", "3, K7, -10, 0",
        // ISO 286-2 tables, from memory.
        "10, js6, -4.5, 4.5", "20, k8, 0, 33", "280, M6, -41, -9", "30, u6, 48, 61", "24, t6, 0, 0", "45, S8, -82, -43",
        "25, d9, -117, -65", "40, C11, 120, 280", "100, j6, -9, 13", "62, J8, -18, 28", "8, fg6, -17, -8"
    })
    void printedCellsAreMet(double nominal, String typed, double lower, double upper) {
        if (typed.equals("t6")) {
            assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", mm(nominal), "shaft", typed))
                    .containsExactly(
                            "shaft: \"t6\" is not defined at this size. The table leaves this cell blank; take a "
                                    + "neighbouring letter or grade.");
            return;
        }
        SizeLimits limits = limitsOf(mm(nominal), typed);
        assertThat(limits.lower() * 1e6).isCloseTo(lower, within(1e-6));
        assertThat(limits.upper() * 1e6).isCloseTo(upper, within(1e-6));
        assertThat(limits.largest() * 1e3).isCloseTo(nominal + upper / 1e3, within(1e-9));
    }

    // Demo unit data: cup_OD_50_80, cup_OD_30_50, cone_bore_30_50, cone_bore_18_30; radial bore: a bearing handbook.
    @ParameterizedTest
    @CsvSource({
        "72, taper, false, -16",
        "40, taper, false, -14",
        "35, taper, true, -12",
        "25, taper, true, -12",
        "40, bearing, true, -12",
        "62, BEARING, false, -13"
    })
    void bearingRingsLieBelowNominal(double nominal, String typed, boolean hole, double lower) {
        LimitsAndFits.Result both =
                FitAnswers.result(LimitsAndFits.SHEET, "nominal", mm(nominal), hole ? "hole" : "shaft", typed);
        SizeLimits limits = requireNonNull(hole ? both.hole() : both.shaft());
        assertThat(limits.upper()).isZero();
        assertThat(limits.lower() * 1e6).isCloseTo(lower, within(1e-6));
    }

    @Test
    void pairsAreNamedByWhatTheyCanBe() {
        // Demo unit data: crown 100 H7 on n6, 12 loose to 45 tight.
        LimitsAndFits.Result crown = fit("100 mm", "H7", "n6");
        assertThat(requireNonNull(crown.tightest()) * 1e6).isCloseTo(45, within(1e-6));
        assertThat(requireNonNull(crown.loosest()) * 1e6).isCloseTo(-12, within(1e-6));
        assertThat(crown.kind()).isEqualTo(FitKind.TRANSITION_FIT);
        assertThat(fit("25 mm", "H7", "p6").kind()).isEqualTo(FitKind.INTERFERENCE_FIT);
        assertThat(fit("25 mm", "H7", "h6").kind()).isEqualTo(FitKind.CLEARANCE_FIT);
        assertThat(fit("25 mm", "H7", "g6").kind()).isEqualTo(FitKind.CLEARANCE_FIT);
        assertThat(fit("35 mm", "taper", "k6").tightest()).isCloseTo(30e-6, within(1e-12));
    }

    @Test
    void anOddHalfToleranceIsKeptAndTheTableRoundingSaid() {
        assertThat(FitAnswers.answer(LimitsAndFits.SHEET, FitAnswers.given("nominal", "25", "hole", "JS7"))
                        .cautions())
                .anyMatch(caution -> caution.contains("round it down"));
        assertThat(limitsOf("25 mm", "JS7").upper()).isCloseTo(10.5e-6, within(1e-12));
        assertThat(limitsOf("25 mm", "JS6").roundedHalf()).isNull();
        assertThat(limitsOf("72 mm", "JS7").roundedHalf()).isNull();
    }

    @Test
    void whatTheTablesDoNotHoldIsRefusedAllAtOnce() {
        assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", "25", "hole", "p6", "shaft", "x6"))
                .containsExactly(
                        "hole: \"p6\" is not the class of a hole. Holes have capital letters, shafts small ones: H7, p6.",
                        "shaft: \"x6\" has a letter outside the tables held here. Shafts from c to u are held.");
        assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", "25", "hole", "H15", "shaft", "seven"))
                .containsExactly(
                        "hole: \"H15\" has grade IT15. Grades IT1 to IT14 are held.",
                        "shaft: \"seven\" is not a tolerance class. Type a letter and a grade, such as p6, or bearing, "
                                + "or taper.");
        assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", "25"))
                .containsExactly("hole: no class given. Type at least one, such as hole=H7 or shaft=p6.");
        for (String bad : List.of("0", "-25", "501", "NaN", "")) {
            assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", bad, "hole", "H7"))
                    .hasSize(1);
        }
        for (String blank : List.of("K9", "P2", "J5", "CD7", "hH7")) {
            assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", "30", "hole", blank))
                    .hasSize(1);
        }
        for (String blank : List.of("j8", "ef6", "j4")) {
            assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", "30", "shaft", blank))
                    .hasSize(1);
        }
        assertThat(FitAnswers.refusals(LimitsAndFits.SHEET, "nominal", "5", "hole", "taper"))
                .hasSize(1);
    }

    // The purpose of the delta rule (ISO 286-1): hole-basis and shaft-basis fits of one pair of letters are the same
    // fit.
    @Property(tries = 150)
    void holeBasisAndShaftBasisAreTheSameFit(
            @ForAll @DoubleRange(min = 3.01, max = 500) double size,
            @ForAll @IntRange(min = 0, max = 7) int letter,
            @ForAll @IntRange(min = 5, max = 7) int grade) {
        String small = List.of("k", "m", "n", "p", "r", "s", "t", "u").get(letter);
        Assume.that(!small.equals("t") || size > 24);
        Assume.that(!(small.equals("m") && grade == 6 && size > 250 && size <= 315));
        LimitsAndFits.Result holeBasis = fit(mm(size), "H" + grade, small + (grade - 1));
        LimitsAndFits.Result shaftBasis = fit(mm(size), small.toUpperCase(Locale.ROOT) + grade, "h" + (grade - 1));
        assertThat(requireNonNull(shaftBasis.tightest()))
                .isCloseTo(requireNonNull(holeBasis.tightest()), within(1e-10));
        assertThat(requireNonNull(shaftBasis.loosest())).isCloseTo(requireNonNull(holeBasis.loosest()), within(1e-10));
    }

    @Property(tries = 100)
    void clearanceHolesMirrorTheirShaftsAndTolerancesGrowWithGradeAndSize(
            @ForAll @DoubleRange(min = 0.1, max = 490) double size,
            @ForAll @IntRange(min = 0, max = 4) int letter,
            @ForAll @IntRange(min = 2, max = 13) int grade) {
        String small = List.of("c", "d", "e", "f", "g").get(letter);
        SizeLimits shaft = limitsOf(mm(size), small + grade);
        SizeLimits hole = limitsOf(mm(size), small.toUpperCase(Locale.ROOT) + grade);
        assertThat(hole.lower()).isCloseTo(-shaft.upper(), within(1e-12));
        assertThat(hole.upper()).isCloseTo(-shaft.lower(), within(1e-12));
        assertThat(limitsOf(mm(size), small + (grade + 1)).tolerance()).isGreaterThan(shaft.tolerance());
        assertThat(limitsOf(mm(size + 10), small + grade).tolerance())
                .isGreaterThanOrEqualTo(shaft.tolerance() - 1e-12);
        assertThat(limitsOf(mm(size + 10), small + grade).upper()).isLessThanOrEqualTo(shaft.upper() + 1e-12);
    }

    @Test
    void inchAndMillimetreGiveTheSameLimits() {
        SizeLimits inch = limitsOf("2 in", "s6");
        SizeLimits metric = limitsOf("50.8 mm", "s6");
        assertThat(inch.lower()).isEqualTo(metric.lower());
        // A size without uncertainty gives limits without uncertainty (JCGM 100:2008 5.1.2).
        assertThat(LimitsAndFits.SHEET
                        .answer(LimitsAndFits.SHEET.example(), UnitSystem.INCH)
                        .orElseThrow()
                        .budgets())
                .isEmpty();
    }

    // ISO 286-1:2010: from IT6 on a tolerance is ten times that five grades finer; IT11 over 3 to 6 mm is the known 75.
    @Test
    void coarseGradesAreTenTimesTheGradeFiveFiner() {
        for (Row row : Table.read("iso-286-1-2010/table-1.csv").rows()) {
            for (int grade = 11; grade <= 14; grade++) {
                double finer = row.number(String.valueOf(grade - 5));
                double coarse = row.number(String.valueOf(grade));
                boolean known = grade == 11 && row.number("to") == 6;
                assertThat(coarse).as("IT" + grade + " " + row).isEqualTo(known ? 75 : 10 * finer);
            }
        }
    }

    // Background formulas (Narayana, Kannaiah, Reddy: Machine Drawing, Table 15.4): a misprint of a cell would stand
    // out.
    @Test
    void everyCellLiesNearItsBackgroundFormula() {
        for (Row row : Table.read("iso-286-1-2010/tables-4-5.csv").rows()) {
            double mean = Math.sqrt(Math.max(1, row.number("over")) * row.number("to"));
            near(row, "d", -16 * Math.pow(mean, 0.44));
            near(row, "e", -11 * Math.pow(mean, 0.41));
            near(row, "f", -5.5 * Math.pow(mean, 0.41));
            near(row, "g", -2.5 * Math.pow(mean, 0.34));
            near(row, "n", 5 * Math.pow(mean, 0.34));
            near(row, "r", Math.sqrt(row.number("p") * row.number("s")));
        }
        List<Row> grades = Table.read("iso-286-1-2010/table-1.csv").rows();
        // to 3 mm the table lies above the formula throughout
        for (Row row : grades.subList(1, grades.size())) {
            double mean = Math.sqrt(row.number("over") * row.number("to"));
            double unit = 0.45 * Math.cbrt(mean) + 0.001 * mean;
            List<Integer> multiples = List.of(7, 10, 16, 25, 40, 64, 100, 160, 250, 400);
            for (int i = 0; i < multiples.size(); i++) {
                near(row, String.valueOf(5 + i), multiples.get(i) * unit);
            }
        }
    }

    private static void near(Row row, String column, double formula) {
        assertThat(row.number(column))
                .as("%s of %s", column, row)
                .isCloseTo(formula, within(2.1 + 0.06 * Math.abs(formula)));
    }
}
