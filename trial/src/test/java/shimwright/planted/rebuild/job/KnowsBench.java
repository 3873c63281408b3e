package shimwright.planted.rebuild.job;

import shimwright.planted.bench.web.Web;

/** Planted to break a rule of the house. */
final class KnowsBench {
    private KnowsBench() {}

    static int number() {
        return Web.number();
    }
}
