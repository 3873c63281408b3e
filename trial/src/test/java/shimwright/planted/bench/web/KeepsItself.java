package shimwright.planted.bench.web;

import shimwright.planted.rebuild.job.JobLog;

/** Planted to break a rule of the house. */
final class KeepsItself {
    private KeepsItself() {}

    static int number() {
        return JobLog.number();
    }
}
