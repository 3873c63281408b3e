package shimwright.mechanics.reference;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

class TableTest {
    @Test
    void aTableIsReadByColumnName() {
        Table table = Table.read("iso-286-1-2010/table-1.csv");
        assertThat(table.name()).startsWith("ISO 286-1:2010 Table 1");
        assertThat(table.unit()).startsWith("µm");
        assertThat(table.typed()).isNotEmpty();
        assertThat(table.checked()).isNotEmpty();
        assertThat(table.rows().get(4).number("7")).isEqualTo(21);
        assertThat(table.rows().get(4).has("15")).isFalse();
    }

    @Test
    void aMissingFileOrCellIsABug() {
        assertThatThrownBy(() -> Table.read("none/none.csv")).hasMessageContaining("none/none.csv");
        assertThatThrownBy(() -> new Table.Row(Map.of("a", "1")).number("b")).hasMessageContaining("no cell b");
    }
}
