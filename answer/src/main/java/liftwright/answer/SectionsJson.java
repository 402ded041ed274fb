package liftwright.answer;

/** Pictures and tables of an answer in JSON. */
final class SectionsJson {

    private final JsonText json;
    private final ValuesJson values;

    SectionsJson(JsonText json, ValuesJson values) {
        this.json = json;
        this.values = values;
    }

    void section(Section section) {
        switch (section) {
            case Section.Waterfall waterfall -> {
                heading("waterfall", waterfall);
                double size = sizeSi(waterfall.start().value());
                step("start", waterfall.start(), size);
                json.each("steps", waterfall.steps(), s -> json.object(() -> step(s, size)));
                step("end", waterfall.end(), size);
                step("against", waterfall.against(), size);
            }
            case Section.Table table -> table(table);
            case Section.Drawing drawing -> {
                heading("drawing", drawing);
                json.each("layers", drawing.layers(), layer -> json.object(() -> table(layer)));
            }
            case Section.Plot plot -> {
                heading("plot", plot);
                axis("x", plot.x());
                axis("y", plot.y());
                json.each("series", plot.series(), s -> json.object(() -> series(s)));
                if (!plot.zones().isEmpty()) {
                    json.each("zones", plot.zones(), zone -> json.object(() -> zone(plot, zone)));
                }
                plot.series().stream()
                        .flatMap(series -> series.points().stream())
                        .forEach(point -> occur(plot, point));
            }
            case Section.Timeline timeline -> {
                heading("timeline", timeline);
                values.value("horizon", Value.of(Section.Timeline.TIME, timeline.horizonS()));
                json.each("bars", timeline.bars(), bar -> json.object(() -> bar(bar)));
            }
            case Section.Shares shares -> {
                heading("shares", shares);
                values.value("whole", shares.whole());
                json.each("shares", shares.shares(), s -> json.object(() -> share(shares, s)));
            }
            case Section.Playback playback -> playback(playback);
            case Section.Matrix matrix -> matrix(matrix);
            case Section.Cases cases -> cases(cases);
            case Section.Elevation elevation -> elevation(elevation);
            case Section.Card card -> card(card);
            case Section.Strips strips -> strips(strips);
        }
    }

    private void zone(Section.Plot plot, Section.Plot.Zone zone) {
        json.member("label", zone.label());
        json.name("from").number(zone.from()).name("to").number(zone.to());
        values.occurs(plot.x(), zone.from());
        values.occurs(plot.x(), zone.to());
    }

    private void matrix(Section.Matrix matrix) {
        heading("matrix", matrix);
        json.texts("columns", matrix.columns());
        matrix.columns().forEach(field -> values.occurs(field, 0));
        json.each("lines", matrix.lines(), line -> json.object(() -> line(line)));
        matrix.table().columns().forEach(field -> values.occurs(field, 0));
    }

    private void line(Section.Matrix.Line line) {
        json.member("part", line.part()).member("what", line.what());
        json.texts("members", line.members());
        json.each(
                "cells",
                line.cells(),
                cell ->
                        json.object(
                                () -> {
                                    values.value("value", cell.value());
                                    json.member("standing", cell.standing().word());
                                }));
    }

    private void cases(Section.Cases cases) {
        heading("cases", cases);
        axis("y", cases.field());
        json.each(
                "spots",
                cases.spots(),
                spot ->
                        json.object(
                                () -> {
                                    json.member("part", spot.part()).member("kind", spot.kind());
                                    place("at", spot.at());
                                }));
        json.each("cases", cases.cases(), one -> json.object(() -> oneCase(one)));
        cases.cases().stream()
                .flatMap(one -> one.values().stream())
                .forEach(value -> values.occurs(cases.field(), value));
    }

    private void oneCase(Section.Cases.Case one) {
        json.member("label", one.label()).member("outcome", one.outcome());
        json.each("lost", one.lost(), json::truth);
        json.each("values", one.values(), json::number);
    }

    private void elevation(Section.Elevation elevation) {
        heading("elevation", elevation);
        axis("x", Section.Elevation.ACROSS);
        axis("y", Section.Elevation.UP);
        json.each("shapes", elevation.shapes(), shape -> json.object(() -> shape(shape)));
        json.each("loads", elevation.loads(), load -> json.object(() -> load(load)));
        if (!elevation.space().isEmpty()) {
            json.each("space", elevation.space(), table -> json.object(() -> table(table)));
        }
        for (Section.Table table : elevation.tables()) {
            table.columns().forEach(field -> values.occurs(field, 0));
        }
    }

    private void card(Section.Card card) {
        heading("card", card);
        json.member("state", card.state());
        values.sentence("purpose", card.purpose());
        json.each("blocks", card.blocks(), block -> json.object(() -> block(block)));
    }

    private void block(Section.Card.Block block) {
        switch (block) {
            case Section.Card.Block.Lines lines -> {
                json.member("kind", "lines").member("title", lines.title());
                json.member("style", lines.style().word());
                json.each(
                        "lines",
                        lines.lines(),
                        line -> json.object(() -> values.sentence("sentence", line)));
            }
            case Section.Card.Block.Rows rows -> table(rows.table());
            case Section.Card.Block.View view -> elevation(view.elevation());
        }
    }

