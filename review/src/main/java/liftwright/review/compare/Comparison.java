package liftwright.review.compare;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import liftwright.answer.Answer;
import liftwright.answer.Evidence;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.answer.Verdict;
import liftwright.numerics.Work;
import liftwright.review.Judged;
import liftwright.review.Settings;
import liftwright.review.Stage;
import liftwright.rig.revision.FileChange;
import liftwright.rig.revision.FileChanges;

/**
 * "Is it any worse than before?": two revisions of a rig, what differs in their files and in every
 * answer. Met where no verdict of the second is less than that of the first. Changes of numbers are
 * told with the band of the differences on the same draws: what both revisions share, known well or
 * not, cancels.
 */
public final class Comparison {

    private final Revision first;
    private final Revision second;
    private final Settings settings;
    private final List<FileChange> file;

    private Comparison(Revision first, Revision second, Settings settings) {
        this.first = first;
        this.second = second;
        this.settings = settings;
        file = FileChanges.between(first.rig().declaration(), second.rig().declaration());
    }

    /**
     * Compares.
     *
     * @param puts the questions, each put to both
     * @param settings those that the questions were made with
     * @return empty when it was stopped
     */
    public static Optional<CompareAnswer> of(
            Revision first, Revision second, List<Put> puts, Settings settings, Work work) {
        var comparison = new Comparison(first, second, settings);
        List<Compared> all = new ArrayList<>();
        for (Put put : puts) {
            Optional<Compared> one = comparison.compared(put, work);
            if (one.isEmpty()) {
                return Optional.empty();
            }
            all.add(one.get());
        }
        return Optional.of(comparison.answer(all));
    }

    private Optional<Compared> compared(Put put, Work work) {
        Optional<? extends Answer> before = put.before().answer(Stage.WHOLE, work);
        Optional<? extends Answer> after =
                before.isEmpty() ? Optional.empty() : put.after().answer(Stage.WHOLE, work);
        if (before.isEmpty() || after.isEmpty()) {
            return Optional.empty();
        }
        Optional<Judged> was = put.before().judged(work);
        Optional<Judged> is = put.after().judged(work);
        var tables = new ComparedTables(put.question(), before.get(), after.get());
        List<Place> changed = tables.changed();
        Optional<Paired> paired =
                changed.isEmpty() ? Optional.empty() : Paired.of(put, changed, settings, work);
        if (work.stopped()) {
            return Optional.empty();
        }
        return Optional.of(
                new Compared(
                        put.question(),
                        before.get(),
                        after.get(),
                        was,
                        is,
                        tables.same(),
                        tables.sections(paired),
                        paired.map(Paired::draws).orElse(0)));
    }

    private CompareAnswer answer(List<Compared> all) {
        List<Section> sections = new ArrayList<>();
        sections.add(
                new Section.Table(
                        "verdicts-compared",
                        "Verdicts and what they are judged by",
                        List.of(
                                "compared-question",
                                "verdict-before",
                                "verdict-after",
                                "compared-what",
                                "compared-before",
                                "compared-after",
                                "compared-change"),
                        all.stream()
                                .sorted(Comparator.comparing(one -> !one.verdictChanged()))
                                .map(Compared::row)
                                .toList()));
        fileSection().ifPresent(sections::add);
        all.forEach(one -> sections.addAll(one.sections()));
        return new CompareAnswer(verdict(all), findings(all), sections, evidence(all));
    }

    private Optional<Section> fileSection() {
        List<List<Value>> rows = new ArrayList<>();
        for (FileChange change : file) {
            rows.add(
                    List.of(
                            Value.words("file-place", change.at().toString()),
                            Value.words("file-change", change.kind().word()),
                            Value.words("file-from", change.from()),
                            Value.words("file-to", change.to())));
        }
        Set<String> paths = new TreeSet<>(first.tables().keySet());
        paths.addAll(second.tables().keySet());
        for (String path : paths) {
            String was = first.tables().getOrDefault(path, "");
            String is = second.tables().getOrDefault(path, "");
            if (!was.equals(is)) {
                rows.add(
                        List.of(
                                Value.words("file-place", path),
                                Value.words(
                                        "file-change",
                                        was.isEmpty()
                                                ? "added"
                                                : is.isEmpty() ? "removed" : "changed"),
                                Value.words(
                                        "file-from", was.isEmpty() ? "" : "table " + brief(was)),
                                Value.words("file-to", is.isEmpty() ? "" : "table " + brief(is))));
            }
        }
        String wasFound = first.rig().corrections().digest();
        String isFound = second.rig().corrections().digest();
        if (!wasFound.equals(isFound)) {
            rows.add(
                    List.of(
                            Value.words("file-place", "corrections, what tests found"),
                            Value.words("file-change", FileChange.Kind.CHANGED.word()),
                            Value.words("file-from", brief(wasFound)),
                            Value.words("file-to", brief(isFound))));
        }
        return rows.isEmpty()
                ? Optional.empty()
                : Optional.of(
                        new Section.Table(
                                "file-changes",
                                "What changed in the file",
                                List.of("file-place", "file-change", "file-from", "file-to"),
                                rows));
    }

