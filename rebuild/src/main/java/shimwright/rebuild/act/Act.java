package shimwright.rebuild.act;

import shimwright.mechanics.outcome.Outcome;
import shimwright.rebuild.workbench.Workbench;

/** One thing that a person can do, with what was typed for it. */
public interface Act {
    /** An act on a job that is open. */
    interface OfJob extends Act {
        /**
         * What it comes to.
         *
         * @param bench the job as it lies there
         * @param around the shop, and the units of the person
         * @return the entries, or every reason why it cannot be done now
         */
        Outcome<ActResult> on(Workbench bench, ActContext around);

        /**
         * True where what is wrong with one input is found whatever the others are: it is asked as well where an input could not be
         * read, so that all faults are said at once.
         */
        default boolean saysAllAtOnce() {
            return false;
        }

        /** True where it takes pieces out of the drawer or puts some in, so that two jobs must not decide at once. */
        default boolean usesDrawer() {
            return false;
        }
    }

    /** An act on the shop: the drawer, gauges, what the shop is, a job that is opened. */
    interface OfShop extends Act {
        /**
         * What it comes to.
         *
         * @param around the shop, and the units of the person
         * @return the entries, or every reason why it cannot be done now
         */
        Outcome<ActResult> on(ActContext around);
    }

    /** The input of this act for which a rule of its entries uses another key. */
    default String input(String key) {
        return key;
    }
}
