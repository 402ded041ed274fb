package liftwright.answer;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The published shapes of answers (JSON Schema 2020-12), one for each question. */
public final class AnswerSchema {

    /** Additions raise the second number; anything else raises the first. */
    public static final String VERSION = "1.0";

    /** The questions that have a schema. */
    public static final List<String> QUESTIONS =
            List.of(
                    "lift",
                    "endurance",
                    "heat",
                    "balance",
                    "failures",
                    "restraint",
                    "trials",
                    "learning",
                    "flight",
                    "compare",
                    "sound",
                    "logbook",
                    "stand",
                    "fan");

    private AnswerSchema() {}

    /** What stands under {@code schema} in an answer to {@code question}. */
    public static String id(String question) {
        return "liftwright/answer-" + known(question) + "/" + VERSION;
    }

    /** The schema's text. Every question shares one shape; its name and version differ. */
    public static String text(String question) {
        return resource("answer.schema.json")
                .replace("COMMAND", command(known(question)))
                .replace("QUESTION", question)
                .replace("VERSION", VERSION);
    }

    /** What writes such an answer. */
    private static String command(String question) {
        return switch (question) {
            case "trials" -> "liftwright card --json RIG";
            case "learning" -> "liftwright explain --json RIG TEST";
            case "flight" -> "liftwright fly --json RIG --profile PROFILE";
            case "compare" -> "liftwright compare --json RIG OTHER";
            case "sound" -> "liftwright log sound --json RIG RECORDING";
            case "logbook" -> "liftwright log list --json RIG";
            case "stand" -> "liftwright check --stand --json STAND";
            case "fan" -> "liftwright check --fan --json TABLE";
            default -> "liftwright review " + question + " --json RIG";
        };
    }

    private static String known(String question) {
        if (!QUESTIONS.contains(question)) {
            throw new IllegalArgumentException("no schema for the question " + question);
        }
        return question;
    }

    static String resource(String name) {
        try (InputStream in = AnswerSchema.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException("missing from the program: " + name);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
