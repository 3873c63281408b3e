package shimwright.bench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.job.Head;
import shimwright.rebuild.job.Shop;

class ShopSummaryTest {
    @Property(tries = 200)
    void itsTextSaysTheSame(@ForAll("shops") ShopSummary shop) {
        assertThat(ShopSummary.read(shop.head(), shop.text())).contains(shop);
    }

    @Property(tries = 200)
    void aTornTextIsNone(@ForAll("shops") ShopSummary shop) {
        String text = shop.text();
        String torn = text.substring(0, text.indexOf(' '));
        assertThat(ShopSummary.read(shop.head(), torn)).isEmpty();
        assertThat(ShopSummary.read(shop.head(), "x" + text)).isEmpty();
    }

    @Property(tries = 50)
    void whatIsInAUnitDoesNotLieInTheDrawer(@ForAll("shops") ShopSummary shop) {
        Set<String> taken = shop.pieces().stream().limit(2).collect(Collectors.toSet());
        assertThat(shop.without(taken).pieces()).filteredOn(taken::contains).isEmpty();
        assertThat(shop.without(Set.of())).isEqualTo(shop);
    }

    @Provide
    Arbitrary<ShopSummary> shops() {
        Arbitrary<String> words = Arbitraries.strings().ofMaxLength(12);
        Arbitrary<Double> sizes = Arbitraries.doubles();
        Arbitrary<Shop.Gauge> gauges = Combinators.combine(
                        words, words, Arbitraries.of(Kind.class), sizes, sizes, words)
                .as((id, name, kind, step, limit, day) ->
                        new Shop.Gauge(id, name, kind, step, limit, step / 2, limit / 3, 1, day));
        Arbitrary<List<String>> pieces =
                Arbitraries.strings().ofMinLength(1).ofMaxLength(8).list().ofMaxSize(6);
        Arbitrary<Map<String, String>> facts =
                Arbitraries.maps(words, words).ofMinSize(0).ofMaxSize(4);
        return Combinators.combine(facts, gauges.list().ofMaxSize(4), pieces)
                .as((said, held, loose) -> new ShopSummary(new Head(7, "f".repeat(64)), said, held, loose));
    }
}
