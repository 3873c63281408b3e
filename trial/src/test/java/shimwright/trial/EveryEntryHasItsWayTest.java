package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.util.Arrays;
import java.util.HashSet;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import shimwright.rebuild.act.Act;
import shimwright.rebuild.act.ActInput;
import shimwright.rebuild.act.Acts;
import shimwright.rebuild.act.MakesEntries;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.record.History;
import shimwright.rebuild.rules.Rules;
import shimwright.rebuild.rules.ShopRules;

/** Each type of entry has an act, a rule, a door on a page and a line in the record; one that lacks one of them fails the build. */
class EveryEntryHasItsWayTest {
    private static final JavaClasses PAGES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("shimwright.bench.web");

    static Stream<Class<?>> entries() {
        return Stream.concat(
                Arrays.stream(Entry.OfJob.class.getPermittedSubclasses()),
                Arrays.stream(Entry.OfShop.class.getPermittedSubclasses()));
    }

    static Stream<Class<? extends Act>> acts() {
        return Acts.byName().values().stream();
    }

    private static Set<Class<?>> made() {
        Set<Class<?>> made = new HashSet<>();
        acts().forEach(act ->
                made.addAll(Set.of(act.getAnnotation(MakesEntries.class).value())));
        return made;
    }

    @ParameterizedTest
    @MethodSource("entries")
    void hasAnActARuleAndALine(Class<?> entry) {
        assertThat(made()).as("an act that makes it").contains(entry);
        if (Entry.OfJob.class.isAssignableFrom(entry)) {
            assertThat(Rules.covered()).as("a rule").contains(entry.asSubclass(Entry.OfJob.class));
            assertThat(History.covered()).as("a line in the record").contains(entry.asSubclass(Entry.OfJob.class));
        } else {
            assertThat(ShopRules.covered()).as("a rule").contains(entry.asSubclass(Entry.OfShop.class));
        }
    }

    @ParameterizedTest
    @MethodSource("acts")
    void hasADoorOnAPage(Class<? extends Act> act) {
        Set<String> doors = PAGES.stream()
                .filter(page -> page.getSimpleName().endsWith("Pages"))
                .filter(page -> page.getDirectDependenciesFromSelf().stream()
                        .anyMatch(on -> on.getTargetClass().isEquivalentTo(act)))
                .map(JavaClass::getSimpleName)
                .collect(Collectors.toSet());
        assertThat(doors).as("pages that do " + act.getSimpleName()).isNotEmpty();
    }

    @ParameterizedTest
    @MethodSource("acts")
    void saysWhatEachOfItsInputsIs(Class<? extends Act> act) {
        assertThat(act.getRecordComponents())
                .allSatisfy(
                        input -> assertThat(input.getAnnotation(ActInput.class)).isNotNull());
    }
}
