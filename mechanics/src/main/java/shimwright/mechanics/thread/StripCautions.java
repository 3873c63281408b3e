package shimwright.mechanics.thread;

import shimwright.mechanics.thread.ThreadStrips.Result.Trusted.Hole;
import shimwright.mechanics.working.Working;

/** What to heed at a tapped hole that is asked to hold. */
final class StripCautions {
    private StripCautions() {}

    static void of(ThreadStrips.Case c, ThreadForm form, Hole verdict, boolean noInsert, Working w) {
        w.caution(
                "Count only whole, clean turns: the first and last turn and a chamfer carry little. Test bars flatter a "
                        + "real boss.");
        if (verdict == Hole.AT_RISK) {
            w.caution("A light try will not show it: the hole can let go on the last pull.");
        }
        if (verdict == Hole.AT_RISK || verdict == Hole.STRIPS) {
            w.caution("Do not close the joint on this hole: fit an insert, or have it welded and tapped anew.");
        }
        if (noInsert) {
            w.caution(
                    "The table prints no wire insert that holds this bolt in this case: a solid bush, or a lower class.");
        }
        w.caution("Insert: keep the wall of the boss, set it a quarter to one and a half pitches below the face, break "
                + "off and count the tang.");
        Double depth = c.blind().holeDepth();
        Double reach = c.blind().reach();
        if (depth != null && reach != null && depth - reach < 2 * form.pitch()) {
            w.caution(
                    "The bolt may bottom: less than two pitches are left below it. A bottomed bolt shows torque without "
                            + "clamping.");
        }
    }
}
