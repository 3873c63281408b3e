package shimwright.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URLEncoder;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.registry.Registry;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** The page of a worksheet marks the field of a bad value, and no other. */
class SheetMarksTest {
    private static DemoBench bench;

    @BeforeAll
    static void start() {
        bench = DemoBench.fresh();
    }

    @AfterAll
    static void stop() {
        bench.close();
    }

    @TestFactory
    Stream<DynamicTest> exactlyTheFieldOfABadValueIsMarked() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    for (Map.Entry<String, SheetField> leaf :
                            leaves(sheet.inputs(), "", new LinkedHashMap<>()).entrySet()) {
                        if (leaf.getValue().shape() != Shape.TEXT) {
                            Document page = bench.page("/sheets/" + sheet.name() + "?" + asked(sheet, leaf.getKey()));
                            List<String> marked = page.select(".slot.wrong").stream()
                                    .map(slot -> slot.select("[name]").attr("name"))
                                    .toList();
                            assertThat(marked).as(leaf.getKey()).containsExactly(leaf.getKey());
                            assertThat(page.select(".slot.wrong .fault").text())
                                    .as("its own label stands above it: %s", leaf.getKey())
                                    .doesNotContain("✗ " + leaf.getValue().label() + ":")
                                    .doesNotContain(leaf.getKey() + "=");
                        }
                    }
                }));
    }

    private static String asked(Worksheet<?, ?> sheet, String key) {
        Map<String, String> given = new LinkedHashMap<>(sheet.example());
        for (SheetField field : sheet.inputs()) {
            if (key.startsWith(field.name() + ".") && given.containsKey(field.name())) {
                field.parts(given.remove(field.name()))
                        .forEach((part, text) -> given.put(field.name() + "." + part, text));
            }
        }
        given.put(key, "%");
        return given.entrySet().stream()
                .map(one -> one.getKey() + "=" + URLEncoder.encode(one.getValue(), StandardCharsets.UTF_8))
                .collect(Collectors.joining("&"));
    }

    private static Map<String, SheetField> leaves(
            List<SheetField> fields, String prefix, Map<String, SheetField> leaves) {
        for (SheetField field : fields) {
            if (field.shape() == Shape.RECORD) {
                leaves(field.children(), prefix + field.name() + ".", leaves);
            } else {
                leaves.put(prefix + field.name(), field);
            }
        }
        return leaves;
    }
}
