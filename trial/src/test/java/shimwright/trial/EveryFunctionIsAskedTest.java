package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.AccessTarget.MethodCallTarget;
import com.tngtech.archunit.core.domain.AccessTarget.MethodReferenceTarget;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaMethod;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * No function of the house is there for tests alone. Asked are functions by name, not components of records, which are
 * read by reflection as well.
 */
class EveryFunctionIsAskedTest {
    private static final String PUBLISHED = "held against published values, beside those of its kind that are asked";
    private static final String ONE_WAY_BACK = "reading what was written is tested with it";

    /** Functions that nothing asks, or whole classes of such, and why they stay. */
    private static final Map<String, String> REASONS = Map.ofEntries();

    private static final JavaClasses HOUSE = new ClassFileImporter()
            .importPackages("shimwright.mechanics", "shimwright.rebuild", "shimwright.bench", "gg.jte");

    @Test
    void everyFunctionIsAskedByTheHouseItself() {
        assertThat(unasked(HOUSE))
                .as("functions that nothing asks but tests: have them asked, or take them out")
                .filteredOn(name -> REASONS.keySet().stream().noneMatch(name::startsWith))
                .isEmpty();
    }

    @Test
    void noReasonIsLeftOver() {
        assertThat(REASONS.keySet())
                .filteredOn(why -> unasked(HOUSE).stream().noneMatch(name -> name.startsWith(why)))
                .isEmpty();
    }

    private static Set<String> unasked(JavaClasses house) {
        Set<String> asked = house.stream()
                .flatMap(type -> type.getAccessesFromSelf().stream())
                .filter(access -> access.getTarget() instanceof MethodCallTarget
                        || access.getTarget() instanceof MethodReferenceTarget)
                .filter(access -> !access.getOrigin().getFullName().equals(access.getTarget().getFullName()))
                .map(access -> key(access.getTargetOwner(), access.getTarget().getName()))
                .collect(Collectors.toSet());
        return house.stream()
                .filter(EveryFunctionIsAskedTest::isOurs)
                .flatMap(type -> type.getMethods().stream())
                .filter(EveryFunctionIsAskedTest::isWritten)
                .filter(method -> related(method.getOwner())
                        .noneMatch(type -> asked.contains(key(type, method.getName()))
                                || !isOurs(type) && declares(type, method.getName())))
                .map(method -> method.getOwner().getName().substring("shimwright.".length()) + "." + method.getName())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String key(JavaClass owner, String name) {
        return owner.getName() + "." + name;
    }

    private static boolean declares(JavaClass type, String name) {
        return type.getMethods().stream().anyMatch(method -> method.getName().equals(name));
    }

    private static boolean isOurs(JavaClass type) {
        return type.getName().startsWith("shimwright.") && !type.isAnnotation();
    }

    /** Written by us as a function: not made by the compiler, no component of a record, not where a program begins. */
    private static boolean isWritten(JavaMethod method) {
        JavaClass owner = method.getOwner();
        boolean made = method.getModifiers().contains(JavaModifier.SYNTHETIC)
                || method.getModifiers().contains(JavaModifier.BRIDGE)
                || owner.isEnum() && Set.of("values", "valueOf").contains(method.getName());
        boolean component = owner.isRecord()
                && method.getRawParameterTypes().isEmpty()
                && owner.tryGetField(method.getName()).isPresent();
        return !made && !component && !method.getName().equals("main");
    }

    /** The type with all above and below it. */
    private static Stream<JavaClass> related(JavaClass type) {
        return Stream.of(
                        Stream.of(type),
                        type.getAllRawSuperclasses().stream(),
                        type.getAllRawInterfaces().stream(),
                        type.getAllSubclasses().stream())
                .flatMap(types -> types);
    }
}
