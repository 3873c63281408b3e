package shimwright.mechanics.fit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.worksheet.Worksheet;

/** The worksheet {@code housing-grip}. */
final class HousingGrip {
    static final Worksheet<GripCase, Grip> SHEET = new Worksheet<>(
            "housing-grip",
            "Grip of a race in its housing",
            "What is left of a race's grip at working heat, in a light-alloy seat or in a sleeve.",
            List.of(
                    "linear expansion; α of die-cast alloys: NADCA A-3-2-12",
                    "Lamé's thick-walled cylinder: Boresi and Schmidt ch. 11",
                    "axial shift of a cup: geometry of the cone"),
            GripCase.class,
            Grip.class,
            HousingGrip::work);

    private HousingGrip() {}

    /** Diametral growth turned into axial travel on a cone of this half angle; the growth is halved first. */
    static double axial(double diametral, double halfAngle) {
        return diametral / 2 / Math.tan(halfAngle);
    }

    /**
     * Even temperatures in each part, full contact, elastic rings.
     *
     * <p>Refused: a race, boss or sleeve without a wall; a race loose at 20 °C even at its tightest; more than 1 % of the
     * diameter; a sleeve half described or loose in its housing.
     */
    static Outcome<Worked<Grip>> work(GripCase c) {
        List<Refusal> refusals = new ArrayList<>();
        double seat = Collections.max(c.seat());
        if (c.cupBore() >= Collections.min(c.cup())) {
            refusals.add(wall("cupBore", c.cupBore(), "race", Collections.min(c.cup())));
        }
        Double outside = c.sleeve().outside();
        Double bore = c.sleeve().housingBore();
        if ((outside == null) != (bore == null)) {
            refusals.add(new Refusal(
                    outside == null ? "sleeve.outside" : "sleeve.housingBore",
                    "not given, though the other diameter of the sleeve is",
                    "Give both, or neither when there is no sleeve"));
        } else if (outside != null && bore != null) {
            sleeve(c, outside, bore, seat, refusals);
        } else if (c.boss() <= seat) {
            refusals.add(wall("boss", seat, "boss", c.boss()));
        }
        double tightest = Collections.max(c.cup()) - Collections.min(c.seat());
        if (tightest <= 0) {
            refusals.add(new Refusal(
                    "cup",
                    "the race is loose in its seat at 20 °C already",
                    "Sleeve the seat or replace the housing; heat makes it no better"));
        } else if (tightest > 0.01 * seat) {
            refusals.add(new Refusal(
                    "cup",
                    "an interference of " + Interference.mm(tightest) + " is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        return refusals.isEmpty() ? Outcome.ok(new Gripping(c).worked()) : Outcome.refused(refusals);
    }

    private static void sleeve(GripCase c, double outside, double bore, double seat, List<Refusal> refusals) {
        if (outside <= bore) {
            refusals.add(new Refusal(
                    "sleeve.outside",
                    "the sleeve is loose in the housing: " + Interference.mm(outside) + " in " + Interference.mm(bore),
                    "A sleeve must be an interference fit; measure both at 20 °C"));
        } else if (outside - bore > 0.01 * bore) {
            refusals.add(new Refusal(
                    "sleeve.outside",
                    Interference.mm(outside - bore) + " interference is more than 1 % of the diameter",
                    "Look for a misread digit"));
        }
        if (seat >= bore) {
            refusals.add(wall("seat", seat, "sleeve", bore));
        }
        if (c.boss() <= bore) {
            refusals.add(wall("boss", bore, "boss", c.boss()));
        }
    }

    private static Refusal wall(String place, double inner, String part, double outer) {
        return new Refusal(
                place,
                "a bore of " + Interference.mm(inner) + " leaves no wall in a " + part + " of "
                        + Interference.mm(outer),
                "Measure both again");
    }
}
