package shimwright.bench.picture.section;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.bench.picture.section.SectionLabels.Label;
import shimwright.bench.picture.section.SectionLabels.PlacedLabel;

/**
 * Finds sides and rows for labels on their leaders. A text that stands over another leader must be in a row beyond its
 * end; texts in one row must not touch. All choices of sides are tried for a few labels, the one with the fewest rows is
 * taken.
 */
final class LabelPlacement {
    static final double PAD = 5;
    static final double BALLOON = 18;
    /** Two balloons side by side are this far apart. */
    static final double BALLOON_PITCH = BALLOON + 2 * PAD + 0.5;

    private static final double LEADER_GAP = 12;
    /** More texts than this are not tried in all ways. */
    private static final int MOST_TRIED = 11;

    private final List<Label> labels;
    private final double[] leaders;
    private final double left;
    private final double right;

    private LabelPlacement(List<Label> labels, double left, double right) {
        this.labels = labels;
        this.left = left;
        this.right = right;
        this.leaders = leaders(labels, left, right);
    }

    /**
     * Plans the labels.
     *
     * @param labels in any order
     * @param left sheet position where texts may begin
     * @param right sheet position where they must end
     * @return the placed labels from left to right; empty where they cannot all stand clear of each other
     */
    static Optional<List<PlacedLabel>> of(List<Label> labels, double left, double right) {
        List<Label> sorted = new ArrayList<>();
        labels.forEach(label -> sorted.add(label.within(right - left - 4 * PAD)));
        sorted.sort(Comparator.comparingDouble(Label::x));
        return new LabelPlacement(sorted, left, right).best();
    }

    private Optional<List<PlacedLabel>> best() {
        List<Integer> free = new ArrayList<>();
        boolean[] usual = new boolean[labels.size()];
        for (int i = 0; i < labels.size(); i++) {
            if (!labels.get(i).balloon()) {
                free.add(i);
                usual[i] = !fits(i, false);
            }
        }
        Optional<List<PlacedLabel>> best = Optional.empty();
        int ways = free.size() <= MOST_TRIED ? 1 << free.size() : 1;
        for (int way = 0; way < ways; way++) {
            boolean[] toLeft = usual.clone();
            boolean fits = true;
            for (int k = 0; k < free.size(); k++) {
                int i = free.get(k);
                toLeft[i] ^= (way >> k & 1) == 1;
                fits &= fits(i, toLeft[i]);
            }
            Optional<List<PlacedLabel>> plan = fits ? rows(toLeft) : Optional.empty();
            if (plan.isPresent() && (best.isEmpty() || height(plan.get()) < height(best.get()))) {
                best = plan;
            }
        }
        return best;
    }

    private static int height(List<PlacedLabel> placed) {
        return placed.stream().mapToInt(PlacedLabel::row).sum();
    }

    private boolean fits(int i, boolean toLeft) {
        double from = textLeft(i, toLeft);
        return from >= left && from + labels.get(i).width() <= right;
    }

    /** Where a text begins: beside its leader, or across it where there is no room on either side. */
    private double textLeft(int i, boolean toLeft) {
        Label label = labels.get(i);
        if (label.balloon()) {
            return leaders[i] - BALLOON / 2;
        }
        double beside = toLeft ? leaders[i] - PAD - label.width() : leaders[i] + PAD;
        boolean wide = leaders[i] - PAD - label.width() < left && leaders[i] + PAD + label.width() > right;
        return wide ? Math.max(left, Math.min(leaders[i] - label.width() / 2, right - label.width())) : beside;
    }

    /** Rows for chosen sides; empty where two texts would stand over each other's leaders. */
    private Optional<List<PlacedLabel>> rows(boolean[] toLeft) {
        int n = labels.size();
        double[] from = new double[n];
        double[] to = new double[n];
        for (int i = 0; i < n; i++) {
            from[i] = textLeft(i, toLeft[i]);
            to[i] = from[i] + labels.get(i).width();
        }
        int[] row = new int[n];
        Arrays.fill(row, -1);
        for (int done = 0; done < n; done++) {
            int next = -1;
            for (int i = n - 1; i >= 0 && next < 0; i--) {
                if (row[i] < 0 && ready(i, row, from, to)) {
                    next = i;
                }
            }
            if (next < 0) {
                return Optional.empty();
            }
            row[next] = lowest(next, row, from, to);
        }
        List<PlacedLabel> placed = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            placed.add(new PlacedLabel(labels.get(i), leaders[i], from[i], row[i]));
        }
        return Optional.of(placed);
    }

    private boolean over(int text, int leader, double[] from, double[] to) {
        return text != leader && leaders[leader] > from[text] - PAD && leaders[leader] < to[text] + PAD;
    }

    private boolean ready(int i, int[] row, double[] from, double[] to) {
        for (int j = 0; j < row.length; j++) {
            if (row[j] < 0 && over(i, j, from, to)) {
                return false;
            }
        }
        return true;
    }

    private int lowest(int i, int[] row, double[] from, double[] to) {
        int least = 0;
        for (int j = 0; j < row.length; j++) {
            if (row[j] >= 0 && over(i, j, from, to)) {
                least = Math.max(least, row[j] + 1);
            }
        }
        boolean free = false;
        while (!free) {
            free = true;
            for (int j = 0; j < row.length; j++) {
                boolean touch = from[i] < to[j] + 2 * PAD && from[j] < to[i] + 2 * PAD;
                if (j != i && row[j] == least && touch) {
                    free = false;
                }
            }
            least += free ? 0 : 1;
        }
        return least;
    }

    /** Poles as near to their things as their distance allows. */
    private static double[] leaders(List<Label> labels, double left, double right) {
        double[] x = new double[labels.size()];
        double low = left + PAD;
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.max(labels.get(i).x(), low);
            low = x[i] + gap(labels, i);
        }
        double high = right - PAD;
        for (int i = x.length - 1; i >= 0; i--) {
            x[i] = Math.min(x[i], high);
            high = x[i] - (i > 0 ? gap(labels, i - 1) : 0);
        }
        return x;
    }

    private static double gap(List<Label> labels, int i) {
        boolean one = labels.get(i).balloon();
        boolean next = i + 1 < labels.size() && labels.get(i + 1).balloon();
        if (one && next) {
            return BALLOON_PITCH;
        }
        return one || next ? BALLOON / 2 + PAD + 1 : LEADER_GAP;
    }
}
