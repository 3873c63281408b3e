package shimwright.rebuild.complaint;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;

/**
 * Complaints drawn from a world whose tables differ from those that ship: each share and each weight is, with a chance of one in five,
 * up to three times as large or as small. The person answers what the complaint is and seven in ten of the questions that go with it.
 */
class SimulatedComplaintsTest {
    private static final CauseTables TABLES = CauseTables.shipped();
    private static final int COMPLAINTS = 2_000;
    private static final double DISTURBED = 0.2;
    private static final double ANSWERED = 0.7;

    private static final long SEED = 20261130;

    private Random random = new Random(SEED);

    private double disturbed(double value) {
        return random.nextDouble() < DISTURBED ? value * Math.pow(3, 2 * random.nextDouble() - 1) : value;
    }

    private Cause disturbed(Cause cause) {
        Map<String, Map<String, Double>> tells = new LinkedHashMap<>();
        for (CheckQuestion question : TABLES.questions()) {
            Map<String, Double> weights = new LinkedHashMap<>();
            question.answers()
                    .keySet()
                    .forEach(answer -> weights.put(answer, disturbed(cause.chance(question, answer))));
            tells.put(question.id(), weights);
        }
        return new Cause(
                cause.id(),
                cause.name(),
                cause.look(),
                cause.minutes(),
                cause.after(),
                cause.sees(),
                disturbed(cause.share()),
                cause.words(),
                tells);
    }

    private <T> T drawn(List<T> of, java.util.function.ToDoubleFunction<T> weight) {
        double at = random.nextDouble() * of.stream().mapToDouble(weight).sum();
        for (T one : of) {
            at -= weight.applyAsDouble(one);
            if (at < 0) {
                return one;
            }
        }
        return of.get(of.size() - 1);
    }

    private Map<String, String> answers(Cause truth) {
        Map<String, String> answers = new LinkedHashMap<>();
        for (CheckQuestion question : TABLES.questions()) {
            String kind = answers.getOrDefault("kind", "");
            boolean asked = switch (question.id()) {
                case "kind" -> true;
                case "drips" -> kind.equals("leak");
                case "haste" -> kind.equals("crunch") || kind.equals("stiff");
                default -> random.nextDouble() < ANSWERED;
            };
            if (asked) {
                answers.put(
                        question.id(),
                        drawn(List.copyOf(question.answers().keySet()), answer -> truth.chance(question, answer)));
            }
        }
        return answers;
    }

    /** Minutes until a look finds it; a look that misses is taken again after all others. */
    private double until(List<Suspect> order, Cause truth, boolean shown) {
        List<Suspect> one = order.stream()
                .map(suspect -> new Suspect(
                        suspect.id(),
                        suspect.name(),
                        suspect.cause(),
                        suspect.id().equals(truth.id()) ? 1 / (shown ? truth.sees() : 1) : 0,
                        List.of(),
                        List.of()))
                .toList();
        return shown ? LookCost.mean(TABLES, upTo(one, truth)) : LookCost.mean(TABLES, one);
    }

    private static List<Suspect> upTo(List<Suspect> order, Cause truth) {
        List<Suspect> until = new ArrayList<>();
        for (Suspect suspect : order) {
            until.add(suspect);
            if (suspect.id().equals(truth.id())) {
                break;
            }
        }
        return until;
    }

    /** Of so many complaints: first, among the first three, mean minutes by our order, by the order of the list, by the likeliest first. */
    private record Figures(int first, int among, int ours, int file, int likeliest) {}

    private Figures figures(long seed) {
        random = new Random(seed);
        List<Cause> world = TABLES.causes().stream().map(this::disturbed).toList();
        int first = 0;
        int among = 0;
        double ours = 0;
        double file = 0;
        double likeliest = 0;
        for (int i = 0; i < COMPLAINTS; i++) {
            Cause truth = drawn(world, Cause::share);
            List<Suspect> ranked = Ranking.of(TABLES, Evidence.answers(answers(truth)));
            List<String> ids = ranked.stream().map(Suspect::id).toList();
            int place = ids.indexOf(truth.id());
            first += place == 0 ? 1 : 0;
            among += place < 3 ? 1 : 0;
            List<Suspect> order = LookOrder.of(TABLES, Set.of(), ranked).stream()
                    .flatMap(look -> look.suspects().stream())
                    .toList();
            List<Suspect> asInFile = TABLES.causes().stream()
                    .map(cause -> ranked.get(ids.indexOf(cause.id())))
                    .toList();
            boolean shown = random.nextDouble() < truth.sees();
            ours += until(order, truth, shown);
            file += until(asInFile, truth, shown);
            likeliest += until(ranked, truth, shown);
        }
        return new Figures(first, among, minutes(ours), minutes(file), minutes(likeliest));
    }

    private static void holds(Figures figures) {
        assertThat(figures.among()).isGreaterThanOrEqualTo(COMPLAINTS * 80 / 100);
        assertThat(figures.ours()).isLessThan(figures.file()).isLessThan(figures.likeliest());
    }

    @Test
    void theTrueCauseIsAmongTheFirstThreeAndFoundSooner() {
        Figures figures = figures(SEED);
        holds(figures);
        assertThat(figures).isEqualTo(new Figures(1143, 1682, 206, 590, 218));
    }

    /** A single world may be a lucky one: each of twenty others holds by itself. */
    @Test
    @EnabledIfSystemProperty(named = "shimwright.figures", matches = "true")
    void soItIsInTwentyOtherWorlds() {
        for (int world = 1; world <= 20; world++) {
            Figures figures = figures(SEED + world);
            System.out.println(figures);
            holds(figures);
        }
    }

    private static int minutes(double sum) {
        return (int) Math.round(sum / COMPLAINTS);
    }
}
