package shimwright.bench.picture.plot;

import java.awt.geom.Rectangle2D;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import shimwright.bench.picture.plot.Plots.Page;
import shimwright.bench.picture.plot.Plots.Share;
import shimwright.bench.picture.svg.DrawingStyle;
import shimwright.bench.picture.svg.Hatching;
import shimwright.bench.picture.svg.Svg;
import shimwright.bench.picture.svg.Svg.Letter;
import shimwright.bench.picture.svg.Svg.Stroke;
import shimwright.bench.picture.svg.TextMetrics;

/** Where the uncertainty comes from: one bar an influence, its length the share of the variance. */
final class BudgetPlot {
    private static final double ROW = 26;
    private static final double NARROW = 560;

    private BudgetPlot() {}

    static String draw(String title, List<Share> shares, Page page) {
        double widest = shares.stream()
                .mapToDouble(s -> TextMetrics.width(s.name(), DrawingStyle.SMALL, false))
                .max()
                .orElse(0);
        boolean narrow = page.width() < NARROW || widest > 0.45 * page.width();
        double row = narrow ? ROW + 14 : ROW;
        double left = narrow ? PlotLayout.MARGIN : PlotLayout.MARGIN + widest + 12;
        double room = page.width() - PlotLayout.MARGIN - left - 52;
        double most = shares.stream().mapToDouble(Share::share).max().orElse(1);
        Svg svg = new Svg();
        svg.root(page.idPrefix(), page.width(), PlotLayout.TITLE + row * shares.size() + 14, title, about(shares));
        PlotLayout.title(svg, title, page.width());
        double y = PlotLayout.TITLE + row / 2 + 2;
        for (Share share : shares) {
            double bar = narrow ? y + 7 : y;
            double width = most > 0 ? Math.max(room * share.share() / most, 0.5) : 0.5;
            Rectangle2D box = new Rectangle2D.Double(left, bar - 7, width, 14);
            svg.path(Svg.data(box), DrawingStyle.SECTION, new Stroke(DrawingStyle.INK, 0));
            svg.path(Hatching.lines(box, 45, 4.6), "", new Stroke(DrawingStyle.INK, 0.6));
            svg.path(Svg.data(box), "", new Stroke(DrawingStyle.INK, 1.1));
            svg.text(left + width + 7, bar + 4.2, percent(share.share()), Letter.start(DrawingStyle.SMALL));
            double nameRoom = narrow ? page.width() - 2 * PlotLayout.MARGIN : left - PlotLayout.MARGIN - 10;
            String name = TextMetrics.fit(share.name(), DrawingStyle.SMALL, false, nameRoom);
            svg.text(PlotLayout.MARGIN, narrow ? y - 6 : y + 4.2, name, Letter.start(DrawingStyle.SMALL));
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
        StringBuilder text = new StringBuilder("Shares of the uncertainty:");
        shares.forEach(s -> text.append(' ')
                .append(s.name())
                .append(' ')
                .append(percent(s.share()))
                .append(';'));
        return text.toString();
    }
}
