package liftwright.report.html;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import liftwright.answer.Answer;
import liftwright.answer.Field;
import liftwright.answer.Fields;
import liftwright.answer.Finding;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.quantity.QuantityFormat;
import liftwright.quantity.UnitSystem;
import liftwright.report.Figures;
import liftwright.report.PlotFrame;

/** One answer: verdict, findings, pictures, tables, what it rests on, what its numbers mean. */
final class Chapter {

    private static final String DRAWING_KEY =
            "In the drawings: a circle is a fan at its rotor's size; its rim is hatched the way it"
                    + " turns, and R is right-hand, L is left-hand, seen along the thrust. An arrow"
                    + " is its thrust, a dot one that points at you. Grey shapes are the wearer,"
                    + " hatched squares packs, small squares other parts. The quartered circle is"
                    + " the centre of mass; the dashed line, or ring where it points at you, is the"
                    + " line along which the lift acts.";

    private final Markup page;
    private final Figures figures;
    private final UnitSystem units;
    private final TableHtml tables;

    Chapter(Markup page, Figures figures, UnitSystem units) {
        this.page = page;
        this.figures = figures;
        this.units = units;
        this.tables = new TableHtml(page, figures);
    }

    /** A question as a builder asks it. */
    static String question(String question) {
        return switch (question) {
            case "lift" -> "Will it lift?";
            case "endurance" -> "For how long?";
            case "heat" -> "What gives out first, and when?";
            case "balance" -> "Is it balanced, and which way will it turn?";
            case "failures" -> "What if something fails?";
            case "restraint" -> "What must hold it down?";
            case "trials" -> "How do I test it without hurting anyone?";
            case "flight" -> "Will the flight computer hold it?";
            case "learning" -> "Why did it not do what was promised?";
            default -> question;
        };
    }

    static void outcome(Markup page, Outcome outcome) {
        page.element("strong", outcome.label(), "class", "outcome " + style(outcome));
    }

    private static String style(Outcome outcome) {
        return switch (outcome) {
            case HOLDS -> "holds";
            case DOES_NOT_HOLD -> "stops";
            case CANNOT_BE_TOLD, NOT_JUDGED -> "warns";
        };
    }

    void write(Answer answer) {
        String id = answer.question();
        page.element(
                "section",
                () -> {
                    page.element("h2", question(id), "id", id + "-head");
                    verdict(answer);
                    page.element("h3", "Findings");
                    new FindingsHtml(page, figures).write(answer.findings());
                    pictures(answer, id);
                    numbers(answer, id);
                    new EvidenceHtml(page, figures).write(answer.evidence());
                    meanings(answer);
                },
                "id",
                id,
                "aria-labelledby",
                id + "-head",
                "class",
                "chapter");
    }

    private void verdict(Answer answer) {
        Verdict verdict = answer.verdict();
        page.element(
                "div",
                () -> {
                    page.element(
                            "p",
                            () -> {
                                outcome(page, verdict.outcome());
                                page.text(": " + figures.sentence(verdict.sentence()));
                            },
                            "class",
                            "says");
                    verdict.wouldTell()
                            .ifPresent(
                                    tell ->
                                            page.element(
                                                    "p",
                                                    () -> {
                                                        page.text(
                                                                "What would tell: "
                                                                        + figures.sentence(
                                                                                tell.sentence())
                                                                        + " (");
                                                        page.element("code", tell.path());
                                                        page.text(")");
                                                    }));
                    verdict.downgrades()
                            .forEach(reason -> page.element("p", "In doubt: " + reason));
                    long stops =
                            answer.findings().stream()
                                    .filter(f -> f.severity() == Finding.Severity.STOPS)
                                    .count();
                    if (verdict.outcome() == Outcome.HOLDS && stops > 0) {
                        page.element(
                                "p",
                                "But "
                                        + (stops == 1
                                                ? "a finding stops"
                                                : stops + " findings stop")
                                        + " this rig: see below.",
                                "class",
                                "stops");
                    }
                },
                "class",
                "verdict " + style(verdict.outcome()));
    }

