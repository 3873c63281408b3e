package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.conformity.Verdict;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.unit.model.Measurable;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/**
 * Slips of a person at a gauge: the point, the unit, the sign, half and twice; tried against every limit and every hold point of
 * the shipped unit and against each kind of quantity. A slip that would pass a part which is not good must be asked about; one that
 * makes a good part look bad at least asks for a verdict, and is seen there. Not seen by anybody is a single play typed too small. Kinds of slips: common practice, no source.
 */
class SlipsTest {
    static final Map<String, Double> SLIPS = new LinkedHashMap<>();

    static {
        SLIPS.put("a thousand times", 1000.0);
        SLIPS.put("a hundred times", 100.0);
        SLIPS.put("inches for millimeters", 25.4);
        SLIPS.put("ten times", 10.0);
        SLIPS.put("a tenth", 0.1);
        SLIPS.put("millimeters for inches", 1 / 25.4);
        SLIPS.put("a hundredth", 0.01);
        SLIPS.put("a thousandth", 0.001);
        SLIPS.put("the other way", -1.0);
        SLIPS.put("twice", 2.0);
        SLIPS.put("half", 0.5);
    }

    private static boolean asked(Measurable measured, double value) {
        return !Magnitude.asked(measured, readings(measured, value)).isEmpty();
    }

    private static boolean size(WearLimit wear) {
        return ExpectedSize.of(wear).filter(ExpectedSize::size).isPresent();
    }

    @Test
    void noSlipOfASizeIsTakenForTheSize() {
        List<String> missed = new ArrayList<>();
        DemoUnit.A.type().wearLimits().stream()
                .filter(wear -> wear.direction() != Direction.ATTEST && size(wear))
                .forEach(wear -> {
                    double worn = wear.limit().map(Quantity::si).orElseThrow();
                    SLIPS.forEach((slip, factor) -> {
                        if (!asked(wear, worn * factor)) {
                            missed.add(wear.id() + " " + slip);
                        }
                    });
                });
        assertThat(missed).isEmpty();
    }

    /** A play may be anything from nothing to worn out: beyond that, and below nothing, it is asked about by itself. */
    @Test
    void noSlipUpwardMakesAWornGapPassAndNoPlayIsLessThanNothing() {
        List<String> missed = new ArrayList<>();
        plays().forEach(wear -> {
            double limit = wear.limit().map(Quantity::si).orElseThrow();
            SLIPS.forEach((slip, factor) -> {
                boolean passes = wear.direction() == Direction.MIN && factor >= 10;
                if ((passes || factor < 0) && !asked(wear, 0.9 * limit * factor)) {
                    missed.add(wear.id() + " " + slip);
                }
            });
        });
        assertThat(missed).isEmpty();
    }

    /** A play that slipped downward looks like a part that is hardly worn: its fellow pieces tell. */
    @Test
    void amongItsFellowsNoSlipOfAPlayPassesUnasked() {
        List<String> missed = new ArrayList<>();
        int tried = 0;
        for (WearLimit wear : plays()) {
            List<JudgedPiece> pieces = JudgedPiece.of(DemoUnit.A, wear);
            if (pieces.size() < 3) {
                continue;
            }
            double sound = 0.8 * wear.limit().map(Quantity::si).orElseThrow();
            for (Map.Entry<String, Double> slip : SLIPS.entrySet()) {
                boolean length = wear.kind().quantity() == Kind.LENGTH;
                if (slip.getValue() == 2
                        || slip.getValue() == 0.5
                        || (!length && slip.getKey().contains("inches"))) {
                    continue;
                }
                tried++;
                Map<JudgedPiece, GaugeReadings> read = new LinkedHashMap<>();
                pieces.forEach(piece -> read.put(piece, readings(wear, sound)));
                read.put(pieces.get(1), readings(wear, sound * slip.getValue()));
                if (!asked(wear, sound * slip.getValue())
                        && !FellowPieces.asked(wear, read).keySet().equals(Set.of(pieces.get(1)))) {
                    missed.add(wear.id() + " " + slip.getKey());
                }
            }
        }
        assertThat(tried).isGreaterThan(100);
        assertThat(missed).isEmpty();
    }

    private static List<WearLimit> plays() {
        return DemoUnit.A.type().wearLimits().stream()
                .filter(wear -> wear.direction() != Direction.ATTEST && !size(wear))
                .filter(wear -> wear.limit().map(Quantity::si).orElse(0.0) > 0)
                .toList();
    }

    private static GaugeReadings readings(Measurable measured, double value) {
        List<Double> readings = new ArrayList<>();
        for (int i = 0; i < measured.readingsEach() * measured.fields().size(); i++) {
            readings.add(measured.reading(value));
        }
        return GaugeReadings.of(readings);
    }

    private static Map<JudgedPiece, GaugeReadings> rings(double... millimetres) {
        Map<JudgedPiece, GaugeReadings> read = new LinkedHashMap<>();
        for (int i = 0; i < millimetres.length; i++) {
            read.put(
                    new JudgedPiece("ring_" + i, "ring " + i, List.of("ring_" + i)),
                    GaugeReadings.of(List.of(millimetres[i] / 1000)));
        }
        return read;
    }

