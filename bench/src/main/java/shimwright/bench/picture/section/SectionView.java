package shimwright.bench.picture.section;

import java.util.Set;
import shimwright.mechanics.quantity.UnitSystem;

/**
 * What part of the unit is drawn and for what width.
 *
 * @param around items whose neighbourhood is drawn; empty for the whole unit
 * @param margin added on every side of those items, m, 0 or more
 * @param width width of the picture in CSS pixels, for which the letters are sized; at least 280
 * @param units units of the lengths that are written
 */
public record SectionView(Set<String> around, double margin, double width, UnitSystem units) {
    private static final double NARROWEST = 280;
    private static final double TABLET = 820;

    /** The whole unit on a tablet, metric. */
    public static final SectionView FULL = new SectionView(Set.of(), 0, TABLET, UnitSystem.METRIC);

    public SectionView {
        around = Set.copyOf(around);
        if (!(margin >= 0) || !(width >= NARROWEST) || !Double.isFinite(margin) || !Double.isFinite(width)) {
            throw new IllegalArgumentException("margin " + margin + ", width " + width);
        }
    }

    /**
     * The neighbourhood of some items; the whole unit when none of them is drawn.
     *
     * @param margin m, 0 or more
     */
    public static SectionView around(Set<String> items, double margin) {
        return new SectionView(items, margin, TABLET, UnitSystem.METRIC);
    }

    /** The same for another width, such as 390 for a phone. */
    public SectionView forWidth(double pixels) {
        return new SectionView(around, margin, pixels, units);
    }

    /** The same with lengths in these units. */
    public SectionView in(UnitSystem system) {
        return new SectionView(around, margin, width, system);
    }
}
