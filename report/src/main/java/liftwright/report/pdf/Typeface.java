package liftwright.report.pdf;

import com.openhtmltopdf.pdfboxout.PDFontSupplier;
import java.awt.geom.AffineTransform;
import java.awt.geom.Path2D;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.text.Normalizer;
import java.util.Locale;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.GlyphData;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import org.jspecify.annotations.Nullable;

/** The one font of the pages in one weight: which letters it has, and their outlines. */
final class Typeface {

    /** As style sheets call it. */
    static final String FAMILY = "DejaVu Sans Condensed";

    private final TrueTypeFont font;
    private final CmapLookup glyphs;

    private Typeface(byte[] file) throws IOException {
        font = new TTFParser().parse(new RandomAccessReadBuffer(file));
        font.setEnableGsub(false); // a joined pair is another letter when it is read back
        glyphs = font.getUnicodeCmapLookup();
    }

    static Typeface regular() {
        return read("DejaVuSansCondensed.ttf");
    }

    static Typeface bold() {
        return read("DejaVuSansCondensed-Bold.ttf");
    }

    private static Typeface read(String name) {
        try (InputStream in = Typeface.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the program: " + name);
            }
            return new Typeface(in.readAllBytes());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    OwnFontAlone forAll() {
        return new OwnFontAlone(font);
    }

    /** Embedded in a document, with the letters that are used. */
    PDFontSupplier in(PDDocument document) throws IOException {
        return new PDFontSupplier(PDType0Font.load(document, font, true));
    }

    /**
     * A text of letters that both weights have and that stand one after the other: composed (NFC)
     * where there is a composed form, and else written as its code, as a terminal does.
     */
    static String letters(String text, Typeface regular, Typeface bold) {
        var out = new StringBuilder(text.length() + 16);
        Normalizer.normalize(text, Normalizer.Form.NFC)
                .codePoints()
                .forEach(
                        c -> {
                            if (stands(c) && regular.has(c) && bold.has(c)) {
                                out.appendCodePoint(c);
                            } else {
                                out.append("<U+")
                                        .append(Integer.toHexString(c).toUpperCase(Locale.ROOT))
                                        .append('>');
                            }
                        });
        return out.toString();
    }

    /** Marks sit on others, and letters that run leftwards or join would be set wrongly. */
    private static boolean stands(int c) {
        int type = Character.getType(c);
        byte direction = Character.getDirectionality(c);
        return type != Character.NON_SPACING_MARK
                && type != Character.ENCLOSING_MARK
                && type != Character.COMBINING_SPACING_MARK
                && direction != Character.DIRECTIONALITY_RIGHT_TO_LEFT
                && direction != Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC
                && direction != Character.DIRECTIONALITY_ARABIC_NUMBER;
    }

    private boolean has(int c) {
        return glyphs.getGlyphId(c) != 0;
    }

    /** Of a line of text from the origin to the right, y down, at a size. */
    Path2D outline(String text, double size) {
        double scale = size / unitsPerEm();
        var line = new Path2D.Double();
        double x = 0;
        for (int c : text.codePoints().toArray()) {
            int glyph = glyphs.getGlyphId(c);
            GlyphData shape = glyph(glyph);
            if (shape != null) {
                var place = AffineTransform.getTranslateInstance(x, 0);
                place.scale(scale, -scale);
                line.append(shape.getPath().getPathIterator(place), false);
            }
            x += scale * advance(glyph);
        }
        return line;
    }

    /** Of a line of text at a size. */
    double width(String text, double size) {
        double units = 0;
        for (int c : text.codePoints().toArray()) {
            units += advance(glyphs.getGlyphId(c));
        }
        return units * size / unitsPerEm();
    }

    private @Nullable GlyphData glyph(int id) {
        try {
            return font.getGlyph().getGlyph(id);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int advance(int glyph) {
        try {
            return font.getAdvanceWidth(glyph);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private int unitsPerEm() {
        try {
            return font.getUnitsPerEm();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