    @ParameterizedTest
    @CsvSource({
        "0.031, In inches it would fit",
        "0.08, Did you mean 0.8 mm?",
        "8, Did you mean 0.8 mm?",
        "-0.8, Look which way it counts",
        "20.32, read in millimeters and taken for inches?",
    })
    void aRingFarFromItsFellowsByASlipIsAskedAbout(double wrong, String meant) {
        Map<JudgedPiece, Refusal> asked =
                FellowPieces.asked(DemoUnit.A.wearLimit("C01"), rings(0.82, wrong, 0.78, 0.80, 0.75));
        assertThat(asked).hasSize(1);
        assertThat(asked.values().iterator().next().sentence()).contains("ring 1", "far from its fellows", meant);
    }

    @Test
    void aRingThatIsWornMoreThanTheOthersIsNot() {
        WearLimit gap = DemoUnit.A.wearLimit("C01");
        assertThat(FellowPieces.asked(gap, rings(0.82, 0.40, 0.78))).isEmpty();
        assertThat(FellowPieces.asked(gap, rings(0.82, 0.0, 0.78))).isEmpty();
        assertThat(FellowPieces.asked(gap, rings(0.8, 0.031))).isEmpty();
        // inches and millimeters are lengths; a force that is 25 times another is just that
        assertThat(FellowPieces.asked(DemoUnit.A.wearLimit("C18"), rings(0.044e3, 1.7e3, 0.046e3)))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "length, 55.00 mm, 54.98 mm",
        "length, 1.20 mm, 0.80 mm",
        "torque, 2.4 N.m, 1.6 N.m",
        "force, 52 N, 44 N",
        "pressure, 0.6 bar, 0.4 bar",
        "angle, 3.5 deg, 3.0 deg",
        "number, 12, 10"
    })
    void betweenTwoLimitsEveryKindOfQuantityIsAskedAboutAHundredfold(String kind, String upper, String lower) {
        Check check = ChecksFromFile.check("kind: " + kind + ", upper: " + upper + ", lower: " + lower);
        double middle =
                (check.upper().orElseThrow().si() + check.lower().orElseThrow().si()) / 2;
        assertThat(asked(check, middle)).isFalse();
        for (double factor : new double[] {100, 1000, -1}) {
            assertThat(asked(check, middle * factor))
                    .as("%s × %s", kind, factor)
                    .isTrue();
        }
        if (check.kind().quantity() == Kind.LENGTH) {
            assertThat(asked(check, middle * 25.4)).isTrue();
        }
    }

    /** Kinds of quantity with a size, a play between two ends and their unit. */
    private static final String[][] KINDS = {
        {"length", "50", "mm"},
        {"torque", "50", "N.m"},
        {"force", "50", "N"},
        {"pressure", "5", "bar"},
        {"angle", "5", "deg"},
        {"number", "50", ""}
    };

    /** What a limit can look like, as keys of the unit file; {@code L} is the limit and {@code %} stands for a size with its unit. */
    private static final Map<String, String> LIMITS = new LinkedHashMap<>();

    static {
        LIMITS.put("check, not above", "upper: %1.0");
        LIMITS.put("check, not below", "lower: %1.0");
        LIMITS.put("check, a play between", "lower: %0.4, upper: %1.0");
        LIMITS.put("check, a size between", "lower: %0.98, upper: %1.0");
        LIMITS.put("wear, a size that grows", "as_new: [%0.96, %0.98], limit: %1.0, direction: max");
        LIMITS.put("wear, a size that shrinks", "as_new: [%1.02, %1.04], limit: %1.0, direction: min");
        LIMITS.put("wear, a play that grows", "as_new: [%0.2, %0.4], limit: %1.0, direction: max");
        LIMITS.put("wear, a gap that shrinks", "as_new: [%2.0, %3.0], limit: %1.0, direction: min");
        LIMITS.put("wear, from nothing", "as_new: [%0, %0], limit: %1.0, direction: max");
        LIMITS.put("wear, no size as new, not above", "limit: %1.0, direction: max");
        LIMITS.put("wear, no size as new, not below", "limit: %1.0, direction: min");
    }

    /**
     * Every slip against every kind of limit and quantity: a part that is not good, read with the slip, must not pass without a question.
     * What does pass is pinned here and is of two sorts: a play that slipped to less than it is, and a single gap or least value
     * that slipped to more, both of which a part can have; only fellow pieces tell.
     */
    @Test
    void everySlipIsTriedAgainstEveryKindOfLimitAndQuantity() {
        Map<String, Set<String>> unseen = new LinkedHashMap<>();
        int tried = 0;
        for (Map.Entry<String, String> limit : LIMITS.entrySet()) {
            for (String[] kind : KINDS) {
                Measurable measured = measurable(limit.getKey(), limit.getValue(), kind);
                for (double bad : bad(limit.getKey())) {
                    double value = bad
                            * Double.parseDouble(kind[1])
                            * measured.bareUnit().factor();
                    assertThat(passes(measured, value))
                            .as("%s %s %s", limit.getKey(), kind[0], bad)
                            .isFalse();
                    for (Map.Entry<String, Double> slip : SLIPS.entrySet()) {
                        if (!kind[0].equals("length") && slip.getKey().contains("inches")) {
                            continue;
                        }
                        tried++;
                        if (passes(measured, value * slip.getValue())) {
                            unseen.computeIfAbsent(limit.getKey(), l -> new TreeSet<>())
                                    .add(slip.getKey());
                        }
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(700);
        Set<String> less = Set.of("a tenth", "a hundredth", "a thousandth", "half");
        Set<String> lessAlsoOfLengths =
                Set.of("a tenth", "a hundredth", "a thousandth", "half", "millimeters for inches");
        assertThat(unseen)
                .isEqualTo(Map.of(
                        "check, not above",
                        less,
                        "check, not below",
                        Set.of("twice", "ten times"),
                        "check, a play between",
                        Set.of("twice", "half"),
                        "wear, a play that grows",
                        lessAlsoOfLengths,
                        "wear, a gap that shrinks",
                        Set.of("twice"),
                        "wear, from nothing",
                        lessAlsoOfLengths,
                        "wear, no size as new, not above",
                        less,
                        "wear, no size as new, not below",
                        Set.of("twice", "ten times")));
    }

    /** Sizes of parts that are not good, as shares of the limit. */
    private static double[] bad(String limit) {
        if (limit.contains("between")) {
            return new double[] {limit.contains("size") ? 0.97 : 0.36, limit.contains("size") ? 1.01 : 1.1};
        }
        boolean most = limit.contains("above") || limit.contains("grows") || limit.contains("nothing");
        double off = limit.contains("size that") ? 0.01 : 0.1;
        return new double[] {most ? 1 + off : 1 - off};
    }

    private static Measurable measurable(String limit, String keys, String[] kind) {
        StringBuilder written = new StringBuilder("kind: " + kind[0] + ", ");
        Matcher share = Pattern.compile("%([0-9.]+)").matcher(keys);
        while (share.find()) {
            double size = Double.parseDouble(share.group(1)) * Double.parseDouble(kind[1]);
            share.appendReplacement(
                    written,
                    String.format(Locale.ROOT, "%.4f %s", size, kind[2]).strip());
        }
        share.appendTail(written);
        return limit.startsWith("check")
                ? ChecksFromFile.check(written.toString())
                : ChecksFromFile.wear(written.toString());
    }

    static boolean passes(Measurable measured, double value) {
        GaugeReadings readings = readings(measured, value);
        Outcome<Verdict> verdict = measured instanceof WearLimit wear
                ? WearJudgement.of(wear, readings, UnitSystem.METRIC).map(WearJudgement::verdict)
                : Checks.judge((Check) measured, readings, UnitSystem.METRIC).map(Checks.Judged::verdict);
        return verdict.isOk() && verdict.orElseThrow() == Verdict.IN;
    }

    /** Slips between units that are not inches and millimeters, by kind: factors of ISO 80000 and NIST SP 811, rounded. */
    private static final Map<String, double[]> UNIT_SLIPS = Map.of(
            "length", new double[] {2.54, 1 / 2.54, 39.37, 1 / 39.37},
            "torque", new double[] {1.356, 1 / 1.356, 8.851, 1 / 8.851, 9.807, 1 / 9.807, 12, 1.0 / 12},
            "force", new double[] {4.448, 1 / 4.448, 9.807, 1 / 9.807},
            "pressure", new double[] {6.895, 1 / 6.895, 14.5, 1 / 14.5},
            "angle", new double[] {57.3, 1 / 57.3, 60, 1.0 / 60},
            "number", new double[] {});

    /** A size that is not good never passes for one unit typed in the field of another. */
    @Test
    void noSlipBetweenUnitsMakesABadSizePass() {
        int tried = 0;
        for (Map.Entry<String, String> limit : LIMITS.entrySet()) {
            if (!limit.getKey().contains("size between") && !limit.getKey().contains("a size that")) {
                continue;
            }
            for (String[] kind : KINDS) {
                Measurable measured = measurable(limit.getKey(), limit.getValue(), kind);
                for (double bad : bad(limit.getKey())) {
                    double value = bad
                            * Double.parseDouble(kind[1])
                            * measured.bareUnit().factor();
                    for (double factor : UNIT_SLIPS.getOrDefault(kind[0], new double[] {})) {
                        tried++;
                        assertThat(passes(measured, value * factor))
                                .as("%s %s × %s", limit.getKey(), kind[0], factor)
                                .isFalse();
                        if (factor > 2.2 || factor < 0.45) {
                            assertThat(asked(measured, value * factor))
                                    .as("%s %s × %s", limit.getKey(), kind[0], factor)
                                    .isTrue();
                        }
                    }
                }
            }
        }
        assertThat(tried).isGreaterThan(80);
    }
}
