package shimwright.rebuild.unit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import org.junit.jupiter.api.Test;

class DemoUnitTest {
    static UnitFiles.Result demo() throws IOException {
        try (InputStream in = DemoUnitTest.class.getResourceAsStream("/units/ambleholt-l5-74.yaml")) {
            return UnitFiles.read("ambleholt-l5-74.yaml", in.readAllBytes());
        }
    }

    @Test
    void readsWithoutAProblem() throws IOException {
        assertThat(demo().problems().stream().map(Problem::sentence)).isEmpty();
        Unit unit = demo().outcome().orElseThrow().resolve("A");
        assertThat(unit.type().steps()).hasSize(89);
        assertThat(unit.variantName()).isEqualTo("L5-74A");
    }
}