    private Verdict verdict(List<Compared> all) {
        List<Compared> changed = all.stream().filter(Compared::verdictChanged).toList();
        boolean worse = changed.stream().anyMatch(Compared::worse);
        String verdicts =
                changed.isEmpty()
                        ? "no verdict changes"
                        : changed.stream()
                                .sorted(Comparator.comparing(one -> !one.worse()))
                                .map(Compared::verdictWords)
                                .collect(Collectors.joining("; "));
        String places =
                file.isEmpty()
                        ? "; the file says the same"
                        : file.size() == 1
                                ? "; one place of the file differs"
                                : "; " + file.size() + " places of the file differ";
        return new Verdict(
                worse ? Outcome.DOES_NOT_HOLD : Outcome.HOLDS,
                Sentence.words("no verdict lesser than before; " + verdicts + places),
                Optional.empty(),
                List.of());
    }

    private static List<Finding> findings(List<Compared> all) {
        List<Finding> findings = new ArrayList<>();
        for (Compared one : all) {
            if (one.verdictChanged()) {
                findings.add(verdictFinding(one));
            }
        }
        for (Compared one : all) {
            Set<String> before = known(one.before());
            Set<String> after = known(one.after());
            for (Finding finding : one.after().findings()) {
                if (!before.contains(name(finding)) && finding.severity() != Severity.NOTES) {
                    findings.add(retold(finding, finding.severity(), "new in " + one.question()));
                }
            }
            for (Finding finding : one.before().findings()) {
                if (!after.contains(name(finding)) && finding.severity() != Severity.NOTES) {
                    findings.add(retold(finding, Severity.NOTES, "gone from " + one.question()));
                }
            }
        }
        findings.sort(Comparator.comparing(Finding::severity));
        return findings;
    }

    private static Finding verdictFinding(Compared one) {
        return Finding.of(
                one.worse() ? Severity.STOPS : Severity.NOTES,
                one.worse() ? "verdict-worse" : "verdict-better",
                Sentence.words(one.verdictWords()),
                "see what changed in the file, and which numbers it moved");
    }

    private static Finding retold(Finding finding, Severity severity, String what) {
        return Finding.of(
                        severity,
                        severity == Severity.NOTES ? "finding-gone" : "finding-new",
                        Sentence.words(what + ": ").then(finding.sentence()),
                        finding.cause())
                .about(finding.part())
                .at(severity == Severity.NOTES ? Optional.empty() : finding.path());
    }

    private static Set<String> known(Answer answer) {
        Set<String> names = new HashSet<>();
        answer.findings().forEach(finding -> names.add(name(finding)));
        return names;
    }

    /** What its number is today is no other finding. */
    private static String name(Finding finding) {
        return finding.code() + " " + finding.part().orElse("");
    }

    private static String named(Revision revision) {
        return revision.name() + " (" + brief(revision.digest()) + ")";
    }

    /** Enough of a digest to tell two apart by eye. */
    private static String brief(String digest) {
        int begin = digest.indexOf(':') + 1;
        return digest.substring(begin, Math.min(digest.length(), begin + 8));
    }

    private Evidence evidence(List<Compared> all) {
        String draws =
                all.stream()
                        .filter(one -> one.draws() > 0)
                        .map(one -> one.question() + " " + one.draws())
                        .collect(Collectors.joining(", "));
        String same =
                all.stream()
                        .map(one -> one.question() + " " + one.same())
                        .collect(Collectors.joining(", "));
        return new Evidence(
                second.digest(),
                second.rig().corrections().digest(),
                settings.seed(),
                settings.firstDraws(),
                Sentence.words(
                        "first: "
                                + named(first)
                                + "; second: "
                                + named(second)
                                + "; "
                                + (draws.isEmpty()
                                        ? "no number differs"
                                        : "changes drawn together: " + draws)
                                + "; numbers the same in both: "
                                + same
                                + "; what is drawn for arms' strength, rotors' inertia and hearing"
                                + " alone stands at its declared value in changes"),
                List.of(),
                List.of(),
                List.of());
    }
}
