package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.fault.QuantityText;
import shimwright.rebuild.unit.fault.Spelling;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.WearLimit;

class ReaderPropertyTest {
    private static final Pattern KEY = Pattern.compile("(?<=[{,] |^ {0,8}(?:- )?)([a-z_]{2,}): ", Pattern.MULTILINE);

    /** Where keys of records stand in the starter; keys that are ids of maps are left out, they may be anything. */
    private static List<int[]> keys() {
        List<int[]> keys = new ArrayList<>();
        Set<String> known = new LinkedHashSet<>();
        for (Class<?> type : List.of(UnitType.class, Item.class, Clearance.class, Step.class, WearLimit.class)) {
            Component.of(type).forEach(c -> known.add(c.key()));
        }
        Matcher matcher = KEY.matcher(UnitFiles.starter());
        while (matcher.find()) {
            boolean remark = UnitFiles.starter().lastIndexOf('#', matcher.start())
                    > UnitFiles.starter().lastIndexOf('\n', matcher.start());
            if (!remark && known.contains(matcher.group(1))) {
                keys.add(new int[] {matcher.start(1), matcher.end(1)});
            }
        }
        assertThat(keys).hasSizeGreaterThan(60);
        return keys;
    }

    record Typo(int kind, int at, char letter) {
        String in(String word) {
            int i = at % word.length();
            return switch (kind) {
                case 0 -> word.substring(0, i) + letter + word.substring(i);
                case 1 -> word.substring(0, i) + word.substring(i + 1);
                case 2 -> word.substring(0, i) + letter + word.substring(i + 1);
                default ->
                    i + 1 < word.length()
                            ? word.substring(0, i) + word.charAt(i + 1) + word.charAt(i) + word.substring(i + 2)
                            : word + letter;
            };
        }
    }

    @Provide
    Arbitrary<Typo> typos() {
        return Combinators.combine(
                        Arbitraries.integers().between(0, 3),
                        Arbitraries.integers().between(0, 40),
                        Arbitraries.chars().range('a', 'z'))
                .as(Typo::new);
    }

    /** One letter wrong in a key: the problem stands there and the meant key is among the suggestions. */
    @Property(tries = 300)
    void aTypoInAKeySuggestsTheMeantOne(@ForAll @IntRange(max = 10_000) int which, @ForAll("typos") Typo typo) {
        List<int[]> keys = keys();
        int[] key = keys.get(which % keys.size());
        String starter = UnitFiles.starter();
        String meant = starter.substring(key[0], key[1]);
        String typed = typo.in(meant);
        Assume.that(typed.length() > 1 && !typed.equals(meant));
        String text = starter.substring(0, key[0]) + typed + starter.substring(key[1]);
        String place = UnitFileTexts.place(text.substring(0, key[0]) + "\u0001", "\u0001");
        List<Refusal> there = UnitFileTexts.problems(text).stream()
                .filter(p -> p.place().equals(place))
                .toList();
        Assume.that(there.stream().noneMatch(p -> p.fact().contains("stands twice")));
        assertThat(there)
                .as(typed)
                .singleElement()
                .satisfies(p -> assertThat(p.hint()).contains("\"" + meant + "\""));
    }

    /** Whatever the bytes, there is an answer with a place, never an exception. */
    @Property(tries = 300)
    void bytesNeverThrow(@ForAll @Size(max = 400) byte[] bytes) {
        assertThat(UnitFiles.read("b", bytes).problems()).isNotEmpty().allSatisfy(p -> {
            assertThat(UnitFileTexts.line(p)).isPositive();
            assertThat(UnitFileTexts.column(p)).isPositive();
            assertThat(p.sentence()).doesNotContain("Exception");
        });
    }

    @Provide
    Arbitrary<String> yamlish() {
        return Arbitraries.strings()
                .withChars("abc :-[]{},&*#|>!%@\"'\n\t01.?~")
                .ofMaxLength(120);
    }

