package shimwright.bench.picture.plan;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;

/**
 * Who does what when: a lane for each person, time downwards. Every bar is tall enough to be read, so the scale stretches where
 * much is short; what stands side by side runs at the same time. A bar on the case has a thick edge at its left, one over
 * several lanes takes them all, turning the case over is dashed. Cut into pictures of no more than a page, a bar that goes on in
 * the next one ends in a dashed line.
 */
public final class SwimlaneDiagram {
    private static final double CLOCK = 46;
    private static final double HEAD = 24;
    private static final double PER_MINUTE = 0.5;
    private static final double EMPTY = 44;
    private static final double WIDE = 700;
    /** Fits a sheet on its side. */
    private static final double PAGE = 620;

    private static final double EDGE = 6;

    private final List<Bar> bars;
    private final List<String> lanes;
    private final double width;
    private final double least;
    private final Map<Long, Double> at = new LinkedHashMap<>();

    /**
     * Something done.
     *
     * @param name short, printed bold; empty where the case is turned
     * @param words what is done
     * @param begin whole seconds from now
     * @param end whole seconds from now, after begin
     * @param lanes who does it, 0 for the first
     * @param onCase true where the case is held
     */
    public record Bar(String name, String words, long begin, long end, List<Integer> lanes, boolean onCase) {}

    private SwimlaneDiagram(List<Bar> bars, List<String> lanes, double width) {
        this.bars = bars;
        this.lanes = lanes;
        this.width = width;
        least = width < WIDE ? 40 : 25;
        lay();
    }

    /**
     * The pictures, from the first to the last.
     *
     * @param prefix of ids
     * @param bars by begin
     * @param lanes who each lane is
     * @param width in px
     */
    public static List<String> pages(String prefix, List<Bar> bars, List<String> lanes, double width) {
        SwimlaneDiagram picture = new SwimlaneDiagram(bars, lanes, width);
        List<Double> cuts = picture.cuts();
        List<String> pages = new ArrayList<>();
        for (int k = 0; k + 1 < cuts.size(); k++) {
            pages.add(picture.page(prefix + k, cuts.get(k), cuts.get(k + 1)));
        }
        return List.copyOf(pages);
    }

    /** Where each moment stands: so far below the one before as it takes, and every bar's end far enough below its begin. */
    private void lay() {
        TreeSet<Long> moments = new TreeSet<>();
        bars.forEach(bar -> moments.addAll(List.of(bar.begin(), bar.end())));
        long before = 0;
        double y = 0;
        for (long moment : moments) {
            y += Math.min(EMPTY, PER_MINUTE * (moment - before) / 60);
            for (Bar bar : bars) {
                y = bar.end() == moment ? Math.max(y, at.getOrDefault(bar.begin(), 0.0) + least) : y;
            }
            at.put(moment, y);
            before = moment;
        }
    }

    private double top(Bar bar) {
        return at.getOrDefault(bar.begin(), 0.0);
    }

    private double foot(Bar bar) {
        return at.getOrDefault(bar.end(), 0.0);
    }

    /** Where to cut: at the last moment of a page that no bar crosses, or at its last moment. */
    private List<Double> cuts() {
        List<Double> cuts = new ArrayList<>(List.of(0.0));
        List<Double> moments = new ArrayList<>(at.values());
        double end = moments.isEmpty() ? 0 : moments.get(moments.size() - 1);
        while (cuts.get(cuts.size() - 1) < end) {
            double from = cuts.get(cuts.size() - 1);
            double any = end;
            double clean = -1;
            for (double y : moments) {
                if (y > from && y <= from + PAGE) {
                    any = y;
                    clean = bars.stream().noneMatch(bar -> top(bar) < y && y < foot(bar)) ? y : clean;
                }
            }
            cuts.add(clean > from + PAGE / 2 || clean == end ? clean : any);
        }
        return cuts;
    }

