package shimwright.bench.web.kit;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;
import shimwright.rebuild.unit.begin.Construction;
import shimwright.rebuild.unit.begin.Construction.Housing;
import shimwright.rebuild.unit.begin.Construction.Layout;
import shimwright.rebuild.unit.begin.Construction.Reverse;
import shimwright.rebuild.unit.begin.Construction.Shift;
import shimwright.rebuild.unit.begin.FirstUnit;

/** How a box is built, as it was typed: of the page and of the door for programs alike. */
public final class ConstructionReader {
    private ConstructionReader() {}

    /**
     * What was typed.
     *
     * @param faults to which what is missing or cannot be is added; what is read is then not to be used
     */
    public static Construction read(Form form, List<Refusal> faults) {
        Layout layout = one(form, "layout", Layout.class, "Say how the shafts lie", faults);
        Set<Housing> housings = EnumSet.noneOf(Housing.class);
        for (Housing housing : Housing.values()) {
            if (form.has("housing-" + housing.name())) {
                housings.add(housing);
            }
        }
        int gears = whole(form, "gears", Construction.FEWEST, Construction.MOST, "forward gears", faults);
        List<Integer> cones = new ArrayList<>();
        for (int gear = 1; gear <= gears; gear++) {
            cones.add(whole(form, "cones" + gear, 0, 3, "cones of " + FirstUnit.gear(gear), faults));
        }
        boolean line = layout == Layout.IN_LINE;
        int straight = line ? whole(form, "straight", 0, Construction.MOST, "gear straight through", faults) : 0;
        int counters = line ? whole(form, "countershafts", 1, 3, "countershafts", faults) : 0;
        Reverse reverse = one(form, "reverse", Reverse.class, "Say how reverse engages", faults);
        Shift shift = one(form, "shift", Shift.class, "Say how the forks are moved", faults);
        return new Construction(layout, housings, cones, straight, reverse, shift, counters);
    }

    private static <E extends Enum<E>> E one(Form form, String name, Class<E> type, String hint, List<Refusal> faults) {
        for (E constant : type.getEnumConstants()) {
            if (constant.name().equals(form.raw(name))) {
                return constant;
            }
        }
        faults.add(Refusal.of(name, "nothing chosen", hint));
        return type.getEnumConstants()[0];
    }

    private static int whole(Form form, String name, int least, int most, String words, List<Refusal> faults) {
        String typed = form.raw(name).strip();
        if (typed.matches("[0-9]{1,3}") && Integer.parseInt(typed) >= least && Integer.parseInt(typed) <= most) {
            return Integer.parseInt(typed);
        }
        String fact = typed.isEmpty() ? "nothing typed" : "\"" + typed + "\" cannot be";
        faults.add(new Refusal(name, words, fact, "Give a whole number from " + least + " to " + most));
        return least;
    }
}
