package liftwright.answer;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import liftwright.rig.Problem;

/** What is wrong with a rig file, as one line of JSON (docs/reference/answers.md). */
public final class ProblemsJson {

    /** What stands under {@code schema}; versions as in {@link AnswerSchema#VERSION}. */
    public static final String SCHEMA = "liftwright/check/1.0";

    private ProblemsJson() {}

    /** Its published shape (JSON Schema 2020-12), with every code there is. */
    public static String schema() {
        String codes =
                Stream.of(Problem.Code.values())
                        .map(code -> "\"" + name(code) + "\"")
                        .collect(Collectors.joining(", "));
        return AnswerSchema.resource("check.schema.json")
                .replace("CODES", codes)
                .replace("VERSION", AnswerSchema.VERSION);
    }

    /**
     * @param file as the user named it
     * @param digest of its bytes
     * @param reads whether it reads as a rig
     * @param problems in the order of the file; notes among them
     * @param toolVersion of the program
     * @return one line without its end
     */
    public static String write(
            String file, String digest, boolean reads, List<Problem> problems, String toolVersion) {
        var json = new JsonText();
        json.object(
                () -> {
                    json.member("schema", SCHEMA);
                    json.name("tool")
                            .object(
                                    () ->
                                            json.member("name", "liftwright")
                                                    .member("version", toolVersion));
                    json.member("file", file)
                            .name("rig")
                            .object(() -> json.member("digest", digest));
                    json.name("reads").truth(reads);
                    json.each("problems", problems, p -> json.object(() -> problem(json, p)));
                });
        return json.toString();
    }

    private static void problem(JsonText json, Problem problem) {
        json.member("severity", problem.code().isError() ? "error" : "note");
        json.member("code", name(problem.code()));
        json.member("file", problem.at().file());
        json.name("line").whole(problem.at().line());
        json.name("column").whole(problem.at().column());
        json.member("path", problem.at().path());
        json.member("found", problem.found());
        json.member("expected", problem.expected());
        json.member("advice", problem.advice());
    }

    private static String name(Problem.Code code) {
        return code.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
