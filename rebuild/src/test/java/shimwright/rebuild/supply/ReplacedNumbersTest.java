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
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.Kit;
import shimwright.rebuild.unit.model.Unit;

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

    private static final String KIT_A = "RK74-A";

    /** The unit with a kit that is worth buying for little, and with kits that name one of its numbers otherwise. */
    private static Unit listing(String number, String otherwise) {
        String text = DemoUnit.text();
        int kits = text.indexOf("\nkits:");
        return UnitFiles.read(
                        "kits.yaml",
                        text.substring(0, kits)
                                + text.substring(kits)
                                        .replace(number, otherwise)
                                        .replace("price: 443", "price: 4"))
                .outcome()
                .orElseThrow()
                .resolve("A");
    }

    private static Kit kit(Unit unit) {
        return unit.type().kits().stream()
                .filter(one -> one.id().equals(KIT_A))
                .findFirst()
                .orElseThrow();
    }

    private OrderList list(Unit unit) {
        return OrderList.of(unit, EntryStream.of(DemoWorkbench.opening()).job(), shop());
    }

    private List<String> wrong(Unit unit) {
        return KitCover.wrong(unit, kit(unit), OneNumber.of(unit, shop())).stream()
                .map(Kit.Line::part)
                .toList();
    }

    /** The kit's list has moved on, and the unit's book has not. */
    @Test
    void aKitThatListsTheNewNumberBringsWhatTheOldOneAsksFor() {
        Unit unit = listing("74-7001", "74-7901");
        OrderList before = list(listing("", ""));
        assertThat(before.line(KIT_A + "/74-7001")).isPresent();
        assertThat(list(unit).line(KIT_A + "/74-7001")).isEmpty();
        assertThat(wrong(unit)).containsExactly("74-7901");
        shop.add(new Entry.NumberReplaced("74-7001", "74-7801", "the agent", ""));
        shop.add(new Entry.NumberReplaced("74-7801", "74-7901", "the agent", ""));
        OrderList.Line seal = list(unit).line(KIT_A + "/74-7001").orElseThrow();
        assertThat(seal.what()).startsWith("74-7901 input seal 25x40x7");
        assertThat(seal.look()).startsWith("in place of 74-7001, says the agent");
        assertThat(seal.listed()).isEmpty();
        assertThat(wrong(unit)).isEmpty();
        assertThat(list(unit).cover().price()).isEqualTo(before.cover().price());
        assertThat(list(unit).cover().without()).isEqualTo(before.cover().without());
    }

    /** The unit's book has moved on, and the kit's list has not: it is said, for old ones may lie in a bag. */
    @Test
    void aKitThatListsAnOldNumberSaysSo() {
        Unit unit = listing("74-7001", "74-7000");
        shop.add(new Entry.NumberReplaced("74-7000", "74-7001", "the list of May", ""));
        OrderList.Line seal = list(unit).line(KIT_A + "/74-7001").orElseThrow();
        assertThat(seal.what()).startsWith("74-7001 ");
        assertThat(seal.instead()).isEmpty();
        assertThat(seal.look())
                .startsWith("the list of the kit still says 74-7000, in whose place 74-7001 is, says the list of May");
        assertThat(wrong(unit)).isEmpty();
    }

    /** Two numbers of the unit that became one are one line: a kit's piece is not given to both. */
    @Test
    void whatBecameOneNumberIsOneNeed() {
        shop.add(new Entry.NumberReplaced("74-6011", "74-6911", "the agent", ""));
        shop.add(new Entry.NumberReplaced("74-6012", "74-6911", "the agent", ""));
        OrderList list = list(listing("", ""));
        Need need = list.needs().stream()
                .filter(one -> one.key().equals("74-6011"))
                .findFirst()
                .orElseThrow();
        assertThat(need.items()).contains("needles_1", "needles_4", "needles_5");
        assertThat(need.pieces()).isEqualTo(5);
        OrderList.Line line = list.line(KIT_A + "/74-6011").orElseThrow();
        assertThat(line.what()).startsWith("74-6911 ").endsWith("5 pieces");
        assertThat(line.instead()).isEqualTo("in place of 74-6011, 74-6012, says the agent");
        assertThat(list.lines()).extracting(OrderList.Line::number).doesNotContain("74-6012");
    }
}
