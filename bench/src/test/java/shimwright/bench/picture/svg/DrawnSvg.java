package shimwright.bench.picture.svg;

import java.awt.geom.Rectangle2D;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A picture read back as XML, for the tests. */
public record DrawnSvg(String source, Document document) {

    public static DrawnSvg of(String svg) {
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setNamespaceAware(true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document = factory.newDocumentBuilder().parse(new InputSource(new StringReader(svg)));
            return new DrawnSvg(svg, document);
        } catch (ParserConfigurationException | org.xml.sax.SAXException | java.io.IOException e) {
            throw new AssertionError("not well-formed XML: " + e.getMessage(), e);
        }
    }

    public Element root() {
        return document.getDocumentElement();
    }

    public List<Element> all(String tag) {
        NodeList found = document.getElementsByTagNameNS("*", tag);
        return IntStream.range(0, found.getLength())
                .mapToObj(i -> (Element) found.item(i))
                .toList();
    }

    public List<Element> withAttribute(String name) {
        return all("*").stream().filter(e -> e.hasAttribute(name)).toList();
    }

    public List<String> texts() {
        return all("text").stream().map(Element::getTextContent).toList();
    }

    public double width() {
        return Double.parseDouble(root().getAttribute("width"));
    }

    public double height() {
        return Double.parseDouble(root().getAttribute("height"));
    }

    /** A text with the room it takes. */
    public record Words(String text, Rectangle2D box) {}

    public List<Words> words() {
        List<Words> words = new ArrayList<>();
        for (Element e : all("text")) {
            double size = number(e, "font-size");
            boolean bold = "bold".equals(e.getAttribute("font-weight"));
            double width = TextMetrics.width(e.getTextContent(), size, bold);
            String anchor = e.getAttribute("text-anchor");
            double shift = "middle".equals(anchor) ? width / 2 : "end".equals(anchor) ? width : 0;
            Rectangle2D box =
                    new Rectangle2D.Double(number(e, "x") - shift, number(e, "y") - 0.76 * size, width, 0.95 * size);
            words.add(new Words(e.getTextContent(), box));
        }
        return words;
    }

    private static double number(Element e, String name) {
        return Double.parseDouble(e.getAttribute(name));
    }

    /** Pairs of texts that cover each other. */
    public List<String> overlaps() {
        List<Words> words = words();
        List<String> pairs = new ArrayList<>();
        for (int i = 0; i < words.size(); i++) {
            for (int j = i + 1; j < words.size(); j++) {
                if (words.get(i).box().intersects(words.get(j).box())) {
                    pairs.add(words.get(i).text() + " | " + words.get(j).text());
                }
            }
        }
        return pairs;
    }

    /** Texts that run off the sheet. */
    public List<String> outside() {
        Rectangle2D sheet = new Rectangle2D.Double(-0.5, -0.5, width() + 1, height() + 1);
        return words().stream()
                .filter(w -> !sheet.contains(w.box()))
                .map(Words::text)
                .toList();
    }
}
