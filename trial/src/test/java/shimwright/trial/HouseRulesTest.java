package shimwright.trial;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchRule;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The house keeps its rules, and each rule is seen to find the class that was planted to break it. */
class HouseRulesTest {
    private static final JavaClasses HOUSE =
            new ClassFileImporter().importPackages("shimwright.mechanics", "shimwright.rebuild", "shimwright.bench");
    private static final JavaClasses PLANTED = new ClassFileImporter().importPackages("shimwright.planted");

    /** The class that breaks each rule. */
    private static final Map<String, String> CULPRITS = Map.ofEntries(
            Map.entry("mechanics knows neither rebuild nor bench", "axial.KnowsRebuild"),
            Map.entry("rebuild does not know bench", "job.KnowsBench"),
            Map.entry("the check of plans shares nothing with the search", "plan.verify.KnowsTheSearch"),
            Map.entry("no plan is searched while an entry is decided", "rules.SearchesAPlan"),
            Map.entry("mechanics uses the JDK and the numerics library", "axial.UsesALibrary"),
            Map.entry("topics do not know each other", "axial.KnowsAnotherTopic"),
            Map.entry("below the topics nobody knows a topic", "quantity.KnowsATopic"),
            Map.entry("no files, network or database below bench", "job.ReadsAFile"),
            Map.entry("no clock and no chance below bench", "job.TossesACoin"),
            Map.entry("only bench speaks to the terminal", "job.Speaks"),
            Map.entry("web, command and print do not see each other", "web.Prints"),
            Map.entry("only Main and its helpers see the store", "web.OpensTheStore"),
            Map.entry("SQL stays in the store", "web.AsksTheDatabase"),
            Map.entry("nobody sees Main", "web.StartsTheProgram"),
            Map.entry("pages keep nothing themselves", "web.KeepsItself"),
            Map.entry("doors make no entries", "web.MakesAnEntry"),
            Map.entry("only the door leads elsewhere", "web.LeadsAway"),
            Map.entry("no package cycles", "axial.KnowsAnotherTopic"),
            Map.entry("every package says what may be null", "web.Prints"),
            Map.entry("every type has a name of its own", "axial.Twice"),
            Map.entry("no record of twenty values in a row", "axial.TwentyInARow"));

    static Stream<Arguments> rulesOfTheHouse() {
        return new HouseRules("shimwright").all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    static Stream<Arguments> rulesOfThePlanted() {
        return new HouseRules("shimwright.planted")
                .all().entrySet().stream().map(e -> Arguments.of(e.getKey(), e.getValue()));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rulesOfTheHouse")
    void theHouseKeepsIt(String name, ArchRule rule) {
        rule.check(HOUSE);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("rulesOfThePlanted")
    void itFindsTheClassThatBreaksIt(String name, ArchRule rule) {
        assertThat(CULPRITS).containsKey(name);
        assertThat(String.join("\n", rule.evaluate(PLANTED).getFailureReport().getDetails()))
                .contains(CULPRITS.get(name));
    }

    @ParameterizedTest
    @MethodSource("rooms")
    void everyRoomHasClasses(String room) {
        assertThat(HOUSE).anyMatch(c -> c.getPackageName().equals("shimwright." + room));
    }

    static Stream<String> rooms() {
        return Stream.of(
                "mechanics.axial.reading",
                "mechanics.axial.stack",
                "mechanics.axial.shim",
                "mechanics.axial.bevel",
                "mechanics.decision",
                "mechanics.quantity",
                "mechanics.registry",
                "rebuild.act",
                "rebuild.workbench",
                "rebuild.job",
                "rebuild.unit.model",
                "rebuild.unit.fault",
                "rebuild.unit.sense",
                "rebuild.unit.file",
                "bench",
                "bench.desk",
                "bench.demo",
                "bench.sheet",
                "bench.text",
                "bench.picture.svg",
                "bench.picture.plot",
                "bench.picture.plan",
                "bench.picture.section",
                "bench.picture.photo",
                "bench.web",
                "bench.web.api",
                "bench.web.clearance",
                "bench.web.guard",
                "bench.web.job",
                "bench.web.kit",
                "bench.web.pair",
                "bench.web.plan",
                "bench.web.record",
                "bench.web.sheet",
                "bench.web.shop",
                "bench.command",
                "bench.print",
                "bench.store");
    }
}
