package shimwright.bench.web;

import shimwright.rebuild.clearance.Session;
import shimwright.rebuild.job.Entry.ClearanceAccepted;
import shimwright.rebuild.unit.Clearance;

/** The plots of a session and of the record. */
final class Pictures {
    private Pictures() {}

    static String series(Session session, Show show) {
        return "";
    }

    static String packs(Session session, Show show) {
        return "";
    }

    static String limits(Session session, Show show) {
        return "";
    }

    static String budget(Session session, Show show) {
        return "";
    }

    static String accepted(Clearance clearance, ClearanceAccepted accepted, Show show) {
        return "";
    }
}
