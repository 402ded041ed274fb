package liftwright.rig.file;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import liftwright.rig.correction.Corrections;
import liftwright.rig.correction.text.CorrectionsReading;
import liftwright.rig.correction.text.CorrectionsText;

/**
 * The file of corrections beside a rig file on the disk. What it held before is kept as a numbered
 * copy beside it, {@code rig.corrections.1.yaml} and on: nothing of the builder's is lost, even
 * where somebody edited it.
 */
public final class CorrectionsFile {

    private static final String ENDING = ".yaml";

    private static final int MOST_COPIES = 9999;

    private final Path file;
    private final Disk disk;

    private CorrectionsFile(Path file, Disk disk) {
        this.file = file;
        this.disk = disk;
    }

    /** That of a rig file, which need not be there yet. */
    public static CorrectionsFile beside(Path rigFile) {
        return beside(rigFile, new Disk());
    }

    /** As the other one, step by step on {@code disk}. */
    public static CorrectionsFile beside(Path rigFile, Disk disk) {
        String name = String.valueOf(rigFile.getFileName());
        return new CorrectionsFile(
                rigFile.resolveSibling(CorrectionsReading.nameBeside(name)), disk);
    }

    public Path path() {
        return file;
    }

    /**
     * Writes corrections, whole or not at all: a temporary file is forced to the disk and takes the
     * place of the old one in a single step.
     *
     * @return the copy of what was there before; empty where nothing was, or the same
     * @throws IOException if any of it fails: the old file then stands as it stood, or, where only
     *     forcing the folder failed, the new one stands whole. A copy may be there already
     */
    public Optional<Path> write(Corrections corrections) throws IOException {
        String text = CorrectionsText.of(corrections);
        byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
        CorrectionsReading again =
                CorrectionsReading.read(String.valueOf(file.getFileName()), bytes);
        if (!again.corrections().equals(Optional.of(corrections))) {
            throw new IOException(
                    "these corrections could not be read back, so they were not written: "
                            + again.problems());
        }
        if (!Files.exists(file)) {
            RigFiles.create(file, bytes, disk);
            return Optional.empty();
        }
        byte[] before = RigFiles.read(file);
        if (Arrays.equals(before, bytes)) {
            return Optional.empty();
        }
        Path copy = keep(before);
        if (!RigFiles.writeOver(file, before, bytes, disk)) {
            throw new IOException(file + " was changed by somebody else meanwhile");
        }
        return Optional.of(copy);
    }

    private Path keep(byte[] before) throws IOException {
        String name = String.valueOf(file.getFileName());
        String stem = name.substring(0, name.length() - ENDING.length());
        for (int number = 1; number <= MOST_COPIES; number++) {
            Path copy = file.resolveSibling(stem + "." + number + ENDING);
            if (Files.exists(copy)) {
                if (Arrays.equals(RigFiles.read(copy), before)) {
                    return copy; // an earlier try came that far
                }
                continue;
            }
            try {
                RigFiles.create(copy, before, disk);
                return copy;
            } catch (FileAlreadyExistsException _) {
                // Somebody else was quicker: the next number.
            }
        }
        throw new IOException("there are " + MOST_COPIES + " copies of " + file + " already");
    }
}
