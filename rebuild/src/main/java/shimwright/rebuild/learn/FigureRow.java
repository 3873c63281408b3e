package shimwright.rebuild.learn;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import shimwright.mechanics.chart.Individuals;
import shimwright.mechanics.diagram.Diagram;
import shimwright.mechanics.outcome.Outcome;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.working.Worked;
import shimwright.rebuild.unit.model.Clearance;
import shimwright.rebuild.unit.model.UnitType;

/**
 * One number over the jobs of a type, the oldest first, as an individuals and moving range chart where there are enough of them.
 *
 * @param name of it, in words
 * @param figures one a job, never empty
 * @param chart as the worksheet of that name gives it; refused where there are too few, or all are the same
 */
public record FigureRow(String name, List<Figure> figures, Outcome<Worked<Individuals.Result>> chart) {
    public FigureRow {
        figures = List.copyOf(figures);
    }

    /**
     * All numbers that jobs have.
     *
     * @param figures of all jobs in any order
     * @param type names clearances and checks; what it has not any more is named as it was
     */
    public static List<FigureRow> of(UnitType type, List<Figure> figures) {
        Map<String, List<Figure>> series = new LinkedHashMap<>();
        figures.stream()
                .sorted(Comparator.comparing(Figure::which)
                        .thenComparing(Figure::id)
                        .thenComparing(Figure::at))
                .forEach(figure -> series.computeIfAbsent(
                                figure.which() + " " + figure.id() + " " + figure.kind(), s -> new ArrayList<>())
                        .add(figure));
        return series.values().stream()
                .map(one -> new FigureRow(name(type, one.get(one.size() - 1)), one, chart(one)))
                .toList();
    }

    private static Outcome<Worked<Individuals.Result>> chart(List<Figure> figures) {
        return Individuals.of(
                figures.stream().map(Figure::value).toList(), figures.get(0).kind());
    }

    private static String name(UnitType type, Figure figure) {
        if (figure.which() == Figure.Of.CHECK) {
            return figure.what().isEmpty() ? figure.id() : figure.what();
        }
        return type.clearances().stream()
                        .filter(clearance -> clearance.id().equals(figure.id()))
                        .findFirst()
                        .map(Clearance::name)
                        .orElse(figure.id())
                + ", " + figure.which().words();
    }

    /** Those of one clearance, or of one check. */
    public static List<FigureRow> about(List<FigureRow> all, String id) {
        return all.stream().filter(trend -> trend.id().equals(id)).toList();
    }

    /** The clearance, or hold point and check with a slash. */
    public String id() {
        return figures.get(0).id();
    }

    /** The kind of its values. */
    public Kind kind() {
        return figures.get(0).kind();
    }

    /** The chart drawn; nothing where there is none. */
    public List<Diagram> drawn() {
        return chart instanceof Outcome.Ok<Worked<Individuals.Result>> ok
                ? Individuals.drawn(
                        figures.stream().map(Figure::value).toList(),
                        kind(),
                        ok.value().result())
                : List.of();
    }
}
