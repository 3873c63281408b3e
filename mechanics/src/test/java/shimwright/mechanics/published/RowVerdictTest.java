package shimwright.mechanics.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.published.RowVerdict.Fate;

/** The harness bites: each fault planted in a table of made-up rows is found; the figures are arithmetic. */
class RowVerdictTest {
    private static final String LINE = "W01 | wrench-extension | setting={setting}; length={L}; extension={E} | torque";

    private static PublishedRow row(String expected, String tolerance) {
        return new PublishedRow(
                "made-up",
                "W01",
                "torque",
                "setting=60 N.m; L=12 in; E=2 in",
                expected,
                "N.m",
                tolerance,
                "60 × 14/12");
    }

    private static RowVerdict judged(PublishedRow row, String... lines) {
        return RowVerdict.all(List.of(row), new Bindings(List.of(lines))).get(0);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', nullValues = "-", textBlock = """
            70      | 0.01     | MET    | -
            70      | abs:0    | MET    | -
            70      | rel:0.01 | MET    | -
            70.5    | rel:0.01 | MET    | -
            71      | rel:0.01 | MISSED | off by -1
            71      | 0.01     | MISSED | off by -1
            -70     | 0.01     | MISSED | off by 140
            70.5    | 0.01     | MISSED | off by -0.5
            71      | 8        | MISSED | shows nothing
            70      | -1       | MISSED | shows nothing
            70      | NaN      | MISSED | shows nothing
            70      | near     | MISSED | NumberFormatException
            seventy | 0.01     | MISSED | NumberFormatException
            70      | exact    | MISSED | ours is 70
            """)
    void aWrongValueAndAWrongToleranceAreFound(String expected, String tolerance, Fate fate, @Nullable String fault) {
        RowVerdict verdict = judged(row(expected, tolerance), LINE);
        assertThat(verdict.fate()).isEqualTo(fate);
        if (fault == null) {
            assertThat(verdict.faults()).isEmpty();
        } else {
            assertThat(verdict.faults()).anyMatch(found -> found.contains(fault));
        }
    }

    @Test
    void aRowIsBoundOrSaidWhyNotAndNeverBoth() {
        assertThat(judged(row("70", "0")).fate()).isEqualTo(Fate.SKIPPED);
        assertThat(judged(row("70", "0")).faults()).hasSize(1);
        RowVerdict listed = judged(row("70", "0"), "W01 | listed | nobody asks");
        assertThat(listed.fate()).isEqualTo(Fate.LISTED);
        assertThat(listed.faults()).isEmpty();
        assertThat(judged(row("70", "0"), LINE, "W01 | listed | nobody asks").faults())
                .containsExactly("listed and yet bound");
    }

    @Test
    void oneOfTwoAnswersMissingTheValueIsEnough() {
        assertThat(judged(row("70", "0.01"), LINE, LINE.replace("{E}", "3 in")).fate())
                .isEqualTo(Fate.MISSED);
    }

    @Test
    void aCircularRowDoesNotCountAsBoundAndMustBeNamed() {
        String typed = "W01 | wrench-extension | setting={setting}; length=12 in; extension=0 in | torque";
        PublishedRow copy = row("60", "0.01");
        assertThat(judged(copy, typed).fate()).isEqualTo(Fate.CIRCULAR);
        assertThat(judged(copy, typed).faults()).containsExactly("circular: what is typed was made from the answer");
        assertThat(judged(copy, typed, "W01 | circular | a copy").faults()).isEmpty();
        assertThat(judged(row("61", "0.01"), typed, "W01 | circular | a copy").faults())
                .isNotEmpty();
        assertThat(judged(row("70", "0.01"), LINE, "W01 | circular | a copy").faults())
                .containsExactly("named circular and is not");
        Bindings code = new Bindings(List.of()).bind("W01", given -> given.number("setting"));
        assertThat(RowVerdict.all(List.of(copy), code).get(0).fate()).isEqualTo(Fate.CIRCULAR);
        PublishedRow door = new PublishedRow("made-up", "X01", "", "value=5 mm", "5", "mm", "0", "arithmetic");
        assertThat(judged(door, "X01 | unit | {value} | LENGTH").fate()).isEqualTo(Fate.CIRCULAR);
        assertThat(judged(door, "X01 | unit | {value} | TORQUE").fate()).isEqualTo(Fate.MISSED);
    }

    @Test
    void aTableWithMistakesIsNotRead() {
        List<PublishedRow> rows = List.of(row("70", "0.01"));
        for (String mistaken : List.of(
                "W01 W02 | unit | {x} | LENGTH",
                "\"toque\" | unit | {x} | LENGTH",
                "W02 | listed | no",
                "W01 | listed |")) {
            assertThatThrownBy(() -> RowVerdict.all(rows, new Bindings(List.of(mistaken))))
                    .as(mistaken)
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> RowVerdict.all(List.of(rows.get(0), rows.get(0)), new Bindings(List.of(LINE))))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void whatStopsAnAnswerIsAFaultOfItsRow() {
        PublishedRow row = row("70", "0.01");
        for (String broken : List.of(
                LINE.replace("{L}", "{M}"),
                LINE.replace("{L}", "-1 in"),
                LINE.replace("wrench-", "spanner-"),
                LINE.replace("| torque", "| torqe"),
                LINE + " | mm")) {
            assertThat(judged(row, broken).faults()).as(broken).hasSize(1);
        }
    }

    @Test
    void aLengthIsNotComparedWithAPlainNumberNorARowWithoutASource() {
        assertThat(judged(row("70", "0.01"), LINE.replace("| torque", "| torque | mm"))
                        .faults())
                .hasSize(1);
        PublishedRow ratio = new PublishedRow("made-up", "R01", "", "a=2; b=3", "2", "mm", "0", "arithmetic");
        assertThat(judged(ratio, "R01 | unit | {a} | NUMBER").fate()).isEqualTo(Fate.MISSED);
        PublishedRow sourceless = new PublishedRow("made-up", "X01", "", "value=1 in", "25.4", "mm", "0", " ");
        assertThat(judged(sourceless, "X01 | unit | {value} | LENGTH").faults()).containsExactly("no source");
    }

    @Test
    void inputsAreReadByOneGrammar() {
        PublishedRow row = row("70", "0")
                .with(
                        "d=10 mm coarse; F=1|2.5 kN; order=1-3-2; u1=5.8 nm, nu1=24; y=1, -2e-3 V; m=383 (near) cast; d=3");
        assertThat(row.text("d")).isEqualTo("10 mm");
        assertThat(row.text("F")).isEqualTo("1 2.5 kN");
        assertThat(row.text("order")).isEqualTo("1 3 2");
        assertThat(row.number("nu1")).isEqualTo(24);
        assertThat(row.numbers("y")).containsExactly(1.0, -2e-3);
        assertThat(row.text("m")).isEqualTo("383 cast");
        assertThatThrownBy(() -> row.number("x")).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> row.with("x=wide").number("x")).isInstanceOf(IllegalArgumentException.class);
    }
}
