package shimwright.bench.command;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.mechanics.registry.Registry;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class CalcCommandTest {
    private static final JsonMapper JSON = JsonMapper.builder().build();

    private record Ran(int code, String out, String err) {}

    private static Ran calc(String... args) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        int code = CalcCommand.run(
                List.of(args),
                new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8));
        return new Ran(code, out.toString(StandardCharsets.UTF_8), err.toString(StandardCharsets.UTF_8));
    }

    @Test
    void aloneItListsTheWorksheets() {
        Ran list = calc();
        assertThat(list.code()).isZero();
        Registry.all().forEach(sheet -> assertThat(list.out()).contains(sheet.name(), sheet.doc()));
        assertThat(JSON.readTree(calc("--json").out()).size())
                .isEqualTo(Registry.all().size());
    }

    @Test
    void helpTellsUnitsDefaultsAndSources() {
        assertThat(calc("growth", "--help").out()).contains("caseRise", "[K, ", "Sources", "ISO 1:2016");
        assertThat(calc("end-play", "--units", "inch", "--help").out()).contains("[in, ");
    }

    @Test
    void keysAreWorkedOutInWordsOrAsData() {
        Ran words = calc("growth", "legs=case: 200 mm: 21.8: 11.3", "caseRise=60", "shaftRise=60 ± 2 K");
        assertThat(words.code()).isZero();
        assertThat(words.out()).contains("change of play: 0.1260 ± 0.0046 mm", "Working", "Mind");
        JsonNode json =
                JSON.readTree(calc("growth", "legs=case: 200 mm: 21.8: 11.3", "caseRise=60", "shaftRise=60", "--json")
                        .out());
        assertThat(json.propertyNames()).containsExactly("worksheet", "result", "working", "cautions");
        // metrology.csv THX-11: 0.126 mm
        assertThat(json.at("/result/change/value").asDouble()).isCloseTo(0.126e-3, within(5e-7));
        assertThat(json.at("/result/change/unit").asString()).isEqualTo("m");
        assertThat(json.at("/result/change/text").asString()).isEqualTo("0.1260 mm");
    }

    @Test
    void whatIsRefusedIsASentenceAndCodeTwo() {
        Ran many = calc("growth", "legs=case: 200 N: 21.8: 11.3", "caseRize=60");
        assertThat(many.code()).isEqualTo(2);
        assertThat(many.out()).isEmpty();
        assertThat(many.err().lines().toList())
                .contains(
                        "caseRize: there is no such input. Did you mean caseRise?",
                        "lengths shared by case and shaft entry 1, length: \"200 N\" is a force; a length is needed here.")
                .hasSize(4);
        JsonNode json = JSON.readTree(calc("growth", "--json").err());
        assertThat(json.get("worksheet").asString()).isEqualTo("growth");
        assertThat(json.at("/refusals/0/sentence").asString())
                .startsWith("lengths shared by case and shaft: not given.");
        assertThat(calc("grow").err()).isEqualTo("there is no worksheet \"grow\". Did you mean growth?\n");
        assertThat(calc("growth", "nonsense", "a=1", "a=2", "--units", "cubit", "--input")
                        .err()
                        .lines())
                .hasSize(4);
    }

    @Test
    @SuppressWarnings("StringConcatToTextBlock") // a byte order mark is easier seen as an escape
    void aCsvFileIsOneCaseARow(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("cases.csv");
        Files.writeString(
                file,
                "\uFEFFlegs,caseRise,shaftRise,coldPlay\n"
                        + "case: 200 mm: 21.8: 11.3,60,60,\n"
                        + "case: 200 mm: 21.8: 11.3,hot,60,0.05 mm\n"
                        + "case: 200 mm: 26.0: 11.3,60,60,0.05 mm\n");
        Ran ran = calc("growth", "--input", file.toString(), "--json");
        assertThat(ran.code()).isEqualTo(2);
        List<String> lines = ran.out().lines().toList();
        assertThat(lines).hasSize(2);
        assertThat(JSON.readTree(lines.get(0)).at("/result/warmPlay/value").isNull())
                .isTrue();
        assertThat(JSON.readTree(lines.get(1)).get("case").asInt()).isEqualTo(3);
        assertThat(JSON.readTree(ran.err()).get("case").asInt()).isEqualTo(2);
        assertThat(calc("growth", "--input", file.toString()).err())
                .contains("cases.csv:3, how much warmer the case gets: \"hot\" is not a number");
        Files.writeString(file, "legs;caseRise;shaftRise\n\"case: 200 mm: 21,8: 11,3\";60;60,0\n");
        assertThat(calc("growth", "--input", file.toString()).out()).contains("0.1260 mm");
    }

    @Test
    void aJsonFileIsOneCaseOrMany(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("case.json");
        String legs =
                "\"legs\": [{\"name\": \"case\", \"length\": \"200 mm\", \"caseExpansion\": 21.8, \"shaftExpansion\": 11.3}]";
        Files.writeString(file, "{" + legs + ", \"caseRise\": 60, \"coldPlay\": null}");
        Ran ran = calc("growth", "--input", file.toString(), "shaftRise=60");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out()).contains("0.1260 mm");
        Files.writeString(file, "[{" + legs + ", \"caseRise\": 60, \"shaftRise\": 60}, 7]");
        assertThat(calc("growth", "--input", file.toString()).err()).contains("case 2: is not an object");
    }

    @Test
    void unreadableFilesAreRefused(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("x.csv");
        assertThat(calc("growth", "--input", file.toString()).err()).contains("there is no such file");
        for (String content : List.of("", "a,a\n1,2\n", "a,b\n1\n")) {
            Files.writeString(file, content);
            assertThat(calc("growth", "--input", file.toString()).code()).isEqualTo(2);
        }
        Files.write(file, new byte[] {'a', '\n', (byte) 0xff, (byte) 0xfe});
        assertThat(calc("growth", "--input", file.toString()).err()).contains("UTF-8");
        Path json = folder.resolve("x.json");
        Files.writeString(json, "{\"a\": 1,\n \"a\": 2}");
        assertThat(calc("growth", "--input", json.toString()).err()).contains("x.json:2: is not sound JSON");
        Files.writeString(folder.resolve("x.txt"), "a");
        assertThat(calc("growth", "--input", folder.resolve("x.txt").toString()).err())
                .contains("neither .json nor .csv");
    }
}
