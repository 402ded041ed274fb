package liftwright.report.html;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;

/** A sheet read back by a parser of XML, which is stricter than any browser. */
final class Page {

    private final Document document;

    private Page(Document document) {
        this.document = document;
    }

    static Page of(String sheet) {
        String prefix = "<!doctype html>\n";
        if (!sheet.startsWith(prefix)) {
            throw new AssertionError("no doctype first");
        }
        try {
            DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
            factory.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
            var builder = factory.newDocumentBuilder();
            builder.setErrorHandler(null);
            return new Page(
                    builder.parse(
                            new InputSource(new StringReader(sheet.substring(prefix.length())))));
        } catch (java.io.IOException
                | org.xml.sax.SAXException
                | javax.xml.parsers.ParserConfigurationException e) {
            throw new AssertionError("not well formed: " + e.getMessage(), e);
        }
    }

    /** Elements of a name, in order; "*" for all. */
    List<Element> all(String name) {
        return of(document.getElementsByTagName(name));
    }

    static List<Element> all(Element within, String name) {
        return of(within.getElementsByTagName(name));
    }

    private static List<Element> of(NodeList nodes) {
        List<Element> found = new ArrayList<>();
        for (int k = 0; k < nodes.getLength(); k++) {
            Node node = nodes.item(k);
            if (node instanceof Element element) {
                found.add(element);
            }
        }
        return found;
    }

    /** All the words. */
    String text() {
        return text(all("body").getFirst());
    }

    static String text(Element element) {
        String text = element.getTextContent();
        return text == null ? "" : text.replace('\u00a0', ' ');
    }
}
