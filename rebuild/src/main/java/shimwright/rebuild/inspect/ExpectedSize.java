package shimwright.rebuild.inspect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import shimwright.mechanics.quantity.Kind;
import shimwright.rebuild.unit.model.Quantity;
import shimwright.rebuild.unit.model.UnitType.Check;
import shimwright.rebuild.unit.model.WearLimit;
import shimwright.rebuild.unit.model.WearLimit.Direction;

/**
 * Sizes that a part can have, from what the unit file says of it. The widths are common practice, no source: a part that
 * is worn out ten times over is still believed, one that is half or twice its size is asked about.
 *
 * @param low smallest that a sound part has, SI
 * @param high largest that a sound part has
 * @param least smallest that is believed without asking
 * @param most largest that is believed without asking
 */
record ExpectedSize(double low, double high, double least, double most) {
    /** Limits closer together than this part of the size are limits of a size, not of a play or a run-out. */
    private static final double NARROW = 0.2;
    /** Worn by this many times what is allowed. */
    private static final double WORN = 10;
    /** A bore or a thickness is never off by more than this part of itself in the direction in which it does not wear. */
    private static final double OFF = 0.01;
    /** Where only one limit of a size is known, so much further is believed. */
    private static final double FAR = 0.05;
    /** Readings of one place after the other lie within this many times the spread that is allowed. */
    private static final double SCATTER = 20;
    /** A length written with this many digits is a size: nobody writes a play or a run-out so. */
    private static final int DIGITS_OF_A_SIZE = 4;

    /** True where it is a size: its ends are close together against itself. */
    boolean size() {
        return low > 0 && high - low <= NARROW * high;
    }

    boolean believes(double value) {
        double dust = 1e-9 * Math.max(Math.abs(least), Math.abs(most));
        return value >= least - dust && value <= most + dust;
    }

    /** Whether a sound part could have this size; a fifth of the width and a little of the size are forgiven. */
    boolean sound(double value) {
        double room = (high - low) / 5 + 0.002 * Math.abs(high);
        return value >= low - room && value <= high + room;
    }

    /** Of a wear limit: from new over the limit to worn out ten times over, and hardly any better than new. */
    static Optional<ExpectedSize> of(WearLimit wear) {
        if (wear.limit().isEmpty()) {
            return Optional.empty();
        }
        Quantity limit = wear.limit().get();
        boolean min = wear.direction() == Direction.MIN;
        if (wear.asNew().size() != 2) {
            return min ? floor(limit) : ceiling(limit);
        }
        double newest = wear.asNew().get(0).si();
        double largest = wear.asNew().get(1).si();
        double l = limit.si();
        double band = largest - newest;
        double allowed = min ? newest - l : l - largest;
        boolean size = newest > 0 && band <= NARROW * newest;
        double better = Math.max(Math.max(2 * band, 2 * allowed), 0.005 * Math.abs(largest));
        double worn = Math.max(WORN * allowed, size ? OFF * Math.abs(l) : WORN * band);
        double low = Math.min(newest, l);
        double high = Math.max(largest, l);
        double least = min ? l - worn : newest - better;
        double most = min ? largest + better : l + worn;
        if (low >= 0) {
            least = Math.max(least, size ? low / 2 : 0);
        }
        return Optional.of(new ExpectedSize(low, high, least, size ? Math.min(most, 2 * high) : most));
    }

    /**
     * Of a check: what it may be, one for each nominal where the file says more than one; empty where it says nothing
     * that a size follows from.
     *
     * @param piece number of the piece, from 0; a nominal of its own counts for it alone
     */
    static List<ExpectedSize> of(Check check, int piece) {
        if (check.lower().isPresent() && check.upper().isPresent()) {
            return List.of(between(check.lower().get().si(), check.upper().get().si()));
        }
        if (!check.nominal().isEmpty()) {
            boolean own = !check.pieces().isEmpty()
                    && check.nominal().size() == check.pieces().size();
            List<Quantity> nominals = own ? List.of(check.nominal().get(piece)) : check.nominal();
            List<ExpectedSize> all = new ArrayList<>();
            nominals.forEach(nominal -> all.add(about(nominal.si(), check)));
            return List.copyOf(all);
        }
        return check.upper()
                .flatMap(ExpectedSize::ceiling)
                .or(() -> check.lower().flatMap(ExpectedSize::floor))
                .map(List::of)
                .orElse(List.of());
    }

    /** Of limits alone: one that is a least is of a size, from half of it to twice; one that is a most is of a play or an error of form. */
    static List<ExpectedSize> of(LimitsAlone alone) {
        Optional<Double> low = alone.lower().map(Quantity::si);
        Optional<Double> high = alone.upper().map(Quantity::si);
        if (low.isPresent() && high.isPresent()) {
            return List.of(between(low.get(), high.get()));
        }
        return low
                .map(l -> new ExpectedSize(l, 1.5 * l, l / 2, 2 * l))
                .or(() -> high.map(h -> new ExpectedSize(0, h, 0, h * (1 + WORN))))
                .stream()
                .toList();
    }

    private static ExpectedSize between(double low, double high) {
        double width = high - low;
        if (low > 0 && width <= NARROW * high) {
            return new ExpectedSize(low, high, low / 2, 2 * high);
        }
        double least = low - WORN * width;
        return new ExpectedSize(low, high, low >= 0 ? Math.max(0, least) : least, high + WORN * width);
    }

    private static ExpectedSize about(double nominal, Check check) {
        double spread = check.spread().map(s -> SCATTER * s.si()).orElse(0.0);
        double limit = check.lower()
                .or(check::upper)
                .map(l -> WORN * Math.abs(l.si() - nominal))
                .orElse(0.0);
        double room =
                check.within().map(Quantity::si).orElse(Math.max(Math.max(spread, limit), OFF * Math.abs(nominal)));
        double close = Math.min(room, OFF * Math.abs(nominal));
        return new ExpectedSize(nominal - close, nominal + close, nominal - room, nominal + room);
    }

    private static Optional<ExpectedSize> ceiling(Quantity limit) {
        double l = limit.si();
        if (l <= 0) {
            return Optional.empty();
        }
        return Optional.of(
                isSize(limit)
                        ? new ExpectedSize(l * (1 - OFF), l, l * (1 - FAR), l * (1 + FAR))
                        : new ExpectedSize(0, l, 0, l * (1 + WORN)));
    }

    private static Optional<ExpectedSize> floor(Quantity limit) {
        double l = limit.si();
        if (l <= 0) {
            return Optional.empty();
        }
        return Optional.of(
                isSize(limit)
                        ? new ExpectedSize(l, l * (1 + OFF), l / 2, l * (1 + FAR))
                        : new ExpectedSize(l, 3 * l, 0, WORN * l));
    }

    private static boolean isSize(Quantity limit) {
        String number = limit.text().strip().split("[^0-9.,]", 2)[0];
        String digits = number.replaceAll("[.,]", "").replaceFirst("^0+", "");
        return limit.kind() == Kind.LENGTH && digits.length() >= DIGITS_OF_A_SIZE;
    }
}
