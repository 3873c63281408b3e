package shimwright.rebuild.complaint;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.unit.model.UnitType;

/**
 * Which causes are likeliest, after everything said and seen.
 *
 * <p>chance(cause) = share · Π chance(answer | cause) · what was seen, over the sum of the same for all causes. Answers count as if each
 * came about by itself, and as if one thing alone were wrong: chances are for the order in which one looks and for nothing else. Where
 * the owner's words are symptoms of the unit file, its own causes have half of the shares, by their percents, and stand in the place of
 * the general ones whose words they bear. What was found in earlier boxes of the type moves the shares: each is one case beside
 * {@value #GENERAL_CASES} of the general list.
 */
public final class Ranking {
    /** How many cases the general shares are worth beside what a shop has found itself. */
    static final int GENERAL_CASES = 20;

    private static final double OWN_HALF = 0.5;
    /** A reading outside its limit on a part that a cause speaks of; a look that found it. Ours. */
    private static final double OUTSIDE = 4;

    private static final double FOUND = 50;
    /** From here on an answer is said to speak for a cause; below its inverse against it. */
    private static final double TELLING = 1.5;

    private final CauseTables tables;

    private Ranking(CauseTables tables) {
        this.tables = tables;
    }

    /** The suspects of the general list alone, the likeliest first. */
    public static List<Suspect> of(CauseTables tables, Evidence evidence) {
        return new Ranking(tables).ranked(List.of(), evidence);
    }

    /** The suspects of a unit type, the likeliest first. */
    public static List<Suspect> of(CauseTables tables, UnitType type, Evidence evidence) {
        return new Ranking(tables)
                .ranked(
                        type.symptoms().stream()
                                .filter(symptom -> evidence.symptoms().contains(symptom.id()))
                                .toList(),
                        evidence);
    }

    /** Before anything was answered. */
    private record Prior(String id, String name, @Nullable Cause cause, double share) {}

    private List<Suspect> ranked(List<UnitType.Symptom> said, Evidence evidence) {
        List<Prior> priors = learned(priors(said), evidence.before());
        double[] chances = new double[priors.size()];
        double sum = 0;
        for (int i = 0; i < chances.length; i++) {
            Prior prior = priors.get(i);
            chances[i] = prior.share() * seen(prior, evidence);
            for (Map.Entry<String, String> answer : evidence.answers().entrySet()) {
                chances[i] *= chance(prior.cause(), answer.getKey(), answer.getValue());
            }
            sum += chances[i];
        }
        Map<String, Double> means = new LinkedHashMap<>();
        evidence.answers()
                .forEach((question, answer) -> means.put(
                        question,
                        priors.stream()
                                .mapToDouble(prior -> prior.share() * chance(prior.cause(), question, answer))
                                .sum()));
        List<Suspect> suspects = new ArrayList<>();
        for (int i = 0; i < chances.length; i++) {
            suspects.add(suspect(priors, priors.get(i), sum == 0 ? 0 : chances[i] / sum, means, evidence));
        }
        suspects.sort(Comparator.comparingDouble(Suspect::chance).reversed());
        return List.copyOf(suspects);
    }

    private List<Prior> priors(List<UnitType.Symptom> said) {
        Map<String, Double> own = new LinkedHashMap<>();
        said.forEach(symptom -> symptom.causes().forEach((name, percent) -> own.merge(name, percent, Double::sum)));
        double percents = own.values().stream().mapToDouble(Double::doubleValue).sum();
        double shares = tables.causes().stream().mapToDouble(Cause::share).sum();
        double general = percents > 0 ? 1 - OWN_HALF : 1;
        List<Prior> priors = new ArrayList<>();
        Map<String, Double> cases = new LinkedHashMap<>();
        own.forEach((name, percent) ->
                tables.spokenOf(name).ifPresent(cause -> cases.merge(cause.id(), percent, Double::sum)));
        own.forEach((name, percent) -> {
            Optional<Cause> cause = tables.spokenOf(name);
            double share = OWN_HALF * percent / percents
                    + cause.map(one -> general * one.share() / shares * percent / cases.getOrDefault(one.id(), percent))
                            .orElse(0.0);
            priors.add(new Prior(Suspect.OWN + name, name, cause.orElse(null), share));
        });
        tables.causes().stream()
                .filter(cause -> !cases.containsKey(cause.id()))
                .forEach(cause ->
                        priors.add(new Prior(cause.id(), cause.name(), cause, general * cause.share() / shares)));
        return priors;
    }

