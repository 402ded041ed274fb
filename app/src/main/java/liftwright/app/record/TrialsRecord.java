package liftwright.app.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;
import liftwright.rig.stand.Stand;
import liftwright.rig.stand.StandReading;
import liftwright.trials.ask.TrialsCase;
import liftwright.trials.day.Day;
import liftwright.trials.day.DayReading;
import liftwright.trials.evidence.PassFolder;
import liftwright.trials.proof.KillProof;
import liftwright.trials.proof.ProofReading;
import liftwright.trials.proof.ProofText;

/**
 * What lies beside a rig file about its tests: passes in {@code rig.passes}, proofs of the kills in
 * {@code rig.kills}, settings of controllers in {@code rig.settings}, the plan of a thrust stand in
 * {@code stand.yaml}.
 *
 * @param rigFile whose it is
 */
public record TrialsRecord(Path rigFile) {

    private static final String YAML = ".yaml";
    private static final String STAND = "stand.yaml";

    /** A name that leads into no other folder. */
    private static final Pattern PLAIN = Pattern.compile("[^/\\\\]*[^/\\\\.][^/\\\\]*");

    /**
     * All of it, as far as it can be read; what cannot is told and keeps gates closed.
     *
     * @throws IOException when the disk does not give it
     */
    public TrialsCase read(Rig rig, String rigDigest, LocalDate today) throws IOException {
        PassFolder.Contents passes = folder().read();
        return new TrialsCase(
                rig,
                rigDigest,
                passes.passes(),
                Stream.concat(
                                passes.problems().stream().map(TrialsRecord::words),
                                proofProblems().stream())
                        .toList(),
                settings(),
                lastProof(),
                stand(),
                today);
    }

    /** Where passes are. */
    public PassFolder folder() {
        return PassFolder.beside(rigFile);
    }

    private static String words(Problem problem) {
        return problem.at().file() + ":" + problem.at().line() + ": " + problem.found();
    }

    /**
     * Keeps a proof of the kills in a file of its own; none is ever written over.
     *
     * @return the file
     * @throws IOException when the disk does not take it
     */
    public Path add(KillProof proof) throws IOException {
        Files.createDirectories(proofs());
        byte[] text = ProofText.write(proof).getBytes(StandardCharsets.UTF_8);
        Path file = proofs().resolve(proof.date() + YAML);
        for (int n = 2; !isCreated(file, text); n++) {
            file = proofs().resolve(proof.date() + "-" + n + YAML);
        }
        return file;
    }

    private static boolean isCreated(Path file, byte[] text) throws IOException {
        try {
            RigFiles.create(file, text);
            return true;
        } catch (FileAlreadyExistsException e) {
            return false;
        }
    }

    /**
     * The day that is written down beside the rig file; empty where there is none that reads.
     *
     * @throws IOException when the disk does not give it
     */
    public Optional<Day> day(Rig rig) throws IOException {
        Path file = dayFile();
        return Files.isRegularFile(file)
                ? DayReading.read(String.valueOf(file.getFileName()), RigFiles.read(file), rig)
                        .day()
                : Optional.empty();
    }

    /**
     * A proof of the kills beside the rig file, by its name; empty where none of that name reads.
     *
     * @throws IOException when the disk does not give it
     */
    public Optional<KillProof> proof(String named) throws IOException {
        Path file = rigFile.resolveSibling(PLAIN.matcher(named).matches() ? named : ".");
        return Files.isRegularFile(file) ? reading(file).proof() : Optional.empty();
    }

    /** The day file beside the rig file: {@code rig.day.yaml}. */
    public Path dayFile() {
        return rigFile.resolveSibling(stem() + ".day.yaml");
    }

    private String stem() {
        String name = String.valueOf(folder().folder().getFileName());
        return name.substring(0, name.lastIndexOf('.')); // rig of rig.passes
    }

    /** Folder of the proofs of the kills. */
    public Path proofs() {
        return rigFile.resolveSibling(stem() + ".kills");
    }

    private Optional<KillProof> lastProof() throws IOException {
        Optional<Path> last = proofFiles().stream().reduce((_, later) -> later);
        return last.isEmpty() ? Optional.empty() : reading(last.get()).proof();
    }

    private List<String> proofProblems() throws IOException {
        Optional<Path> last = proofFiles().stream().reduce((_, later) -> later);
        return last.isEmpty()
                ? List.of()
                : reading(last.get()).problems().stream().map(TrialsRecord::words).toList();
    }

    private static ProofReading reading(Path file) throws IOException {
        return ProofReading.read(String.valueOf(file.getFileName()), RigFiles.read(file));
    }

    /** In the order of their days. */
    private List<Path> proofFiles() throws IOException {
        if (!Files.isDirectory(proofs())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(proofs())) {
            return files.filter(
                            file -> String.valueOf(file.getFileName()).matches("[0-9-]+[.]yaml"))
                    .sorted(TrialsRecord::inTime)
                    .toList();
        }
    }

    /** 2026-03-14, 2026-03-14-2, …, 2026-03-14-10. */
    private static int inTime(Path one, Path other) {
        String first = String.valueOf(one.getFileName());
        String second = String.valueOf(other.getFileName());
        int day = first.substring(0, 10).compareTo(second.substring(0, 10));
        return day != 0
                ? day
                : Integer.compare(first.length(), second.length()) != 0
                        ? Integer.compare(first.length(), second.length())
                        : first.compareTo(second);
    }

    /** The plan of the stand decides what a card should read, so passes rest on it too. */
    private Map<String, String> settings() throws IOException {
        Map<String, String> digests = new TreeMap<>(PassFolder.settingsBeside(rigFile));
        Path file = rigFile.resolveSibling(STAND);
        if (Files.isRegularFile(file)) {
            digests.put(STAND, RigReading.digest(RigFiles.read(file)));
        }
        return digests;
    }

    private Optional<Stand> stand() throws IOException {
        Path file = rigFile.resolveSibling(STAND);
        return Files.isRegularFile(file)
                ? StandReading.read(STAND, RigFiles.read(file)).stand()
                : Optional.empty();
    }
}
