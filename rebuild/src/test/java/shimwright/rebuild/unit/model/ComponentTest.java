package shimwright.rebuild.unit.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.assertThatIllegalStateException;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import shimwright.rebuild.unit.file.UnitFiles;

/** Groups of keys are there for the program alone; the file is flat. No source: it is our own form. */
class ComponentTest {
    record Outer(
            @Field("first") String first,
            Middle middle,
            @Field("last") int last) {}

    @FieldGroup
    record Middle(
            @Field("second") String secondOne,
            Inner inner,
            @Field("fourth") String fourth) {}

    @FieldGroup
    record Inner(@Field("third") double third) {}

    record Twice(@Field("first") String first, Again again) {}

    @FieldGroup
    record Again(@Field("the same") String first) {}

    private static final Outer OUTER = new Outer("a", new Middle("b", new Inner(3), "d"), 5);

    @Test
    void theKeysOfAGroupStandInItsPlace() {
        assertThat(Component.of(Outer.class).stream().map(Component::key))
                .containsExactly("first", "second_one", "third", "fourth", "last");
    }

    @Test
    void valuesAreReadAndMadeThroughTheGroups() {
        List<Object> values = List.of("a", "b", 3.0, "d", 5);
        assertThat(Component.of(Outer.class).stream().map(c -> c.in(OUTER)).toList())
                .isEqualTo(values);
        assertThat(Component.make(Outer.class, values.toArray())).isEqualTo(OUTER);
    }

    @Test
    void aKeyTwiceOrAValueTooFewIsABug() {
        assertThatIllegalStateException()
                .isThrownBy(() -> Component.of(Twice.class))
                .withMessageContaining("twice");
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Component.make(Outer.class, new Object[] {"a", "b", 3.0, "d"}));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> Component.make(Outer.class, new Object[] {"a", "b", 3.0, "d", 5, 6}));
    }

    /** Each short accessor that there is gives the key of its name, not a neighbour's of the same type. */
    @ParameterizedTest
    @ValueSource(classes = {UnitType.class, Step.class, Clearance.class})
    void theShortAccessorsGiveTheirKeys(Class<? extends Record> type) throws ReflectiveOperationException {
        UnitType unit =
                UnitFiles.read("example.yaml", UnitFiles.example()).outcome().orElseThrow();
        List<? extends Record> records =
                type == Step.class ? unit.steps() : type == Clearance.class ? unit.clearances() : List.of(unit);
        for (Record record : records) {
            for (Component key : Component.of(type)) {
                String name = key.path().get(key.path().size() - 1).getName();
                if (Stream.of(type.getMethods())
                        .noneMatch(method -> method.getName().equals(name))) {
                    continue;
                }
                assertThat(type.getMethod(name).invoke(record)).as(name).isEqualTo(key.in(record));
            }
        }
    }
}
