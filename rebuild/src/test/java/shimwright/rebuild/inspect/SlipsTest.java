package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
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
    private static final Map<String, Double> SLIPS = new LinkedHashMap<>();

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
}
