package liftwright.rig.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import liftwright.rig.Problem;
import liftwright.rig.Problem.Code;

/**
 * One mistake in a good file, which gives one problem: its code, its line and column, its path.
 *
 * @param right text of the good file, found once
 * @param wrong what stands in for it; the sign ¦ stands where the problem must point, and is taken
 *     out before reading
 * @param path the only path with a problem
 */
record Mistake(String right, String wrong, Code code, String path) {

    private static final String HERE = "¦";

    static Mistake m(String right, String wrong, Code code, String path) {
        return new Mistake(right, wrong, code, path);
    }

    @Override
    public String toString() {
        return code + ": " + wrong;
    }

    private String marked(String good) {
        assertThat(good).containsOnlyOnce(right);
        return good.replace(right, wrong);
    }

    /** The good file with it, read. */
    Read read(String good) {
        return Texts.read(marked(good).replace(HERE, ""));
    }

    void isToldAtItsPlace(String good) {
        Read read = read(good);
        List<Problem> errors = Texts.errors(read);
        assertThat(errors)
                .as("%s", errors)
                .extracting(Problem::code, problem -> problem.at().path())
                .containsExactly(tuple(code, path));
        assertThat(read.rig()).isEmpty();
        String marked = marked(good);
        int here = marked.indexOf(HERE);
        if (here >= 0) {
            assertThat(errors.getFirst().at()).isEqualTo(place(marked.substring(0, here)));
        }
    }

    private Problem.Place place(String before) {
        int line = (int) before.chars().filter(c -> c == '\n').count() + 1;
        String lineStart = before.substring(before.lastIndexOf('\n') + 1);
        int column = lineStart.codePointCount(0, lineStart.length()) + 1;
        return new Problem.Place("rig.yaml", line, column, path);
    }
}
