package liftwright.report.pdf;

import com.openhtmltopdf.outputdevice.helper.BaseRendererBuilder.FontStyle;
import com.openhtmltopdf.outputdevice.helper.ExternalResourceControlPriority;
import com.openhtmltopdf.pdfboxout.PdfBoxRenderer;
import com.openhtmltopdf.pdfboxout.PdfRendererBuilder;
import com.openhtmltopdf.util.XRLog;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.List;
import javax.xml.XMLConstants;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import liftwright.answer.Section.Card;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.PaperSize;
import liftwright.report.html.CardSheet;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.FontMappers;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/**
 * Test cards as PDF, with their fonts, their order of reading and tags for a reader that speaks. No
 * clock and no chance go in: equal cards give equal bytes.
 */
public final class CardPdf {

    private static final int REGULAR = 400;
    private static final int BOLD = 700;

    private CardPdf() {}

    /**
     * @param cards in the order to print; at least one
     * @param head what every page says of the rig
     * @param units of every number
     * @param paper to print on
     */
    public static byte[] write(List<Card> cards, CardHead head, UnitSystem units, PaperSize paper) {
        XRLog.setLoggingEnabled(false); // it would write to the console
        Typeface regular = Typeface.regular();
        Typeface bold = Typeface.bold();
        String pages =
                CardSheet.pages(
                        cards, head, units, paper, text -> Typeface.letters(text, regular, bold));
        try {
            return PdfSeal.sealed(set(parsed(pages), regular, bold), pages);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Whether a file holds cards as they were written here, so that new ones may replace it. */
    public static boolean isUnchanged(byte[] file) {
        return PdfSeal.isWhole(file);
    }

    private static PDDocument set(Document pages, Typeface regular, Typeface bold)
            throws IOException {
        FontMappers.set(regular.forAll());
        var document = new PDDocument();
        var builder = new PdfRendererBuilder();
        builder.usePDDocument(document);
        builder.useFont(regular.in(document), Typeface.FAMILY, REGULAR, FontStyle.NORMAL, true);
        builder.useFont(bold.in(document), Typeface.FAMILY, BOLD, FontStyle.NORMAL, true);
        builder.usePdfUaAccessibility(true);
        for (var priority : ExternalResourceControlPriority.values()) {
            builder.useExternalResourceAccessControl((_, _) -> false, priority);
        }
        builder.useUnicodeLineBreaker(new AtSpaces());
        builder.useSVGDrawer(new Drawings(regular, bold));
        builder.withW3cDocument(pages, "");
        builder.toStream(new ByteArrayOutputStream());
        try (PdfBoxRenderer renderer = builder.buildPdfRenderer()) {
            renderer.layout();
            return renderer.createPDFKeepOpen();
        }
    }

    private static Document parsed(String pages) throws IOException {
        try {
            var factory = DocumentBuilderFactory.newInstance();
            factory.setFeature(XMLConstants.FEATURE_SECURE_PROCESSING, true);
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            Document document =
                    factory.newDocumentBuilder().parse(new InputSource(new StringReader(pages)));
            describe(document.getElementsByTagName("svg"));
            return document;
        } catch (ParserConfigurationException | SAXException e) {
            throw new IllegalStateException("the sheet of cards is not well formed", e);
        }
    }

    /** The words of a picture, where a tagged PDF has them. */
    private static void describe(NodeList pictures) {
        for (int k = 0; k < pictures.getLength(); k++) {
            if (pictures.item(k) instanceof Element picture) {
                NodeList words = picture.getElementsByTagName("desc");
                String alt = words.getLength() == 0 ? "" : words.item(0).getTextContent();
                picture.setAttribute("alt", alt == null ? "" : alt);
            }
        }
    }
}
