package liftwright.app.flights;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import liftwright.flight.disperse.FlightRange;
import liftwright.flight.disperse.FlightReading;
import liftwright.flight.disperse.FlightSet;
import liftwright.flight.disperse.FlightText;
import liftwright.flight.disperse.FlightsOf;
import liftwright.flight.disperse.Flown;
import liftwright.flight.run.FlightOutcome;
import liftwright.rig.file.Disk;
import liftwright.rig.file.FailingDisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FlightsFileTest {

    private static final FlightsOf OF = new FlightsOf("0.1.0", "sha256:1", "none", "sha256:2", 7);

    @TempDir Path folder;

    private static FlightSet flights(FlightsOf of, int from, int to) {
        return new FlightSet(
                of, IntStream.rangeClosed(from, to).mapToObj(FlightsFileTest::flight).toList());
    }

    private static Flown flight(int number) {
        return new Flown.Made(
                number,
                FlightOutcome.End.LANDED,
                true,
                true,
                20,
                new FlightOutcome.Figures(1.0 / number, 2, 3, 0.4, 5, 0.6, 7, 0.8, 0.9, 10, 0),
                "");
    }

    private FlightsFile file(Disk disk) {
        return new FlightsFile("flights.csv", folder.resolve("in/flights.csv"), disk);
    }

    private byte[] bytes() throws IOException {
        Path path = folder.resolve("in/flights.csv");
        return Files.exists(path) ? Files.readAllBytes(path) : new byte[0];
    }

    /** Whatever step fails: the old file or the new one, whole, and nothing beside it. */
    @Test
    void noFaultOfTheDiskLeavesHalfAFile() throws IOException {
        int failed = 0;
        for (boolean forGood : List.of(false, true)) {
            for (FlightSet before : List.of(FlightSet.none(OF), flights(OF, 1, 20))) {
                for (int at = 0; ; at++) {
                    Files.deleteIfExists(folder.resolve("in/flights.csv"));
                    file(new Disk()).add(before);
                    byte[] old = bytes();
                    FlightSet more = flights(OF, 15, 60);
                    var disk = new FailingDisk(at, forGood);
                    boolean fails = true;
                    try {
                        file(disk).add(more);
                        fails = false;
                    } catch (NotKeptException e) {
                        failed++;
                        assertThat(e.getMessage()).contains("the disk failed");
                    }
                    assertThat(FlightReading.of(bytes()).found()).isPresent();
                    if (!Arrays.equals(bytes(), old)) {
                        assertThat(file(new Disk()).read().orElseThrow())
                                .isEqualTo(file(new Disk()).add(more));
                    }
                    assertThat(names()).containsExactly("flights.csv");
                    // A second run finds what is there and goes on.
                    assertThat(file(new Disk()).add(more).missing(range()))
                            .hasSize(before.flights().isEmpty() ? 14 : 0);
                    if (!fails) {
                        assertThat(at).as("steps that can fail").isGreaterThanOrEqualTo(4);
                        break;
                    }
                }
            }
        }
        assertThat(failed).isGreaterThanOrEqualTo(16);
    }

    private static FlightRange range() {
        return new FlightRange(OF, 1, 60);
    }

    private List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(folder.resolve("in"))) {
            return files.map(file -> file.getFileName().toString()).toList();
        }
    }

    @Test
    void partsInAnyOrderGiveTheSameBytes() throws IOException {
        file(new Disk()).add(flights(OF, 1, 90));
        byte[] whole = bytes();
        Files.delete(folder.resolve("in/flights.csv"));
        for (int[] part : new int[][] {{61, 90}, {1, 10}, {5, 40}, {41, 60}, {1, 10}}) {
            file(new Disk()).add(flights(OF, part[0], part[1]));
        }
        assertThat(bytes()).isEqualTo(whole);
    }

    /** What is there already is not written again. */
    @Test
    void theSameAgainTouchesNothing() throws IOException {
        file(new Disk()).add(flights(OF, 1, 9));
        byte[] before = bytes();
        file(new FailingDisk(0, true)).add(flights(OF, 3, 5));
        assertThat(bytes()).isEqualTo(before);
    }

    @Test
    void whatDoesNotBelongThereIsRefusedAndNothingWritten() throws IOException {
        file(new Disk()).add(flights(OF, 1, 9));
        byte[] before = bytes();
        FlightsOf other = new FlightsOf("0.1.0", "sha256:f", "none", "sha256:2", 7);
        assertThatExceptionOfType(NotKeptException.class)
                .isThrownBy(() -> file(new Disk()).add(flights(other, 1, 9)))
                .withMessageContaining("another rig");
        Flown changed = new Flown.NotMade(4, "otherwise");
        assertThatExceptionOfType(NotKeptException.class)
                .isThrownBy(() -> file(new Disk()).add(new FlightSet(OF, List.of(changed))))
                .withMessageContaining("flight 4 ");
        assertThat(bytes()).isEqualTo(before);
    }

    /** A file that is no whole one is told with its place, and never written over. */
    @Test
    void aSpoiltFileIsToldAndStays() throws IOException {
        file(new Disk()).add(flights(OF, 1, 9));
        String text = FlightText.of(flights(OF, 1, 9)).replace("\n4,landed", "\n4,lande");
        Files.writeString(folder.resolve("in/flights.csv"), text, StandardCharsets.UTF_8);
        assertThatExceptionOfType(NotKeptException.class)
                .isThrownBy(() -> file(new Disk()).add(flights(OF, 1, 9)))
                .withMessageContaining("flights.csv:12:3: ");
        assertThat(bytes()).isEqualTo(text.getBytes(StandardCharsets.UTF_8));
    }
}
