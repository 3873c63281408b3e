package shimwright.planted.bench.web;

import shimwright.planted.bench.OfTheProgram;

/** Planted to break a rule of the house. */
final class StartsTheProgram {
    private StartsTheProgram() {}

    static int number() {
        return OfTheProgram.number();
    }
}
