package shimwright.rebuild.inspect;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.inspect.TradeChecks.Sort;
import shimwright.rebuild.inspect.TradeChecks.TradeCheck;

/** What the trade looks at on parts of each sort; common practice, no source. */
class TradeChecksTest {
    @ParameterizedTest
    @CsvSource({
        "fork_5, FORK",
        "rail_12, RAIL",
        "detents, DETENT",
        "plug_1, DETENT",
        "slider_34, SLEEVE",
        "hub_34, HUB",
        "ring_3, RING",
        "PH_cone, RACE",
        "PH_cup, RACE",
        "needles_5, RACE",
        "PR_inner, RACE",
        "input_shaft, SHAFT",
        "idler_shaft, SHAFT",
        "wheel_1, GEAR",
        "pinion, GEAR",
        "sleeve_4, TRACK",
        "input_seal, SEAL",
        "cover_o_rings, SEAL",
        "stack_nut, THREAD",
        "drain_plug, THREAD",
        "W1, WASHER",
        "sP, WASHER",
        "left_cover, CASTING",
        "main_case, CASTING",
        "keys_34, SPRING",
        "flange, FLANGE",
        "guide_tube, OTHER",
        "pin_12, OTHER"
    })
    void aPartIsOfTheSortThatItsShapeOrItsNameSays(String item, Sort sort) {
        assertThat(TradeChecks.sort(DemoUnit.A.item(item))).isEqualTo(sort);
    }

    @Test
    void eachSortHasSomethingToLookAtUnderAnIdOfItsOwn() {
        for (Sort sort : Sort.values()) {
            assertThat(TradeChecks.all())
                    .filteredOn(check -> check.of() == sort)
                    .hasSizeGreaterThan(1);
            assertThat(sort.heading()).isNotBlank();
        }
        Set<String> ids = TradeChecks.all().stream().map(TradeCheck::id).collect(Collectors.toSet());
        assertThat(ids).hasSameSizeAs(TradeChecks.all());
        assertThat(TradeChecks.all())
                .allSatisfy(check -> assertThat(TradeChecks.find(check.limit())).contains(check));
    }

    @Test
    void everyPartOfTheUnitHasItsLooks() {
        assertThat(DemoUnit.A.type().items())
                .allSatisfy(item -> assertThat(TradeChecks.of(item)).isNotEmpty());
        assertThat(List.of("bearing", "gear")).contains(DamageWords.of(Sort.RACE), DamageWords.of(Sort.GEAR));
    }
}
