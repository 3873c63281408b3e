package shimwright.rebuild.supply;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.demo.DemoWorkbench;
import shimwright.rebuild.demo.EntryStream;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Shop;
import shimwright.rebuild.rules.ShopRules;

/** The number that holds now stands in the order list, with who said so; a wrong one is taken back. */
class ReplacedNumbersTest {
    private final EntryStream shop = new EntryStream("shop");

    private Shop shop() {
        return Shop.of(shop.entries(), Map.<String, String>of());
    }

    private List<String> against(Entry.OfShop entry) {
        return ShopRules.check(shop(), entry).stream().map(Refusal::sentence).toList();
    }

    private OrderList.Line line(String key) {
        return OrderList.of(DemoUnit.A, EntryStream.of(DemoWorkbench.opening()).job(), shop())
                .line(key)
                .orElseThrow();
    }

    @Test
    void oneNumberAfterAnotherAndBack() {
        OrderList.Line numbered =
                OrderList.of(DemoUnit.A, EntryStream.of(DemoWorkbench.opening()).job()).lines().stream()
                        .filter(one -> !one.number().isEmpty())
                        .findFirst()
                        .orElseThrow();
        String old = numbered.number();
        assertThat(numbered.instead()).isEmpty();
        shop.add(new Entry.NumberReplaced(old, "N-1", "the agent", ""));
        shop.add(new Entry.NumberReplaced("N-1", "N-2", "the list of May", ""));
        OrderList.Line now = line(numbered.key());
        assertThat(now.what()).startsWith("N-2 ").doesNotContain(old);
        assertThat(now.instead()).isEqualTo("in place of " + old + ", says the agent, the list of May");
        assertThat(now.look()).startsWith("in place of " + old);
        assertThat(against(new Entry.NumberReplaced("N-2", old, "somebody", "")))
                .anyMatch(said -> said.contains("would take its own place"));
        assertThat(against(new Entry.NumberReplaced("N-9", "N-9", "", "")))
                .anyMatch(said -> said.contains("would take its own place"))
                .anyMatch(said -> said.contains("Say the supplier"));
        assertThat(against(new Entry.NumberStands("N-7", "misread")))
                .anyMatch(said -> said.contains("nothing has taken its place"));
        assertThat(against(new Entry.NumberStands(old, ""))).anyMatch(said -> said.contains("Say why it stands"));
        assertThat(against(new Entry.NumberStands(old, "misread"))).isEmpty();
        shop.add(new Entry.NumberStands(old, "misread"));
        assertThat(line(numbered.key()).what()).isEqualTo(numbered.what());
    }
}