    /**
     * Each kind in a row of its own: matrices, side views, times, sums, ledgers, curves, the rig.
     */
    private void pictures(Answer answer, String id) {
        List<Runnable> matrices = new ArrayList<>();
        List<Runnable> views = new ArrayList<>();
        List<Runnable> times = new ArrayList<>();
        List<Runnable> sums = new ArrayList<>();
        List<Runnable> ledgers = new ArrayList<>();
        List<Runnable> curves = new ArrayList<>();
        List<Runnable> drawings = new ArrayList<>();
        for (Section section : answer.sections()) {
            String name = id + "-" + section.id() + "-picture";
            switch (section) {
                case Section.Waterfall waterfall ->
                        sums.add(() -> new WaterfallPicture(page, figures).draw(waterfall, name));
                case Section.Table table ->
                        LedgerPicture.moment(table)
                                .ifPresent(
                                        moment ->
                                                ledgers.add(
                                                        () ->
                                                                new LedgerPicture(page, figures)
                                                                        .draw(
                                                                                table, moment,
                                                                                name)));
                case Section.Plot plot ->
                        curves.add(() -> new CurvePicture(page).draw(plot, frame(plot), name));
                case Section.Timeline timeline ->
                        times.add(
                                () ->
                                        new TimelinePicture(page, figures, units)
                                                .draw(timeline, name));
                case Section.Shares shares ->
                        sums.add(() -> new SharesPicture(page, figures).draw(shares, name));
                case Section.Playback _ -> {} // moves, which paper does not
                case Section.Cases _ -> {} // are stepped through, which paper is not
                case Section.Card _ -> {} // has no picture of its own
                case Section.Matrix matrix ->
                        matrices.add(() -> new MatrixHtml(page, figures).draw(matrix, id, name));
                case Section.Elevation elevation ->
                        views.add(
                                () ->
                                        new ElevationPicture(page, figures, units, elevation)
                                                .draw(name));
                case Section.Strips strips ->
                        times.add(() -> new StripsPicture(page, figures, units).draw(strips, name));
                case Section.Drawing drawing ->
                        drawings.add(() -> new RigPicture(page, units).draw(drawing, name));
            }
        }
        List<List<Runnable>> kinds =
                Stream.of(matrices, views, times, sums, ledgers, curves, drawings)
                        .filter(kind -> !kind.isEmpty())
                        .toList();
        if (kinds.isEmpty()) {
            return;
        }
        page.element("h3", "Pictures");
        kinds.forEach(
                kind ->
                        page.element(
                                "div", () -> kind.forEach(Runnable::run), "class", "pictures"));
        if (!drawings.isEmpty()) {
            page.element("p", DRAWING_KEY, "class", "key");
        }
    }

    private PlotFrame frame(Section.Plot plot) {
        return PlotFrame.of(plot, new QuantityFormat(units, false));
    }

    private void numbers(Answer answer, String id) {
        page.element("h3", "Numbers");
        for (Section section : answer.sections()) {
            switch (section) {
                case Section.Waterfall waterfall -> tables.write(waterfall, id);
                case Section.Table table -> tables.write(table, id);
                case Section.Plot plot ->
                        folded(
                                "Points of the curve: " + plot.title(),
                                () -> tables.write(plot, frame(plot), id));
                case Section.Timeline timeline -> tables.write(timeline.table(), id);
                case Section.Shares shares -> tables.write(shares.table(), id);
                case Section.Playback _ -> {} // moves, which paper does not
                case Section.Cases _ -> {} // are stepped through, which paper is not
                case Section.Strips _ -> {} // its numbers are those of the table of channels
                case Section.Matrix _ -> {} // is a table as it is drawn
                case Section.Card card -> card.tables().forEach(table -> tables.write(table, id));
                case Section.Elevation elevation ->
                        elevation.tables().forEach(table -> tables.write(table, id));
                case Section.Drawing drawing ->
                        folded(
                                "Places in the drawing: " + drawing.title(),
                                () -> drawing.layers().forEach(layer -> tables.write(layer, id)));
            }
        }
    }

    private void folded(String words, Runnable inside) {
        page.element(
                "details",
                () -> {
                    page.element("summary", words);
                    inside.run();
                });
    }

    /** Label, meaning, formula and source of every kind of number of the answer. */
    private void meanings(Answer answer) {
        Set<String> used = new LinkedHashSet<>();
        for (Section section : answer.sections()) {
            switch (section) {
                case Section.Waterfall waterfall -> {
                    used.add(waterfall.start().value().field());
                    waterfall.steps().forEach(step -> used.add(step.value().field()));
                    used.add(waterfall.end().value().field());
                    used.add(waterfall.against().value().field());
                }
                case Section.Table table -> used.addAll(table.columns());
                case Section.Plot plot -> {
                    used.add(plot.x());
                    used.add(plot.y());
                }
                case Section.Timeline timeline -> {
                    used.addAll(timeline.table().columns());
                    timeline.bars().forEach(bar -> used.add(bar.hottest().field()));
                    timeline.bars().forEach(bar -> used.add(bar.limit().field()));
                }
                case Section.Shares shares -> {
                    used.addAll(shares.table().columns());
                    shares.shares().forEach(share -> used.add(share.value().field()));
                }
                case Section.Playback playback -> used.add(playback.field());
                case Section.Cases cases -> used.add(cases.field());
                case Section.Strips strips ->
                        strips.strips().forEach(strip -> used.add(strip.field()));
                case Section.Matrix matrix -> used.addAll(matrix.table().columns());
                case Section.Card card ->
                        card.tables().forEach(table -> used.addAll(table.columns()));
                case Section.Elevation elevation -> {
                    elevation.tables().forEach(table -> used.addAll(table.columns()));
                    elevation.loads().forEach(load -> used.add(load.value().field()));
                }
                case Section.Drawing drawing ->
                        drawing.layers().forEach(layer -> used.addAll(layer.columns()));
            }
        }
        for (Finding finding : answer.findings()) {
            finding.value().map(Value::field).ifPresent(used::add);
        }
        folded(
                "What these numbers mean, and how each is computed",
                () -> page.element("dl", () -> used.forEach(this::meaning), "class", "meanings"));
    }

    private void meaning(String id) {
        Field field = Fields.of(id);
        page.element("dt", field.label());
        page.element(
                "dd",
                field.meaning() + " Computed: " + field.formula() + " (" + field.source() + ").");
    }
}
