package shimwright.rebuild.sendout;

import java.util.ArrayList;
import java.util.List;
import shimwright.mechanics.quantity.Kind;
import shimwright.mechanics.quantity.Range;

/** Work other than on a spline that is done elsewhere, and what its sheet has to say. */
public enum OtherWork {
    GROUND_SEAT("seat on a shaft, built up or sleeved and ground", Shape.SHAFT, Size.TO_ITS_MATE),
    SLEEVED_BORE("bearing seat or bush bore, bored and sleeved", Shape.BORE, Size.TO_ITS_MATE),
    REGROUND_SHAFT("cylinder ground to a finished size", Shape.SHAFT, Size.TYPED),
    REGROUND_BORE("bore ground or honed to a finished size", Shape.BORE, Size.TYPED),
    SEAL_TRACK("seal track, built up or sleeved and ground", Shape.SHAFT, Size.FOR_A_SEAL),
    FLAT_FACE("joint face made flat", Shape.FACE, Size.NONE),
    CRACK_CHECK("looked at for cracks, nothing else", Shape.NONE, Size.NONE);

    private static final Range SIZE = new Range(1e-3, 2);
    private static final Range SMALL = new Range(1e-6, 2e-3);
    private static final Range PLAY = new Range(-1e-3, 2e-3);
    private static final Range HRC = new Range(15, 70);
    private static final Range MICROMETRES = new Range(0.01, 25);

    private final String words;
    private final Shape shape;
    private final Size size;

    OtherWork(String words, Shape shape, Size size) {
        this.words = words;
        this.shape = shape;
        this.size = size;
    }

    /** What is worked on. */
    enum Shape {
        SHAFT,
        BORE,
        FACE,
        NONE
    }

    /** Where the finished size comes from. */
    enum Size {
        TO_ITS_MATE,
        TYPED,
        FOR_A_SEAL,
        NONE
    }

    /** How a fact is typed. */
    public enum Typed {
        WORDS,
        NUMBER,
        READINGS
    }

    /**
     * Something that the sheet says.
     *
     * @param name under which it is typed
     * @param label in words
     * @param typed how
     * @param kind of its number; a plain one for words
     * @param range of its number, SI
     * @param needed false where it may be left empty
     */
    public record Fact(String name, String label, Typed typed, Kind kind, Range range, boolean needed) {}

    /** What it is, in words. */
    public String words() {
        return words;
    }

    /** The same with a capital, for a button. */
    public String heading() {
        return Character.toUpperCase(words.charAt(0)) + words.substring(1);
    }

    Shape shape() {
        return shape;
    }

    Size size() {
        return size;
    }

    boolean round() {
        return shape == Shape.SHAFT || shape == Shape.BORE;
    }

    /** True where weld, spray or a shrunk sleeve brings heat to it. */
    boolean heated() {
        return size == Size.TO_ITS_MATE || size == Size.FOR_A_SEAL;
    }

    /** What is to be typed for its sheet, in order. */
    public List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        switch (size) {
            case TO_ITS_MATE -> {
                mate(facts, true);
                facts.add(length("fitLeast", "Play wanted at least, below 0 is tight", PLAY, true));
                facts.add(length("fitMost", "Play wanted at most, below 0 is tight", PLAY, true));
            }
            case TYPED -> {
                facts.add(length("sizeLeast", "Finished size at least", SIZE, true));
                facts.add(length("sizeMost", "Finished size at most", SIZE, true));
                mate(facts, false);
            }
            case FOR_A_SEAL -> {
                facts.add(length("shaft", "Shaft for the seal, nominal", new Range(0.005, 0.12), true));
                facts.add(length("bore", "Bore for the seal, nominal", new Range(0.008, 0.12), true));
            }
            default -> {
                // has no diameter
            }
        }
        if (round()) {
            facts.add(new Fact("worn", "As worn, readings apart by spaces", Typed.READINGS, Kind.LENGTH, SIZE, false));
            facts.add(length("length", "Length of it along the axis", SIZE, true));
            facts.add(length("round", "Out of round at most", SMALL, true));
            facts.add(length("runOut", "Run-out at most", SMALL, true));
            facts.add(words("datum", "Run-out against what", true));
        }
        if (shape == Shape.FACE) {
            facts.add(length("flat", "Out of flat at most", SMALL, true));
            facts.add(length("thick", "Height that must be left at least", SIZE, true));
            facts.add(words("datum", "Height from what to what", true));
        }
        if (shape != Shape.NONE) {
            facts.add(new Fact(
                    "roughMost",
                    "Roughness Ra at most, µm",
                    Typed.NUMBER,
                    Kind.NUMBER,
                    MICROMETRES,
                    shape == Shape.FACE));
        }
        last(facts);
        return List.copyOf(facts);
    }

    private void last(List<Fact> facts) {
        if (shape == Shape.SHAFT) {
            facts.add(new Fact("hardLeast", "Hardness at least, HRC", Typed.NUMBER, Kind.NUMBER, HRC, false));
            facts.add(new Fact("hardMost", "Hardness at most, HRC", Typed.NUMBER, Kind.NUMBER, HRC, false));
        }
        if (shape == Shape.NONE) {
            facts.add(words("where", "Where it is to be looked at", true));
        } else {
            facts.add(words("keepCool", "What must not get hot, and how hot it may get", heated()));
        }
        facts.add(words("cracks", "Looked at for cracks: how, before and after", heated() || shape == Shape.NONE));
        facts.add(words("how", "What else is asked for", false));
    }

    private void mate(List<Fact> facts, boolean needed) {
        String mate = shape == Shape.SHAFT ? "Bore it goes into" : "What goes into it";
        facts.add(new Fact("mate", mate + ", readings apart by spaces", Typed.READINGS, Kind.LENGTH, SIZE, needed));
        facts.add(length("mateU", "Standard uncertainty of such a reading", new Range(0, 1e-4), needed));
    }

    private static Fact length(String name, String label, Range range, boolean needed) {
        return new Fact(name, label, Typed.NUMBER, Kind.LENGTH, range, needed);
    }

    private static Fact words(String name, String label, boolean needed) {
        return new Fact(name, label, Typed.WORDS, Kind.NUMBER, new Range(0, 0), needed);
    }
}
