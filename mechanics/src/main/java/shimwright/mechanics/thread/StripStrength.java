package shimwright.mechanics.thread;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.outcome.Refusal;
import shimwright.mechanics.reference.Table;

/**
 * Strength of bolt and case, as given, else from the tables. Stresses in Pa.
 *
 * @param boltTensile Rm of the bolt
 * @param boltShear shear strength of the bolt
 * @param caseShear shear strength of the case
 * @param caseTensile Rm of the case, where known
 */
record StripStrength(
        double boltTensile,
        double boltShear,
        double caseShear,
        @Nullable Double caseTensile) {
    private static final double WIDE = 1.9;
    private static final double EVEN = 0.897;

    private static final Table ALLOYS = Table.read("nadca-a-3-2/alloys.csv");
    private static final double MPA = 1e6;
    /** Smallest shear strength of bolt steel over its tensile strength, classes to 12.9 (VDI 2230-1, from memory). */
    private static final double STEEL_SHEAR = 0.6;

    /** Refused where the bolt's or the case's strength is not known. */
    static Outcome<StripStrength> of(ThreadStrips.Case c) {
        List<Refusal> refusals = new ArrayList<>();
        Outcome<Optional<Strength>> bolt =
                Strength.of(c.bolt().strengthClass(), c.thread().size().diameter());
        refusals.addAll(bolt.refusals());
        Double tensile = c.bolt().boltTensile();
        if (tensile == null && bolt.isOk()) {
            tensile = bolt.orElseThrow().map(Strength::tensile).orElse(null);
            if (tensile == null) {
                refusals.add(Refusal.of(
                        "strengthClass",
                        "the strength of the bolt is not known",
                        "Type the mark on its head, such as 8.8, or boltTensile"));
            }
        }
        Optional<Table.Row> alloy = ALLOYS.rows().stream()
                .filter(row -> row.text("alloy")
                        .toLowerCase(Locale.ROOT)
                        .equals(c.hole().parent().toLowerCase(Locale.ROOT)))
                .findFirst();
        if (!c.hole().parent().isBlank() && alloy.isEmpty()) {
            String known = ALLOYS.rows().stream().map(row -> row.text("alloy")).collect(Collectors.joining(", "));
            refusals.add(Refusal.of(
                    "parent",
                    "\"" + c.hole().parent() + "\" is no alloy known here",
                    "Known: " + known + "; for another type parentShear"));
        }
        Double shear = c.hole().parentShear() != null
                ? c.hole().parentShear()
                : alloy.map(row -> row.number("shear") * MPA).orElse(null);
        if (shear == null && c.hole().parent().isBlank()) {
            refusals.add(Refusal.of(
                    "parentShear",
                    "the strength of the case is not known",
                    "Type parent=A380, or parentShear=190 MPa"));
        }
        if (tensile == null || shear == null || !refusals.isEmpty()) {
            return Outcome.refused(refusals);
        }
        Double caseTensile = c.hole().parentTensile() != null
                ? c.hole().parentTensile()
                : alloy.map(row -> row.number("tensile") * MPA).orElse(null);
        double boltShear = c.bolt().boltShear() != null ? c.bolt().boltShear() : STEEL_SHEAR * tensile;
        return Outcome.ok(new StripStrength(tensile, boltShear, shear, caseTensile));
    }

    /** C1 for 1.4 ≤ s/d &lt; 1.9, else 1; smaller than 1 for a narrow boss. */
    static double dilation(@Nullable Double width, double diameter) {
        if (width == null || width >= WIDE * diameter) {
            return 1;
        }
        double x = width / diameter;
        return Math.min(1, 3.8 * x - x * x - 2.61);
    }

    /** C2 for 1 &lt; Rs &lt; 2.2, else 0.897 below and the value at 2.2 above. */
    static double boltBending(double rs) {
        if (rs <= 1) {
            return EVEN;
        }
        double r = Math.min(rs, 2.2);
        return 5.594 - 13.682 * r + 14.107 * r * r - 6.057 * r * r * r + 0.9353 * r * r * r * r;
    }

    /** C3 for 0.4 &lt; Rs &lt; 1, else 0.897 above and the value at 0.4 below. */
    static double holeBending(double rs) {
        if (rs >= 1) {
            return EVEN;
        }
        double r = Math.max(rs, 0.4);
        return 0.728 + 1.769 * r - 2.896 * r * r + 1.296 * r * r * r;
    }
}
