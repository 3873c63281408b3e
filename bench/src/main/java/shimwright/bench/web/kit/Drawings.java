package shimwright.bench.web.kit;

import shimwright.bench.picture.section.SectionDrawing;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.picture.section.SectionView;
import shimwright.rebuild.unit.model.Unit;

/**
 * One section drawing in two widths, so that its letters can be read on a tablet and on a phone.
 *
 * @param wide for half a tablet
 * @param narrow for a phone
 */
public record Drawings(String wide, String narrow) {
    private static final double WIDE = 620;
    private static final double NARROW = 370;

    /** The drawings of a unit in a state of its build. */
    public static Drawings of(Unit unit, SectionState state, String id, Show show) {
        SectionView view = SectionView.FULL.in(show.system());
        return new Drawings(
                SectionDrawing.svg(unit, state, id, view.forWidth(WIDE)),
                SectionDrawing.svg(unit, state, id + "-narrow", view.forWidth(NARROW)));
    }
}
