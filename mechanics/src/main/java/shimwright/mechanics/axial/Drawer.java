package shimwright.mechanics.axial;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.mechanics.axial.DrawerCase.Effect;
import shimwright.mechanics.axial.DrawerCase.Loose;
import shimwright.mechanics.axial.DrawerCase.Need;
import shimwright.mechanics.axial.DrawerCase.Seat;
import shimwright.mechanics.axial.DrawerResult.Way;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** Several clearances, one drawer: every lawful way is looked at, so the best offered is the best there is. */
public final class Drawer {
    /** More ways than this are not counted through: the drawer is then cut by its owner, not by chance. */
    static final long MOST_WAYS = 200_000_000L;

    private Drawer() {}

    /**
     * Serves all clearances at once.
     *
     * <p>Each clearance comes out at {@code value + Σ effect × (thickness − trial)}; a way that leaves any of them outside
     * its limits by nominal is never offered. Order: probability that all are lawful (product over the clearances, JCGM
     * 106:2012 7.4, normal; differences under 0.001 are ties), then fewest pieces, then the least {@code Σ((predicted −
     * aim)/(room to the limit on that side))²}, then tags. No piece is taken twice. Refused: names that do not match,
     * limits the wrong way round, an aim outside them, a place without pieces of its family.
     */
    public static Outcome<Worked<DrawerResult>> work(DrawerCase c) {
        List<Refusal> faults = faults(c);
        if (!faults.isEmpty()) {
            return Outcome.refused(faults);
        }
        List<List<DrawerSearch.Pack>> packs =
                c.places().stream().map(place -> packs(c, place)).toList();
        long ways = 1;
        for (List<DrawerSearch.Pack> choices : packs) {
            ways = Math.min(MOST_WAYS + 1, ways * Math.max(1, choices.size()));
        }
        if (ways > MOST_WAYS) {
            return Outcome.refused(
                    "pieces",
                    "there are more than " + MOST_WAYS / 1_000_000 + " million ways to lay them",
                    "Allow fewer pieces at a place, or leave out pieces that are far from what is wanted");
        }
        Working w = new Working();
        w.line("ways looked at", "product of the packs at each place", (double) ways, Kind.NUMBER);
        DrawerSearch search = new DrawerSearch(c, packs);
        List<Way> best = search.best();
        w.line("lawful ways", "every clearance within its limits by nominal", search.lawful(), Kind.NUMBER);
        for (Way way : best.isEmpty() ? best : best.subList(0, 1)) {
            for (int i = 0; i < c.needs().size(); i++) {
                w.line(
                        c.needs().get(i).name(),
                        "read + Σ effect × (chosen − trial)",
                        way.predicted().get(i),
                        Kind.LENGTH);
            }
            w.line("probability that all are in", "product", way.probability(), Kind.NUMBER, "JCGM 106:2012 7.4");
        }
        return Outcome.ok(w.worked(new DrawerResult(best, search.lawful(), advice(c, best))));
    }

    private static List<DrawerSearch.Pack> packs(DrawerCase c, Seat place) {
        List<Loose> fit = c.pieces().stream()
                .filter(piece -> piece.family().equals(place.family()))
                .toList();
        List<DrawerSearch.Pack> packs = new ArrayList<>();
        grow(fit, 0, place, new ArrayList<>(), packs);
        return packs;
    }

    private static void grow(List<Loose> fit, int from, Seat place, List<Loose> taken, List<DrawerSearch.Pack> packs) {
        if (taken.size() >= place.fewest()) {
            packs.add(DrawerSearch.Pack.of(taken));
        }
        if (taken.size() == place.most()) {
            return;
        }
        for (int i = from; i < fit.size(); i++) {
            taken.add(fit.get(i));
            grow(fit, i + 1, place, taken, packs);
            taken.remove(taken.size() - 1);
        }
    }

    private static String advice(DrawerCase c, List<Way> best) {
        if (best.isEmpty()) {
            return "Nothing in the drawer serves all of " + names(c)
                    + " at once. Look at each alone to see which size is missing.";
        }
        boolean proven = best.get(0).probability()
                >= Math.pow(c.ruleProbability(), c.needs().size());
        return (proven ? "Lay " : "Closest is ")
                + String.join(", ", best.get(0).pieces())
                + (proven ? "." : ", but not every clearance is proven by it: read more rounds or get a size between.");
    }

    private static String names(DrawerCase c) {
        return c.needs().stream().map(Need::name).collect(Collectors.joining(", "));
    }

    private static List<Refusal> faults(DrawerCase c) {
        List<Refusal> faults = new ArrayList<>();
        Set<String> needs = new HashSet<>();
        for (Need need : c.needs()) {
            if (!needs.add(need.name())) {
                faults.add(new Refusal("needs", need.name() + " stands there twice", "Give each its own name"));
            }
            if (need.lower() >= need.upper()) {
                faults.add(new Refusal(need.name(), "its limits are the wrong way round", "Lower first, then upper"));
            } else if (need.aim() <= need.lower() || need.aim() >= need.upper()) {
                faults.add(new Refusal(need.name(), "its aim does not lie between its limits", "Aim inside"));
            }
        }
        Set<String> places = new HashSet<>();
        for (Seat place : c.places()) {
            if (!places.add(place.name())) {
                faults.add(new Refusal("places", place.name() + " stands there twice", "Give each its own name"));
            }
            long fit = c.pieces().stream()
                    .filter(piece -> piece.family().equals(place.family()))
                    .count();
            if (fit < place.fewest() || place.fewest() > place.most()) {
                faults.add(new Refusal(
                        place.name(),
                        fit + " pieces of " + place.family() + " for at least " + place.fewest(),
                        "Add some"));
            }
        }
        Set<String> tags = new HashSet<>();
        for (Loose piece : c.pieces()) {
            if (!tags.add(piece.id())) {
                faults.add(
                        new Refusal("pieces", piece.id() + " stands there twice", "A piece can lie in one place only"));
            }
        }
        for (Effect effect : c.effects()) {
            if (!needs.contains(effect.need()) || !places.contains(effect.place())) {
                faults.add(new Refusal(
                        "effects",
                        effect.need() + " at " + effect.place() + " names something that is not there",
                        "Use the names of the clearances and places"));
            }
        }
        return faults;
    }
}
