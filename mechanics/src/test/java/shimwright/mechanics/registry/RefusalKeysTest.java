package shimwright.mechanics.registry;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.mechanics.worksheet.Shape;
import shimwright.mechanics.worksheet.SheetField;
import shimwright.mechanics.worksheet.Worksheet;

/** A refusal names an input of its sheet by the key it has there, and a person reads it in the words of the page. */
class RefusalKeysTest {
    private static final Pattern ENTRY = Pattern.compile("\\[\\d+]");
    /** What no input takes, and what many refuse. */
    private static final List<String> BAD = List.of("%", "-1e300", "1e300", "-1", "0", "1e-9", "x: y: z; x: y: z");

    @TestFactory
    Stream<DynamicTest> aBadValueIsRefusedAtItsOwnField() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    for (SheetField field :
                            leaves(sheet.inputs(), "", new LinkedHashMap<>()).values()) {
                        assertThat(field.name()).as("names are keys").matches("[a-z][A-Za-z0-9]*");
                    }
                    for (Map.Entry<String, SheetField> leaf :
                            leaves(sheet.inputs(), "", new LinkedHashMap<>()).entrySet()) {
                        if (leaf.getValue().shape() == Shape.TEXT) {
                            continue;
                        }
                        assertThat(refusals(sheet, leaf.getKey(), "%"))
                                .as(leaf.getKey())
                                .isNotEmpty()
                                .allMatch(refusal -> refusal.within(leaf.getKey()))
                                .allMatch(refusal ->
                                        refusal.place().contains(leaf.getValue().label()));
                    }
                }));
    }

    @TestFactory
    Stream<DynamicTest> everyRefusalNamesAnInputOfItsSheetOrNone() {
        return Registry.all().stream()
                .map(sheet -> DynamicTest.dynamicTest(sheet.name(), () -> {
                    Set<String> keys = keys(sheet.inputs(), "", new HashSet<>());
                    List<Refusal> all = new ArrayList<>();
                    for (BadInputs.Bad bad : BadInputs.of(sheet)) {
                        all.addAll(sheet.answer(bad.given(), UnitSystem.METRIC).refusals());
                    }
                    for (String key :
                            leaves(sheet.inputs(), "", new LinkedHashMap<>()).keySet()) {
                        for (String text : BAD) {
                            all.addAll(refusals(sheet, key, text));
                        }
                        all.addAll(refusals(sheet, key, ""));
                    }
                    assertThat(all)
                            .filteredOn(refusal -> !refusal.fact().equals("there is no such input"))
                            .as("keys of the inputs: %s", keys)
                            .allMatch(refusal ->
                                    keys.contains(ENTRY.matcher(refusal.key()).replaceAll("")));
                    // a key of two words is not what the page says
                    assertThat(all)
                            .filteredOn(refusal -> refusal.key().matches(".*([a-z][A-Z]|\\.).*"))
                            .noneMatch(refusal -> refusal.place().contains(refusal.key()));
                }));
    }

    private static List<Refusal> refusals(Worksheet<?, ?> sheet, String key, String text) {
        Map<String, String> given = new LinkedHashMap<>(sheet.example());
        for (SheetField field : sheet.inputs()) {
            if (key.startsWith(field.name() + ".") && given.containsKey(field.name())) {
                field.parts(given.remove(field.name()))
                        .forEach((part, typed) -> given.put(field.name() + "." + part, typed));
            }
        }
        given.put(key, text);
        return sheet.answer(given, UnitSystem.METRIC).refusals();
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

    /** Every key there can be, without the numbers of entries; the empty one is of the sheet as a whole. */
    private static Set<String> keys(List<SheetField> fields, String prefix, Set<String> keys) {
        keys.add("");
        for (SheetField field : fields) {
            keys.add(prefix + field.name());
            SheetField leaf = field;
            while (leaf.shape() == Shape.LIST) {
                leaf = leaf.entry();
            }
            if (leaf.shape() == Shape.RECORD) {
                keys(leaf.children(), prefix + field.name() + ".", keys);
            }
        }
        return keys;
    }
}
