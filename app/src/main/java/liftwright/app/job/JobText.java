package liftwright.app.job;

import java.time.DateTimeException;
import java.time.Instant;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/** A job as the text of its file: a line for each thing that is known of it. */
final class JobText {

    private static final String FIRST = "# liftwright job: 1";

    private JobText() {}

    static String of(JobNote note) {
        Map<String, String> lines = new LinkedHashMap<>();
        JobSpec spec = note.spec();
        lines.put("rig", spec.rig());
        lines.put("rig digest", spec.digest());
        switch (spec.what()) {
            case JobSpec.Flights flights -> {
                lines.put("kind", "flights");
                flights.profile().ifPresent(name -> lines.put("profile", name));
                lines.put("profile digest", flights.profileDigest());
                lines.put("flights", Integer.toString(flights.flights()));
                lines.put("seed", Long.toString(flights.seed()));
            }
            case JobSpec.Pairs() -> lines.put("kind", "pairs");
            case JobSpec.Explain(String test) -> {
                lines.put("kind", "explain");
                lines.put("test", test);
            }
        }
        lines.put("begun", note.begun().toString());
        lines.put("state", note.state().word());
        lines.put("told", note.told());
        lines.put("done", Long.toString(note.done()));
        lines.put("total", Long.toString(note.total()));
        var out = new StringBuilder(FIRST).append('\n');
        lines.forEach((name, value) -> out.append(name).append(": ").append(value).append('\n'));
        return out.toString();
    }

    /** Empty where it is no text of a job. */
    static Optional<JobNote> read(int id, String text) {
        Map<String, String> lines = new LinkedHashMap<>();
        for (String line : text.split("\n", -1)) {
            int colon = line.indexOf(": ");
            if (colon > 0) {
                lines.put(line.substring(0, colon), line.substring(colon + 2));
            }
        }
        if (!text.startsWith(FIRST + "\n") || !text.endsWith("\n")) {
            return Optional.empty();
        }
        try {
            return what(lines)
                    .flatMap(
                            what ->
                                    JobState.of(lines.getOrDefault("state", ""))
                                            .map(state -> note(id, lines, what, state)));
        } catch (IllegalArgumentException | DateTimeException e) {
            return Optional.empty();
        }
    }

    private static JobNote note(
            int id, Map<String, String> lines, JobSpec.What what, JobState state) {
        return new JobNote(
                id,
                new JobSpec(
                        lines.getOrDefault("rig", ""), lines.getOrDefault("rig digest", ""), what),
                Instant.parse(lines.getOrDefault("begun", "")),
                state,
                lines.getOrDefault("told", ""),
                Long.parseLong(lines.getOrDefault("done", "")),
                Long.parseLong(lines.getOrDefault("total", "")));
    }

    private static Optional<JobSpec.What> what(Map<String, String> lines) {
        return switch (lines.getOrDefault("kind", "")) {
            case "flights" ->
                    Optional.of(
                            new JobSpec.Flights(
                                    Optional.ofNullable(lines.get("profile")),
                                    lines.getOrDefault("profile digest", ""),
                                    Integer.parseInt(lines.getOrDefault("flights", "")),
                                    Long.parseLong(lines.getOrDefault("seed", ""))));
            case "pairs" -> Optional.of(new JobSpec.Pairs());
            case "explain" -> Optional.of(new JobSpec.Explain(lines.getOrDefault("test", "")));
            default -> Optional.empty();
        };
    }
}
