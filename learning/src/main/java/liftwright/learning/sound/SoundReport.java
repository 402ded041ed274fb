package liftwright.learning.sound;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Section.Plot;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.quantity.Measure;

/** What was heard, as an answer. */
public final class SoundReport {

    private static final int MOST_POINTS = 300;

    private final Heard heard;
    private final List<Voice> voices;

    private SoundReport(Heard heard, List<Voice> voices) {
        this.heard = heard;
        this.voices = voices;
    }

    /**
     * @param voices the fans that ran
     * @param assumptions what stood in for what was not told
     */
    public static SoundAnswer of(
            Heard heard,
            List<Voice> voices,
            String rigDigest,
            List<Evidence.Assumption> assumptions) {
        var report = new SoundReport(heard, voices);
        return new SoundAnswer(
                report.verdict(),
                report.findings(),
                report.sections(),
                report.evidence(rigDigest, assumptions));
    }

    private Verdict verdict() {
        long alone = heard.fans().stream().filter(FanSpeed::alone).count();
        String told =
                alone
                        + " of "
                        + voices.size()
                        + (voices.size() == 1 ? " fan has" : " fans have")
                        + " a line of its own that is followed";
        if (!heard.events().isEmpty()) {
            return verdict(
                    Outcome.DOES_NOT_HOLD,
                    heard.events().stream()
                                    .map(SoundReport::whose)
                                    .distinct()
                                    .collect(Collectors.joining(", "))
                            + " did not keep with the others; "
                            + told);
        }
        boolean all = heard.fans().size() == voices.size();
        return verdict(
                all ? Outcome.HOLDS : Outcome.CANNOT_BE_TOLD,
                all ? "every fan is heard as long as the others; " + told : told);
    }

    private static Verdict verdict(Outcome outcome, String words) {
        return new Verdict(outcome, Sentence.words(words), Optional.empty(), List.of());
    }

    private List<Finding> findings() {
        var findings = new ArrayList<Finding>();
        heard.events().forEach(event -> findings.add(event(event)));
        heard.notes()
                .forEach(
                        note ->
                                findings.add(
                                        Finding.of(
                                                Severity.NOTES,
                                                "sound-note",
                                                Sentence.words(note),
                                                "")));
        if (heard.resolution() > 0 && voices.size() > 1) {
            findings.add(
                    Finding.of(
                            Severity.NOTES,
                            "sound-separable",
                            Sentence.words(
                                            heard.separable()
                                                    + " lines run side by side; two fans are told apart"
                                                    + " from a difference of ")
                                    .then(Measure.PERCENT, heard.resolution())
                                    .then(" on"),
                            "a window of "
                                    + Listening.WINDOW_S
                                    + " s, one and a half of its bins"));
        }
        return findings;
    }

    private static String whose(Event event) {
        List<String> fans = event.fans();
        return fans.size() < 4
                ? String.join(" or ", fans)
                : "one of "
                        + fans.size()
                        + " fans, "
                        + fans.getFirst()
                        + " to "
                        + fans.getLast()
                        + ",";
    }

    private static Finding event(Event event) {
        Finding finding =
                Finding.of(
                        Severity.STOPS,
                        "sound-line-ends",
                        Sentence.words(whose(event) + " is no longer heard with the others from ")
                                .then(Measure.TIME, event.fromS())
                                .then(" to ")
                                .then(Measure.TIME, event.toS())
                                .then(" on, while they went on"),
                        "its line ends between the last window that has it and the first that does"
                                + " not: it stopped, slowed or lost synchronism; of drawn failures told so,"
                                + " one in eleven was of another fan or moment");
        return event.fans().size() == 1 ? finding.about(event.fans().getFirst()) : finding;
    }

    private List<Section> sections() {
        if (heard.fans().isEmpty()) {
            return List.of();
        }
        return List.of(table(), plot());
    }

    private Section table() {
        List<List<Value>> rows = new ArrayList<>();
        for (FanSpeed fan : heard.fans()) {
            rows.add(
                    List.of(
                            Value.words("sound-fan", fan.voice().fan()),
                            Value.words(
                                    "sound-with",
                                    fan.alone()
                                            ? ""
                                            : fan.with().stream()
                                                    .filter(id -> !id.equals(fan.voice().fan()))
                                                    .collect(Collectors.joining(", "))),
                            Value.of("sound-from", fan.timesS()[0]),
                            Value.of("sound-to", fan.timesS()[fan.size() - 1]),
                            Value.of("sound-speed", fast(fan)),
                            Value.of("sound-error", Line.median(fan.errorRadS())),
                            Value.of("sound-mismatch", Mismatch.of(fan, heard.fans()))));
        }
        return new Section.Table(
                "sound-fans",
                "Fans as heard",
                List.of(
                        "sound-fan",
                        "sound-with",
                        "sound-from",
                        "sound-to",
                        "sound-speed",
                        "sound-error",
                        "sound-mismatch"),
                rows);
    }

    /** Median of the upper quarter. */
    private static double fast(FanSpeed fan) {
        double[] sorted = fan.speedRadS().clone();
        Arrays.sort(sorted);
        return sorted[(int) (0.875 * (sorted.length - 1))];
    }

    private Section plot() {
        var series = new ArrayList<Plot.Series>();
        for (FanSpeed fan : heard.fans()) {
            var points = new ArrayList<Plot.Point>();
            int step = Math.max(1, fan.size() / MOST_POINTS);
            for (int k = 0; k < fan.size(); k += step) {
                points.add(new Plot.Point(fan.timesS()[k], fan.speedRadS()[k]));
            }
            series.add(new Plot.Series(fan.voice().fan(), Plot.Mark.LINE, points));
        }
        return new Plot("sound-speeds", "Speed over time", "sound-time", "sound-speed", series);
    }

    private Evidence evidence(String rigDigest, List<Evidence.Assumption> assumptions) {
        return new Evidence(
                rigDigest,
                "none",
                0,
                1,
                Sentence.words("a recording of sound"),
                List.of(
                        new Evidence.Law(
                                "Blade passing",
                                "kinematics",
                                "lines at whole multiples of blades times speed",
                                true),
                        new Evidence.Law(
                                "Frequency of a tone in noise",
                                "[RIFE74]",
                                "one tone, white noise about it",
                                true)),
                assumptions,
                List.of());
    }
}
