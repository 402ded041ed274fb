package liftwright.logbook.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.logbook.store.Flaw;

/** What a logbook tells. */
public record LogbookAnswer(
        Verdict verdict, List<Finding> findings, List<Section> sections, Evidence evidence)
        implements Answer {

    private static final String WRITTEN = "a file of the logbook is what was written";

    public LogbookAnswer {
        findings = List.copyOf(findings);
        sections = List.copyOf(sections);
    }

    @Override
    public String question() {
        return "logbook";
    }

    /**
     * @param about what it rests on besides the logbook
     * @param outcome by the logbook
     * @param sentence that opens it
     */
    static LogbookAnswer of(
            About about,
            Outcome outcome,
            Sentence sentence,
            List<Finding> findings,
            List<Section> sections) {
        return new LogbookAnswer(
                new Verdict(outcome, sentence, Optional.empty(), List.of()),
                findings,
                sections,
                new Evidence(
                        about.rigDigest(),
                        "none",
                        about.seed(),
                        about.draws(),
                        Sentence.words("as it stands in " + about.folder()),
                        List.of(
                                new Evidence.Law(
                                        WRITTEN,
                                        "SHA-256 of its bytes, FIPS 180-4",
                                        "slips and broken disks; who rewrites the digests too is not found",
                                        true)),
                        List.of(),
                        List.of()));
    }

    /**
     * What an answer is about.
     *
     * @param rigDigest of the rig file as it is now
     * @param folder of the logbook, by its name
     * @param seed of draws
     * @param draws made
     */
    public record About(String rigDigest, String folder, long seed, int draws) {}

    /** Flaws as findings: what may not be trusted stops. */
    static List<Finding> findings(List<Flaw> flaws) {
        var findings = new ArrayList<Finding>();
        for (Flaw flaw : flaws) {
            findings.add(
                    Finding.of(
                                    flaw.isHarmless() ? Severity.NOTES : Severity.STOPS,
                                    "logbook-" + flaw.kind().word().replace(' ', '-'),
                                    Sentence.words(flaw.file() + " " + says(flaw)),
                                    flaw.isHarmless()
                                            ? "the program or the power was stopped in mid-write"
                                            : "a logbook is only added to: put back the file as it"
                                                    + " was written")
                            .at(flaw.file()));
        }
        findings.sort(java.util.Comparator.comparing(Finding::severity));
        return findings;
    }

    private static String says(Flaw flaw) {
        return flaw.kind() == Flaw.Kind.UNREADABLE
                ? "does not read: " + flaw.words()
                : flaw.words();
    }

    /** How many of them may not be passed over. */
    static long serious(List<Flaw> flaws) {
        return flaws.stream().filter(flaw -> !flaw.isHarmless()).count();
    }

    static String counted(long n, String one, String many) {
        return n == 1 ? "1 " + one : n + " " + many;
    }
}
