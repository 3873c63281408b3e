package shimwright.mechanics.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Outcome;

class QuantitiesTest {
    private static Outcome<ParsedQuantity> length(String text) {
        return Quantities.parse(text, Kind.LENGTH, Units.MM, "here");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.0412 in    | LENGTH | 0.00104648
            41.2 thou    | LENGTH | 0.00104648
            1.046 mm     | LENGTH | 0.001046
            1.046        | LENGTH | 0.001046
            0,046        | LENGTH | 0.000046
            12,5         | LENGTH | 0.0125
            ,293         | LENGTH | 0.000293
            .293         | LENGTH | 0.000293
            -0.06mm      | LENGTH | -0.00006
            −0.06 mm     | LENGTH | -0.00006
            4 µm         | LENGTH | 0.000004
            4 μm         | LENGTH | 0.000004
            4um          | LENGTH | 0.000004
            0.5"         | LENGTH | 0.0127
            2.6 qt       | VOLUME | 0.0024605176596
            33 lbf·ft    | TORQUE | 44.7419922949362
            33 lbf ft    | TORQUE | 44.7419922949362
            33 ft-lb     | TORQUE | 44.7419922949362
            33 Ft.Lb     | TORQUE | 44.7419922949362
            65 Nm        | TORQUE | 65
            65 N-m       | TORQUE | 65
            12 lb-in     | TORQUE | 1.3558179483314
            68 °F        | TEMPERATURE | 293.15
            20 °C        | TEMPERATURE | 293.15
            60 K         | TEMPERATURE_DIFFERENCE | 60
            108 °F       | TEMPERATURE_DIFFERENCE | 60
            30 psi       | PRESSURE | 206842.718795
            640 N/mm²    | PRESSURE | 640000000
            1.5 bar      | PRESSURE | 150000
            30 °         | ANGLE | 0.523598775598299
            30 deg       | ANGLE | 0.523598775598299
            21.8e-6 1/K  | EXPANSION | 0.0000218
            21.8         | EXPANSION | 0.0000218
            6.3 µin/(in °F) | EXPANSION | 0.00001134
            20 lb        | FORCE | 88.96443230521
            20 lb        | MASS | 9.0718474
            900 rpm      | ROTATION | 94.2477796076938
            95 %         | NUMBER | 0.95
            """)
    void aTypedQuantityIsItsSiValue(String text, Kind kind, double si) {
        // Conversions recomputed by hand from NIST SP 811 (2008) B.8 exact factors.
        MeasureUnit assumed = UnitSystem.METRIC.display(kind).unit();
        double read =
                Quantities.parse(text, kind, assumed, "here").orElseThrow().si();
        assertThat(read).isCloseTo(si, within(Math.abs(si) * 1e-12));
    }

    @Test
    void printedFactorsOfSp811() {
        // NIST SP 811 (2008) B.8, values as printed there (seven figures), from memory.
        assertThat(Units.LBF_FT.factor()).isCloseTo(1.355818, within(5e-7));
        assertThat(Units.LBF_IN.factor()).isCloseTo(0.1129848, within(5e-8));
        assertThat(Units.OZF_IN.factor()).isCloseTo(7.061552e-3, within(5e-10));
        assertThat(Units.PSI.factor()).isCloseTo(6.894757e3, within(5e-4));
        assertThat(Units.QUART.factor()).isCloseTo(9.463529e-4, within(5e-11));
        assertThat(Units.HORSEPOWER.factor()).isCloseTo(7.456999e2, within(5e-5));
        assertThat(Units.LBF_PER_IN.factor()).isCloseTo(1.751268e2, within(5e-5));
        assertThat(Units.POUND_PER_IN3.factor()).isCloseTo(2.767990e4, within(5e-3));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            0.24 ± 0.01 mm   | 0.00024 | 0.00001
            0.24 +- 0.01     | 0.00024 | 0.00001
            0.24+/-0.01 mm   | 0.00024 | 0.00001
            (0.24 ± 0.01) mm | 0.00024 | 0.00001
            0.24 mm ± 10 µm  | 0.00024 | 0.00001
            0.5 in ± 2 %     | 0.0127  | 0.000254
            1 in ± 1 thou    | 0.0254  | 0.0000254
            """)
    void whatFollowsPlusMinusIsAStandardUncertainty(String text, double si, double u) {
        ParsedQuantity parsed = length(text).orElseThrow();
        assertThat(parsed.si()).isCloseTo(si, within(1e-15));
        assertThat(parsed.u()).hasValueCloseTo(u, within(1e-15));
    }

    @Test
    void theUncertaintyOfATemperatureIsAStep() {
        ParsedQuantity parsed = Quantities.parse("68 ± 9 °F", Kind.TEMPERATURE, Units.CELSIUS, "")
                .orElseThrow();
        assertThat(parsed.u()).hasValueCloseTo(5.0, within(1e-12));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '`', textBlock = """
            ``           | nothing typed. Type a length, such as 0.24 mm.
            abc          | "abc" is not a number. Type a length, such as 0.24 mm.
            12 N·m       | "12 N·m" is a torque; a length is needed here.
            5 %          | "5 %" is a percentage; a length is needed here.
            5 parsec     | "5 parsec" has an unknown unit "parsec". Known for a length: mm, in, thou, µm, m, cm, km, ft, µin.
            1,234        | "1,234" can be read in two ways. Type 1.234 or 1234.
            1,2,3        | "1,2,3" has more than one decimal sign. Type one number, with one point.
            1.234,5      | "1.234,5" has more than one decimal sign. Type one number, with one point.
            0.24 ± x     | "0.24 ± x" is not a number. Type a length, such as 0.24 mm.
            0.24 ± -1    | "0.24 ± -1" has a negative uncertainty. Type it as a positive number behind ±.
            1e400        | "1e400" is beyond any size. Look at the exponent.
            1e999 mm     | "1e999 mm" is beyond any size. Look at the exponent.
            1e9999 mm    | "1e9999 mm" has an unknown unit "e9999 mm". Known for a length: mm, in, thou, µm, m, cm, km, ft, µin.
            NaN          | "NaN" is not a number. Type a length, such as 0.24 mm.
            Infinity     | "Infinity" is not a number. Type a length, such as 0.24 mm.
            """)
    void whatCannotBeReadIsRefusedWithASentence(String text, String sentence) {
        Outcome<ParsedQuantity> read = length(text);
        assertThat(read.refusals()).hasSize(1);
        assertThat(read.refusals().get(0).sentence()).isEqualTo("here: " + sentence);
    }

