package shimwright.bench.picture.svg;

/** The colours, line weights and letter sizes of every picture. Colour never carries meaning alone. */
public final class DrawingStyle {
    public static final String INK = "#2b2622";
    public static final String BLUE = "#1f4e8c";
    public static final String BLUE_WASH = "#d9e4f1";
    public static final String GREY = "#857b6c";
    public static final String SOFT = "#5f574b";
    public static final String FAINT = "#c9bfac";
    public static final String STEEL = "#e9e1d0";
    public static final String SECTION = "#faf6ec";
    public static final String CASTING = "#efe6d3";
    public static final String CASTING_LINE = "#a2947d";
    public static final String BRONZE = "#d6c7a8";

    public static final String SAGE = "#dde6d2";
    public static final String STRAW = "#f6e7b4";
    public static final String OCHRE = "#efcf9c";
    public static final String BRICK = "#e7b9a6";

    public static final String FONT = "DejaVu Sans, sans-serif";
    public static final double TEXT = 13;
    public static final double SMALL = 12;
    public static final double HEAD = 15;

    public static final String CENTRE_DASH = "14 3 3 3";
    public static final String COMING_DASH = "4 3";
    public static final String HIDDEN_DASH = "5 2.5";

    private DrawingStyle() {}
}
