package shimwright.planted.rebuild.job;

/** Planted to break a rule of the house. */
final class Speaks {
    private Speaks() {}

    static void up() {
        System.out.println("hello");
    }
}
