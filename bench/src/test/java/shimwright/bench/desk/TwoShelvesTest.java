package shimwright.bench.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import shimwright.bench.store.ShopStore;
import shimwright.bench.store.log.OpenLog;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.act.UnitActs;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.rules.ShopRules;
import shimwright.rebuild.unit.file.UnitFiles;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.workbench.PinnedUnit;

/** Two programs on one log, each with a shelf of its own, as two benches have on one database. */
class TwoShelvesTest {
    private static final String TYPE = "ambleholt-l5-74";
    private static final String SHIPPED = UnitFiles.example();
    private static final String FIRST = SHIPPED + "# by the first\n";
    private static final String SECOND = SHIPPED + "# by the second\n";

    private final Shelf hers = new Shelf();
    private final Shelf his = new Shelf();
    private final ShopStore store;
    private Desk first;
    private final Desk second;

    TwoShelvesTest(@TempDir Path folder) {
        store = ShopStore.in(folder, OpenLog.Opening.WRITE, Optional.empty()).orElseThrow();
        first = desk(hers);
        second = desk(his);
    }

    /** A folder with one file. */
    private static final class Shelf implements UnitSource {
        private String text = SHIPPED;

        @Override
        public UnitShelf.Files files() {
            byte[] content = text.getBytes(StandardCharsets.UTF_8);
            UnitType type = UnitFiles.read(TYPE, content).outcome().orElseThrow();
            return new UnitShelf.Files(List.of(new UnitShelf.ReadFile(TYPE, content, type)), List.of());
        }

        @Override
        public Outcome<String> put(String type, byte[] content) {
            text = new String(content, StandardCharsets.UTF_8);
            return Outcome.ok(type);
        }

        @Override
        public Map<String, byte[]> shipped() {
            return Map.of();
        }
    }

    private Desk desk(Shelf shelf) {
        return new Desk(store.log(), store.pictures(), new UnitShelf(shelf, store.documents()), Clock.systemUTC());
    }

    @AfterEach
    void stop() {
        store.close();
    }

    private static String hash(String text) {
        return PinnedUnit.hash(text.getBytes(StandardCharsets.UTF_8));
    }

    private static Outcome<Desk.Done> change(Desk desk, String id, String before, String text) {
        return desk.act(
                new UnitActs.ChangeUnit(TYPE, hash(before), text, "a remark", ""),
                new Desk.Signed(id, "the bench", UnitSystem.METRIC));
    }

    @Test
    void whoseFileWasChangedMeanwhileIsToldSoAndHasTheOtherFileThen() {
        assertThat(Objects.requireNonNull(second.shelf().units().get(TYPE)).hash())
                .isEqualTo(hash(SHIPPED));
        change(first, "one", SHIPPED, FIRST).orElseThrow();
        assertThat(change(second, "two", SHIPPED, SECOND).refusals())
                .extracting(Refusal::fact)
                .containsExactly("it was changed meanwhile");
        assertThat(his.text).isEqualTo(FIRST);
        change(second, "three", FIRST, SECOND).orElseThrow();
        assertThat(first.floor().unit(TYPE).orElseThrow().hash()).isEqualTo(hash(SECOND));
        assertThat(hers.text).isEqualTo(SECOND);
    }

    @Test
    void theRuleItselfRefusesAFileThatWasLeftBehindWhateverAShelfHolds() {
        change(first, "one", SHIPPED, FIRST).orElseThrow();
        change(first, "two", FIRST, SECOND).orElseThrow();
        for (String left : List.of(SHIPPED, FIRST)) {
            assertThat(ShopRules.check(first.shop(), changed(left, SHIPPED + "# another\n")))
                    .extracting(Refusal::fact)
                    .containsExactly("it was changed meanwhile");
        }
        assertThat(ShopRules.check(first.shop(), changed(SECOND, SHIPPED))).isEmpty();
    }

    private static Entry.UnitChanged changed(String before, String after) {
        return new Entry.UnitChanged(TYPE, hash(before), hash(after), "a remark", List.of(), "");
    }

    @Test
    void aFilePutBackStandsAndOneLaidThereByHandIsChangedAsAnyOther() {
        change(first, "one", SHIPPED, FIRST).orElseThrow();
        change(first, "back", FIRST, SHIPPED).orElseThrow();
        change(first, "again", SHIPPED, SECOND).orElseThrow();
        hers.text = SHIPPED + "# by hand\n";
        first = desk(hers);
        assertThat(first.floor().unit(TYPE).orElseThrow().hash()).isEqualTo(hash(hers.text));
        change(first, "on", hers.text, FIRST).orElseThrow();
        assertThat(hers.text).isEqualTo(FIRST);
    }
}