    /** How much of the say earlier cases have in the shares, 0 to 1; the general list has the rest. */
    public static double worth(int cases) {
        return (double) cases / (cases + GENERAL_CASES);
    }

    private List<Prior> learned(List<Prior> priors, List<CaseBefore> before) {
        Map<String, Double> counts = new HashMap<>();
        for (CaseBefore box : before) {
            List<String> found = meant(priors, box);
            found.forEach(id -> counts.merge(id, 1.0 / found.size(), Double::sum));
        }
        double cases = counts.values().stream().mapToDouble(Double::doubleValue).sum();
        return priors.stream()
                .map(prior -> new Prior(
                        prior.id(),
                        prior.name(),
                        prior.cause(),
                        (GENERAL_CASES * prior.share() + counts.getOrDefault(prior.id(), 0.0))
                                / (GENERAL_CASES + cases)))
                .toList();
    }

    /** Who of those suspected now an earlier box was found to have, once for each thing that was found and each whom it may mean. */
    private List<String> meant(List<Prior> priors, CaseBefore box) {
        List<String> meant = new ArrayList<>();
        box.causes().forEach((id, name) -> meant.addAll(meant(priors, id, name)));
        return meant;
    }

    private List<String> meant(List<Prior> priors, String id, String name) {
        List<String> same = priors.stream().map(Prior::id).filter(id::equals).toList();
        if (!same.isEmpty()) {
            return same;
        }
        Optional<Cause> general = tables.cause(id).or(() -> tables.spokenOf(name));
        return general.isEmpty()
                ? List.of()
                : priors.stream()
                        .filter(prior -> general.get().equals(prior.cause()))
                        .map(Prior::id)
                        .toList();
    }

    /** Chance of an answer where this is the cause; a cause of which nothing is known gives each answer the same. */
    private double chance(@Nullable Cause cause, String question, String answer) {
        CheckQuestion asked = tables.question(question).orElseThrow();
        return cause == null ? 1.0 / asked.answers().size() : cause.chance(asked, answer);
    }

    private static double seen(Prior prior, Evidence evidence) {
        double seen = 1;
        Entry.Seen look = evidence.looked().get(prior.id());
        if (look == Entry.Seen.FOUND) {
            seen = FOUND;
        } else if (look == Entry.Seen.IN_ORDER) {
            seen = 1 - new Suspect(prior.id(), prior.name(), prior.cause(), 0, List.of(), List.of()).sees();
        }
        return spoken(prior.cause(), evidence.outside()).isPresent() ? seen * OUTSIDE : seen;
    }

    private static Optional<String> spoken(@Nullable Cause cause, Set<String> names) {
        return cause == null
                ? Optional.empty()
                : names.stream()
                        .sorted()
                        .filter(name -> cause.words().matcher(name).find())
                        .findFirst();
    }

    /** @param means chance of each answer over all causes, by question */
    private Suspect suspect(
            List<Prior> priors, Prior prior, double chance, Map<String, Double> means, Evidence evidence) {
        List<String> pro = new ArrayList<>();
        List<String> contra = new ArrayList<>();
        Entry.Seen look = evidence.looked().get(prior.id());
        if (look == Entry.Seen.FOUND) {
            pro.add("it was found");
        } else if (look == Entry.Seen.IN_ORDER) {
            contra.add("a look found it in order");
        }
        spoken(prior.cause(), evidence.outside()).ifPresent(name -> pro.add(name + " is outside its limit"));
        List<CaseBefore> before = evidence.before().stream()
                .filter(box -> meant(priors, box).contains(prior.id()))
                .toList();
        if (!before.isEmpty()) {
            pro.add(CaseBefore.count(before, evidence.before()));
        }
        for (CheckQuestion question : tables.questions()) {
            String answer = evidence.answers().get(question.id());
            Double mean = means.get(question.id());
            if (answer == null || mean == null) {
                continue;
            }
            double ratio = chance(prior.cause(), question.id(), answer) / mean;
            if (ratio >= TELLING) {
                pro.add(question.answers().get(answer));
            } else if (ratio <= 1 / TELLING) {
                contra.add(question.answers().get(answer));
            }
        }
        return new Suspect(prior.id(), prior.name(), prior.cause(), chance, pro, contra);
    }
}