    private String page(String prefix, double from, double until) {
        Svg svg = new Svg();
        double height = HEAD + until - from + 4;
        svg.root(prefix, width, height, "Who does what when", bars.size() + " bars in " + lanes.size() + " lanes.");
        double lane = (width - CLOCK) / lanes.size();
        for (int k = 0; k < lanes.size(); k++) {
            double left = CLOCK + k * lane;
            svg.text(
                    left + 4,
                    HEAD - 8,
                    lanes.get(k),
                    Letter.start(DrawingStyle.TEXT).strong());
            svg.line(left, HEAD - 2, left, height - 2, new Stroke(DrawingStyle.FAINT, 1));
        }
        double said = -1;
        for (Map.Entry<Long, Double> moment : at.entrySet()) {
            double y = moment.getValue();
            boolean begins = bars.stream().anyMatch(bar -> bar.begin() == moment.getKey());
            if (begins && y >= from && y < until && (said < 0 || y - said >= DrawingStyle.SMALL + 3)) {
                svg.text(
                        2,
                        HEAD + y - from + 12,
                        clock(moment.getKey()),
                        Letter.start(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
                said = y;
            }
        }
        waits(svg, HEAD - from, from, until);
        for (Bar bar : bars) {
            if (top(bar) < until && foot(bar) > from) {
                bar(svg, bar, HEAD - from, from, until);
            }
        }
        return svg.done();
    }

    /** Says how long nothing can be done, where that is so. */
    private void waits(Svg svg, double shift, double from, double until) {
        long before = 0;
        for (Map.Entry<Long, Double> moment : at.entrySet()) {
            long begin = before;
            double y = moment.getValue();
            boolean idle = moment.getKey() > begin
                    && bars.stream().noneMatch(bar -> bar.begin() <= begin && begin < bar.end());
            if (idle && y - 6 > from && y <= until) {
                String said = "wait " + Math.round((moment.getKey() - begin) / 60.0) + " min";
                svg.text(
                        CLOCK + 13,
                        y + shift - 6,
                        said,
                        Letter.start(DrawingStyle.SMALL).in(DrawingStyle.SOFT));
            }
            before = moment.getKey();
        }
    }

    /** Hours and minutes from now. */
    public static String clock(long seconds) {
        long minutes = Math.round(seconds / 60.0);
        return minutes / 60 + ":" + (minutes % 60 < 10 ? "0" : "") + minutes % 60;
    }

    private void bar(Svg svg, Bar bar, double shift, double from, double until) {
        double lane = (width - CLOCK) / lanes.size();
        int first = bar.lanes().stream().mapToInt(k -> k).min().orElse(0);
        int last = bar.lanes().stream().mapToInt(k -> k).max().orElse(0);
        double x = CLOCK + first * lane + 2;
        double wide = (last - first + 1) * lane - 4;
        double y = Math.max(top(bar), from) + shift;
        double high = Math.min(foot(bar), until) + shift - y - 2;
        boolean turn = bar.name().isEmpty();
        svg.rect(
                x,
                y,
                wide,
                high,
                turn ? DrawingStyle.SECTION : bar.lanes().size() > 1 ? DrawingStyle.BLUE_WASH : DrawingStyle.STEEL,
                turn ? new Stroke(DrawingStyle.GREY, 1, DrawingStyle.COMING_DASH) : new Stroke(DrawingStyle.GREY, 1));
        if (bar.onCase() && !turn) {
            svg.rect(x, y, EDGE, high, DrawingStyle.INK, new Stroke("", 0));
        }
        if (foot(bar) > until) {
            svg.line(x, y + high, x + wide, y + high, new Stroke(DrawingStyle.INK, 2, DrawingStyle.COMING_DASH));
        }
        double left = x + EDGE + 5;
        double room = wide - EDGE - 9;
        String minutes = Math.round((bar.end() - bar.begin()) / 60.0) + " min";
        String name = turn ? bar.words() : bar.name();
        String shown = (top(bar) < from ? "… " : "") + name;
        Letter letter = turn
                ? Letter.start(DrawingStyle.SMALL)
                : Letter.start(DrawingStyle.SMALL).strong();
        svg.text(left, y + 16, TextMetrics.fit(shown, DrawingStyle.SMALL, !turn, room), letter);
        double used = TextMetrics.width(shown, DrawingStyle.SMALL, !turn) + 8;
        if (width < WIDE) {
            String below = turn ? minutes : bar.words();
            if (!turn) {
                svg.text(
                        left + used,
                        y + 16,
                        TextMetrics.fit(minutes, DrawingStyle.SMALL, false, room - used),
                        Letter.start(DrawingStyle.SMALL));
            }
            if (high > 34) {
                svg.text(
                        left,
                        y + 31,
                        TextMetrics.fit(below, DrawingStyle.SMALL, false, room),
                        Letter.start(DrawingStyle.SMALL));
            }
        } else {
            String said = turn ? minutes : minutes + " · " + bar.words();
            svg.text(
                    left + used,
                    y + 16,
                    TextMetrics.fit(said, DrawingStyle.SMALL, false, room - used),
                    Letter.start(DrawingStyle.SMALL));
        }
    }
}
