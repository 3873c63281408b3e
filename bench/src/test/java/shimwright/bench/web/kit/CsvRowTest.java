package shimwright.bench.web.kit;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No cell is taken for a formula by the program that opens the table: what such begin with is common practice, no source. */
class CsvRowTest {
    @ParameterizedTest
    @ValueSource(
            strings = {
                "=1+1",
                "+41 79",
                "-3",
                "@sum",
                "\t=1",
                "\r=1",
                "\n=1",
                " =cmd|' /c calc'!A0",
                "\uFF1D1+1",
                "\uFF0B1",
                "\u00A0=1",
                "=HYPERLINK(\"http://x\")"
            })
    void aFormulaIsLedByAnApostrophe(String text) {
        assertThat(CsvRow.of(text)).startsWith("\"'").endsWith("\"\n");
    }

    @Test
    void quotesAreDoubledAndPlainTextStaysAsItIs() {
        // RFC 4180, 2.7: a quote within quotes is doubled
        assertThat(CsvRow.of("seal 25x40x7, \"new\"", "12.50", ""))
                .isEqualTo("\"seal 25x40x7, \"\"new\"\"\",\"12.50\",\"\"\n");
    }
}
