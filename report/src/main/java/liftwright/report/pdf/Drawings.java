package liftwright.report.pdf;

import com.openhtmltopdf.css.sheet.FontFaceRule;
import com.openhtmltopdf.css.style.CssContext;
import com.openhtmltopdf.extend.OutputDevice;
import com.openhtmltopdf.extend.SVGDrawer;
import com.openhtmltopdf.layout.SharedContext;
import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.render.Box;
import com.openhtmltopdf.render.RenderingContext;
import java.awt.geom.AffineTransform;
import java.io.File;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.w3c.dom.Element;

/** Hands the pictures of the sheet to {@link Drawing}; they need no other SVG than our own. */
final class Drawings implements SVGDrawer {

    private final Typeface regular;
    private final Typeface bold;

    Drawings(Typeface regular, Typeface bold) {
        this.regular = regular;
        this.bold = bold;
    }

    /**
     * @param cssWidth as the style sheet asks, dots; less than 0 where it does not
     */
    @Override
    public SVGImage buildSVGImage(
            Element svg,
            Box box,
            CssContext context,
            double cssWidth,
            double cssHeight,
            double dotsPerPixel) {
        double width = number(svg, "width");
        double height = number(svg, "height");
        double scale = cssWidth > 0 && width > 0 ? cssWidth / width : dotsPerPixel;
        return new Placed(svg, scale, width * scale, height * scale);
    }

    private static double number(Element svg, String name) {
        return Double.parseDouble(svg.getAttribute(name));
    }

    @Override
    public void importFontFaceRules(@Nullable List<FontFaceRule> rules, SharedContext shared) {}

    @Override
    public void addFontFile(File file, String family, Integer weight, FontStyle style) {}

    @Override
    public void close() {}

    private final class Placed implements SVGImage {
        private final Element svg;
        private final double scale;
        private final double widthDots;
        private final double heightDots;

        Placed(Element svg, double scale, double widthDots, double heightDots) {
            this.svg = svg;
            this.scale = scale;
            this.widthDots = widthDots;
            this.heightDots = heightDots;
        }

        @Override
        public int getIntrinsicWidth() {
            return (int) Math.round(widthDots);
        }

        @Override
        public int getIntrinsicHeight() {
            return (int) Math.round(heightDots);
        }

        @Override
        public void drawSVG(OutputDevice device, RenderingContext context, double x, double y) {
            var place = AffineTransform.getTranslateInstance(x, y);
            place.scale(scale, scale);
            new Drawing(device, place, regular, bold).draw(svg);
        }
    }
}
