package shimwright.rebuild.unit.file;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.snakeyaml.engine.v2.api.Load;
import org.snakeyaml.engine.v2.api.LoadSettings;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** The published schema against an independent validator (json-schema-validator 3.0.6, draft 2020-12). */
class UnitSchemaTest {
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(UnitSchema.json());
    private static final Path FILE =
            Path.of(System.getProperty("shimwright.root", "."), "docs", "unit-file.schema.json");

    static List<String> faults(String yaml) {
        Object loaded = new Load(LoadSettings.builder().build()).loadFromString(yaml);
        JsonNode node = JsonMapper.shared().valueToTree(loaded);
        return SCHEMA.validate(node).stream().map(Object::toString).toList();
    }

    @Test
    void theFileInTheDocsIsUpToDate() throws IOException {
        if (Boolean.getBoolean("shimwright.write")) {
            Files.writeString(FILE, UnitSchema.json());
        }
        assertThat(Files.readString(FILE))
                .as("docs/unit-file.schema.json is old; run this test once with -Dshimwright.write=true")
                .isEqualTo(UnitSchema.json());
    }

    @Test
    void acceptsWhatTheReaderAccepts() {
        assertThat(faults(UnitFiles.example())).isEmpty();
        assertThat(faults(UnitFiles.starter())).isEmpty();
        assertThat(faults(UnitFileTexts.with("lower: 0.02 mm", "lower: 0.50 mm (0.0197 in)")))
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            maker: Maker    | makr: Maker      | maker
            lower: 0.02 mm  | lower: 0.02      | lower
            lower: 0.02 mm  | lower: 0.02 0.03 mm | lower
            sense: end_play | sense: end play  | sense
            indicators: 2   | indicators: two  | indicators
            effect: -1,     | effect: closes,  | effect
            along: 0 17 mm  | along: 0 17      | along
            renew: true     | renew: maybe     | renew
            format: shimwright-unit 1 | format: shimwright-unit 2 | format
            tools: [DI, TRQ] | tools: DI       | tools
            """)
    void findsFaultsOfForm(String piece, String fresh, String key) {
        assertThat(faults(UnitFileTexts.with(piece, fresh)))
                .anySatisfy(f -> assertThat(f).contains(key));
    }

    @Test
    void theExamplePointsToIt() {
        String first = UnitFiles.example().lines().findFirst().orElseThrow();
        assertThat(first).startsWith("# yaml-language-server: $schema=");
        Path example = Path.of("rebuild/src/main/resources/units/ambleholt-l5-74.yaml");
        Path pointed =
                example.resolveSibling(first.substring(first.indexOf('=') + 1)).normalize();
        assertThat(pointed).isEqualTo(Path.of("docs/unit-file.schema.json"));
    }
}
