package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
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
    void whatIsWrittenIsItsOwnTree() {
        UnitType type =
                UnitFiles.read("one.yaml", UnitFiles.example()).outcome().orElseThrow();
        String text = UnitFiles.write(type);
        UnitType written = UnitFiles.readWritten("written.yaml", text).outcome().orElseThrow();
        assertThat(UnitTree.of(written)).isEqualTo(UnitTree.of(type));
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
