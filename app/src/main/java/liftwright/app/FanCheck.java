package liftwright.app;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Optional;
import liftwright.answer.AnswerJson;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.ProblemsJson;
import liftwright.answer.Section;
import liftwright.quantity.Dimension;
import liftwright.quantity.Dimensions;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.Reading;
import liftwright.report.PlainText;
import liftwright.report.PlotSvg;
import liftwright.report.ProblemReport;
import liftwright.report.TextReport;
import liftwright.review.bench.BenchAnswer;
import liftwright.review.bench.BenchQuestion;
import liftwright.review.bench.Known;
import liftwright.rig.FanType;
import liftwright.rig.Problem;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.file.RigReading;
import liftwright.rig.table.BenchTable;

/** {@code check --fan}: which fan the rows of a bench table make, and whether they can be true. */
final class FanCheck {

    private final Voice voice;
    private final Surroundings around;
    private final Options options;

    FanCheck(Voice voice, Surroundings around, Options options) {
        this.voice = voice;
        this.around = around;
        this.options = options;
    }

    /** What is wrong with one file is no reason to leave out the next. */
    Exit run() {
        options.look(); // a wrong option shall not wait for the answer
        if (options.text(Grammar.PLOT).isPresent() && options.names().size() > 1) {
            throw new UsageException(Grammar.PLOT + " writes one picture; name one table");
        }
        Known known = known();
        var exit = Exit.CLEAR;
        for (String name : options.names()) {
            exit = exit.worse(check(name, known));
            if (!options.json() && !name.equals(options.names().getLast())) {
                voice.answer("\n");
            }
        }
        return exit;
    }

    private Exit check(String name, Known known) {
        UserFile file;
        byte[] bytes;
        try {
            file = new UserFile(name, UserFile.path(name, around.folder()));
            bytes = file.read();
        } catch (UsageException e) {
            voice.aside(PlainText.of("liftwright: " + e.words(), !around.utf8()));
            return Exit.BAD_INPUT;
        }
        String digest = RigReading.digest(bytes);
        return switch (TableReader.bench(name, bytes)) {
            case TableReading.Broken<BenchTable>(var problems) -> {
                voice.answer(problems(file, digest, problems));
                yield Exit.BAD_INPUT;
            }
            case TableReading.Whole<BenchTable>(var table) ->
                    answered(file, BenchQuestion.ask(table, known, digest));
        };
    }

    private Exit answered(UserFile file, BenchAnswer answer) {
        voice.answer(
                options.json()
                        ? AnswerJson.write(answer, file.named(), Program.VERSION) + "\n"
                        : TextReport.write(answer, "", file.named(), options.look()));
        options.text(Grammar.PLOT).ifPresent(picture -> draw(picture, file, answer));
        return answer.verdict().outcome() == Outcome.HOLDS
                        && answer.findings().stream()
                                .noneMatch(f -> f.severity() == Finding.Severity.STOPS)
                ? Exit.CLEAR
                : Exit.STOPS;
    }

    private void draw(String picture, UserFile table, BenchAnswer answer) {
        List<Section.Plot> plots =
                answer.sections().stream()
                        .filter(Section.Plot.class::isInstance)
                        .map(Section.Plot.class::cast)
                        .toList();
        if (plots.isEmpty()) {
            throw new UsageException(
                    "nothing to draw in "
                            + picture
                            + ": the rows make no fan that tells its speed");
        }
        new UserFile(picture, UserFile.path(picture, around.folder()))
                .create(
                        PlotSvg.write(table.named(), plots, options.look().units())
                                .getBytes(UTF_8));
    }

    private String problems(UserFile file, String digest, List<Problem> problems) {
        return options.json()
                ? ProblemsJson.write(file.named(), digest, false, problems, Program.VERSION) + "\n"
                : ProblemReport.write(file.named(), "a bench table", "", problems, options.look());
    }

    private Known known() {
        try {
            return new Known(
                    type(),
                    quantity(Grammar.EXIT_AREA, Dimensions.AREA, "128 cm²"),
                    quantity(Grammar.TIP, Dimensions.LENGTH, "140 mm"),
                    quantity(Grammar.HUB, Dimensions.LENGTH, "52 mm"));
        } catch (IllegalArgumentException e) {
            throw new UsageException(
                    Grammar.HUB + " and " + Grammar.TIP + ": a hub is smaller than the tip");
        }
    }

    private Optional<Quantity> quantity(String option, Dimension needed, String example) {
        return options.text(option)
                .map(
                        text ->
                                switch (QuantityParser.parse(text, needed)) {
                                    case Reading.Parsed<Quantity>(var quantity)
                                            when quantity.si() > 0 ->
                                            quantity;
                                    case Reading.Parsed<Quantity> _, Reading.Refused<Quantity> _ ->
                                            throw new UsageException(
                                                    option
                                                            + " is above 0 and has its unit, such as \""
                                                            + example
                                                            + "\", not "
                                                            + text);
                                });
    }

    /** The fan type of a rig; without its name the only one there is. */
    private Optional<FanType> type() {
        Optional<String> named = options.text(Grammar.TYPE);
        Optional<String> rig = options.text(Grammar.RIG);
        if (rig.isEmpty()) {
            if (named.isPresent()) {
                throw new UsageException(
                        Grammar.TYPE + " is of a rig file: name it with " + Grammar.RIG);
            }
            return Optional.empty();
        }
        RigSource source = RigSource.of(UserFile.of(rig.get(), around.folder()));
        List<FanType> types =
                source.read()
                        .rig()
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                rig.get()
                                                        + " does not read as a rig. See: liftwright"
                                                        + " check "
                                                        + rig.get()))
                        .fanTypes();
        List<String> names = types.stream().map(FanType::name).toList();
        if (named.isEmpty() && types.size() != 1) {
            throw new UsageException(
                    rig.get()
                            + " has the fan types "
                            + String.join(", ", names)
                            + ": say which with "
                            + Grammar.TYPE);
        }
        return Optional.of(
                types.stream()
                        .filter(type -> named.isEmpty() || type.name().equals(named.get()))
                        .findFirst()
                        .orElseThrow(
                                () ->
                                        new UsageException(
                                                "no fan type "
                                                        + named.get()
                                                        + " in "
                                                        + rig.get()
                                                        + ", which has "
                                                        + String.join(", ", names))));
    }
}
