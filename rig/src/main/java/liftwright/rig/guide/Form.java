package liftwright.rig.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import liftwright.rig.Problem;
import liftwright.rig.guide.GuideField.Choice;
import liftwright.rig.shape.kind.Kind;
import liftwright.rig.shape.kind.Problems;
import liftwright.rig.shape.kind.Spot;
import liftwright.rig.shape.kind.Whole;
import liftwright.rig.text.Node;

/** Reads answers one by one with the reader of the rig file, and keeps what was asked. */
final class Form {

    private record Head(String id, String title, String why) {}

    private final Map<String, String> answers;
    private final Map<Head, List<String>> steps = new LinkedHashMap<>();
    private final Map<String, GuideField> fields = new LinkedHashMap<>();
    private List<String> open = new ArrayList<>();

    Form(Map<String, String> answers) {
        this.answers = answers;
    }

    /** Fields that follow belong to this step. */
    void step(String id, String title, String why) {
        open = new ArrayList<>();
        steps.put(new Head(id, title, why), open);
    }

    /** Asks for a value that the rig file knows. */
    <T> Said<T> ask(String key, Kind<T> kind, String placeholder, String label, String help) {
        return ask(key, GuideField.Kind.QUANTITY, kind, placeholder, label, help);
    }

    /**
     * Asks for a whole number.
     *
     * @param what is counted, in the plural
     */
    Said<Integer> count(
            String key,
            String what,
            int least,
            int most,
            int placeholder,
            String label,
            String help) {
        return ask(
                key,
                GuideField.Kind.COUNT,
                new Whole("a number of " + what, least, most),
                Integer.toString(placeholder),
                label,
                help);
    }

    /** Asks for a text of the builder's own. */
    Said<String> text(
            String key, Kind<String> kind, String placeholder, String label, String help) {
        Said<String> said = ask(key, GuideField.Kind.TEXT, kind, placeholder, label, help);
        if (said.text().isBlank()) {
            wrong(key, "Write a name.");
        }
        return said;
    }

    private <T> Said<T> ask(
            String key,
            GuideField.Kind how,
            Kind<T> kind,
            String placeholder,
            String label,
            String help) {
        Optional<String> answer = Optional.ofNullable(answers.get(key)).map(String::strip);
        String text = answer.orElse(placeholder);
        var problems = new Problems("");
        Optional<T> value = read(kind, text, problems);
        Optional<String> problem = sentence(text, value.isPresent(), problems.inOrder(), kind);
        keep(new GuideField(key, label, help, how, List.of(), text, answer.isPresent(), problem));
        T meant =
                value.or(() -> read(kind, placeholder, new Problems("")))
                        .orElseThrow(
                                () ->
                                        new IllegalStateException(
                                                key
                                                        + " has a placeholder that is none: "
                                                        + placeholder));
        return new Said<>(text, answer.isPresent(), meant);
    }

    /** Asks for one of several. */
    String choice(String key, List<Choice> choices, String placeholder, String label, String help) {
        Optional<String> answer = Optional.ofNullable(answers.get(key));
        String text = answer.orElse(placeholder);
        boolean known = choices.stream().anyMatch(c -> c.value().equals(text));
        keep(
                new GuideField(
                        key,
                        label,
                        help,
                        GuideField.Kind.CHOICE,
                        choices,
                        text,
                        answer.isPresent(),
                        known ? Optional.empty() : Optional.of("Choose one of those given.")));
        return known ? text : placeholder;
    }

    /** Says what is wrong with an answer beside others; the first word about it stands. */
    void wrong(String key, String sentence) {
        fields.computeIfPresent(key, (_, field) -> field.with(sentence));
    }

    /** Whether nothing is wrong. */
    boolean good() {
        return fields.values().stream().allMatch(f -> f.problem().isEmpty());
    }

    List<GuideStep> steps() {
        var made = new ArrayList<GuideStep>();
        steps.forEach(
                (head, keys) ->
                        made.add(
                                new GuideStep(
                                        head.id(),
                                        head.title(),
                                        head.why(),
                                        keys.stream().map(this::field).toList())));
        return made;
    }

    private GuideField field(String key) {
        return Optional.ofNullable(fields.get(key)).orElseThrow();
    }

    private void keep(GuideField field) {
        fields.put(field.key(), field);
        open.add(field.key());
    }

    private static <T> Optional<T> read(Kind<T> kind, String text, Problems problems) {
        return kind.read(
                new Node.Scalar(text, false, Spot.NOWHERE), Spot.top(Spot.NOWHERE), problems);
    }

    private static Optional<String> sentence(
            String text, boolean read, List<Problem> problems, Kind<?> kind) {
        if (text.codePoints().anyMatch(Character::isISOControl)) {
            return Optional.of("This holds a character that does not show.");
        }
        return problems.stream()
                .filter(p -> p.code().isError() || !read)
                .findFirst()
                .map(
                        p ->
                                text.isBlank()
                                        ? "Expected: " + kind.expectation() + "."
                                        : p.found()
                                                + "; expected: "
                                                + p.expected()
                                                + ". "
                                                + p.advice())
                .map(String::strip);
    }
}
