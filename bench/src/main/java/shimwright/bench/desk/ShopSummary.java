package shimwright.bench.desk;

import java.net.URLDecoder;
import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Shop;

/**
 * What the first page says of the shop and what each page is made by, so that a start need not read the shop's entries before it.
 *
 * @param head of the shop's stream when it said so
 * @param facts what the shop is and how it works, by name
 * @param gauges in use, in order
 * @param pieces ids of those that have not left the drawer for good
 */
public record ShopSummary(Head head, Map<String, String> facts, List<Shop.Gauge> gauges, List<String> pieces) {
    private static final int COUNTS = 2;
    private static final int OF_A_FACT = 2;
    private static final int OF_A_GAUGE = 9;

    /** What the whole shop says. */
    static ShopSummary of(Head head, Shop shop) {
        return new ShopSummary(
                head,
                shop.facts(),
                List.copyOf(shop.gauges().values()),
                shop.pieces().values().stream()
                        .filter(piece -> piece.goneBecause() == null)
                        .map(Shop.Piece::id)
                        .toList());
    }

    /** The same with only those pieces that are in no unit. */
    ShopSummary without(Set<String> taken) {
        return new ShopSummary(
                head,
                facts,
                gauges,
                pieces.stream().filter(piece -> !taken.contains(piece)).toList());
    }

    /** As text for {@link #read}; the head is not in it. */
    String text() {
        return Stream.of(
                        Stream.of("" + facts.size(), "" + gauges.size()),
                        facts.entrySet().stream().flatMap(fact -> Stream.of(fact.getKey(), fact.getValue())),
                        gauges.stream().flatMap(ShopSummary::words),
                        pieces.stream())
                .flatMap(words -> words)
                .map(word -> URLEncoder.encode(word, StandardCharsets.UTF_8))
                .collect(Collectors.joining(" "));
    }

    private static Stream<String> words(Shop.Gauge gauge) {
        return Stream.of(
                gauge.id(),
                gauge.name(),
                gauge.kind().name(),
                "" + gauge.step(),
                "" + gauge.errorLimit(),
                "" + gauge.retrace(),
                "" + gauge.repeatability(),
                "" + gauge.range(),
                gauge.calibrated());
    }

    /** What a text says; empty where it is none. */
    static Optional<ShopSummary> read(Head head, String text) {
        try {
            List<String> words = Arrays.stream(text.split(" ", -1))
                    .map(word -> URLDecoder.decode(word, StandardCharsets.UTF_8))
                    .toList();
            int firstGauge = COUNTS + Integer.parseInt(words.get(0)) * OF_A_FACT;
            int firstPiece = firstGauge + Integer.parseInt(words.get(1)) * OF_A_GAUGE;
            Map<String, String> facts = new LinkedHashMap<>();
            for (int at = COUNTS; at < firstGauge; at += OF_A_FACT) {
                facts.put(words.get(at), words.get(at + 1));
            }
            List<Shop.Gauge> gauges = new ArrayList<>();
            for (int at = firstGauge; at < firstPiece; at += OF_A_GAUGE) {
                gauges.add(gauge(words.subList(at, at + OF_A_GAUGE)));
            }
            return Optional.of(new ShopSummary(
                    head,
                    Collections.unmodifiableMap(facts),
                    List.copyOf(gauges),
                    List.copyOf(words.subList(firstPiece, words.size()))));
        } catch (IllegalArgumentException | IndexOutOfBoundsException torn) {
            return Optional.empty();
        }
    }

    private static Shop.Gauge gauge(List<String> words) {
        return new Shop.Gauge(
                words.get(0),
                words.get(1),
                Kind.valueOf(words.get(2)),
                Double.parseDouble(words.get(3)),
                Double.parseDouble(words.get(4)),
                Double.parseDouble(words.get(5)),
                Double.parseDouble(words.get(6)),
                Double.parseDouble(words.get(7)),
                words.get(8));
    }
}
