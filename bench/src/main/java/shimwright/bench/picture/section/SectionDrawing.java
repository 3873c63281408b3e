package shimwright.bench.picture.section;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.Item;
import shimwright.rebuild.unit.model.Unit;

/** The section of a unit, drawn from its unit file. */
public final class SectionDrawing {
    private SectionDrawing() {}

    /**
     * Draws the section: what is fitted, what is in the hand, what is still to come, and the loop of a clearance.
     *
     * @param unit the unit; items without geometry are not drawn
     * @param state what is fitted and in the hand
     * @param idPrefix begins every id in the picture, so that several pictures can stand on one page
     * @param view what part and for what width
     * @return one svg element; a short note where the unit file gives nothing to draw
     */
    public static String svg(Unit unit, SectionState state, String idPrefix, SectionView view) {
        Framing framing = new Framing(unit, view);
        if (!framing.anything()) {
            return note(unit, idPrefix, view);
        }
        return new SectionSheet(unit, state, view, framing).draw(idPrefix);
    }

    private static String note(Unit unit, String prefix, SectionView view) {
        String says = "The unit file of " + unit.type().model() + " gives no shapes, so there is no section to draw.";
        Svg svg = new Svg().root(prefix, view.width(), 64, "No section drawing", says);
        svg.rect(1, 1, view.width() - 2, 62, "", new Stroke(DrawingStyle.FAINT, 1, DrawingStyle.COMING_DASH));
        String shown = TextMetrics.fit(says, DrawingStyle.TEXT, false, view.width() - 32);
        svg.text(16, 37, shown, Letter.start(DrawingStyle.TEXT));
        return svg.done();
    }

    /** The drawing in words, for those who cannot see it. */
    static String about(Unit unit, SectionState state) {
        StringBuilder text =
                new StringBuilder("Section through the shafts, front to the left, drawn from the unit file.");
        if (!state.verdicts().isEmpty()) {
            for (SectionState.Stand stand : SectionState.Stand.values()) {
                String named = names(
                        unit,
                        state.verdicts().entrySet().stream()
                                .filter(e -> e.getValue() == stand)
                                .map(Map.Entry::getKey)
                                .collect(Collectors.toSet()));
                if (!named.isEmpty()) {
                    text.append(' ')
                            .append(stand.words())
                            .append(": ")
                            .append(named)
                            .append('.');
                }
            }
            return text.toString();
        }
        text.append(" Fitted: ").append(state.fitted().size()).append(" items.");
        String hand = names(unit, state.inHand());
        if (!hand.isEmpty()) {
            text.append(" In your hand: ").append(hand).append('.');
        }
        String trial = unit.type().items().stream()
                .filter(i -> state.of(i) == SectionState.Stand.TRIAL)
                .map(Item::name)
                .collect(Collectors.joining(", "));
        if (!trial.isEmpty()) {
            text.append(" In for the trial only: ").append(trial).append('.');
        }
        clearance(unit, state)
                .ifPresent(c -> text.append(" Loop of ")
                        .append(c.name())
                        .append(": ")
                        .append(c.loop().stream()
                                .map(l -> l.name() + (l.sign() > 0 ? " opens" : " closes"))
                                .collect(Collectors.joining(", ")))
                        .append('.'));
        if (unit.type().section().scheme()) {
            return text.append(" Not to scale: nothing in it was measured yet.").toString();
        }
        return text.append(" Castings are drawn with a usual wall.").toString();
    }

    private static String names(Unit unit, Set<String> ids) {
        return unit.type().items().stream()
                .filter(i -> ids.contains(i.id()))
                .map(Item::name)
                .collect(Collectors.joining(", "));
    }

    static Optional<Clearance> clearance(Unit unit, SectionState state) {
        List<Clearance> all = unit.type().clearances();
        return state.clearance()
                .flatMap(id -> all.stream().filter(c -> c.id().equals(id)).findFirst());
    }
}
