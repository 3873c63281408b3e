package shimwright.rebuild.complaint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import shimwright.rebuild.demo.DemoUnit;
import shimwright.rebuild.job.Entry.Seen;
import shimwright.rebuild.unit.model.UnitType;

class RankingTest {
    private static final CauseTables TABLES = CauseTables.shipped();
    private static final UnitType TYPE = DemoUnit.type();

    private static Evidence said(Map<String, String> answers, String... symptoms) {
        return new Evidence(answers, Set.of(symptoms), Map.of(), Set.of(), List.of());
    }

    private static CaseBefore had(String cause) {
        return new CaseBefore("V-0001", Map.of(cause, cause), CaseBefore.How.FOUND);
    }

    private static double chance(List<Suspect> suspects, String id) {
        return suspects.stream()
                .filter(suspect -> suspect.id().equals(id))
                .mapToDouble(Suspect::chance)
                .sum();
    }

    @Property(tries = 300)
    void chancesAddUpToOneAndStandInOrder(@ForAll long seed) {
        Random random = new Random(seed);
        Map<String, String> answers = new LinkedHashMap<>();
        for (CheckQuestion question : TABLES.questions()) {
            List<String> all = List.copyOf(question.answers().keySet());
            if (random.nextBoolean()) {
                answers.put(question.id(), all.get(random.nextInt(all.size())));
            }
        }
        String symptom = "Y" + (1 + random.nextInt(15));
        Evidence evidence = new Evidence(
                answers,
                random.nextBoolean() ? Set.of(symptom) : Set.of(),
                Map.of("ring", Seen.IN_ORDER),
                Set.of("blocker ring 3"),
                Collections.nCopies(random.nextInt(5), had("cone")));
        List<Suspect> suspects = Ranking.of(TABLES, TYPE, evidence);
        assertThat(suspects.stream().mapToDouble(Suspect::chance).sum()).isCloseTo(1, within(1e-9));
        for (int i = 1; i < suspects.size(); i++) {
            assertThat(suspects.get(i).chance())
                    .isLessThanOrEqualTo(suspects.get(i - 1).chance());
        }
    }

    /** Two causes with shares 3 and 1 and chances 1/4 and 3/4 of the answer are as likely as each other (T. Bayes). */
    @Test
    void sharesAndAnswersAreWeighedByTheRuleOfBayes() {
        CheckQuestion question = new CheckQuestion("q", "?", Map.of("a", "a", "b", "b"), Map.of());
        CauseTables two = new CauseTables(
                List.of(question),
                List.of(new StripDepth("o", "o", 0, "")),
                List.of(cause("x", 3, Map.of("a", 1.0, "b", 3.0)), cause("y", 1, Map.of("a", 3.0, "b", 1.0))));
        List<Suspect> suspects = Ranking.of(two, Evidence.answers(Map.of("q", "a")));
        assertThat(suspects).allSatisfy(s -> assertThat(s.chance()).isCloseTo(0.5, within(1e-12)));
        assertThat(TellingQuestion.next(two, Ranking.of(two, Evidence.answers(Map.of())), Set.of("q")))
                .isEmpty();
    }

    private static Cause cause(String id, double share, Map<String, Double> weights) {
        return new Cause(id, id, "look", 5, "o", 0.9, share, java.util.regex.Pattern.compile(id), Map.of("q", weights));
    }

    /**
     * What an experienced ear says of plain cases; common practice, no source.
     */
    @Test
    void plainCasesComeOutAsAMechanicWouldSay() {
        Map<String, Map<String, String>> plain = new LinkedHashMap<>();
        plain.put("ring", Map.of("kind", "crunch", "gear", "one", "haste", "fast", "oil", "brass"));
        plain.put("clutch_drag", Map.of("kind", "crunch", "gear", "reverse", "haste", "still"));
        plain.put("wheel_bearing", Map.of("kind", "growl", "follows", "road", "bends", "yes", "oil", "good"));
        plain.put("input_bearing", Map.of("kind", "growl", "gear", "neutral", "clutch", "stops"));
        plain.put("release_bearing", Map.of("kind", "growl", "clutch", "only"));
        plain.put("output_seal", Map.of("kind", "leak", "drips", "output"));
        plain.put("counter_bearing", Map.of("kind", "growl", "gear", "indirect", "magnet", "slivers"));
        plain.put("damper", Map.of("kind", "rattle", "gear", "neutral", "clutch", "stops"));
        plain.put("interlock", Map.of("kind", "locked"));
        plain.put("mesh", Map.of("kind", "whine", "load", "drive", "follows", "road", "clutch", "same"));
        plain.forEach((cause, answers) -> assertThat(
                        Ranking.of(TABLES, Evidence.answers(answers)).get(0).id())
                .isEqualTo(cause));
    }

    @Test
    void aSymptomOfTheUnitBringsItsOwnCausesInThePlaceOfTheGeneralOnes() {
        List<Suspect> suspects = Ranking.of(TABLES, TYPE, said(Map.of("kind", "crunch"), "Y8"));
        assertThat(suspects.get(0).name()).isEqualTo("blocker ring 3");
        assertThat(suspects)
                .extracting(Suspect::id)
                .doesNotContain("ring", "cone")
                .contains("struts");
    }

    @Test
    void looksReadingsAndEarlierBoxesMoveTheChances() {
        Map<String, String> crunch = Map.of("kind", "crunch", "gear", "one");
        double before = chance(Ranking.of(TABLES, said(crunch)), "ring");
        assertThat(chance(
                        Ranking.of(
                                TABLES,
                                new Evidence(crunch, Set.of(), Map.of("ring", Seen.IN_ORDER), Set.of(), List.of())),
                        "ring"))
                .isLessThan(before / 3);
        List<Suspect> found = Ranking.of(
                TABLES, new Evidence(crunch, Set.of(), Map.of("dog_teeth", Seen.FOUND), Set.of(), List.of()));
        assertThat(found.get(0).id()).isEqualTo("dog_teeth");
        assertThat(found.get(0).pro()).contains("it was found");
        List<Suspect> outside = Ranking.of(
                TABLES,
                new Evidence(
                        crunch,
                        Set.of(),
                        Map.of(),
                        Set.of("gap of blocker ring 3"),
                        List.of(had("ring"), had("ring"))));
        assertThat(chance(outside, "ring")).isGreaterThan(before);
        assertThat(outside.get(0).pro())
                .contains("gap of blocker ring 3 is outside its limit", "it was so in 2 of 2 cases before (V-0001)");
        assertThat(chance(
                        Ranking.of(
                                TABLES,
                                new Evidence(crunch, Set.of(), Map.of("ring", Seen.CANNOT_TELL), Set.of(), List.of())),
                        "ring"))
                .isEqualTo(before);
    }
}
