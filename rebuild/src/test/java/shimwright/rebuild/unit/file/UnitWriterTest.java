package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.rebuild.unit.model.UnitType;

/** What is written reads as what was written. */
class UnitWriterTest {
    private static UnitType read(String text) {
        return UnitFiles.read("w.yaml", text).outcome().orElseThrow();
    }

    @Test
    void theExampleComesBack() {
        UnitType example = UnitFileTexts.example();
        String text = UnitFiles.write(example);
        assertThat(read(text)).isEqualTo(example);
        assertThat(UnitFiles.write(read(text))).isEqualTo(text);
        assertThat(text).contains("mass: 42.5 kg\n", "along: 92 115 mm", "longest: 90 s", "expansion: 21.8 um/m/K");
    }

    @Test
    void theStarterComesBack() {
        UnitType starter = read(UnitFiles.starter());
        assertThat(read(UnitFiles.write(starter))).isEqualTo(starter);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a: b",
                "# no remark",
                "\"quoted\"",
                "back\\slash",
                "- dash",
                "*star",
                "a, b",
                "[x]",
                " blank ",
                "12",
                "true",
                "~",
                "two\\nlines",
                "é µ °",
                "'",
                "%",
                "@home",
                "a #b",
                "null",
                "x:",
                "{",
                "!tag",
                "&a",
                "|",
                ">"
            })
    void anyTextComesBack(String about) {
        UnitType odd = read(UnitFileTexts.with(
                "about: What kind of gearbox it is, in a sentence.",
                "about: \"" + about.replace("\\", "\\\\").replace("\"", "\\\"") + "\""));
        assertThat(odd.about()).isEqualTo(about.strip());
        assertThat(read(UnitFiles.write(odd))).isEqualTo(odd);
    }
}
