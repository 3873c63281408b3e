package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;
import shimwright.rebuild.unit.fault.ProblemCollector;
import shimwright.rebuild.unit.model.Component;
import shimwright.rebuild.unit.model.UnitType;
import shimwright.rebuild.unit.model.VariantFilter;

/** A text is read once for all stages of a save, and a variant is the file itself but for what is taken out. */
class ReadLatelyTest {
    @Test
    void theSameTextIsReadOnceAndAnotherAnew() {
        String text = UnitFiles.starter();
        UnitType once = UnitFiles.read("one.yaml", text).outcome().orElseThrow();
        assertThat(UnitFiles.read("one.yaml", text).outcome().orElseThrow()).isSameAs(once);
        assertThat(UnitFiles.read("one.yaml", text + "\n").outcome().orElseThrow())
                .isNotSameAs(once)
                .isEqualTo(once);
        for (int n = 0; n < 10; n++) {
            UnitFiles.read("other.yaml", text + "\n".repeat(n + 2));
        }
        assertThat(UnitFiles.read("one.yaml", text).outcome().orElseThrow())
                .isNotSameAs(once)
                .isEqualTo(once);
    }

    @Test
    void aFaultIsToldUnderTheNameOfItsFileEachTime() {
        String broken = UnitFiles.starter().replace("maker:", "moker:");
        assertThat(UnitFiles.read("one.yaml", broken).problems().get(0).place()).contains("one.yaml");
        assertThat(UnitFiles.read("two.yaml", broken).problems().get(0).place()).contains("two.yaml");
    }

    @Test
    void aTreeIsWhatItsTextIsReadAs() {
        for (String text : List.of(UnitFiles.example(), UnitFiles.starter())) {
            UnitType type = UnitFiles.read("one.yaml", text).outcome().orElseThrow();
            Node read = YamlTree.read(UnitFiles.write(type), new ProblemCollector("w.yaml"))
                    .orElseThrow();
            assertThat(UnitTree.of(type)).isEqualTo(plain(read));
            assertThat(UnitTree.read("tree.yaml", UnitTree.of(type)).outcome().orElseThrow())
                    .isEqualTo(type);
        }
    }

    private static Object plain(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<String, Object> map = new LinkedHashMap<>();
            mapping.getValue()
                    .forEach(tuple ->
                            map.put(((ScalarNode) tuple.getKeyNode()).getValue(), plain(tuple.getValueNode())));
            return map;
        }
        return node instanceof SequenceNode sequence
                ? sequence.getValue().stream().map(ReadLatelyTest::plain).toList()
                : ((ScalarNode) node).getValue();
    }

    /** What was judged as a tree is not judged again as a text; what differs from it is. */
    @Test
    void aTextIsJudgedUnlessTheSameWasJustNow() {
        UnitType type =
                UnitFiles.read("one.yaml", UnitFiles.example()).outcome().orElseThrow();
        Map<String, Object> tree = UnitTree.of(type);
        tree.put("mass", "41 kg");
        UnitType changed = UnitTree.read("tree.yaml", tree).outcome().orElseThrow();
        assertThat(UnitFiles.read("text.yaml", UnitFiles.write(changed)).problems())
                .isEmpty();
        String heavy = UnitFiles.write(Component.with(changed, "mass", 9e9));
        assertThat(UnitFiles.read("text.yaml", heavy).problems()).isNotEmpty();
    }

    @Test
    void whatLiesTooDeepIsRefused() {
        Object deep = "x";
        for (int n = 0; n < 60; n++) {
            deep = List.of(deep);
        }
        assertThat(UnitTree.read("deep.yaml", Map.of("items", deep))
                        .problems()
                        .get(0)
                        .fact())
                .contains("deep");
    }

    @Test
    void whatAVariantHasInFullIsTheSame() {
        UnitType type =
                UnitFiles.read("one.yaml", UnitFiles.example()).outcome().orElseThrow();
        UnitType variant =
                VariantFilter.filter(type, type.variants().keySet().iterator().next());
        assertThat(variant.materials()).isSameAs(type.materials());
        assertThat(variant.steps()).hasSizeLessThanOrEqualTo(type.steps().size());
    }
}
