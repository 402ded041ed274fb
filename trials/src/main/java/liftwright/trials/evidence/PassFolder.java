package liftwright.trials.evidence;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.rig.Problem;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigFiles;
import liftwright.rig.file.RigReading;

/**
 * The folder of passes beside a rig file: {@code rig.passes/0001.yaml} and so on. Files are added,
 * whole or not at all, and never written over, renamed or taken away.
 */
public final class PassFolder {

    private static final Pattern NAME = Pattern.compile("(\\d{4})\\.yaml");

    private final Path folder;
    private final Disk disk;

    /**
     * @param folder need not be there yet
     */
    public PassFolder(Path folder) {
        this(folder, new Disk());
    }

    /** As the other one, step by step on {@code disk}. */
    public PassFolder(Path folder, Disk disk) {
        this.folder = folder;
        this.disk = disk;
    }

    /** That of a rig file: {@code rig.yaml} has {@code rig.passes}. */
    public static PassFolder beside(Path rigFile) {
        return new PassFolder(rigFile.resolveSibling(stem(rigFile) + ".passes"));
    }

    private static String stem(Path rigFile) {
        String name = String.valueOf(rigFile.getFileName());
        int dot = name.lastIndexOf('.');
        return dot > 0 ? name.substring(0, dot) : name;
    }

    public Path folder() {
        return folder;
    }

    /**
     * What stands in the folder.
     *
     * @param passes by number
     * @param problems of all files; where there is any, a pass or an abort may be missing, and no
     *     gate may open
     */
    public record Contents(List<Pass> passes, List<Problem> problems) {
        public Contents {
            passes = List.copyOf(passes);
            problems = List.copyOf(problems);
        }
    }

    /**
     * Reads every pass. A folder that is not there has none.
     *
     * @throws IOException if the folder or a file in it cannot be read
     */
    public Contents read() throws IOException {
        var passes = new ArrayList<Pass>();
        var problems = new ArrayList<Problem>();
        for (var file : files().entrySet()) {
            String name = String.valueOf(file.getValue().getFileName());
            PassReading reading = PassReading.read(name, RigFiles.read(file.getValue()));
            problems.addAll(reading.problems());
            reading.pass()
                    .ifPresent(
                            pass -> {
                                if (pass.number() == file.getKey()) {
                                    passes.add(pass);
                                } else {
                                    problems.add(wrongNumber(name, pass.number()));
                                }
                            });
        }
        int next = 1;
        for (int number : files().keySet()) {
            if (number != next) {
                problems.add(missing(next, number));
            }
            next = number + 1;
        }
        return new Contents(passes, problems);
    }

    private static Problem wrongNumber(String name, int number) {
        return new Problem(
                Problem.Code.CONTRADICTION,
                new Problem.Place(name, 1, 1, PassKeys.NUMBER.name()),
                "pass " + number + " in the file " + name,
                "the number of the file",
                "A pass is never copied or renamed: put it back under its own name.");
    }

    private static Problem missing(int first, int before) {
        String name = name(first);
        return new Problem(
                Problem.Code.NO_SUCH_PART,
                new Problem.Place(name, 1, 1, ""),
                "no file " + name + ", though there is " + name(before),
                "every pass from 0001 on",
                "What is missing may be an abort: put it back.");
    }

    private static String name(int number) {
        return String.format(Locale.ROOT, "%04d.yaml", number);
    }

    /** Files of passes by their number; whatever else lies there is nobody's business here. */
    private SortedMap<Integer, Path> files() throws IOException {
        var files = new TreeMap<Integer, Path>();
        if (Files.isDirectory(folder)) {
            try (var all = Files.newDirectoryStream(folder)) {
                for (Path file : all) {
                    Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
                    if (name.matches()) {
                        files.put(Integer.parseInt(name.group(1)), file);
                    }
                }
            }
        }
        return files;
    }

    /**
     * Adds a pass under the next free number, whatever number it has.
     *
     * @return the pass as it was written
     * @throws IOException if any of it fails; nothing is then there under a new name, or, where
     *     only forcing the folder failed, the whole pass
     */
    public Pass add(Pass pass) throws IOException {
        SortedMap<Integer, Path> files = files();
        int number = files.isEmpty() ? 1 : files.lastKey() + 1;
        while (number <= Pass.MOST) {
            Pass numbered = numbered(pass, number);
            byte[] text = PassReading.text(numbered).getBytes(StandardCharsets.UTF_8);
            PassReading again = PassReading.read(name(number), text);
            if (!again.pass().equals(Optional.of(numbered))) {
                throw new IOException(
                        "this pass could not be read back, so it was not written: "
                                + again.problems());
            }
            try {
                RigFiles.create(folder.resolve(name(number)), text, disk);
                return numbered;
            } catch (FileAlreadyExistsException e) {
                number++; // somebody else was quicker
            }
        }
        throw new IOException("the folder " + folder + " is full");
    }

    private static Pass numbered(Pass pass, int number) {
        return new Pass(
                number,
                pass.card(),
                pass.on(),
                pass.outcome(),
                pass.by(),
                pass.cleanRuns(),
                pass.rig(),
                pass.revision(),
                pass.killProof(),
                pass.note(),
                pass.inputs());
    }

    /**
     * Digests of the controllers' settings: of every file in the folder {@code rig.settings} beside
     * a rig file, by its name. None where there is no such folder.
     *
     * @throws IOException if it cannot be read
     */
    public static SortedMap<String, String> settingsBeside(Path rigFile) throws IOException {
        var digests = new TreeMap<String, String>();
        Path settings = rigFile.resolveSibling(stem(rigFile) + ".settings");
        if (Files.isDirectory(settings)) {
            try (var all = Files.newDirectoryStream(settings)) {
                for (Path file : all) {
                    String name = String.valueOf(file.getFileName());
                    if (!name.startsWith(".") && Files.isRegularFile(file)) {
                        digests.put(name, RigReading.digest(Files.readAllBytes(file)));
                    }
                }
            }
        }
        return digests;
    }
}
