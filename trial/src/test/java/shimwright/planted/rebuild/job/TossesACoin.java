package shimwright.planted.rebuild.job;

import java.util.Random;

/** Planted to break a rule of the house. */
final class TossesACoin {
    private TossesACoin() {}

    static boolean heads() {
        return new Random().nextBoolean();
    }
}
