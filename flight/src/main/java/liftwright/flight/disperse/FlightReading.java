package liftwright.flight.disperse;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A file of flights as it was read. */
public sealed interface FlightReading {

    /** The largest file that is read, bytes. */
    int MOST_BYTES = 1 << 28;

    /** It is whole, and as it was written. */
    record Read(FlightSet set) implements FlightReading {}

    /**
     * It is not.
     *
     * @param line from 1
     * @param column from 1
     * @param sentence what is wrong, and what next
     */
    record Broken(int line, int column, String sentence) implements FlightReading {}

    /** Reads the bytes of a file; never throws, whatever they are. */
    static FlightReading of(byte[] bytes) {
        try {
            return new Read(new Reader(text(bytes)).set());
        } catch (BrokenException e) {
            return new Broken(e.line, e.column, e.sentence);
        }
    }

    private static String text(byte[] bytes) throws BrokenException {
        if (bytes.length > MOST_BYTES) {
            throw new BrokenException(1, 1, "the file is larger than flights can be");
        }
        if (bytes.length == 0) {
            throw new BrokenException(1, 1, "the file is empty: fly the flights again");
        }
        String text = new String(bytes, StandardCharsets.UTF_8);
        int line = 1;
        int start = 0;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '\n') {
                line++;
                start = i + 1;
            } else if (c == '\r') {
                throw new BrokenException(
                        line,
                        i - start + 1,
                        "the line ends as in another system: keep the file as it was written");
            } else if (c < ' ' || c == 0xFFFD || c == 0xFEFF) {
                throw new BrokenException(
                        line, i - start + 1, "there is something here that is no text in UTF-8");
            }
        }
        if (!text.endsWith("\n")) {
            throw new BrokenException(
                    line,
                    text.length() - start + 1,
                    "the file breaks off here: it was cut short. Fly these flights again");
        }
        return text;
    }

    /** Where and what. */
    final class BrokenException extends Exception {
        private static final long serialVersionUID = 1L;
        private final int line;
        private final int column;
        private final String sentence;

        BrokenException(int line, int column, String sentence) {
            super(sentence);
            this.line = line;
            this.column = column;
            this.sentence = sentence;
        }
    }

    /** Line after line. */
    final class Reader {
        private final String text;
        private final String[] lines;
        private int next;

        Reader(String text) {
            this.text = text;
            lines = text.substring(0, text.length() - 1).split("\n", -1);
        }

        FlightSet set() throws BrokenException {
            String format = after(FlightText.FIRST, "what it is: " + FlightText.FIRST + "1");
            if (!format.equals(Integer.toString(FlightText.FORMAT))) {
                next--;
                throw here(
                        FlightText.FIRST.length() + 1,
                        "the format is \"" + format + "\"; this program reads format 1");
            }
            FlightsOf of = of();
            String numbers = after(FlightText.NUMBERS, "which flights are in it");
            if (!line().equals(FlightText.COLUMNS)) {
                throw here(1, "the heads of the columns are not these: " + FlightText.COLUMNS);
            }
            next++;
            FlightSet set = new FlightSet(of, flights());
            if (!FlightText.numbers(set).equals(numbers)) {
                throw new BrokenException(
                        7,
                        FlightText.NUMBERS.length() + 1,
                        "the head says flights "
                                + numbers
                                + ", and in it are "
                                + FlightText.numbers(set));
            }
            seal();
            return set;
        }

        private FlightsOf of() throws BrokenException {
            String program = token(FlightText.PROGRAM, "the version of the program");
            String rig = token(FlightText.RIG, "the digest of the rig");
            String corrections = token(FlightText.CORRECTIONS, "the digest of the corrections");
            String profile = token(FlightText.PROFILE, "the digest of the profile");
            String seed = after(FlightText.SEED, "the seed");
            try {
                return new FlightsOf(program, rig, corrections, profile, Long.parseLong(seed));
            } catch (NumberFormatException e) {
                next--;
                throw here(FlightText.SEED.length() + 1, "a seed is a whole number, not " + seed);
            }
        }

        private List<Flown> flights() throws BrokenException {
            List<Flown> flights = new ArrayList<>();
            int last = -1;
            while (!line().startsWith("#")) {
                Flown flown = FlightLine.read(line(), next + 1);
                if (flown.number() <= last) {
                    throw here(
                            1,
                            flown.number() == last
                                    ? "flight " + last + " stands here a second time"
                                    : "flight " + flown.number() + " stands behind " + last);
                }
                last = flown.number();
                flights.add(flown);
                next++;
            }
            return flights;
        }

        private void seal() throws BrokenException {
            int flights = next - 8;
            String counted = after(FlightText.COUNTED, "how many flights are in it");
            if (!counted.equals(Integer.toString(flights))) {
                next--;
                throw here(
                        FlightText.COUNTED.length() + 1,
                        "it says " + counted + " flights, and in it are " + flights);
            }
            String seal = after(FlightText.SEAL, "the digest of all lines above it");
            if (next < lines.length) {
                throw here(1, "nothing follows the digest in such a file");
            }
            int end = text.length() - lines[next - 1].length() - 1;
            if (!seal.equals(FlightText.sha256(text.substring(0, end)))) {
                next--;
                throw here(
                        FlightText.SEAL.length() + 1,
                        "the lines above are not those that were written: the file was changed"
                                + " afterwards. Fly these flights again");
            }
        }

        private String token(String head, String what) throws BrokenException {
            String value = after(head, what);
            if (!value.matches("[A-Za-z0-9:._+-]{1,200}")) {
                next--;
                throw here(head.length() + 1, "this is not " + what);
            }
            return value;
        }

        private String after(String head, String what) throws BrokenException {
            String line = line();
            if (!line.startsWith(head)) {
                throw here(1, "here stands " + head.strip() + " with " + what);
            }
            next++;
            return line.substring(head.length());
        }

        private String line() throws BrokenException {
            if (next >= lines.length) {
                int last = lines.length;
                throw new BrokenException(
                        last,
                        lines[last - 1].length() + 1,
                        "the file ends here: it was cut short. Fly these flights again");
            }
            return lines[next];
        }

        private BrokenException here(int column, String sentence) {
            return new BrokenException(next + 1, column, sentence);
        }
    }

    /** The set, where it was read. */
    default Optional<FlightSet> found() {
        return this instanceof Read(FlightSet set) ? Optional.of(set) : Optional.empty();
    }
}
