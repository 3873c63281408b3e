package shimwright.planted.mechanics.axial;

/** Planted to break a rule of the house: its name stands twice. */
final class Twice {
    private Twice() {}
}
