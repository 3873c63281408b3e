package shimwright.bench.picture;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import shimwright.bench.picture.Labels.Flag;
import shimwright.bench.picture.Labels.Tag;

/**
 * Finds sides and rows for flags on poles. A text that stands over another's pole must be in a row beyond that pole's
 * end; texts in one row must not touch. All choices of sides are tried for a few flags, the one with the fewest rows is
 * taken.
 */
final class FlagPlan {
    static final double PAD = 5;
    static final double BALLOON = 18;
    private static final double POLE_GAP = 12;
    /** More texts than this are not tried in all ways. */
    private static final int MOST_TRIED = 11;

    private final List<Tag> tags;
    private final double[] poles;
    private final double left;
    private final double right;

    private FlagPlan(List<Tag> tags, double left, double right) {
        this.tags = tags;
        this.left = left;
        this.right = right;
        this.poles = poles(tags, left, right);
    }

    /**
     * Plans the flags.
     *
     * @param tags in any order
     * @param left sheet position where texts may begin
     * @param right sheet position where they must end
     * @return the flags by the position of their tags; empty where they cannot all stand clear of each other
     */
    static Optional<List<Flag>> of(List<Tag> tags, double left, double right) {
        List<Tag> sorted = new ArrayList<>();
        tags.forEach(tag -> sorted.add(tag.within(right - left - 4 * PAD)));
        sorted.sort(Comparator.comparingDouble(Tag::x));
        return new FlagPlan(sorted, left, right).best();
    }

    private Optional<List<Flag>> best() {
        List<Integer> free = new ArrayList<>();
        boolean[] usual = new boolean[tags.size()];
        for (int i = 0; i < tags.size(); i++) {
            if (!tags.get(i).balloon()) {
                free.add(i);
                usual[i] = !fits(i, false);
            }
        }
        Optional<List<Flag>> best = Optional.empty();
        int ways = free.size() <= MOST_TRIED ? 1 << free.size() : 1;
        for (int way = 0; way < ways; way++) {
            boolean[] toLeft = usual.clone();
            boolean fits = true;
            for (int k = 0; k < free.size(); k++) {
                int i = free.get(k);
                toLeft[i] ^= (way >> k & 1) == 1;
                fits &= fits(i, toLeft[i]);
            }
            Optional<List<Flag>> plan = fits ? rows(toLeft) : Optional.empty();
            if (plan.isPresent() && (best.isEmpty() || height(plan.get()) < height(best.get()))) {
                best = plan;
            }
        }
        return best;
    }

    private static int height(List<Flag> flags) {
        return flags.stream().mapToInt(Flag::row).sum();
    }

    private boolean fits(int i, boolean toLeft) {
        double from = textLeft(i, toLeft);
        return from >= left && from + tags.get(i).width() <= right;
    }

    /** Where a text begins: beside its pole, or across it where there is no room on either side. */
    private double textLeft(int i, boolean toLeft) {
        Tag tag = tags.get(i);
        if (tag.balloon()) {
            return poles[i] - BALLOON / 2;
        }
        double beside = toLeft ? poles[i] - PAD - tag.width() : poles[i] + PAD;
        boolean wide = poles[i] - PAD - tag.width() < left && poles[i] + PAD + tag.width() > right;
        return wide ? Math.max(left, Math.min(poles[i] - tag.width() / 2, right - tag.width())) : beside;
    }

    /** Rows for chosen sides; empty where two texts would stand over each other's poles. */
    private Optional<List<Flag>> rows(boolean[] toLeft) {
        int n = tags.size();
        double[] from = new double[n];
        double[] to = new double[n];
        for (int i = 0; i < n; i++) {
            from[i] = textLeft(i, toLeft[i]);
            to[i] = from[i] + tags.get(i).width();
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
        List<Flag> flags = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            flags.add(new Flag(tags.get(i), poles[i], from[i], row[i]));
        }
        return Optional.of(flags);
    }

    private boolean over(int text, int pole, double[] from, double[] to) {
        return text != pole && poles[pole] > from[text] - PAD && poles[pole] < to[text] + PAD;
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
    private static double[] poles(List<Tag> tags, double left, double right) {
        double[] x = new double[tags.size()];
        double low = left + PAD;
        for (int i = 0; i < x.length; i++) {
            x[i] = Math.max(tags.get(i).x(), low);
            low = x[i] + gap(tags, i);
        }
        double high = right - PAD;
        for (int i = x.length - 1; i >= 0; i--) {
            x[i] = Math.min(x[i], high);
            high = x[i] - (i > 0 ? gap(tags, i - 1) : 0);
        }
        return x;
    }

    private static double gap(List<Tag> tags, int i) {
        boolean one = tags.get(i).balloon();
        boolean next = i + 1 < tags.size() && tags.get(i + 1).balloon();
        if (one && next) {
            return BALLOON + 2 * PAD + 0.5;
        }
        return one || next ? BALLOON / 2 + PAD + 1 : POLE_GAP;
    }
}
