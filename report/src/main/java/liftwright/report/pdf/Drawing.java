package liftwright.report.pdf;

import com.openhtmltopdf.css.parser.FSRGBColor;
import com.openhtmltopdf.extend.OutputDevice;
import java.awt.BasicStroke;
import java.awt.Shape;
import java.awt.geom.AffineTransform;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Scanner;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;

/**
 * Draws a picture of the sheet on a page: lines, circles, straight paths and words, in the inks
 * that the print form of {@code pictures.css} gives their classes. Letters are drawn as their
 * outlines, since what they say stands as text beside the picture.
 */
final class Drawing {

    private static final double LETTER = 12.5;
    private static final double HALO = 3;

    private final OutputDevice device;
    private final AffineTransform place;
    private final Typeface regular;
    private final Typeface bold;

    Drawing(OutputDevice device, AffineTransform place, Typeface regular, Typeface bold) {
        this.device = device;
        this.place = place;
        this.regular = regular;
        this.bold = bold;
    }

    void draw(Element svg) {
        NodeList children = svg.getChildNodes();
        for (int k = 0; k < children.getLength(); k++) {
            if (children.item(k) instanceof Element element) {
                one(element);
            }
        }
    }

    private void one(Element element) {
        switch (element.getTagName()) {
            case "line" ->
                    shape(
                            element,
                            new Line2D.Double(
                                    n(element, "x1"),
                                    n(element, "y1"),
                                    n(element, "x2"),
                                    n(element, "y2")));
            case "circle" -> {
                double r = n(element, "r");
                shape(
                        element,
                        new Ellipse2D.Double(
                                n(element, "cx") - r, n(element, "cy") - r, 2 * r, 2 * r));
            }
            case "rect" ->
                    shape(
                            element,
                            new Rectangle2D.Double(
                                    n(element, "x"),
                                    n(element, "y"),
                                    n(element, "width"),
                                    n(element, "height")));
            case "path" -> shape(element, path(element.getAttribute("d")));
            case "text" -> text(element);
            case "title", "desc", "defs" -> {}
            default ->
                    throw new IllegalStateException(
                            "a picture with <" + element.getTagName() + ">");
        }
    }

    private static double n(Element element, String name) {
        return Double.parseDouble(element.getAttribute(name));
    }

    /** Moves and straight lines, absolute, as {@code Canvas} writes them. */
    static Path2D path(String d) {
        var path = new Path2D.Double();
        var scanner = new Scanner(d.replaceAll("([MLZ])", " $1 ").replace(',', ' '));
        scanner.useDelimiter("\\s+");
        String step = "L";
        while (scanner.hasNext()) {
            String next = scanner.next();
            if (next.isEmpty()) {
                continue;
            }
            if (next.equals("M") || next.equals("L")) {
                step = next;
            } else if (next.equals("Z")) {
                path.closePath();
            } else {
                double x = Double.parseDouble(next);
                double y = Double.parseDouble(scanner.next());
                if (step.equals("M")) {
                    path.moveTo(x, y);
                } else {
                    path.lineTo(x, y);
                }
            }
        }
        return path;
    }

    private void shape(Element element, Shape shape) {
        Ink ink = Ink.of(element.getAttribute("class"));
        switch (ink.fill()) {
            case Ink.Fill.None _ -> {}
            case Ink.Fill.Grey(int level) -> fill(shape, level);
            case Ink.Fill.Hatch hatch -> hatch(shape, hatch);
        }
        if (ink.widthPx() > 0) {
            stroke(shape, ink);
        }
    }

    private void stroke(Shape shape, Ink ink) {
        double scale = place.getScaleX();
        float[] dash = new float[ink.dash().size()];
        for (int k = 0; k < dash.length; k++) {
            dash[k] = (float) (scale * ink.dash().get(k));
        }
        device.setColor(grey(ink.line()));
        device.setStroke(
                new BasicStroke(
                        (float) (scale * ink.widthPx()),
                        BasicStroke.CAP_BUTT,
                        BasicStroke.JOIN_ROUND,
                        10,
                        dash.length == 0 ? null : dash,
                        0));
        device.draw(place.createTransformedShape(shape));
    }

    private void fill(Shape shape, int level) {
        device.setColor(grey(level));
        device.fill(place.createTransformedShape(shape));
    }

    private static FSRGBColor grey(int level) {
        return new FSRGBColor(level, level, level);
    }

    private void hatch(Shape shape, Ink.Fill.Hatch hatch) {
        Rectangle2D area = shape.getBounds2D();
        device.pushClip(place.createTransformedShape(shape));
        double step = hatch.step();
        double lean = hatch.slanted() ? area.getHeight() : 0;
        List<Double> none = List.of();
        if (hatch.slanted()) {
            double first = step * Math.floor((area.getMinX() - lean) / step);
            for (double x = first; x < area.getMaxX() + lean; x += step) {
                stroke(
                        new Line2D.Double(x, area.getMaxY(), x + lean, area.getMinY()),
                        new Ink(new Ink.Fill.None(), 0, hatch.widthPx(), none));
            }
        } else {
            double first = step * Math.floor(area.getMinY() / step);
            for (double y = first; y < area.getMaxY(); y += step) {
                stroke(
                        new Line2D.Double(area.getMinX(), y, area.getMaxX(), y),
                        new Ink(new Ink.Fill.None(), 0, hatch.widthPx(), hatch.dots()));
            }
        }
        device.popClip();
    }

    private void text(Element element) {
        List<String> classes = List.of(element.getAttribute("class").split(" "));
        Typeface face = classes.contains("strong") || classes.contains("name") ? bold : regular;
        String words = element.getTextContent() == null ? "" : element.getTextContent();
        double width = face.width(words, LETTER);
        double left =
                switch (element.getAttribute("text-anchor")) {
                    case "middle" -> width / 2;
                    case "end" -> width;
                    default -> 0;
                };
        var at = AffineTransform.getTranslateInstance(n(element, "x") - left, n(element, "y"));
        Shape letters = at.createTransformedShape(face.outline(words, LETTER));
        if (classes.contains("over") || classes.contains("name")) {
            stroke(letters, new Ink(new Ink.Fill.None(), 255, HALO, List.of()));
        }
        fill(letters, classes.contains("soft") ? 0x3d : 0);
    }
}
