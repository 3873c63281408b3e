package shimwright.bench.picture;

/** The colours, line weights and letter sizes of every picture. Colour never carries meaning alone. */
final class Ink {
    static final String INK = "#2b2622";
    static final String BLUE = "#1f4e8c";
    static final String BLUE_WASH = "#d9e4f1";
    static final String GREY = "#857b6c";
    static final String SOFT = "#5f574b";
    static final String FAINT = "#c9bfac";
    static final String STEEL = "#e9e1d0";
    static final String SECTION = "#faf6ec";
    static final String CASTING = "#efe6d3";
    static final String CASTING_LINE = "#a2947d";
    static final String BRONZE = "#d6c7a8";

    static final String FONT = "DejaVu Sans, sans-serif";
    static final double TEXT = 13;
    static final double SMALL = 12;
    static final double HEAD = 15;

    static final String CENTRE_DASH = "14 3 3 3";
    static final String COMING_DASH = "4 3";
    static final String HIDDEN_DASH = "5 2.5";

    private Ink() {}
}
