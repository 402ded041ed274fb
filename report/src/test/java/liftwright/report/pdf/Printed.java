package liftwright.report.pdf;

import java.awt.geom.Point2D;
import java.awt.geom.Rectangle2D;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.contentstream.PDFGraphicsStreamEngine;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.graphics.image.PDImage;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;

/**
 * A PDF read back: every letter with its place, in the order in which a reader that speaks says
 * them, which the tags of the file tell.
 *
 * @param said in the order of the tags
 * @param headsAgain of each page, the words of heads of tables that began on a page before
 */
record Printed(List<Page> pages, List<Said> said, List<String> headsAgain) {

    /**
     * @param page from 0
     */
    record Said(int page, Letter letter) {}

    /**
     * @param letters in the order of the file
     * @param rules thin level lines, in the axes of the letters
     */
    record Page(double width, double height, List<Letter> letters, List<Rectangle2D> rules) {}

    /** From the left and from the top of the page, pt; the foot is the line it stands on. */
    record Letter(String text, double left, double foot, double width, double size, boolean bold) {

        /** What no other letter may reach into: of its own width, of the height of a capital. */
        Rectangle2D body() {
            return new Rectangle2D.Double(left, foot - 0.72 * size, width, 0.9 * size);
        }
    }

    static Printed of(byte[] pdf) {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<Page> pages = new ArrayList<>();
            List<Map<Integer, List<Letter>>> marked = new ArrayList<>();
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getFontNames()) {
                    PDFont font = page.getResources().getFont(name);
                    if (!font.isEmbedded()) {
                        throw new AssertionError("not embedded: " + font.getName());
                    }
                }
                var rules = new Rules(page);
                rules.processPage(page);
                var extractor = new PDFMarkedContentExtractor();
                extractor.processPage(page);
                List<Letter> letters = new ArrayList<>();
                Map<Integer, List<Letter>> byMark = new HashMap<>();
                extractor.getMarkedContents().forEach(m -> gather(m, letters, byMark));
                marked.add(byMark);
                pages.add(
                        new Page(
                                page.getMediaBox().getWidth(),
                                page.getMediaBox().getHeight(),
                                letters,
                                rules.found));
            }
            return new Tags(document, marked).read(pages);
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    private static void gather(
            PDMarkedContent content, List<Letter> all, Map<Integer, List<Letter>> byMark) {
        for (Object one : content.getContents()) {
            switch (one) {
                case TextPosition text -> {
                    if (!text.getUnicode().isBlank() && !text.getUnicode().equals("\u00a0")) {
                        Letter letter = letter(text);
                        all.add(letter);
                        byMark.computeIfAbsent(content.getMCID(), _ -> new ArrayList<>())
                                .add(letter);
                    }
                }
                case PDMarkedContent inner -> gather(inner, all, byMark);
                default -> {}
            }
        }
    }

    private static Letter letter(TextPosition text) {
        return new Letter(
                text.getUnicode(),
                text.getXDirAdj(),
                text.getYDirAdj(),
                text.getWidthDirAdj(),
                text.getTextMatrix().getScalingFactorX(),
                text.getFont().getName().endsWith("Bold"));
    }

    /** Walks what a reader that speaks walks. */
    private static final class Tags {
        private final PDDocument document;
        private final List<Map<Integer, List<Letter>>> marked;
        private final List<Said> said = new ArrayList<>();
        private final List<StringBuilder> again = new ArrayList<>();
        private int headPage = -1;
        private boolean inHead;

        Tags(PDDocument document, List<Map<Integer, List<Letter>>> marked) {
            this.document = document;
            this.marked = marked;
            marked.forEach(_ -> again.add(new StringBuilder()));
        }

        Printed read(List<Page> pages) {
            walk(document.getDocumentCatalog().getStructureTreeRoot(), null);
            return new Printed(pages, said, again.stream().map(StringBuilder::toString).toList());
        }

        private void walk(PDStructureNode node, @Nullable PDPage page) {
            PDPage here = page;
            boolean head = false;
            if (node instanceof PDStructureElement element) {
                here = element.getPage() == null ? page : element.getPage();
                head = element.getStructureType().equals("THead");
            }
            if (head) {
                inHead = true;
                headPage = -1;
            }
            for (Object kid : node.getKids()) {
                switch (kid) {
                    case Integer mark -> say(here, mark);
                    case PDMarkedContentReference at ->
                            say(at.getPage() == null ? here : at.getPage(), at.getMCID());
                    case PDStructureNode inner -> walk(inner, here);
                    default -> {}
                }
            }
            inHead &= !head;
        }

        private void say(@Nullable PDPage page, int mark) {
            int number = document.getPages().indexOf(page);
            List<Letter> letters = marked.get(number).getOrDefault(mark, List.of());
            if (inHead && headPage < 0 && !letters.isEmpty()) {
                headPage = number;
            }
            for (Letter letter : letters) {
                if (inHead && number > headPage) {
                    again.get(number).append(letter.text());
                } else {
                    said.add(new Said(number, letter));
                }
            }
        }
    }

    private static final class Rules extends PDFGraphicsStreamEngine {
        private static final double THIN = 3;
        private static final double LONG = 100;

        private final List<Rectangle2D> found = new ArrayList<>();
        private final double height;
        private Rectangle2D.@Nullable Double path;

        Rules(PDPage page) {
            super(page);
            height = page.getMediaBox().getHeight();
        }

        private void reaches(double x, double y) {
            if (path == null) {
                path = new Rectangle2D.Double(x, height - y, 0, 0);
            } else {
                path.add(x, height - y);
            }
        }

        private void end() {
            if (path != null && path.height < THIN && path.width > LONG) {
                found.add(path);
            }
            path = null;
        }

        @Override
        public void appendRectangle(Point2D p0, Point2D p1, Point2D p2, Point2D p3) {
            reaches(p0.getX(), p0.getY());
            reaches(p2.getX(), p2.getY());
        }

        @Override
        public void drawImage(PDImage image) {}

        @Override
        public void clip(int rule) {}

        @Override
        public void moveTo(float x, float y) {
            reaches(x, y);
        }

        @Override
        public void lineTo(float x, float y) {
            reaches(x, y);
        }

        @Override
        public void curveTo(float x1, float y1, float x2, float y2, float x3, float y3) {
            reaches(x3, y3);
        }

        @Override
        public Point2D getCurrentPoint() {
            return new Point2D.Float();
        }

        @Override
        public void closePath() {}

        @Override
        public void endPath() {
            path = null;
        }

        @Override
        public void strokePath() {
            end();
        }

        @Override
        public void fillPath(int rule) {
            end();
        }

        @Override
        public void fillAndStrokePath(int rule) {
            end();
        }

        @Override
        public void shadingFill(COSName name) {}
    }
}
