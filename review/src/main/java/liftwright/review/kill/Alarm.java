package liftwright.review.kill;

import java.util.List;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Findings about kills, which have much in common. */
final class Alarm {

    private Alarm() {}

    /** What keeps thrust on: with somebody in the rig it must not run so. */
    static Severity grave(Rig rig) {
        return rig.wearer().isPresent() ? Severity.STOPS : Severity.WARNS;
    }

    /** Without a number. */
    static Finding of(
            Severity severity,
            String code,
            String part,
            RigPath at,
            Sentence sentence,
            String cause) {
        return Finding.of(severity, code, sentence, cause).about(part).at(at.toString());
    }

    /** With a number held against a limit. */
    static Finding of(
            Severity severity,
            String code,
            String part,
            RigPath at,
            Sentence sentence,
            Value value,
            Finding.Limit limit,
            String cause) {
        return Finding.of(severity, code, sentence, cause)
                .about(part)
                .at(at.toString())
                .against(value, limit);
    }

    /** "a, b and c"; at most five by name. */
    static String list(List<String> names) {
        if (names.size() > 5) {
            return String.join(", ", names.subList(0, 4)) + " and " + (names.size() - 4) + " more";
        }
        return names.size() < 2
                ? String.join("", names)
                : String.join(", ", names.subList(0, names.size() - 1)) + " and " + names.getLast();
    }

    /** "3 fans stay fed (a, b and c)". */
    static String stayFed(List<String> fans) {
        return (fans.size() == 1 ? "1 fan stays fed (" : fans.size() + " fans stay fed (")
                + list(fans)
                + ")";
    }
}
