package shimwright.rebuild.plan.backout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import shimwright.rebuild.unit.model.Step;
import shimwright.rebuild.unit.model.Unit;
import shimwright.rebuild.unit.model.UnitType.Station;
import shimwright.rebuild.unit.model.UnitType.Window;

/**
 * A possible order of a set of steps that turns the case over seldom: all that can be done where it lies, then the station
 * where most can be done. Possible always, not proven to turn least.
 */
final class Sequence {
    private final Unit unit;
    private final Map<String, Set<String>> first;
    private final boolean windows;
    private String station;

    /**
     * A sequence to be laid.
     *
     * @param first for each step those that must come before it
     * @param windows true where an open window goes before anything else
     * @param station where the case stands; empty where that is not known
     */
    Sequence(Unit unit, Map<String, Set<String>> first, boolean windows, String station) {
        this.unit = unit;
        this.first = first;
        this.windows = windows;
        this.station = station;
    }

    /** What came out: the steps, the minutes of turning over, the station at the end. */
    record Laid(List<Step> steps, double turning, String station) {}

    /** Lays the steps; of equals the one listed first goes first. */
    Laid lay(List<Step> steps) {
        List<Step> left = new ArrayList<>(steps);
        List<Step> laid = new ArrayList<>();
        Set<String> gone = new LinkedHashSet<>();
        double seconds = 0;
        while (!left.isEmpty()) {
            List<Step> free = free(left);
            if (free.isEmpty()) {
                throw new IllegalStateException("steps wait for each other: " + left);
            }
            Set<String> urgent = windows ? urgent(gone, left) : Set.of();
            List<Step> now = free.stream().filter(s -> urgent.contains(s.id())).toList();
            Step next = choose(now.isEmpty() ? free : now, left);
            if (holdsCase(next.at()) && !next.at().equals(station)) {
                seconds += station.isEmpty() ? 0 : unit.turnOver(station, next.at());
                station = next.at();
            }
            laid.add(next);
            gone.add(next.id());
            left.remove(next);
        }
        return new Laid(List.copyOf(laid), seconds / 60, station);
    }

    private List<Step> free(Collection<Step> left) {
        Set<String> open = left.stream().map(Step::id).collect(Collectors.toSet());
        return left.stream()
                .filter(step -> first.getOrDefault(step.id(), Set.of()).stream().noneMatch(open::contains))
                .toList();
    }

    private boolean holdsCase(String at) {
        return Optional.ofNullable(unit.type().stations().get(at))
                .map(Station::holdsCase)
                .orElse(false);
    }

    private Step choose(List<Step> free, List<Step> left) {
        Optional<Step> here = free.stream()
                .filter(step -> !holdsCase(step.at()) || step.at().equals(station))
                .findFirst();
        if (here.isPresent()) {
            return here.get();
        }
        Step best = free.get(0);
        int most = -1;
        Set<String> tried = new LinkedHashSet<>();
        for (Step step : free) {
            int run = tried.add(step.at()) ? run(step.at(), left) : -1;
            if (run > most) {
                most = run;
                best = step;
            }
        }
        return best;
    }

    /** How many steps could be done in one go with the case there. */
    private int run(String at, List<Step> steps) {
        List<Step> left = new ArrayList<>(steps);
        boolean moved = true;
        while (moved) {
            List<Step> now = free(left).stream()
                    .filter(step -> !holdsCase(step.at()) || step.at().equals(at))
                    .toList();
            moved = left.removeAll(now);
        }
        return steps.size() - left.size();
    }

    /** Steps that lead to the closing of a window that is open. */
    private Set<String> urgent(Set<String> gone, List<Step> left) {
        Set<String> urgent = new LinkedHashSet<>();
        for (Window window : unit.type().windows()) {
            if (gone.contains(window.opens()) && !gone.contains(window.closes())) {
                List<String> open = new ArrayList<>(List.of(window.closes()));
                while (!open.isEmpty()) {
                    String id = open.remove(open.size() - 1);
                    if (left.stream().anyMatch(step -> step.id().equals(id)) && urgent.add(id)) {
                        open.addAll(first.getOrDefault(id, Set.of()));
                    }
                }
            }
        }
        return urgent;
    }
}