    @Test
    void aRangeRefusesTheNegativeAndTheAbsurd() {
        Range travel = new Range(0, 0.1);
        assertThat(Quantities.parse("-0.2", Kind.LENGTH, Units.MM, "", travel)
                        .refusals()
                        .get(0)
                        .sentence())
                .isEqualTo("\"-0.2\" is below 0 mm. The smallest value taken here is that.");
        assertThat(Quantities.parse("1e9 in", Kind.LENGTH, Units.MM, "", travel)
                        .refusals()
                        .get(0)
                        .sentence())
                .isEqualTo("\"1e9 in\" is above 3.93701 in. The largest value taken here is that.");
        assertThat(Quantities.parse("100 mm", Kind.LENGTH, Units.MM, "", travel).isOk())
                .isTrue();
    }

    @Test
    void printingRoundsHalfUpAndKnowsNoMinusZero() {
        assertThat(Quantities.print(-0.0000004, Units.MM, 3)).isEqualTo("0.000 mm");
        assertThat(Quantities.print(0.0003045, Units.MM, 3)).isEqualTo("0.305 mm");
        assertThat(Quantities.print(-0.0003045, Units.MM, 3)).isEqualTo("-0.305 mm");
        assertThat(Quantities.print(293.15, Units.FAHRENHEIT, 0)).isEqualTo("68 °F");
        assertThat(Quantities.print(0.95, Units.ONE, 2)).isEqualTo("0.95");
        assertThat(Quantities.print(Math.PI / 6, Units.DEGREE, 1)).isEqualTo("30.0°");
        assertThat(Quantities.print(0.00104648, Kind.LENGTH, UnitSystem.INCH)).isEqualTo("0.0412 in");
    }

    @Test
    void anUncertaintyHasTwoDigitsRoundedUp() {
        // JCGM 100:2008 7.2.6: at most two significant digits, rounded up rather than to the nearest.
        assertThat(Quantities.print(0.0002783, 0.0000041, Units.MM, 3)).isEqualTo("0.2783 ± 0.0041 mm");
        assertThat(Quantities.print(0.0002783, 0.00001234, Units.MM, 3)).isEqualTo("0.278 ± 0.013 mm");
        assertThat(Quantities.print(0.0002783, 0.0000997, Units.MM, 3)).isEqualTo("0.28 ± 0.10 mm");
        assertThat(Quantities.print(5.4321, 1.234, Units.M, 3)).isEqualTo("5.4 ± 1.3 m");
        assertThat(Quantities.print(54321, 1234, Units.M, 3)).isEqualTo("54300 ± 1300 m");
        assertThat(Quantities.print(-0.0000001, 0.00001, Units.MM, 3)).isEqualTo("0.000 ± 0.010 mm");
        assertThat(Quantities.print(0.0002783, 0, Units.MM, 3)).isEqualTo("0.278 mm");
    }

    @Property(tries = 200)
    void whatIsPrintedReadsBack(
            @ForAll @DoubleRange(min = -10, max = 10) double si, @ForAll @IntRange(max = 8) int digits) {
        for (Kind kind : Kind.values()) {
            for (MeasureUnit unit : Units.of(kind)) {
                double value = kind == Kind.TEMPERATURE ? si + 300 : si;
                String text = Quantities.print(value, unit, digits);
                double back =
                        Quantities.parse(text, kind, unit, "").orElseThrow().si();
                assertThat(Math.abs(back - value))
                        .isLessThanOrEqualTo(unit.factor() * Math.pow(10, -digits) * 0.5001 + Math.abs(value) * 1e-10);
            }
        }
    }

    @Property
    void anyTextIsReadOrRefusedButNeverThrows(@ForAll String text) {
        for (Kind kind : Kind.values()) {
            Outcome<ParsedQuantity> read =
                    Quantities.parse(text, kind, UnitSystem.METRIC.display(kind).unit(), "p");
            if (read.isOk()) {
                assertThat(read.orElseThrow().si()).isFinite();
            } else {
                assertThat(read.refusals()).hasSize(1);
            }
        }
    }

    @Test
    void everyUnitIsFoundByItsSymbolAndAliasesWithinItsKind() {
        for (MeasureUnit unit : Units.all()) {
            assertThat(Units.find(unit.symbol(), unit.kind())).contains(unit);
            for (String alias : unit.aliases()) {
                assertThat(Units.find(alias, unit.kind())).as(alias).contains(unit);
            }
        }
        for (Kind kind : Kind.values()) {
            assertThat(UnitSystem.METRIC.display(kind).unit().kind()).isEqualTo(kind);
            assertThat(UnitSystem.INCH.display(kind).unit().kind()).isEqualTo(kind);
        }
    }
}
