package shimwright.mechanics.axial.shim;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.axial.shim.Drawer.Case;
import shimwright.mechanics.axial.shim.Drawer.Case.Loose;
import shimwright.mechanics.axial.shim.Drawer.Case.Need;
import shimwright.mechanics.axial.shim.Drawer.Case.Seat;
import shimwright.mechanics.outcome.Refusal;

/** What keeps clearances and a drawer from being worked together. */
final class DrawerFaults {
    private DrawerFaults() {}

    /** All of them; empty where the case can be worked. */
    static List<Refusal> of(Case c) {
        List<Refusal> faults = new ArrayList<>();
        Set<String> needs = new HashSet<>();
        for (int n = 0; n < c.needs().size(); n++) {
            Need need = c.needs().get(n);
            String key = "needs[" + n + "]";
            if (!needs.add(need.name())) {
                faults.add(Refusal.of("needs", need.name() + " stands there twice", "Give each its own name"));
            }
            if (need.lower() >= need.upper()) {
                faults.add(
                        new Refusal(key, need.name(), "its limits are the wrong way round", "Lower first, then upper"));
            } else if (need.aim() <= need.lower() || need.aim() >= need.upper()) {
                faults.add(new Refusal(key, need.name(), "its aim does not lie between its limits", "Aim inside"));
            }
            if (need.shared() > need.u()) {
                faults.add(new Refusal(
                        key,
                        need.name(),
                        "its shared part is above its uncertainty",
                        "Give the whole uncertainty first"));
            }
        }
        Set<String> places = new HashSet<>();
        for (int p = 0; p < c.places().size(); p++) {
            Seat place = c.places().get(p);
            if (!places.add(place.name())) {
                faults.add(Refusal.of("places", place.name() + " stands there twice", "Give each its own name"));
            }
            long fit = c.pieces().stream()
                    .filter(piece -> piece.family().equals(place.family()))
                    .count();
            if (fit < place.fewest() || place.fewest() > place.most()) {
                faults.add(new Refusal(
                        "places[" + p + "]",
                        place.name(),
                        fit + " pieces of " + place.family() + " for at least " + place.fewest(),
                        "Add some"));
            }
        }
        Set<String> tags = new HashSet<>();
        for (Loose piece : c.pieces()) {
            if (!tags.add(piece.id())) {
                faults.add(
                        Refusal.of("pieces", piece.id() + " stands there twice", "A piece can lie in one place only"));
            }
        }
        c.effects().forEach(one -> known("effects", one.need(), one.place(), needs, places, faults));
        c.readWith().forEach(one -> known("readWith", one.need(), one.place(), needs, places, faults));
        return faults;
    }

    private static void known(
            String key, String need, String place, Set<String> needs, Set<String> places, List<Refusal> faults) {
        if (!needs.contains(need) || !places.contains(place)) {
            faults.add(Refusal.of(
                    key,
                    need + " at " + place + " names something that is not there",
                    "Use the names of the clearances and places"));
        }
    }
}
