package shimwright.mechanics.axial;

import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.mechanics.working.Working;

/** Thermal change of an axial play. */
public final class Growth {
    private static final String ISO1 = "linear expansion, reference temperature ISO 1:2016";

    private Growth() {}

    /**
     * Σ L·(α_case·ΔT_case − α_shaft·ΔT_shaft): positive when the case outgrows the shaft and the play opens (an X pair,
     * cups in the case). A loop that closes as the case grows (a lip squeezed between its cups) has the opposite sign.
     */
    public static Outcome<Worked<GrowthResult>> work(GrowthCase c) {
        Working w = new Working();
        double caseGrowth = 0;
        double shaftGrowth = 0;
        for (GrowthLeg leg : c.legs()) {
            caseGrowth += leg.length() * leg.caseExpansion() * c.caseRise();
            shaftGrowth += leg.length() * leg.shaftExpansion() * c.shaftRise();
        }
        w.line("growth of the case", "Σ length × α case × rise", caseGrowth, Kind.LENGTH, ISO1);
        w.line("growth of the shaft", "Σ length × α shaft × rise", shaftGrowth, Kind.LENGTH, ISO1);
        double change = w.line("change", "case − shaft", caseGrowth - shaftGrowth, Kind.LENGTH);
        Double cold = c.coldPlay();
        Double warm = cold == null ? null : w.line("warm play", "cold play + change", cold + change, Kind.LENGTH);
        w.caution("The shaft warms first: the least play comes a few minutes after a cold start, not at full heat.");
        if (warm != null && cold != null && warm < 0 && cold >= 0) {
            w.caution("The play is gone when warm: the bearings run preloaded.");
        }
        return Outcome.ok(w.worked(new GrowthResult(change, caseGrowth, shaftGrowth, warm)));
    }
}
