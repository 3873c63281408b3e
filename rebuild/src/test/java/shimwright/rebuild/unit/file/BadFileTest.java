package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.groups.Tuple.tuple;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.fault.ProblemCollector;

/** What a person gets to read about a faulty file: the place, the fact and what to do, for every fault at once. */
class BadFileTest {

    /**
     * The starter with one piece replaced gives exactly one problem: at the place of the marker, with these words.
     * Columns: piece, its replacement, text at whose beginning the problem stands, words of fact and hint.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            maker: Maker                   | model: M                           | format: s     | file "my-first-unit" has no "maker" | Add maker
            lower: 0.02 mm                 | lower: 0.02                        | 0.02\\n       | "0.02" has no unit                  | Write it as 0.02 mm
            lower: 0.02 mm                 | lower: 0.02 N.m                    | 0.02 N.m      | is a torque; a length is needed     |
            lower: 0.02 mm                 | lower: 0.02 mn                     | 0.02 mn       | unknown unit "mn"                   | Known for a length
            lower: 0.02 mm                 | lower: tight                       | tight         | is not a number                     | Type a length
            limit: 0.05 mm                 | limit: thin                        | thin, dir     | is not a number                     | Type a length
            limit: 0.05 mm                 | limit: 0.05                        | 0.05, dir     | "0.05" has no unit                  | Write it as 0.05 mm
            lower: 0.02 mm                 | lower: [0.02 mm]                   | [0.02 mm]     | is one value, here is a list        | Write one value
            lower: 0.02 mm                 | lower:                             | \\n    upper: 0.08 | has no value                    | leave the key out
            lower: 0.02 mm                 | lower: 0.02 ± 0.001 mm             | 0.02 ±        | carries an uncertainty              | Write the value alone
            lower: 0.02 mm                 | lower: 0.02 mm (0.002 in)          | 0.02 mm (     | the two do not agree                | Look it up again
            sense: end_play                | sense: end_pley                    | end_pley      | is not one of its words             | Did you mean "end_play"?
            indicators: 2                  | indicators: two                    | two\\n        | is not a whole number               | such as 3
            effect: -1,                    | effect: closes,                    | closes, item  | is not a plain number               | such as 0.18
            renew: true}\\n  - {id: rear   | renew: yes}\\n  - {id: rear        | yes}          | neither true nor false              | Write true or false
            along: 0 17 mm                 | along: [0 mm, 17 mm]               | [0 mm,        | is one text with the unit at its end | 92 115 mm
            along: 0 17 mm                 | along: 0 17                        | 0 17,         | it has no unit                      | unit once at the end
            along: 0 17 mm                 | along: 17 0 mm                     | 17 0 mm       | two values, the smaller first       | 92 115 mm
            after: {S1: same_part}         | after: {S9: same_part}             | S9: same      | "S9" is not among the steps         | Did you mean "S1" or "S2" or "S3"?
            after: {S1: same_part}         | after: [S1]                        | [S1]          | is written as keys and values       | {key: value}
            tools: [DI, TRQ]\\n    installs | tools: [DI, TRK]\\n    installs   | TRK           | "TRK" is not among the tools        | Did you mean "TRQ"?
            tools: [DI, TRQ]\\n    installs | tools: DI\\n    installs          | DI\\n    installs | "tools" of step "S2" is a list  | Write [a, b]
            at: UP\\n    duration: 5 min    | at: ROOF\\n    duration: 5 min     | ROOF          | is not among the stations           | Known stations: BENCH, UP
            - id: S2                       | - id: S1                           | S1\\n    todo: Rear | step "S1" stands twice, first on line | another id
            duration: 5 min                | duration: 5 min\\n    duration: 6 min | duration: 6 | key "duration" stands twice in this step | Delete one
            undo: slow                     | undo: destroys                     | destroys\\n    hold | but not what                        | destroys: [what]
            phase: trial                   | trap: none                         | c\\n    trap  | clearance and phase belong together | phase: trial
            BENCH: {name: on the bench}    | BENCH: {name: on the bench, room: 9} | 9}\\n     | room is 9                           | Plausible is 1 to 6
            format: shimwright-unit 1      | format: shimwright-unit 2          | shimwright-unit 2 | is not read here                | shimwright-unit 1
            id: my-first-unit              | id: My Unit                        | My Unit       | is no id                            | small letters
            """)
    void oneFault(String piece, String fresh, String marker, String fact, String hint) {
        String text = UnitFileTexts.with(real(piece), real(fresh));
        List<Refusal> problems = UnitFileTexts.problems(text);
        String wanted = UnitFileTexts.place(text, real(marker));
        assertThat(problems)
                .as("%s", problems.stream().map(Refusal::sentence).toList())
                .filteredOn(p -> p.fact().contains(fact))
                .singleElement()
                .satisfies(p -> {
                    assertThat(p.place()).isEqualTo(wanted);
                    assertThat(p.hint()).contains(hint == null ? "" : hint);
                });
    }

    private static String real(String typed) {
        return typed.replace("\\n", "\n");
    }

    @Test
    void unknownKeyNamesTheMeantOne() {
        String text = UnitFileTexts.with("settle_within", "setle_within");
        assertThat(UnitFileTexts.problems(text))
                .extracting(Refusal::place, Refusal::fact, Refusal::hint)
                .containsExactly(tuple(
                        UnitFileTexts.place(text, "setle_within"),
                        "clearance \"c\" has no key \"setle_within\"",
                        "Did you mean \"settle_within\"?"));
    }

    @Test
    void aTextWithACommaNeedsQuotes() {
        String text = UnitFileTexts.with("name: on the bench", "name: on the bench, or beside it");
        assertThat(UnitFileTexts.sentences(text))
                .singleElement()
                .asString()
                .contains("station")
                .contains("\"or beside it\"")
                .contains("put that text in quotes");
    }

    @Test
    void allFaultsAtOnceInOrder() {
        String text = UnitFiles.starter()
                .replace("mass: 40 kg", "mass: 40 mm")
                .replace("upper: 0.08 mm", "upper: 0.008 mm")
                .replace("quantity: 8", "quantity: eight")
                .replace("after: {S2: same_part}", "after: {S2: some_part}");
        assertThat(UnitFileTexts.problems(text))
                .extracting(Refusal::fact)
                .satisfiesExactly(
                        f -> assertThat(f).contains("is a length; a mass is needed"),
                        f -> assertThat(f).contains("\"eight\" is not a whole number"),
                        f -> assertThat(f).contains("0.02 mm is not below the upper limit 0.008 mm"),
                        f -> assertThat(f).contains("\"some_part\" is not one of its words"));
        assertThat(UnitFileTexts.problems(text)).extracting(UnitFileTexts::line).isSorted();
    }

    @Test
    void brokenYamlSaysWhere() {
        String text = UnitFileTexts.with("positions:", "positions");
        Refusal problem = UnitFileTexts.problems(text).get(0);
        assertThat(UnitFileTexts.problems(text)).hasSize(1);
        assertThat(problem.fact()).startsWith("this is not YAML");
        int line = Integer.parseInt(UnitFileTexts.place(text, "positions").split(":")[1]);
        assertThat(UnitFileTexts.line(problem)).isBetween(line, line + 1);
        assertThat(problem.hint()).contains("the one before it");
    }

    @Test
    void tabsUnclosedQuotesAndBrackets() {
        for (String bad :
                List.of("a:\n\tb: 1", "a: \"open", "a: [1, 2", "a: b: c", "- a\nb: 1", "%bad", "@a", "a: *x")) {
            assertThat(UnitFileTexts.problems(bad)).singleElement().satisfies(p -> {
                assertThat(p.fact()).contains("not YAML");
                assertThat(UnitFileTexts.line(p)).isBetween(1, 3);
                assertThat(p.sentence()).doesNotContain("Exception");
            });
        }
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            ''                | the file is empty
            '# only a remark' | the file is empty
            'just a text'     | here is "just a text"
            '[a, b]'          | here is a list
            '42'              | here is "42"
            """)
    void nothingUsable(String text, String fact) {
        assertThat(UnitFileTexts.problems(text)).singleElement().satisfies(p -> {
            assertThat(p.fact()).contains(fact);
            assertThat(p.place()).matches("u.yaml:1:\\d+");
            assertThat(p.hint()).isNotEmpty();
        });
    }

    @Test
    void aSecondDocumentIsRefused() {
        String text = UnitFiles.starter() + "---\na: 1\n";
        assertThat(UnitFileTexts.problems(text)).singleElement().satisfies(p -> {
            assertThat(p.fact()).contains("second document");
            assertThat(p.place()).isEqualTo(UnitFileTexts.place(text, "---\na"));
        });
    }

    @Test
    void bytesThatAreNoText() {
        byte[] picture = {(byte) 0x89, 'P', 'N', 'G', 0x0d, 0x0a, 0x1a, 0x0a};
        assertThat(UnitFiles.read("p.png", picture).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.sentence())
                        .isEqualTo("p.png:1:1: the file is not UTF-8 text. Save it as UTF-8 text; a picture or a"
                                + " spreadsheet is no unit file."));
        byte[] zeros = "maker: A\nmodel: \0\0".getBytes(StandardCharsets.UTF_8);
        assertThat(UnitFiles.read("z", zeros).problems()).singleElement().satisfies(p -> {
            assertThat(p.fact()).contains("U+0000");
            assertThat(UnitFileTexts.line(p)).isEqualTo(2);
            assertThat(UnitFileTexts.column(p)).isEqualTo(8);
        });
        byte[] latin = "maker: A\nmodel: M\u00fcller".getBytes(StandardCharsets.ISO_8859_1);
        assertThat(UnitFiles.read("l", latin).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.place()).isEqualTo("l:2:9"));
    }

    @Test
    void aByteOrderMarkAndWindowsLineEndsAreRead() {
        String windows = "\uFEFF" + UnitFiles.starter().replace("\n", "\r\n");
        assertThat(UnitFiles.read("w", windows.getBytes(StandardCharsets.UTF_8)).problems())
                .isEmpty();
    }

    @Test
    void tooLarge() {
        byte[] large = new byte[UnitFiles.LARGEST + 1];
        assertThat(UnitFiles.read("big", large).problems())
                .singleElement()
                .satisfies(p -> assertThat(p.fact()).contains("the file has 4 MB"));
        assertThat(UnitFileTexts.problems("a".repeat(UnitFiles.LARGEST + 1))).hasSize(1);
    }

    @Test
    void problemsAreCapped() {
        StringBuilder text = new StringBuilder(UnitFiles.starter());
        for (int i = 0; i < 500; i++) {
            text.append("wrong_").append(i).append(": 1\n");
        }
        List<Refusal> problems = UnitFileTexts.problems(text.toString());
        assertThat(problems).hasSize(ProblemCollector.SHOWN + 1);
        assertThat(problems.get(ProblemCollector.SHOWN).sentence()).contains("300 more problems");
    }

    @Test
    void aliasesMayBeUsedButNotToSwell() {
        assertThat(UnitFiles.example()).contains("*backlash_how");
        StringBuilder bomb = new StringBuilder("lessons: &a0 [x, x, x, x, x, x, x, x, x, x]\n");
        for (int i = 1; i < 9; i++) {
            bomb.append("a").append(i).append(": &a").append(i).append(" [");
            bomb.append(("*a" + (i - 1) + ", ").repeat(9))
                    .append("*a")
                    .append(i - 1)
                    .append("]\n");
        }
        assertThat(UnitFileTexts.problems(bomb.toString())).isNotEmpty();
        String step = "{id: S, todo: t, at: UP, duration: 1 min, tools: &t [" + "DI, ".repeat(2000) + "DI]}";
        String swelling = "steps: [" + step + ", " + "{tools: *t}, ".repeat(1000) + "{tools: *t}]";
        assertThat(UnitFileTexts.problems(swelling))
                .singleElement()
                .satisfies(p -> assertThat(p.fact()).contains("aliases repeat more"));
    }

    @Test
    void aListInItself() {
        assertThat(UnitFileTexts.problems("lessons: &a [*a, *a]\nsteps: &b {steps: *b}"))
                .isNotEmpty();
    }

    @Test
    void deepNestingIsRefusedWithoutAStackOverflow() {
        String deep = "a: " + "[".repeat(200_000);
        assertThat(UnitFileTexts.problems(deep)).singleElement().satisfies(p -> {
            assertThat(p.fact()).contains("deep");
            assertThat(UnitFileTexts.line(p)).isEqualTo(1);
        });
        assertThat(UnitFileTexts.problems("- ".repeat(100_000))).hasSize(1);
    }

    @Test
    void aMegabyteOfGarbage() {
        StringBuilder garbage = new StringBuilder();
        Random random = new Random(7);
        while (garbage.length() < 1_000_000) {
            garbage.append((char) (32 + random.nextInt(95)));
            if (random.nextInt(60) == 0) {
                garbage.append('\n');
            }
        }
        assertThat(UnitFileTexts.problems(garbage.toString())).isNotEmpty();
    }
}
