package shimwright.trial;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.AccessTarget.CodeUnitCallTarget;
import com.tngtech.archunit.core.domain.JavaCall;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.time.Clock;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.NullMarked;

/**
 * The rules of the house as functions of its root package, so that the same rules can be asked of classes planted to
 * break them.
 */
final class HouseRules {
    /** What a topic of mechanics may know beside itself. */
    private static final List<String> BELOW_TOPICS =
            List.of("outcome", "quantity", "measure", "conformity", "working", "worksheet", "reference", "diagram");

    /** Calls whose answer differs from one run to the next. */
    private static final Set<String> UNREPEATABLE = Set.of(
            "java.util.UUID.randomUUID",
            "java.lang.System.currentTimeMillis",
            "java.lang.System.nanoTime",
            "java.lang.System.getenv",
            "java.lang.Math.random",
            "java.util.concurrent.ThreadLocalRandom.current");

    private final String mechanics;
    private final String rebuild;
    private final String bench;

    HouseRules(String root) {
        this.mechanics = root + ".mechanics";
        this.rebuild = root + ".rebuild";
        this.bench = root + ".bench";
    }

    /** Every rule under its name. */
    Map<String, ArchRule> all() {
        Map<String, ArchRule> rules = new LinkedHashMap<>();
        rules.put("mechanics knows neither rebuild nor bench", mechanicsKnowsNeitherRebuildNorBench());
        rules.put("rebuild does not know bench", rebuildDoesNotKnowBench());
        rules.put("the check of plans shares nothing with the search", thePlanCheckIsIndependent());
        rules.put("no plan is searched while an entry is decided", noPlanWhileDeciding());
        rules.put("mechanics uses the JDK and the numerics library", mechanicsUsesTheJdkAndNumerics());
        rules.put("topics do not know each other", topicsDoNotKnowEachOther());
        rules.put("below the topics nobody knows a topic", belowTheTopicsNobodyKnowsATopic());
        rules.put("no files, network or database below bench", noOutsideBelowBench());
        rules.put("no clock and no chance below bench", noClockAndNoChanceBelowBench());
        rules.put("only bench speaks to the terminal", onlyBenchSpeaksToTheTerminal());
        rules.put("web, command and print do not see each other", doorsDoNotSeeEachOther());
        rules.put("only Main and its helpers see the store", onlyMainSeesTheStore());
        rules.put("SQL stays in the store", sqlStaysInTheStore());
        rules.put("nobody sees Main", nobodySeesMain());
        rules.put("pages keep nothing themselves", pagesKeepNothingThemselves());
        rules.put("doors make no entries", doorsMakeNoEntries());
        rules.put("only the door leads elsewhere", onlyTheDoorLeadsElsewhere());
        rules.put("no package cycles", noPackageCycles());
        rules.put("every package says what may be null", everyPackageSaysWhatMayBeNull());
        rules.put("every type has a name of its own", everyTypeHasANameOfItsOwn());
        rules.put("no record of twenty values in a row", noRecordOfTwentyValues());
        return rules;
    }

    ArchRule mechanicsKnowsNeitherRebuildNorBench() {
        return noClasses()
                .that(in(mechanics))
                .should()
                .dependOnClassesThat(resideInAnyPackage(rebuild + "..", bench + ".."));
    }

    ArchRule rebuildDoesNotKnowBench() {
        return noClasses().that(in(rebuild)).should().dependOnClassesThat(in(bench));
    }

    ArchRule thePlanCheckIsIndependent() {
        return classes()
                .that(in(rebuild + ".plan.verify"))
                .should()
                .onlyDependOnClassesThat(resideInAnyPackage(
                        "java..", "org.jspecify..", rebuild + ".plan.verify..", rebuild + ".plan.model.."));
    }

    /** The writer waits for what an act and its rules say. */
    ArchRule noPlanWhileDeciding() {
        return noClasses()
                .that(resideInAnyPackage(rebuild + ".act..", rebuild + ".rules..", rebuild + ".workbench.."))
                .should()
                .callCodeUnitWhere(DescribedPredicate.describe(
                        "searches a plan",
                        (JavaCall<?> call) -> call.getTargetOwner().getName().equals(rebuild + ".plan.Planner")
                                && Set.of("lay", "onward")
                                        .contains(call.getTarget().getName())));
    }

