package shimwright.bench.picture;

import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import shimwright.bench.picture.Plots.Page;
import shimwright.bench.picture.Plots.Share;
import shimwright.bench.picture.Svg.Letter;
import shimwright.bench.picture.Svg.Stroke;

/** Where the doubt comes from: one bar an influence, its length the share of the variance. */
final class BudgetPlot {
    private static final double ROW = 26;
    private static final double NARROW = 560;

    private BudgetPlot() {}

    static String draw(String title, List<Share> shares, Page page) {
        boolean narrow = page.width() < NARROW;
        double row = narrow ? ROW + 14 : ROW;
        double names = shares.stream()
                .mapToDouble(s -> Type.width(s.name(), Ink.SMALL, false))
                .max()
                .orElse(0);
        double left = narrow ? Sheetlet.MARGIN : Sheetlet.MARGIN + Math.min(names, 0.45 * page.width()) + 12;
        double room = page.width() - Sheetlet.MARGIN - left - 52;
        double most = shares.stream().mapToDouble(Share::share).max().orElse(1);
        Svg svg = new Svg();
        svg.root(page.idPrefix(), page.width(), Sheetlet.TITLE + row * shares.size() + 14, title, about(shares));
        Sheetlet.title(svg, title, page.width());
        double y = Sheetlet.TITLE + row / 2 + 2;
        for (Share share : shares) {
            double bar = narrow ? y + 7 : y;
            double width = most > 0 ? Math.max(room * share.share() / most, 0.5) : 0.5;
            Rectangle2D box = new Rectangle2D.Double(left, bar - 7, width, 14);
            svg.path(Svg.data(box), Ink.SECTION, new Stroke(Ink.INK, 0));
            svg.path(Hatch.lines(box, 45, 4.6), "", new Stroke(Ink.INK, 0.6));
            svg.path(Svg.data(box), "", new Stroke(Ink.INK, 1.1));
            svg.text(left + width + 7, bar + 4.2, percent(share.share()), Letter.start(Ink.SMALL));
            double nameRoom = narrow ? page.width() - 2 * Sheetlet.MARGIN : left - Sheetlet.MARGIN - 10;
            String name = Type.fit(share.name(), Ink.SMALL, false, nameRoom);
            svg.text(Sheetlet.MARGIN, narrow ? y - 6 : y + 4.2, name, Letter.start(Ink.SMALL));
            y += row;
        }
        return svg.done();
    }

    private static String percent(double share) {
        if (share > 0 && share < 0.005) {
            return "under 1 %";
        }
        return BigDecimal.valueOf(100 * share).setScale(0, RoundingMode.HALF_UP).toPlainString() + " %";
    }

    private static String about(List<Share> shares) {
        StringBuilder text = new StringBuilder("Shares of the doubt:");
        shares.forEach(s -> text.append(' ')
                .append(s.name())
                .append(' ')
                .append(percent(s.share()))
                .append(';'));
        return text.toString();
    }
}
