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
    /** More ways than this are not looked at one by one but by branch and bound. */
    static final long MOST_WAYS = 20_000_000L;

    /** More packs than this at a place are not made. */
    private static final int MOST_PACKS = 400_000;

    private Drawer() {}

    /**
     * Serves all clearances at once.
     *
     * <p>Each clearance comes out at {@code value + Σ effect × (thickness − trial)}; a way that leaves any of them outside
     * its limits by nominal is never offered. Order: probability that all are lawful (product over the clearances, JCGM
     * 106:2012 7.4, normal; differences under 0.001 are ties), then fewest pieces, then the least {@code Σ((predicted −
     * aim)/(room to the limit on that side))²}, then tags. No piece is taken twice. Of more than 20 million ways those that
     * cannot be among the best are passed over, and the working says whether the best are proven. Refused: names that do not
     * match, limits the wrong way round, an aim outside them, a place without pieces of its family, more packs at a place than
     * can be laid out.
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
        for (int p = 0; p < packs.size(); p++) {
            if (packs.get(p).size() > MOST_PACKS) {
                return Outcome.refused(
                        c.places().get(p).name(),
                        "there are more than " + MOST_PACKS + " packs to lay there",
                        "Allow fewer pieces at this place, or leave out pieces that are far from what is wanted");
            }
        }
        Working w = new Working();
        List<Way> best;
        int lawful;
        if (ways > MOST_WAYS) {
            DrawerBranch search = new DrawerBranch(c, packs);
            best = search.best();
            lawful = search.lawful();
            w.line("lawful ways met", "branch and bound; there may be more", lawful, Kind.NUMBER);
            w.line("best proven", "1 where no other way is better", search.proven() ? 1 : 0, Kind.NUMBER);
        } else {
            DrawerSearch search = new DrawerSearch(c, packs);
            best = search.best();
            lawful = search.lawful();
            w.line("ways looked at", "product of the packs at each place", (double) ways, Kind.NUMBER);
            w.line("lawful ways", "every clearance within its limits by nominal", lawful, Kind.NUMBER);
        }
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
        return Outcome.ok(w.worked(new DrawerResult(best, lawful, advice(c, best))));
    }

    static List<DrawerSearch.Pack> packs(DrawerCase c, Seat place) {
        List<Loose> fit = c.pieces().stream()
                .filter(piece -> piece.family().equals(place.family()))
                .toList();
        List<DrawerSearch.Pack> packs = new ArrayList<>();
        grow(fit, 0, place, window(c, place), new ArrayList<>(), packs);
        return packs;
    }

    /** Thicknesses at a place that leave lawful what depends on this place alone. */
    private static double[] window(DrawerCase c, Seat place) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        for (Need need : c.needs()) {
            List<Effect> on = c.effects().stream()
                    .filter(effect -> effect.need().equals(need.name()) && effect.change() != 0)
                    .toList();
            if (on.size() == 1 && on.get(0).place().equals(place.name())) {
                double change = on.get(0).change();
                double a = place.trial() + (need.lower() - need.value()) / change;
                double b = place.trial() + (need.upper() - need.value()) / change;
                low = Math.max(low, Math.min(a, b) - DrawerSearch.DUST);
                high = Math.min(high, Math.max(a, b) + DrawerSearch.DUST);
            }
        }
        return new double[] {low, high};
    }

    private static void grow(
            List<Loose> fit,
            int from,
            Seat place,
            double[] window,
            List<Loose> taken,
            List<DrawerSearch.Pack> packs) {
        double thickness = taken.stream().mapToDouble(Loose::thickness).sum();
        if (taken.size() >= place.fewest() && thickness >= window[0] && thickness <= window[1]) {
            packs.add(DrawerSearch.Pack.of(taken));
        }
        if (taken.size() == place.most() || thickness > window[1] || packs.size() > MOST_PACKS) {
            return;
        }
        for (int i = from; i < fit.size(); i++) {
            taken.add(fit.get(i));
            grow(fit, i + 1, place, window, taken, packs);
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
