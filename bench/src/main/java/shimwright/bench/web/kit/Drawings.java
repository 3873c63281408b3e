package shimwright.bench.web.kit;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import shimwright.bench.picture.section.SectionDrawing;
import shimwright.bench.picture.section.SectionState;
import shimwright.bench.picture.section.SectionView;
import shimwright.mechanics.quantity.UnitSystem;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.record.Standings;
import shimwright.rebuild.record.Standings.State;
import shimwright.rebuild.unit.model.Unit;

/**
 * One section drawing in two widths, so that its letters can be read on a tablet and on a phone.
 *
 * @param wide for half a tablet
 * @param narrow for a phone
 */
public record Drawings(String wide, String narrow) {
    private static final double WIDE = 540;
    private static final double NARROW = 362;

    /** Drawings that are remembered: the latest of each page of the jobs that are worked on. */
    private static final int REMEMBERED = 60;

    private static final Map<Place, Drawn> LATEST = new LinkedHashMap<>(16, 0.75f, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<Place, Drawn> eldest) {
            return size() > REMEMBERED;
        }
    };

    /** Where a drawing is shown. */
    private record Place(String job, String id, UnitSystem system) {
        /** Whether what is drawn there depends on nothing but unit and state, as here. */
        private boolean alike(Place other) {
            return id.equals(other.id) && system == other.system;
        }
    }

    /** What was drawn there last, and of what. */
    private record Drawn(Unit unit, SectionState state, Drawings drawings) {
        private boolean of(Unit other, SectionState now) {
            return state.equals(now) && unit.equals(other);
        }
    }

    /**
     * The drawings of a unit in a state of its build; drawn once while neither changes.
     *
     * @param job whose page shows it
     * @param id of the drawing in its page
     */
    public static Drawings of(String job, Unit unit, SectionState state, String id, Show show) {
        SectionView view = SectionView.FULL.in(show.system());
        return once(
                new Place(job, id, show.system()),
                unit,
                state,
                () -> new Drawings(
                        SectionDrawing.svg(unit, state, id, view.forWidth(WIDE)),
                        SectionDrawing.svg(unit, state, id + "-narrow", view.forWidth(NARROW))));
    }

    /**
     * A drawing in one width; drawn once while neither unit nor state changes.
     *
     * @param id of the drawing in its page; always drawn in the same width
     */
    public static String of(String job, Unit unit, SectionState state, String id, Show show, double width) {
        SectionView view = SectionView.FULL.in(show.system()).forWidth(width);
        return once(
                        new Place(job, id, show.system()),
                        unit,
                        state,
                        () -> new Drawings(SectionDrawing.svg(unit, state, id, view), ""))
                .wide();
    }

    private static Drawings once(Place place, Unit unit, SectionState state, Supplier<Drawings> draw) {
        Optional<Drawings> before = before(place, unit, state);
        if (before.isPresent()) {
            return before.get();
        }
        Drawings drawings = draw.get();
        synchronized (LATEST) {
            LATEST.put(place, new Drawn(unit, state, drawings));
        }
        return drawings;
    }

    /** The section with each item as it stands. */
    public static SectionState verdicts(Unit unit, Job job) {
        Map<String, SectionState.Stand> stands = new LinkedHashMap<>();
        Standings.byItem(unit, job).forEach((item, state) -> stands.put(item, stand(state)));
        return SectionState.EMPTY.withVerdicts(stands);
    }

    private static SectionState.Stand stand(State state) {
        return switch (state) {
            case NOT_LOOKED_AT -> SectionState.Stand.COMING;
            case GOOD, REUSE -> SectionState.Stand.GOOD;
            case OPEN -> SectionState.Stand.OPEN;
            case REWORK -> SectionState.Stand.REWORK;
            case REPLACE -> SectionState.Stand.REPLACE;
        };
    }

    /** What was drawn of the same there or for another job: benches that stand at the same step share one text. */
    private static Optional<Drawings> before(Place place, Unit unit, SectionState state) {
        synchronized (LATEST) {
            Drawn here = LATEST.get(place);
            if (here != null && here.of(unit, state)) {
                return Optional.of(here.drawings());
            }
            Optional<Drawn> elsewhere = LATEST.entrySet().stream()
                    .filter(drawn ->
                            drawn.getKey().alike(place) && drawn.getValue().of(unit, state))
                    .map(Map.Entry::getValue)
                    .findFirst();
            elsewhere.ifPresent(drawn -> LATEST.put(place, drawn));
            return elsewhere.map(Drawn::drawings);
        }
    }
}
