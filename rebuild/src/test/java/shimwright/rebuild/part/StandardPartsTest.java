package shimwright.rebuild.part;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.rebuild.part.Match.Certainty;

/** Stamps and sizes; sizes of single parts: ISO 15:2017, ISO 355:2019, ISO 3245, ISO 262, ASME B1.1, from memory. */
class StandardPartsTest {
    private static final StandardParts PARTS = StandardParts.shipped();

    @Test
    void everyRowIsFoundByItsStampAloneOrAsOneOfSeveral() {
        assertThat(PARTS.all()).hasSizeGreaterThan(3500);
        List<String> lost = new ArrayList<>();
        for (StandardPart part : PARTS.all()) {
            List<Match> matches = PARTS.byStamp(part.designation())
                    .map(StandardParts.Found::matches)
                    .orElseThrow();
            Certainty expected = matches.size() == 1 ? Certainty.STAMPED : Certainty.ONE_OF_SEVERAL;
            assertThat(matches).as(part.designation()).allMatch(match -> match.certainty() == expected);
            if (matches.stream().noneMatch(match -> match.part().equals(part))) {
                lost.add(part.designation());
            }
        }
        assertThat(lost).isEmpty();
    }

    @Test
    void everyRowIsFoundByItsSizesInAnyOrder() {
        Random random = new Random(4);
        List<String> lost = new ArrayList<>();
        for (StandardPart part : PARTS.all()) {
            for (List<String> way : part.family().measured()) {
                List<Double> sizes = new ArrayList<>(way.stream()
                        .map(part::size)
                        .filter(OptionalDouble::isPresent)
                        .map(OptionalDouble::getAsDouble)
                        .toList());
                if (sizes.size() == way.size()) {
                    Collections.shuffle(sizes, random);
                    if (!bySize(sizes).contains(part)) {
                        lost.add(part.designation() + " by " + way);
                    }
                }
            }
        }
        assertThat(lost).isEmpty();
    }

    private static List<StandardPart> bySize(List<Double> sizes) {
        StandardParts.Found found = PARTS.bySize(sizes).orElseThrow();
        return found.matches().stream().map(Match::part).toList();
    }

