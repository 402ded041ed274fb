package liftwright.report.pdf;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDDocumentInformation;
import org.apache.pdfbox.pdmodel.common.PDMetadata;

/**
 * Makes the bytes of a PDF: without the time of day, and with a mark by which it is known again,
 * the SHA-256 of the whole with the mark blank.
 */
final class PdfSeal {

    private static final String HEAD = "Liftwright cards, sha256:";
    private static final String BLANK = "0".repeat(64);

    private PdfSeal() {}

    /**
     * @param from what it was made from, which its id is made of
     */
    static byte[] sealed(PDDocument document, String from) throws IOException {
        try (document) {
            PDDocumentInformation info = document.getDocumentInformation();
            info.getCOSObject().removeItem(COSName.CREATION_DATE);
            info.getCOSObject().removeItem(COSName.MOD_DATE);
            info.setProducer("Liftwright");
            document.getDocumentCatalog().setMetadata(metadata(document, info));
            document.setDocumentId(ByteBuffer.wrap(digest(from.getBytes(UTF_8))).getLong());
            var out = new ByteArrayOutputStream();
            document.save(out);
            return marked(out.toByteArray());
        }
    }

    /**
     * Says that the file is tagged (ISO 14289-1) and what it is called, and no date. Of all that is
     * in the file this alone stands as it is, so it has the mark.
     */
    private static PDMetadata metadata(PDDocument document, PDDocumentInformation info)
            throws IOException {
        String title = info.getTitle() == null ? "" : info.getTitle();
        String xmp =
                """
                <?xpacket begin="\ufeff" id="W5M0MpCehiHzreSzNTczkc9d"?>
                <x:xmpmeta xmlns:x="adobe:ns:meta/">
                <rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
                <rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/"
                 xmlns:pdf="http://ns.adobe.com/pdf/1.3/"
                 xmlns:pdfuaid="http://www.aiim.org/pdfua/ns/id/">
                <pdf:Keywords>MARK</pdf:Keywords>
                <pdfuaid:part>1</pdfuaid:part>
                <dc:title><rdf:Alt><rdf:li xml:lang="x-default">TITLE</rdf:li></rdf:Alt></dc:title>
                </rdf:Description></rdf:RDF></x:xmpmeta>
                <?xpacket end="r"?>
                """;
        var metadata = new PDMetadata(document);
        metadata.importXMPMetadata(
                xmp.replace("MARK", HEAD + BLANK).replace("TITLE", escaped(title)).getBytes(UTF_8));
        return metadata;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }

    private static byte[] marked(byte[] blank) {
        int at = mark(blank);
        byte[] mark = HexFormat.of().formatHex(digest(blank)).getBytes(ISO_8859_1);
        System.arraycopy(mark, 0, blank, at, mark.length);
        return blank;
    }

    /** Whether these bytes are as they were written. */
    static boolean isWhole(byte[] file) {
        int at = new String(file, ISO_8859_1).lastIndexOf(HEAD) + HEAD.length();
        if (at < HEAD.length() || at + BLANK.length() > file.length) {
            return false;
        }
        byte[] blank = file.clone();
        System.arraycopy(BLANK.getBytes(ISO_8859_1), 0, blank, at, BLANK.length());
        String mark = new String(file, at, BLANK.length(), ISO_8859_1);
        return HexFormat.of().formatHex(digest(blank)).equals(mark);
    }

    private static int mark(byte[] file) {
        int at = new String(file, ISO_8859_1).lastIndexOf(HEAD + BLANK);
        if (at < 0) {
            throw new IllegalStateException("a PDF without a place for its seal");
        }
        return at + HEAD.length();
    }

    private static byte[] digest(byte[] bytes) {
        try {
            return MessageDigest.getInstance("SHA-256").digest(bytes);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