    private void shape(Section.Elevation.Shape shape) {
        json.member("shape", shape.kind().word()).member("label", shape.label());
        json.each("outline", shape.outline(), this::spot);
        json.name("closed").truth(shape.closed());
    }

    private void load(Section.Elevation.Load load) {
        json.member("label", load.label());
        json.name("at");
        spot(load.at());
        json.name("across").number(load.acrossN()).name("up").number(load.upN());
        values.value("value", load.value());
        values.occurs("load-across", load.acrossN());
        values.occurs("load-up", load.upN());
    }

    private void spot(Section.Elevation.Spot2 spot) {
        json.array(() -> json.number(spot.acrossM()).number(spot.upM()));
        values.occurs(Section.Elevation.ACROSS, spot.acrossM());
        values.occurs(Section.Elevation.UP, spot.upM());
    }

    private void bar(Section.Timeline.Bar bar) {
        json.member("part", bar.part()).member("what", bar.what());
        values.value("at", bar.at());
        values.value("hottest", bar.hottest());
        values.value("limit", bar.limit());
        json.member("where", bar.where());
    }

    private void share(Section.Shares shares, Section.Shares.Share share) {
        json.member("label", share.label());
        values.value("value", share.value());
        values.value("share", shares.share(share.value()));
    }

    private void playback(Section.Playback playback) {
        heading("playback", playback);
        axis("x", Section.Timeline.TIME);
        axis("y", playback.field());
        json.each("times", playback.timesS(), json::number);
        playback.timesS().forEach(timeS -> values.occurs(Section.Timeline.TIME, timeS));
        json.each("tracks", playback.tracks(), track -> json.object(() -> track(track)));
        for (Section.Playback.Track track : playback.tracks()) {
            values.occurs(playback.field(), track.limit());
            track.values().forEach(value -> values.occurs(playback.field(), value));
        }
    }

    private void strips(Section.Strips strips) {
        heading("strips", strips);
        axis("x", Section.Timeline.TIME);
        json.each("strips", strips.strips(), strip -> json.object(() -> strip(strip)));
        json.each(
                "events",
                strips.events(),
                event ->
                        json.object(
                                () -> {
                                    json.name("time").number(event.timeS());
                                    json.member("label", event.label());
                                    json.member("part", event.part());
                                }));
        strips.events().forEach(event -> values.occurs(Section.Timeline.TIME, event.timeS()));
    }

    private void strip(Section.Strips.Strip strip) {
        json.member("label", strip.label()).member("field", strip.field());
        json.member("part", strip.part()).member("channel", strip.channel());
        json.member("unit", SiUnit.of(Fields.of(strip.field()).measure()));
        json.each("times", strip.timesS(), json::number);
        json.each("measured", strip.measured(), json::number);
        json.each("expected", strip.expected(), json::number);
        json.each("low", strip.low(), json::number);
        json.each("high", strip.high(), json::number);
        strip.timesS().forEach(timeS -> values.occurs(Section.Timeline.TIME, timeS));
        strip.measured().forEach(si -> values.occurs(strip.field(), si));
        strip.low().forEach(si -> values.occurs(strip.field(), si));
        strip.high().forEach(si -> values.occurs(strip.field(), si));
    }

    private void track(Section.Playback.Track track) {
        json.member("part", track.part()).member("kind", track.kind());
        place("from", track.from());
        place("to", track.to());
        json.name("limit").number(track.limit());
        json.each("values", track.values(), json::number);
    }

    private void place(String name, Section.Playback.Place place) {
        json.name(name)
                .array(
                        () ->
                                json.number(place.forwardM())
                                        .number(place.rightM())
                                        .number(place.upM()));
    }

    private void table(Section.Table table) {
        heading("table", table);
        json.texts("columns", table.columns());
        table.columns().forEach(field -> values.occurs(field, 0));
        json.each(
                "rows",
                table.rows(),
                row ->
                        json.array(
                                () ->
                                        row.forEach(
                                                value -> json.object(() -> values.value(value)))));
    }

    private void axis(String name, String field) {
        values.occurs(field, 0);
        json.name(name)
                .object(
                        () ->
                                json.member("field", field)
                                        .member("unit", SiUnit.of(Fields.of(field).measure())));
    }

    private void series(Section.Plot.Series series) {
        json.member("label", series.label());
        json.member(
                "mark",
                switch (series.mark()) {
                    case DOT -> "dot";
                    case CROSS -> "cross";
                    case LINE -> "line";
                    case DASHES -> "dashes";
                });
        json.each(
                "points",
                series.points(),
                point -> json.array(() -> json.number(point.x()).number(point.y())));
    }

    private void occur(Section.Plot plot, Section.Plot.Point point) {
        values.occurs(plot.x(), point.x());
        values.occurs(plot.y(), point.y());
    }

    private void heading(String kind, Section section) {
        json.member("kind", kind).member("id", section.id()).member("title", section.title());
    }

    private static double sizeSi(Value value) {
        return value.figure() instanceof Value.Figure.Amount amount ? amount.si() : 0;
    }

    private void step(String name, Section.Waterfall.Step step, double sizeSi) {
        json.name(name).object(() -> step(step, sizeSi));
    }

    /** Numbers that stand under each other end at the same digit. */
    private void step(Section.Waterfall.Step step, double sizeSi) {
        json.member("label", step.label());
        values.valueBeside("value", step.value(), sizeSi);
        json.member("note", step.note());
    }
}
