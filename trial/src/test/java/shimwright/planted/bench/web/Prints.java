package shimwright.planted.bench.web;

import shimwright.planted.bench.print.Print;

/** Planted to break a rule of the house. */
final class Prints {
    private Prints() {}

    static int number() {
        return Print.number();
    }
}
