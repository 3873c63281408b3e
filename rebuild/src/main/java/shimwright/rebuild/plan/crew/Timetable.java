package shimwright.rebuild.plan.crew;

import java.util.Map;

/**
 * When everything starts, and how good that is. In whole units of time.
 *
 * @param starts start by activity
 * @param span the last end; 0 where there is nothing to do
 * @param bound the last end of no timetable is sooner
 * @param proven true only where bound and span are equal
 * @param conflicts dead ends met, the measure of effort
 */
public record Timetable(Map<String, Integer> starts, int span, int bound, boolean proven, long conflicts) {
    public Timetable {
        starts = Map.copyOf(starts);
        if (bound > span || proven != (bound == span)) {
            throw new IllegalArgumentException("span " + span + ", bound " + bound + ", proven " + proven);
        }
    }
}
