package liftwright.logbook.reading;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.LongPredicate;

/**
 * A copy of a log with the same lines in UTF-8, each ended by a line feed; lines that are not to be
 * read are empty in it. What the engine says of line numbers stays true.
 */
final class Mended {

    private Mended() {}

    /**
     * @param leave numbers of lines that shall be empty
     */
    static void copy(Path from, Encoding encoding, LongPredicate leave, Path to)
            throws IOException {
        var decoder =
                encoding.charset()
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE);
        try (var in = new InputStreamReader(Files.newInputStream(from), decoder);
                var lines = new BufferedReader(in, 1 << 16);
                BufferedWriter out = Files.newBufferedWriter(to, StandardCharsets.UTF_8)) {
            long line = 1;
            String text = lines.readLine();
            while (text != null) {
                if (!leave.test(line) && !text.isBlank()) {
                    out.write(text);
                }
                out.write('\n');
                line++;
                text = lines.readLine();
            }
        }
    }

    /** The same letters in UTF-8 without a mark, however long a line is. */
    static void inUtf8(Path from, Encoding encoding, Path to) throws IOException {
        var decoder =
                encoding.charset()
                        .newDecoder()
                        .onMalformedInput(CodingErrorAction.REPLACE)
                        .onUnmappableCharacter(CodingErrorAction.REPLACE);
        try (var in = new InputStreamReader(Files.newInputStream(from), decoder);
                BufferedWriter out = Files.newBufferedWriter(to, StandardCharsets.UTF_8)) {
            var block = new char[1 << 14];
            boolean first = true;
            for (int n = in.read(block); n > 0; n = in.read(block)) {
                int begin = first && block[0] == '\uFEFF' ? 1 : 0;
                out.write(block, begin, n - begin);
                first = false;
            }
        }
    }
}
