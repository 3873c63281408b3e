package shimwright.planted.bench.web;

import shimwright.planted.bench.Main;

/** Planted to break a rule of the house. */
final class StartsTheProgram {
    private StartsTheProgram() {}

    static int number() {
        return Main.number();
    }
}
