package liftwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import liftwright.answer.Answer;
import liftwright.answer.Section;
import liftwright.quantity.UnitSystem;
import liftwright.report.CardHead;
import liftwright.report.PaperSize;
import liftwright.report.html.CardSheet;
import liftwright.report.html.HtmlReport;
import liftwright.report.pdf.CardPdf;
import liftwright.rig.Rig;

/** Cards as files to print. Looks at their places before anything is computed. */
final class CardPaper {

    private final UnitSystem units;
    private final PaperSize paper;
    private final Optional<Place> html;
    private final Optional<Place> pdf;

    /** A file to write, and what stood there before. */
    private record Place(UserFile file, Optional<byte[]> before) {

        static Place of(String named, Surroundings around, Predicate<byte[]> isOurs) {
            UserFile file = new UserFile(named, UserFile.path(named, around.folder()));
            if (!Files.exists(file.path())) {
                return new Place(file, Optional.empty());
            }
            byte[] there = file.printed();
            if (!isOurs.test(there)) {
                throw new UsageException(
                        named
                                + " exists and is no unchanged file of this program, so it is not"
                                + " overwritten: give another name");
            }
            return new Place(file, Optional.of(there));
        }

        String write(byte[] content) {
            if (before.isPresent()) {
                file.replace(before.get(), content);
            } else {
                file.create(content);
            }
            return file.named();
        }
    }

    /**
     * @throws UsageException when something stands there that this program did not write
     */
    CardPaper(Options options, Surroundings around) {
        units = options.look().units();
        paper = paper(options);
        html =
                options.text(Grammar.HTML)
                        .map(named -> Place.of(named, around, HtmlReport::isUnchanged));
        pdf =
                options.text(CardGrammar.PDF)
                        .map(named -> Place.of(named, around, CardPdf::isUnchanged));
    }

    private static PaperSize paper(Options options) {
        String word = options.text(CardGrammar.PAPER).orElse(PaperSize.A4.name());
        return Arrays.stream(PaperSize.values())
                .filter(
                        size ->
                                size.name()
                                        .toLowerCase(Locale.ROOT)
                                        .equals(word.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(
                        () ->
                                new UsageException(
                                        CardGrammar.PAPER + " is a4 or letter, not " + word));
    }

    /** Writes what was asked for; names of what was written. */
    List<String> write(Answer answer, Rig rig, String rigFile) {
        List<Section.Card> cards =
                answer.sections().stream()
                        .filter(Section.Card.class::isInstance)
                        .map(Section.Card.class::cast)
                        .toList();
        var head =
                new CardHead(
                        rig.name(),
                        rigFile,
                        "revision " + rig.revision(),
                        answer.evidence().rigDigest(),
                        Program.VERSION);
        List<String> written = new ArrayList<>();
        html.ifPresent(
                place ->
                        written.add(
                                place.write(
                                        CardSheet.html(cards, head, units, paper)
                                                .getBytes(UTF_8))));
        pdf.ifPresent(place -> written.add(place.write(CardPdf.write(cards, head, units, paper))));
        return written;
    }
}
