package shimwright.rebuild.complaint;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.regex.Pattern;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

/** The order to look against every order there is. */
class LookOrderTest {
    private static Cause cause(String id, double minutes, String after, double sees) {
        return new Cause(id, id, "look at " + id, minutes, after, sees, 1, Pattern.compile(id), Map.of());
    }

    private static Suspect suspect(Cause cause, double chance) {
        return new Suspect(cause.id(), cause.name(), cause, chance, List.of(), List.of());
    }

    private static double least(CauseTables tables, List<Suspect> left, List<Suspect> so) {
        if (left.isEmpty()) {
            return LookCost.mean(tables, so);
        }
        double least = Double.POSITIVE_INFINITY;
        for (Suspect next : left) {
            List<Suspect> rest = new ArrayList<>(left);
            rest.remove(next);
            List<Suspect> longer = new ArrayList<>(so);
            longer.add(next);
            least = Math.min(least, least(tables, rest, longer));
        }
        return least;
    }

    @Property(tries = 200)
    void noOrderFindsItSooner(@ForAll long seed) {
        Random random = new Random(seed);
        List<StripDepth> openings = new ArrayList<>(List.of(new StripDepth("o0", "o0", 0, "")));
        for (int i = 1; i < 5; i++) {
            openings.add(new StripDepth("o" + i, "o" + i, random.nextInt(60), "o" + random.nextInt(i)));
        }
        List<Cause> causes = new ArrayList<>();
        List<Suspect> suspects = new ArrayList<>();
        double left = 1;
        for (int i = 0; i < 5; i++) {
            Cause one =
                    cause("c" + i, 1 + random.nextInt(40), "o" + random.nextInt(5), 0.3 + 0.7 * random.nextDouble());
            double chance = left * random.nextDouble();
            left -= chance;
            causes.add(one);
            suspects.add(suspect(one, chance));
        }
        CauseTables tables = new CauseTables(List.of(), openings, causes);
        List<LookOrder.Look> looks = LookOrder.of(tables, Set.of(), suspects);
        List<Suspect> order =
                looks.stream().flatMap(look -> look.suspects().stream()).toList();
        assertThat(order).containsExactlyInAnyOrderElementsOf(suspects);
        assertThat(LookCost.mean(tables, order)).isCloseTo(least(tables, suspects, List.of()), within(1e-9));
        assertThat(looks).allSatisfy(look -> assertThat(look.minutes()).isGreaterThan(0));
    }

    /**
     * Without openings it is the rule of weight over time: W. E. Smith, Various optimizers for single-stage production, Naval Research
     * Logistics Quarterly 3 (1956), the rule from memory.
     */
    @Test
    void withoutOpeningsTheLikeliestAMinuteComesFirst() {
        Cause slow = cause("slow", 30, "o", 1);
        Cause quick = cause("quick", 5, "o", 1);
        CauseTables tables = new CauseTables(List.of(), List.of(new StripDepth("o", "o", 0, "")), List.of(slow, quick));
        assertThat(LookOrder.of(tables, Set.of(), List.of(suspect(slow, 0.6), suspect(quick, 0.2))))
                .extracting(look -> look.suspects().get(0).id())
                .containsExactly("quick", "slow");
    }

    @Test
    void whatIsOpenCostsNothingMore() {
        Cause deep = cause("deep", 10, "b", 1);
        CauseTables tables = new CauseTables(
                List.of(), List.of(new StripDepth("a", "a", 50, ""), new StripDepth("b", "b", 40, "a")), List.of(deep));
        List<Suspect> one = List.of(suspect(deep, 0.5));
        assertThat(LookOrder.of(tables, Set.of(), one).get(0).minutes()).isEqualTo(100);
        assertThat(LookOrder.of(tables, Set.of("a"), one).get(0).minutes()).isEqualTo(50);
        assertThat(LookOrder.of(tables, Set.of("b"), one).get(0).minutes()).isEqualTo(10);
        assertThat(LookOrder.of(tables, Set.of("b"), one).get(0).opens()).isEmpty();
    }

    /** Play is read while the shafts lie in their bearings, though the likeliest is deeper in. */
    @Test
    void whatAnOpeningEndsIsLookedAtBeforeIt() {
        Cause play = cause("play", 15, "a", 1);
        Cause deep = cause("deep", 5, "b", 1);
        List<StripDepth> openings =
                List.of(new StripDepth("a", "a", 5, ""), new StripDepth("b", "b", 10, "a", List.of("play")));
        CauseTables tables = new CauseTables(List.of(), openings, List.of(deep, play));
        List<Suspect> both = List.of(suspect(deep, 0.9), suspect(play, 0.05));
        assertThat(first(tables, Set.of(), both)).isEqualTo("play");
        assertThat(LookOrder.of(tables, Set.of(), both))
                .extracting(LookOrder.Look::minutes)
                .containsExactly(20.0, 15.0);
        // too unlikely to be worth it, or too late
        assertThat(first(tables, Set.of(), List.of(suspect(deep, 0.9), suspect(play, 0.01))))
                .isEqualTo("deep");
        assertThat(first(tables, Set.of("b"), both)).isEqualTo("deep");
    }

    private static String first(CauseTables tables, Set<String> there, List<Suspect> suspects) {
        return LookOrder.of(tables, there, suspects).get(0).suspects().get(0).id();
    }
}