    /** Text made of YAML's own signs breaks nothing either. */
    @Property(tries = 700)
    void yamlSignsNeverThrow(@ForAll("yamlish") String text) {
        assertThat(UnitFileTexts.problems(text)).isNotEmpty();
        assertThat(UnitFileTexts.problems("steps:\n  - id: " + text)).isNotEmpty();
    }

    /** The library throws these instead of marking them. */
    @ParameterizedTest
    @ValueSource(strings = {"a: !<%20x> b", "!%20 b", "a: !!%20 b", "%TAG ! %20\n--- !a b", "a: !<tag:x%20> b"})
    void aTagOfBlanksIsAProblemWithAHint(String text) {
        assertThat(UnitFileTexts.problems(text)).singleElement().satisfies(p -> {
            assertThat(p.fact()).contains("YAML tag");
            assertThat(p.hint()).contains("needs no tags");
        });
    }

    /** Cutting a piece out of a good file anywhere gives a good file or problems, never an exception. */
    @Property(tries = 200)
    void cuttingAPieceNeverThrows(
            @ForAll @IntRange(max = 5000) int from, @ForAll @IntRange(min = 1, max = 60) int length) {
        String starter = UnitFiles.starter();
        int start = from % starter.length();
        String text = starter.substring(0, start) + starter.substring(Math.min(starter.length(), start + length));
        assertThat(UnitFileTexts.problems(text))
                .allSatisfy(p -> assertThat(p.sentence()).endsWith(p.sentence().strip()));
    }

    /** A quantity written in millimeters and in inches to their digits agrees; ten times as much does not. */
    @Property
    void twoUnitsAgree(@ForAll @IntRange(min = 10, max = 100_000) int hundredths) {
        String mm = String.format(Locale.ROOT, "%.2f", hundredths / 100.0);
        String inches = String.format(Locale.ROOT, "%.4f", hundredths / 2540.0);
        String wrong = String.format(Locale.ROOT, "%.4f", hundredths / 254.0);
        assertThat(QuantityText.one(mm + " mm (" + inches + " in)", Kind.LENGTH).orElseThrow())
                .isCloseTo(hundredths * 1e-5, within(1e-12));
        assertThat(QuantityText.one(mm + " mm (" + wrong + " in)", Kind.LENGTH).isOk())
                .isFalse();
    }

    /** A row gives back its numbers in SI. */
    @Property
    void rowsKeepTheirNumbers(
            @ForAll @Size(min = 1, max = 6) List<@IntRange(min = -9999, max = 9999) Integer> numbers) {
        String text = String.join(" ", numbers.stream().map(n -> n / 10.0 + "").toList()) + " mm";
        List<Double> read = QuantityText.row(text, Kind.LENGTH).orElseThrow();
        for (int i = 0; i < numbers.size(); i++) {
            assertThat(read.get(i)).isCloseTo(numbers.get(i) * 1e-4, within(1e-12));
        }
    }

    /** One letter swapped with its neighbor, left out or doubled still leads to the word that was meant. */
    @Property
    void oneSlipIsFound(@ForAll("words") String word, @ForAll @IntRange(min = 0, max = 4) int at, @ForAll Slip slip) {
        int k = Math.min(at, word.length() - 2);
        String typed = switch (slip) {
            case SWAPPED -> word.substring(0, k) + word.charAt(k + 1) + word.charAt(k) + word.substring(k + 2);
            case LEFT_OUT -> word.substring(0, k) + word.substring(k + 1);
            case DOUBLED -> word.substring(0, k) + word.charAt(k) + word.substring(k);
        };
        assertThat(Spelling.nearest(typed, List.of("zzzzzzzz", word))).containsExactly(word);
    }

    enum Slip {
        SWAPPED,
        LEFT_OUT,
        DOUBLED
    }

    @Provide
    Arbitrary<String> words() {
        return Arbitraries.strings().withChars("abcd").ofMinLength(3).ofMaxLength(8);
    }
}
