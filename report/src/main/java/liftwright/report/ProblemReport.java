package liftwright.report;

import java.util.List;
import liftwright.rig.Problem;

/** What is wrong with a rig file, for a terminal: each problem at its place. */
public final class ProblemReport {

    /** Most problems, and most notes, that are printed one by one. */
    public static final int MOST = 50;

    private ProblemReport() {}

    /**
     * At most {@value #MOST} of them; of the rest, how many there are.
     *
     * @param file as the user named it
     * @param summary what the file holds, in words, for one without an error
     * @param problems in the order of the file; notes among them
     * @param look of the terminal
     */
    public static String write(String file, String summary, List<Problem> problems, Look look) {
        return write(file, "a rig", summary, problems, look);
    }

    /**
     * The same of another kind of file.
     *
     * @param kind what it should be, with its article: {@code a thrust stand}
     */
    public static String write(
            String file, String kind, String summary, List<Problem> problems, Look look) {
        var paper = new Paper(look);
        List<Problem> errors = problems.stream().filter(p -> p.code().isError()).toList();
        if (errors.isEmpty()) {
            paper.block(0, 2, Paper.Ink.STRONG, file + " reads as " + kind + ": " + summary);
        } else {
            String count = errors.size() == 1 ? "1 problem" : errors.size() + " problems";
            paper.block(0, 2, Paper.Ink.STOPS, file + " does not read as " + kind + ": " + count);
            errors.stream().limit(MOST).forEach(problem -> write(paper, problem));
            if (errors.size() > MOST) {
                paper.blank();
                paper.block(
                        0,
                        2,
                        Paper.Ink.STOPS,
                        "and "
                                + (errors.size() - MOST)
                                + " more; mend these first, or see all with --json");
            }
        }
        notes(paper, problems);
        return paper.toString();
    }

    private static void write(Paper paper, Problem problem) {
        Problem.Place at = problem.at();
        String path = at.path().isEmpty() ? "" : " " + at.path();
        paper.blank();
        paper.block(
                0,
                2,
                Paper.Ink.WARNS,
                at.file() + ":" + at.line() + ":" + at.column() + ":" + path);
        paper.beside(2, "found", 12, problem.found());
        paper.beside(2, "expected", 12, problem.expected());
        if (!problem.advice().isBlank()) {
            paper.beside(2, "advice", 12, problem.advice());
        }
    }

    private static void notes(Paper paper, List<Problem> problems) {
        List<Problem> notes = problems.stream().filter(p -> !p.code().isError()).toList();
        if (notes.isEmpty()) {
            return;
        }
        paper.heading("Read, used by no question yet");
        for (Problem note : notes.subList(0, Math.min(MOST, notes.size()))) {
            paper.block(
                    2, 4, Paper.Ink.PLAIN, "line " + note.at().line() + ": " + note.at().path());
        }
        if (notes.size() > MOST) {
            paper.block(2, 4, Paper.Ink.PLAIN, "and " + (notes.size() - MOST) + " more");
        }
    }
}
