package shimwright.rebuild.unit.begin;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import shimwright.mechanics.outcome.Refusal;

/**
 * How a gearbox is built, as it can be seen from outside and in the hand.
 *
 * @param layout how the shafts lie
 * @param housings what there is besides the main case
 * @param cones friction cones of the synchronizer of each forward gear, the first gear first: 0 where there is none, 1 to 3
 * @param straight the gear that runs straight through, 1 for the first; 0 where there is none
 * @param reverse how reverse engages
 * @param shift how the forks are moved
 * @param countershafts 1, or 3 where a set of them stands round the main shaft; 0 where the box has two shafts
 */
public record Construction(
        Layout layout,
        Set<Housing> housings,
        List<Integer> cones,
        int straight,
        Reverse reverse,
        Shift shift,
        int countershafts) {
    /** The fewest forward gears. */
    public static final int FEWEST = 3;

    /** The most forward gears. */
    public static final int MOST = 7;

    private static final int MOST_CONES = 3;

    public Construction {
        housings = Set.copyOf(housings);
        cones = List.copyOf(cones);
    }

    /** How the shafts lie. */
    public enum Layout {
        ACROSS("two shafts, lying across the vehicle, final drive inside"),
        ALONG("two shafts, lying along the vehicle, final drive inside"),
        IN_LINE("input and output in one line, countershaft beside them");

        private final String words;

        Layout(String words) {
            this.words = words;
        }

        /** In the words of the page. */
        public String words() {
            return words;
        }

        /** True where the final drive is in the same case. */
        public boolean finalDrive() {
            return this != IN_LINE;
        }
    }

    /** What there is besides the main case. */
    public enum Housing {
        BELL("separate bell housing"),
        PLATE("intermediate plate between two cases"),
        SPLIT("case split along the shafts"),
        END_COVER("end cover over the last gear"),
        TAIL("tail housing");

        private final String words;

        Housing(String words) {
            this.words = words;
        }

        /** In the words of the page. */
        public String words() {
            return words;
        }
    }

    /** How reverse engages. */
    public enum Reverse {
        SLIDING("a gear slides into mesh"),
        SYNCHRONIZED("a sleeve, with or without a cone");

        private final String words;

        Reverse(String words) {
            this.words = words;
        }

        /** In the words of the page. */
        public String words() {
            return words;
        }
    }

    /** How the forks are moved. */
    public enum Shift {
        RAILS("a rail for each fork"),
        SINGLE_RAIL("one rail for all forks"),
        CABLES("cables to a selector shaft");

        private final String words;

        Shift(String words) {
            this.words = words;
        }

        /** In the words of the page. */
        public String words() {
            return words;
        }
    }

    /** How many forward gears there are. */
    public int gears() {
        return cones.size();
    }

    /** What cannot be, each with what to do; empty where such a box can be. */
    public List<Refusal> faults() {
        List<Refusal> faults = new ArrayList<>();
        if (gears() < FEWEST || gears() > MOST) {
            faults.add(Refusal.of(
                    "gears",
                    gears() + " forward gears",
                    "Count them: " + FEWEST + " to " + MOST + " can be begun here"));
        }
        for (int gear = 1; gear <= gears(); gear++) {
            int count = cones.get(gear - 1);
            if (count < 0 || count > MOST_CONES) {
                faults.add(new Refusal(
                        "cones[" + (gear - 1) + "]",
                        Names.gear(gear),
                        count + " cones",
                        "Give 0 where it has no synchronizer, else 1 to " + MOST_CONES));
            }
        }
        if (straight < 0 || straight > gears() || (straight > 0 && layout.finalDrive())) {
            faults.add(Refusal.of(
                    "straight",
                    layout.finalDrive()
                            ? "a box with two shafts has no gear straight through"
                            : "there is no such gear",
                    "Choose none, or the gear in which input and output turn as one"));
        }
        if (layout == Layout.IN_LINE ? countershafts != 1 && countershafts != 3 : countershafts != 0) {
            faults.add(Refusal.of(
                    "countershafts",
                    countershafts + " countershafts",
                    layout == Layout.IN_LINE ? "Give 1, or 3 for a set of them" : "A box with two shafts has none"));
        }
        if (layout.finalDrive() && housings.contains(Housing.TAIL)) {
            faults.add(Refusal.of(
                    "housings",
                    "a tail housing with the final drive inside",
                    "Leave it out, or choose the layout with the shafts in line"));
        }
        if (housings.contains(Housing.SPLIT) && housings.contains(Housing.PLATE)) {
            faults.add(Refusal.of(
                    "housings",
                    "a case split along the shafts and an intermediate plate",
                    "Choose the joint in which the shafts stand while it is built"));
        }
        return faults;
    }
}
