package liftwright.review.runaway;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;
import liftwright.numerics.Work;
import liftwright.plant.Plant;
import liftwright.quantity.Band;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;
import org.junit.jupiter.api.Test;

class RunawayReviewTest {

    private static final String KILLS =
            """
              kills:
                - {id: remote, opens: [main], by: radio, held by: watcher, reaction: 1.5 s}
                - {id: wearer, opens: [main], by: wire, held by: wearer}
            """;

    /** The example without what holds it and without what a let-go throttle does. */
    private static String mudlark() {
        try {
            return Files.readString(Path.of("..", "examples", "mudlark", "rig.yaml"))
                    .replaceAll("(?m)^restraint:.*\\R(?:[ \\t]+.*\\R?|\\R)*", "")
                    .replaceAll("(?m)^  stop: .*\\R", "");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The example with lines of its kills in place of its own, and more at its end. */
    private static Plant plant(String kills, String more) {
        String text = mudlark();
        int from = text.indexOf("  kills:\n");
        int to = text.indexOf("\n\n", from);
        assertThat(from).isPositive();
        String own = text.substring(0, from) + kills + text.substring(to);
        RigReading reading =
                RigReading.read("rig.yaml", (own + more).getBytes(StandardCharsets.UTF_8));
        Rig rig = reading.rig().orElseThrow(() -> new AssertionError(reading.problems()));
        return Plant.assemble(rig);
    }

    private static RunawayReview review(Plant plant) {
        return RunawayReview.of(plant, 1, 0, 1, Work.quiet());
    }

    private static Table table(RunawayReview review, String id) {
        return review.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static Optional<Finding> finding(RunawayReview review, String code) {
        return review.findings().stream().filter(one -> one.code().equals(code)).findFirst();
    }

    private static double si(Value value) {
        return ((Value.Figure.Amount) value.figure()).si();
    }

    @Test
    void timesAddUp() {
        RunawayReview review = review(plant(KILLS, ""));
        List<List<Value>> rows = table(review, "runaway-times").rows();
        assertThat(rows).hasSizeGreaterThanOrEqualTo(3);
        for (List<Value> row : rows.subList(0, 2)) {
            assertThat(si(row.get(1)) + si(row.get(2)) + si(row.get(4)))
                    .isCloseTo(si(row.get(5)), within(1e-12));
        }
        assertThat(si(rows.get(0).get(2))).isEqualTo(1.5);
        // The one of the wearer is not declared: 2 s, and said so.
        assertThat(si(rows.get(1).get(2))).isEqualTo(2);
        assertThat(review.findings().stream().filter(f -> f.code().equals("reaction-not-measured")))
                .hasSize(1);
        // Later means higher and faster down; the energy is m v²/2.
        List<List<Value>> motion = table(review, "runaways").rows();
        assertThat(si(motion.get(1).get(3))).isGreaterThan(si(motion.get(0).get(3)) + 1);
        double mass = plant(KILLS, "").mass().massKg();
        for (List<Value> row : motion.subList(0, 2)) {
            double mps = si(row.get(4));
            assertThat(si(row.get(5))).isCloseTo(mass * mps * mps / 2, within(1.0));
            // What was gained on the way up is lost again on the way down, less a little drag.
            assertThat(mps)
                    .isBetween(
                            0.9 * Math.sqrt(2 * 9.80665 * si(row.get(3))),
                            Math.sqrt(2 * 9.80665 * si(row.get(3))));
        }
    }

    private static Plant worn(String reaction, String kills) {
        String text = mudlark();
        int from = text.indexOf("  kills:\n");
        String own =
                (text.substring(0, from) + kills + text.substring(text.indexOf("\n\n", from)))
                        .replaceFirst("(?m)^wearer:\\R", "wearer:\n  reaction: " + reaction + "\n");
        RigReading reading = RigReading.read("rig.yaml", own.getBytes(StandardCharsets.UTF_8));
        return Plant.assembleHeld(
                reading.rig().orElseThrow(() -> new AssertionError(reading.problems())));
    }

    /** The slow end of it, in place of the limit; a kill that has its own keeps that. */
    @Test
    void whatTheWearerWasMeasuredToTakeCounts() {
        RunawayReview review = review(worn("1.1 s ± 0.3 s", KILLS));
        List<List<Value>> rows = table(review, "runaway-times").rows();
        assertThat(si(rows.get(0).get(2))).isEqualTo(1.5);
        assertThat(si(rows.get(1).get(2))).isCloseTo(1.4, within(1e-12));
        assertThat(finding(review, "reaction-not-measured")).isEmpty();

        String own = KILLS.replace("held by: wearer}", "held by: wearer, reaction: 0.9 s}");
        assertThat(si(table(review(worn("1.1 s", own)), "runaway-times").rows().get(1).get(2)))
                .isEqualTo(0.9);
    }

    /** Also in what holds the rig: which kill is the slowest turns with it. */
    @Test
    void theSlowestKillIsThatOfWhoIsSlower() {
        Plant quick = worn("1.1 s", KILLS);
        Plant slow = worn("2.6 s", KILLS);

        assertThat(quick.holding().slowestKill(quick.parameters().nominal())).contains("remote");
        assertThat(slow.holding().slowestKill(slow.parameters().nominal())).contains("wearer");
    }

    @Test
    void withoutAKillNothingStopsIt() {
        RunawayReview review = review(heldLink());
        assertThat(finding(review, "nothing-stops-a-runaway").orElseThrow().severity())
                .isEqualTo(Finding.Severity.STOPS);
        assertThat(review.slowest()).isEmpty();
    }

    private static Plant heldLink() {
        String text = mudlark().replace("link loss: cut", "link loss: hold");
        int from = text.indexOf("  kills:\n");
        String own = text.substring(0, from) + text.substring(text.indexOf("\n\n", from));
        return Plant.assemble(
                RigReading.read("rig.yaml", own.getBytes(StandardCharsets.UTF_8))
                        .rig()
                        .orElseThrow());
    }

    @Test
    void theStrikeUnderATetherIsTold() {
        String more =
                """

                restraint:
                  tether: {anchor height: 4 m, length: 2 m, stiffness: 20 kN/m, damping: 300 N·s/m}
                  room: {beam: 3.5 m}
                """;
        RunawayReview review = review(plant(KILLS, more));
        List<Value> row = table(review, "runaway-overhead").rows().getFirst();
        double heightM = si(row.get(1));
        double speed = si(row.get(2));
        double mass = plant(KILLS, more).mass().massKg();
        assertThat(heightM).isBetween(1.2, 2.0);
        assertThat(si(row.get(3))).isCloseTo(mass * speed * speed / 2, within(0.01));
        Finding told = finding(review, "tether-does-not-stop-a-climb").orElseThrow();
        assertThat(told.severity()).isEqualTo(Finding.Severity.WARNS);
        assertThat(si(told.value().orElseThrow())).isEqualTo(speed);
    }

    @Test
    void fromHalfAMetreUpThereIsNoWayOut() {
        RunawayReview review = review(plant(KILLS, ""));
        Plot plot = plot(review);
        Plot.Zone zone = plot.zones().getFirst();
        // 3.2 m/s is a fall from 0.522 m in vacuum; drag adds a little.
        assertThat(zone.from()).isBetween(0.520, 0.530);
        assertThat(finding(review, "no-way-out")).isPresent();
    }

    /** A line that is straight while the soles are in the air catches every fall from above it. */
    @Test
    void aLineThatCatchesTakesTheBandAway() {
        String more =
                """

                restraint:
                  tether: {anchor height: 4 m, length: 1.4 m, stiffness: 40 kN/m, damping: 900 N·s/m}
                """;
        RunawayReview review = review(plant(KILLS, more));
        assertThat(plot(review).zones()).isEmpty();
        assertThat(finding(review, "no-way-out")).isEmpty();
    }

    /** Lines down hold no one up, and pull no one down who falls from above their reach. */
    @Test
    void linesDownChangeNothingInAFall() {
        String tether =
                "restraint:\n  tether: {anchor height: 4 m, length: 2.6 m, stiffness: 20 kN/m";
        String down = ", down-lines: 3, down-line length: 2 m, down-line stiffness: 40 kN/m";
        Plot without = plot(review(plant(KILLS, "\n" + tether + "}\n")));
        Plot with = plot(review(plant(KILLS, "\n" + tether + down + "}\n")));
        assertThat(with.zones()).isEqualTo(without.zones());
        double fastest =
                with.series().stream()
                        .flatMap(series -> series.points().stream())
                        .mapToDouble(Plot.Point::y)
                        .max()
                        .orElseThrow();
        assertThat(fastest).isLessThan(25);
    }

    private static Plot plot(RunawayReview review) {
        return review.sections().stream()
                .filter(section -> section.id().equals("no-way-out"))
                .map(Section.Plot.class::cast)
                .findFirst()
                .orElseThrow();
    }

    @Test
    void bandsAreTheSameOnAnyNumberOfThreads() {
        Plant plant = plant(KILLS, "");
        RunawayReview one = RunawayReview.of(plant, 7, 256, 1, Work.quiet());
        RunawayReview two = RunawayReview.of(plant, 7, 256, 2, Work.quiet());
        assertThat(one.runs().stream().map(RunawayReview.Run::apexM).toList())
                .isEqualTo(two.runs().stream().map(RunawayReview.Run::apexM).toList());
        Band apex = one.runs().getFirst().apexM().orElseThrow();
        assertThat(one.runs().getFirst().path().apex().heightM())
                .isBetween(apex.low(), apex.high());
        assertThat(apex.high() - apex.low()).isGreaterThan(0.5);
    }
}