    @Test
    void aWornPartReadWithACaliperIsStillFound() {
        Random random = new Random(7);
        List<StandardPart> bearings = PARTS.all().stream()
                .filter(part -> part.family().isBearing() && part.family() != Family.NEEDLE)
                .toList();
        List<String> lost = new ArrayList<>();
        for (StandardPart part : bearings) {
            List<Double> sizes = part.family().measured().get(0).stream()
                    .map(column -> part.size(column).orElseThrow())
                    .map(size ->
                            size + (random.nextDouble() - 0.5) * 1.6 * Math.min(0.05e-3, SizeSearch.tolerance(size)))
                    .toList();
            if (!bySize(sizes).contains(part)) {
                lost.add(part.designation());
            }
        }
        assertThat(lost).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "6206, 6206, 30, 62, 16",
        "6206-2RS C3, 6206, 30, 62, 16",
        "62062RS, 6206, 30, 62, 16",
        "6808 ZZ, 61808, 40, 52, 7",
        "NU205, NU205, 25, 52, 15",
        "nj 205 e, NU205E, 25, 52, 15",
        "30206, 30206, 30, 62, 17.25",
        "32006X, 32006, 30, 55, 17",
        "HK 2516, HK2516, 25, 32, 16",
        "AXK3047, AXK3047, 30, 47, 2",
        "51106, 51106, 30, 47, 11",
        "25x47x7, lip seal 25x47x7, 25, 47, 7",
        "seal 25 47 7, lip seal 25x47x7, 25, 47, 7",
        "shaft ring 30 x 1.5, DIN 471 30x1.5, 30, 1.5, 28.6",
        "circlip DIN 472 - 62, DIN 472 62x2, 62, 2, 65",
        "key 8x7x30, DIN 6885 A 8x7, 8, 7, 22",
        "'o-ring 20x3', O-ring 20x3, 20, 3, 3",
        "10x14x1, DIN 7603 A 10x14x1, 10, 14, 1",
        "'ball 5/16', ball 5/16 in, 7.938, 7.938, 7.938",
        "dowel 8 x 20, ISO 2338 8, 8, 8, 8",
    })
    void aStampBringsItsSizes(String typed, String name, double first, double second, double third) {
        List<Match> matches = PARTS.byStamp(typed).orElseThrow().matches();
        assertThat(matches).as(typed).isNotEmpty();
        Match match = matches.stream()
                .filter(one -> one.part().designation().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError(typed + " gave " + matches));
        assertThat(match.part().sizes().stream().mapToDouble(StandardPart.Size::value))
                .as(typed)
                .anyMatch(near(first))
                .anyMatch(near(second))
                .anyMatch(near(third));
    }

    private static Predicate<Double> near(double millimetres) {
        return value -> Math.abs(value - millimetres * 1e-3) < 1e-7;
    }

    @Test
    void aThreadIsOfferedWithEveryHeadItMayHaveAndItsStrengthIsRead() {
        for (String typed : List.of("M8×1.25 8.8", "M8 8.8", "m8x1,25 - 8.8")) {
            List<Match> matches = PARTS.byStamp(typed).orElseThrow().matches();
            assertThat(matches.stream().map(match -> match.part().family()).distinct())
                    .as(typed)
                    .contains(Family.HEX_SCREW, Family.SOCKET_SCREW);
            assertThat(matches).allMatch(match -> match.certainty() == Certainty.ONE_OF_SEVERAL);
            assertThat(matches).allMatch(match -> match.remarks().contains("Strength class 8.8."));
        }
        assertThat(PARTS.byStamp("M8x25").orElseThrow().matches())
                .allMatch(match -> match.remarks().contains("Length 25 mm."));
        // ASME B1.1: 3/8-16 UNC, pitch 25.4/16 mm
        assertThat(PARTS.byStamp("3/8-16").orElseThrow().matches())
                .isNotEmpty()
                .allMatch(match -> Math.abs(match.part().size("pitch_mm").orElseThrow() - 25.4e-3 / 16) < 1e-6);
    }

    @Test
    void whatHasSeveralMeaningsIsOfferedAndNotGuessed() {
        List<Match> spline = PARTS.byStamp("30x2 spline").orElseThrow().matches();
        assertThat(spline)
                .extracting(match -> match.part().size("z").orElseThrow())
                .contains(13.0, 14.0);
        assertThat(spline).allMatch(match -> match.certainty() == Certainty.ONE_OF_SEVERAL);
        List<Match> ring = PARTS.byStamp("circlip 30").orElseThrow().matches();
        assertThat(ring).extracting(match -> match.part().family()).contains(Family.SHAFT_RING, Family.BORE_RING);
        assertThat(PARTS.byStamp("M10").orElseThrow().matches())
                .extracting(match -> match.part().size("AF_s_mm").orElse(0))
                .contains(16e-3, 17e-3);
    }

    @Test
    void whatCannotBeReadIsAQuestionMark() {
        List<Match> matches = PARTS.byStamp("62?6").orElseThrow().matches();
        assertThat(matches).extracting(match -> match.part().designation()).contains("6206", "6216");
        assertThat(matches).allMatch(match -> match.certainty() == Certainty.NEAR);
        assertThat(PARTS.byStamp("3?206").orElseThrow().matches())
                .extracting(match -> match.part().designation())
                .contains("30206", "32206", "33206");
    }

    @Test
    void aSlipOfThePenIsOfferedAsNearAndNeverAsThePart() {
        List<Match> matches = PARTS.byStamp("AS3042").orElseThrow().matches();
        assertThat(matches).extracting(match -> match.part().designation()).contains("AS3047", "AS2542");
        assertThat(matches).allMatch(match -> match.certainty() == Certainty.NEAR);
    }

    @Test
    void sizesThatNoTableHasStandInTheCallOut() {
        Match seal = PARTS.byStamp("seal 33.5x51x7.2").orElseThrow().matches().get(0);
        assertThat(seal.certainty()).isEqualTo(Certainty.SIZES_ONLY);
        assertThat(seal.part().family()).isEqualTo(Family.LIP_SEAL);
        assertThat(seal.part().size("D_bore_mm").orElseThrow()).isCloseTo(51e-3, within(1e-9));
        assertThat(seal.part().agreement().sentence()).contains("no table");
        assertThat(PARTS.byStamp("30x42x0.35").orElseThrow().matches())
                .extracting(match -> match.part().family())
                .contains(Family.SHIM_RING);
    }

    @Test
    void measuredSizesNameTheBearing() {
        assertThat(bySize(List.of(25e-3, 52e-3, 15e-3)).stream().map(StandardPart::designation))
                .contains("6205", "NU205");
        List<Double> inches = DoubleStream.of(0.984, 2.047, 0.591)
                .mapToObj(inch -> inch * 0.0254)
                .toList();
        assertThat(bySize(inches)).containsAll(bySize(List.of(25e-3, 52e-3, 15e-3)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "  ", "zzzzzzz", "??", "6206 6206 6206 6206 6206 6206 6206 6206 6206 6206 6206 6206 6206"})
    void whatIsLikeNothingIsRefusedInWords(String typed) {
        assertThat(PARTS.byStamp(typed).refusals())
                .hasSize(1)
                .allMatch(refusal -> !refusal.hint().isBlank());
    }

    @Test
    void sizesThatCannotBeAreRefused() {
        assertThat(PARTS.bySize(List.of()).refusals()).hasSize(1);
        assertThat(PARTS.bySize(List.of(-1e-3, Double.NaN)).refusals()).hasSize(2);
        assertThat(PARTS.bySize(List.of(1e-3, 2e-3, 3e-3, 4e-3)).refusals()).hasSize(1);
        assertThat(PARTS.bySize(List.of(987.6e-3, 1.2e-3, 400e-3)).refusals()).hasSize(1);
    }

    @Test
    void anyTextIsAnsweredOrRefused() {
        Random random = new Random(11);
        String letters = "0123456789.,xX×/-?* MNUHKRSZCG\"'ÄЖ\u0000";
        for (int i = 0; i < 3000; i++) {
            String typed = IntStream.range(0, random.nextInt(14))
                    .mapToObj(at -> String.valueOf(letters.charAt(random.nextInt(letters.length()))))
                    .reduce("", String::concat);
            var found = PARTS.byStamp(typed);
            assertThat(found.isOk() != !found.refusals().isEmpty()).isTrue();
        }
    }
}