    ArchRule mechanicsUsesTheJdkAndNumerics() {
        return classes()
                .that(in(mechanics))
                .should()
                .onlyDependOnClassesThat(
                        resideInAnyPackage("", "java..", "org.hipparchus..", "org.jspecify..", mechanics + ".."));
    }

    ArchRule topicsDoNotKnowEachOther() {
        return classes().that(areOfATopic()).should(new ArchCondition<>("know no other topic") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                item.getDirectDependenciesFromSelf().stream()
                        .filter(on -> areOfATopic().test(on.getTargetClass()))
                        .filter(on -> !part(on.getTargetClass()).equals(part(item)))
                        .forEach(on -> events.add(SimpleConditionEvent.violated(on, on.getDescription())));
            }
        });
    }

    ArchRule belowTheTopicsNobodyKnowsATopic() {
        return noClasses()
                .that(in(mechanics))
                .and(DescribedPredicate.not(areOfATopic()))
                .and()
                .resideOutsideOfPackage(mechanics + ".registry..")
                .should()
                .dependOnClassesThat(areOfATopic().or(in(mechanics + ".registry")));
    }

    ArchRule noOutsideBelowBench() {
        return noClasses()
                .that(belowBench())
                .should()
                .dependOnClassesThat(resideInAnyPackage(
                                "java.sql..", "javax.sql..", "java.nio.file..", "java.nio.channels..", "java.net..")
                        .or(DescribedPredicate.describe(
                                "are files of java.io",
                                c -> c.getPackageName().equals("java.io")
                                        && c.getSimpleName().startsWith("File"))));
    }

    ArchRule noClockAndNoChanceBelowBench() {
        return noClasses()
                .that(belowBench())
                .should()
                .callCodeUnitWhere(DescribedPredicate.describe(
                        "reads the clock, the environment or chance", HouseRules::isUnrepeatable));
    }

    private static boolean isUnrepeatable(JavaCall<?> call) {
        CodeUnitCallTarget target = call.getTarget();
        String owner = target.getOwner().getName();
        boolean now = owner.startsWith("java.time.") && target.getName().equals("now");
        boolean clock = owner.equals(Clock.class.getName());
        boolean seedless = owner.equals(Random.class.getName())
                && target.getName().equals("<init>")
                && target.getRawParameterTypes().isEmpty();
        return now || clock || seedless || UNREPEATABLE.contains(owner + "." + target.getName());
    }

    ArchRule onlyBenchSpeaksToTheTerminal() {
        return noClasses()
                .that(belowBench())
                .should()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class);
    }

    ArchRule doorsDoNotSeeEachOther() {
        return SlicesRuleDefinition.slices()
                .matching("%s.(web|command|print|store)..".formatted(bench))
                .should()
                .notDependOnEachOther();
    }

    ArchRule onlyMainSeesTheStore() {
        return noClasses()
                .that(in(bench))
                .and()
                .resideOutsideOfPackages(bench, bench + ".store..")
                .should()
                .dependOnClassesThat(in(bench + ".store"));
    }

    ArchRule sqlStaysInTheStore() {
        return noClasses()
                .that(in(bench))
                .and()
                .resideOutsideOfPackage(bench + ".store..")
                .should()
                .dependOnClassesThat(resideInAnyPackage("java.sql..", "javax.sql..", "org.sqlite.."));
    }

    ArchRule nobodySeesMain() {
        return noClasses()
                .that(in(bench))
                .and()
                .resideOutsideOfPackage(bench)
                .should()
                .dependOnClassesThat(resideInAPackage(bench));
    }

    /** A page may read what is kept, but neither reach the log nor draft an entry for it. */
    ArchRule pagesKeepNothingThemselves() {
        return noClasses()
                .that(in(bench + ".web"))
                .should()
                .dependOnClassesThat(DescribedPredicate.describe(
                        "are the log", c -> c.getName().equals(rebuild + ".job.JobLog")))
                .orShould()
                .callCodeUnitWhere(DescribedPredicate.describe(
                        "drafts an entry",
                        (JavaCall<?> call) -> call.getTarget().getName().equals("<init>")
                                && call.getTargetOwner().getName().equals(rebuild + ".job.Draft")));
    }

    ArchRule doorsMakeNoEntries() {
        return noClasses()
                .that(resideInAnyPackage(bench + ".web..", bench + ".demo..", bench + ".command..", bench + ".print.."))
                .should()
                .callCodeUnitWhere(DescribedPredicate.describe(
                        "makes an entry",
                        (JavaCall<?> call) -> call.getTarget().getName().equals("<init>")
                                && call.getTargetOwner().isAssignableTo(rebuild + ".job.Entry")));
    }

    /** An address made of what was asked may not fit into a header, or lead away. */
    ArchRule onlyTheDoorLeadsElsewhere() {
        return noClasses()
                .that(in(bench + ".web"))
                .and()
                .doNotHaveFullyQualifiedName(bench + ".web.kit.Door")
                .should()
                .callCodeUnitWhere(DescribedPredicate.describe(
                        "leads elsewhere",
                        (JavaCall<?> call) -> call.getTarget().getName().equals("redirect")));
    }

    ArchRule noPackageCycles() {
        return SlicesRuleDefinition.slices()
                .matching(mechanics.substring(0, mechanics.lastIndexOf('.')) + ".(**)")
                .should()
                .beFreeOfCycles();
    }

    ArchRule everyPackageSaysWhatMayBeNull() {
        return classes()
                .that(resideInAnyPackage(mechanics + "..", rebuild + "..", bench + ".."))
                .should(new ArchCondition<>("reside in a package that is @NullMarked") {
                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        boolean marked = item.getPackage().isAnnotatedWith(NullMarked.class);
                        events.add(new SimpleConditionEvent(
                                item, marked, item.getName() + " lies in no @NullMarked package"));
                    }
                });
    }

    /** A newcomer who hears a name finds one file; types inside another type go by that one's name as well. */
    ArchRule everyTypeHasANameOfItsOwn() {
        return classes()
                .that(resideInAnyPackage(mechanics + "..", rebuild + "..", bench + ".."))
                .and()
                .areTopLevelClasses()
                .and()
                .doNotHaveSimpleName("package-info")
                .should(new ArchCondition<>("have a name that no other type has") {
                    private Map<String, List<JavaClass>> byName = Map.of();

                    @Override
                    public void init(Collection<JavaClass> all) {
                        byName = all.stream().collect(Collectors.groupingBy(JavaClass::getSimpleName));
                    }

                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        List<JavaClass> same = byName.getOrDefault(item.getSimpleName(), List.of());
                        String names = same.stream().map(JavaClass::getName).collect(Collectors.joining(" and "));
                        events.add(new SimpleConditionEvent(item, same.size() == 1, names + " share a name"));
                    }
                });
    }

    /** So many values in a row are told apart by nobody; they go into groups with names. */
    ArchRule noRecordOfTwentyValues() {
        return classes()
                .that(resideInAnyPackage(mechanics + "..", rebuild + "..", bench + ".."))
                .and()
                .areRecords()
                .should(new ArchCondition<>("have fewer than twenty components") {
                    @Override
                    public void check(JavaClass item, ConditionEvents events) {
                        long values = item.getFields().stream()
                                .filter(field -> !field.getModifiers().contains(JavaModifier.STATIC))
                                .count();
                        events.add(new SimpleConditionEvent(
                                item, values < 20, "%s has %d values".formatted(item.getName(), values)));
                    }
                });
    }

    private DescribedPredicate<JavaClass> areOfATopic() {
        return DescribedPredicate.describe(
                "are of a topic of mechanics",
                c -> c.getPackageName().startsWith(mechanics + ".")
                        && !BELOW_TOPICS.contains(part(c))
                        && !part(c).equals("registry"));
    }

    /** The first part of a class's package below mechanics. */
    private String part(JavaClass c) {
        String rest = c.getPackageName().substring(mechanics.length() + 1);
        int dot = rest.indexOf('.');
        return dot < 0 ? rest : rest.substring(0, dot);
    }

    private DescribedPredicate<JavaClass> belowBench() {
        return resideInAnyPackage(mechanics + "..", rebuild + "..");
    }

    private static DescribedPredicate<JavaClass> in(String room) {
        return resideInAPackage(room + "..");
    }
}
