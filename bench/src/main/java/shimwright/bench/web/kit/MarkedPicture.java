package shimwright.bench.web.kit;

import java.util.List;
import java.util.stream.Collectors;
import shimwright.bench.picture.photo.MarkDrawing;
import shimwright.rebuild.inspect.JudgedPiece;
import shimwright.rebuild.job.Entry;
import shimwright.rebuild.job.Job;
import shimwright.rebuild.job.Job.Said;
import shimwright.rebuild.unit.model.Unit;

/**
 * A picture of a job with what was drawn on it.
 *
 * @param picture the picture
 * @param about what it is of, in words; empty for the job as a whole
 * @param drawing that lies over it; empty where nothing was drawn
 * @param words caption and what the marks show; may be empty
 */
public record MarkedPicture(Said<Entry.PictureAdded> picture, String about, String drawing, String words) {
    /** Beside what it is about on a page, px. */
    private static final double ON_PAGE = 220;

    /** A picture as a page shows it beside what it is about. */
    public static MarkedPicture of(Job job, Unit unit, Said<Entry.PictureAdded> picture) {
        return of(job, unit, picture, ON_PAGE);
    }

    /**
     * A picture some px wide.
     *
     * @param wide about as wide as it will be shown
     */
    public static MarkedPicture of(Job job, Unit unit, Said<Entry.PictureAdded> picture, double wide) {
        List<Entry.PictureMarked> drawn =
                job.marksOn(picture).stream().map(Said::what).toList();
        String said = drawn.stream()
                .map(Entry.PictureMarked::words)
                .filter(words -> !words.isBlank())
                .collect(Collectors.joining(", "));
        String caption = picture.what().caption();
        return new MarkedPicture(
                picture,
                about(unit, picture.what().about()),
                drawn.isEmpty() ? "" : MarkDrawing.over("marks-" + picture.number(), drawn, wide),
                caption.isBlank() || said.isEmpty() ? caption + said : caption + ", " + said);
    }

    /** True where something is drawn on it. */
    public boolean marked() {
        return !drawing.isEmpty();
    }

    /** What notes and pictures are about, in words; empty for the job as a whole. */
    public static String about(Unit unit, String about) {
        if (about.startsWith("part ")) {
            String part = about.substring("part ".length());
            return JudgedPiece.part(unit, part).map(JudgedPiece::name).orElse(part);
        }
        return switch (about) {
            case "job" -> "";
            case "strip" -> "at the strip-down";
            case "orders" -> "the kit laid out";
            default -> about.startsWith("order ") ? about.substring("order ".length()) : about;
        };
    }

    /** The page of the job that shows pictures about it. */
    public static String page(String about) {
        String rest = about.substring(about.indexOf(' ') + 1);
        if (about.startsWith("step ")) {
            return "/build?step=" + Pages.encoded(rest);
        }
        if (about.startsWith("part ")) {
            return "/parts/" + Pages.encoded(rest);
        }
        return switch (about) {
            case "strip" -> "/strip";
            case "orders" -> "/orders";
            default -> about.startsWith("order ") ? "/orders" : "/record";
        };
    }
}
