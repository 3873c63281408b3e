package shimwright.rebuild.plan.search;

/**
 * Set-up time that a state cannot avoid any more, by chains of tasks that wait for each other. For each tool, place and
 * orientation apart: how often it must be got ready again along the worst chain. For orientations also the dearest chain of
 * turns. Each is the most over the tasks that wait for nothing of the set any more, for every chain begins at one of them.
 */
final class SetUpBound {
    private final CompiledProblem c;
    /** The tasks looked at, closed downward among those that every order does. */
    final long[] mask;

    private final long[][] within;
    private final int columns;
    private final int tools;
    private final int turnFrom;
    private final long[] price;
    /** Of a task and a column, for the column's thing being ready (odd) or not (even): how often it is got ready. */
    private final short[][] runs;
    /** Of a task and an orientation to begin with: time of the dearest chain of turns. */
    private final long[][] chain;

    SetUpBound(CompiledProblem c, long[] mask) {
        this.c = c;
        this.mask = mask;
        SetUpTimes ready = c.ready;
        this.within = new long[c.n][];
        for (int i = 0; i < c.n; i++) {
            within[i] = c.before[i].clone();
            for (int w = 0; w < mask.length; w++) {
                within[i][w] &= mask[w];
            }
        }
        this.tools = ready.toolTime.length;
        this.turnFrom = tools + ready.places;
        this.columns = turnFrom + ready.orientations;
        this.price = new long[columns];
        System.arraycopy(ready.toolTime, 0, price, 0, tools);
        for (int p = 0; p < ready.places; p++) {
            price[tools + p] = ready.walk;
        }
        for (int o = 0; o < ready.orientations; o++) {
            price[turnFrom + o] = TurnTimes.least(c, mask, o);
        }
        this.runs = new short[c.n][];
        this.chain = new long[c.n][];
        fill();
    }

    private int type(int task, int column) {
        if (column < tools) {
            int kit = c.ready.kit[task];
            return kit < 0 ? 0 : c.ready.holds[kit][column] ? 1 : -1;
        }
        int stands = column < turnFrom ? c.ready.place[task] : c.ready.orientation[task];
        int wanted = column < turnFrom ? column - tools : column - turnFrom;
        return stands < 0 ? 0 : stands == wanted ? 1 : -1;
    }

    private void fill() {
        int orientations = c.ready.orientations;
        for (int at = c.n - 1; at >= 0; at--) {
            int task = c.topological[at];
            if (!Bits.has(mask, task)) {
                continue;
            }
            short[] mine = new short[2 * columns];
            for (int k = 0; k < columns; k++) {
                int type = type(task, k);
                for (int s = 0; s < 2; s++) {
                    int then = type == 0 ? s : type > 0 ? 1 : 0;
                    int most = 0;
                    for (int next : c.after[task]) {
                        short[] row = runs[next];
                        most = row == null ? most : Math.max(most, row[2 * k + then]);
                    }
                    mine[2 * k + s] = (short) (most + (type > 0 && s == 0 ? 1 : 0));
                }
            }
            runs[task] = mine;
            long[] turns = new long[orientations + 1];
            for (int o = 0; o <= orientations; o++) {
                int to = c.ready.orientation[task];
                int then = to < 0 ? o : to;
                long most = 0;
                for (int next : c.after[task]) {
                    most = chain[next] == null ? most : Math.max(most, chain[next][then]);
                }
                turns[o] = most + (to < 0 ? 0 : c.ready.leastTurn[o][to]);
            }
            chain[task] = turns;
        }
    }

    /** Set-up time that is still to come at least. */
    long least(StateCursor at) {
        return least(at.done, at.orientation, at.place, at.kit);
    }

    private long least(long[] done, int orientation, int place, int kit) {
        Parts parts = parts(done, orientation, place, kit);
        return parts.tools() + parts.stands();
    }

    /** Set-up time that is still to come at least: laying out tools, and turning and walking. */
    record Parts(long tools, long stands) {}

    /** Set-up time that is still to come at least, by part. */
    Parts parts(StateCursor at) {
        return parts(at.done, at.orientation, at.place, at.kit);
    }

    /** Turning and walking that are still to come at least. */
    long stands(long[] done, int orientation, int place) {
        return parts(done, orientation, place, -1).stands();
    }

    private Parts parts(long[] done, int orientation, int place, int kit) {
        short[] most = new short[columns];
        long turns = 0;
        for (int w = 0; w < mask.length; w++) {
            long word = mask[w] & ~done[w];
            while (word != 0) {
                int i = (w << 6) + Long.numberOfTrailingZeros(word);
                word &= word - 1;
                if (Bits.within(within[i], done)) {
                    gather(runs[i], most, orientation, place, kit);
                    turns = Math.max(turns, chain[i][orientation]);
                }
            }
        }
        return new Parts(laying(most), standing(most, turns, orientation, place));
    }

    /** Set-up time that all tasks of the set take at least once a task that is not of it has been done. */
    long leastFrom(int task) {
        int orientation = c.ready.orientation[task];
        int place = c.ready.place[task];
        return least(
                Bits.empty(c.n),
                orientation < 0 ? c.ready.orientations : orientation,
                place < 0 ? c.ready.places : place,
                c.ready.kit[task]);
    }

    private void gather(short[] row, short[] most, int orientation, int place, int kit) {
        boolean[] laid = kit < 0 ? new boolean[0] : c.ready.holds[kit];
        for (int k = 0; k < tools; k++) {
            short v = row[2 * k + (kit < 0 || laid[k] ? 1 : 0)];
            most[k] = v > most[k] ? v : most[k];
        }
        for (int k = tools; k < turnFrom; k++) {
            short v = row[2 * k + (k - tools == place ? 1 : 0)];
            most[k] = v > most[k] ? v : most[k];
        }
        for (int k = turnFrom; k < columns; k++) {
            short v = row[2 * k + (k - turnFrom == orientation ? 1 : 0)];
            most[k] = v > most[k] ? v : most[k];
        }
    }

    private long laying(short[] most) {
        long sum = 0;
        for (int k = 0; k < tools; k++) {
            sum += price[k] * most[k];
        }
        return sum;
    }

    private long standing(short[] most, long turns, int orientation, int place) {
        long walks = 0;
        for (int k = tools; k < turnFrom; k++) {
            walks += price[k] * most[k];
        }
        walks = place == c.ready.places ? Math.max(0, walks - c.ready.walk) : walks;
        long entries = 0;
        long dearest = 0;
        for (int k = turnFrom; k < columns; k++) {
            entries += price[k] * most[k];
            dearest = most[k] > 0 ? Math.max(dearest, price[k]) : dearest;
        }
        entries -= orientation == c.ready.orientations ? dearest : 0;
        return walks + Math.max(entries, turns);
    }

    /** Set-up time after a task at least, whatever went before. */
    long leastAfter(int task) {
        long sum = 0;
        for (int k = 0; k < turnFrom; k++) {
            int type = type(task, k);
            int most = 0;
            for (int next : c.after[task]) {
                short[] row = runs[next];
                if (row != null) {
                    most = Math.max(most, row[2 * k + (type < 0 ? 0 : 1)]);
                }
            }
            sum += price[k] * most;
        }
        long turns = 0;
        for (int next : c.after[task]) {
            long[] row = chain[next];
            int from = c.ready.orientation[task];
            turns = row == null ? turns : Math.max(turns, row[from < 0 ? c.ready.orientations : from]);
        }
        return sum + turns;
    }
}
