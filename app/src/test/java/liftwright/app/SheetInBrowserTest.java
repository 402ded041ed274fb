package liftwright.app;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import tools.jackson.databind.JsonNode;

/** The sheet of HTML as a browser lays it out: on screens of every width, and on paper. */
class SheetInBrowserTest {

    private static final List<String> RIGS = List.of("mudlark", "curlew", "sandpiper");

    @TempDir private static Path folder;

    private static @Nullable Chromium browser;

    @BeforeAll
    static void writeSheetsAndStart() throws IOException {
        Optional<Path> installed = Chromium.installed();
        assumeTrue(installed.isPresent(), "no Chromium here; ./verify installs it");
        for (String rig : RIGS) {
            String file = Shell.EXAMPLES.resolve(rig).toString();
            new Shell(folder).run("review", file, "--html", rig + ".html");
            assertThat(folder.resolve(rig + ".html")).exists();
        }
        browser =
                Chromium.start(
                        installed.get(),
                        // Its profile holds links that a temporary folder would warn about.
                        Files.createDirectories(Path.of("target", "chromium")).toAbsolutePath());
    }

    @AfterAll
    static void stop() {
        if (browser != null) {
            browser.close();
        }
    }

    private static Chromium page(String rig) {
        if (browser == null) {
            throw new AssertionError("no browser");
        }
        browser.size(1280, 720);
        browser.media("screen", "light");
        browser.open(folder.resolve(rig + ".html"));
        return browser;
    }

    private static String script(String name) throws IOException {
        try (InputStream in = SheetInBrowserTest.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new AssertionError("missing: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<String> wrong(Chromium page) throws IOException {
        JsonNode layout = page.evaluate(script("layout.js"));
        assertThat(layout.get("pieces").intValue()).isGreaterThan(300);
        List<String> wrong = new ArrayList<>();
        layout.get("wrong").forEach(sentence -> wrong.add(sentence.stringValue()));
        return wrong;
    }

    /** 640 is a window of 1280 at 200 %, and 320 the narrowest that WCAG asks for. */
    @ParameterizedTest
    @ValueSource(ints = {1920, 1280, 1024, 768, 640, 320})
    void nothingOverlapsOrLeavesTheScreen(int width) throws IOException {
        for (String rig : RIGS) {
            Chromium page = page(rig);
            page.size(width, 720);
            assertThat(wrong(page)).as("%s at %d", rig, width).isEmpty();
        }
    }

    @Test
    void nothingOverlapsWithAllThatIsFoldedOpen() throws IOException {
        Chromium page = page("mudlark");
        page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        assertThat(wrong(page)).isEmpty();
        page.size(320, 720);
        assertThat(wrong(page)).isEmpty();
    }

    /**
     * Axe finds what breaks WCAG 2.2 AA as far as a machine can see it. It takes its time over so
     * long a sheet, and a scheme changes colours alone: each rig is looked at in one of them.
     */
    @ParameterizedTest
    @CsvSource({"light, mudlark", "dark, curlew", "light, sandpiper", "dark, sandpiper"})
    void axeFindsNothing(String scheme, String rig) throws IOException {
        Chromium page = page(rig);
        page.media("screen", scheme);
        page.evaluate("document.querySelectorAll('details').forEach(d => d.open = true)");
        page.evaluate(script("/axe.min.js") + "; true");
        JsonNode found =
                page.evaluate(
                        """
                        axe.run(document, {runOnly: ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa',
                            'wcag22aa', 'best-practice']})
                            .then(r => ({passes: r.passes.length, violations: r.violations.map(
                                v => v.id + ': ' + v.nodes.slice(0, 3).map(
                                    n => n.html.slice(0, 200) + ' ' + n.failureSummary))}))
                        """);
        assertThat(found.get("violations")).as("%s, %s", rig, scheme).isEmpty();
        assertThat(found.get("passes").intValue()).isGreaterThan(20);
    }

    /** The policy of the sheet lets its own style in, and no script. */
    @Test
    void theStyleHoldsUnderItsOwnPolicy() {
        Chromium page = page("curlew");
        assertThat(
                        page.evaluate(
                                        "getComputedStyle(document.querySelector('.verdict')).borderTopStyle")
                                .stringValue())
                .isIn("solid", "dashed");
        assertThat(
                        page.evaluate(
                                        """
                                        (() => { const s = document.createElement('script');
                                          s.textContent = 'window.acted = true'; document.body.append(s);
                                          return window.acted === undefined; })()
                                        """)
                                .booleanValue())
                .isTrue();
    }

    @ParameterizedTest
    @CsvSource({"Letter, 8.5, 11", "A4, 8.27, 11.69"})
    void nothingIsCutOnPaper(String paper, double widthIn, double heightIn) throws IOException {
        for (String rig : RIGS) {
            Chromium page = page(rig);
            page.media("print", "light");
            // The page box less the margins of its style sheet, 15 mm each.
            page.size((int) ((widthIn * 25.4 - 30) / 25.4 * 96), 720);
            assertThat(wrong(page)).as("%s on %s", rig, paper).isEmpty();
            List<List<String>> pictures = new ArrayList<>();
            page.evaluate(
                            """
                            [...document.querySelectorAll('figure')].map(f => [f.querySelector('figcaption')
                                .textContent, ...[...f.querySelectorAll('text')].map(t => t.textContent)])
                            """)
                    .forEach(
                            picture -> {
                                List<String> words = new ArrayList<>();
                                picture.forEach(word -> words.add(squeezed(word.stringValue())));
                                pictures.add(words);
                            });
            page.media("", "light");
            onPaper(rig + " on " + paper, page.pdf(widthIn, heightIn), pictures);
        }
    }

    private static void onPaper(String what, byte[] pdf, List<List<String>> pictures)
            throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            List<String> pages = new ArrayList<>();
            for (int k = 1; k <= document.getNumberOfPages(); k++) {
                var stripper = new Inside(document.getPage(k - 1).getMediaBox().getWidth());
                stripper.setStartPage(k);
                stripper.setEndPage(k);
                pages.add(squeezed(stripper.getText(document)));
                assertThat(stripper.outside).as("%s, page %d", what, k).isEmpty();
            }
            assertThat(pages).as(what).hasSizeBetween(4, 64);
            assertThat(pages).allSatisfy(page -> assertThat(page.length()).isGreaterThan(100));
            assertThat(pages.getLast()).contains("licensedpracticedecide");
            assertThat(pictures).hasSizeGreaterThan(5);
            for (List<String> picture : pictures) {
                assertThat(pages)
                        .as("%s: the picture %s stands on one page", what, picture.getFirst())
                        .anyMatch(page -> picture.stream().allMatch(page::contains));
            }
        }
    }

    private static String squeezed(String text) {
        return text.replaceAll("[\\s\\u00a0]+", "");
    }

    /** Notes letters beyond the edges of the paper. */
    private static final class Inside extends PDFTextStripper {
        private final float width;
        private final List<String> outside = new ArrayList<>();

        Inside(float width) {
            this.width = width;
        }

        @Override
        protected void processTextPosition(TextPosition text) {
            float right = text.getXDirAdj() + text.getWidthDirAdj();
            if (text.getXDirAdj() < 0 || right > width) {
                outside.add(text.getUnicode());
            }
            super.processTextPosition(text);
        }
    }
}
