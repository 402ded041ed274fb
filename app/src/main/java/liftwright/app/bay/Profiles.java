package liftwright.app.bay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.app.bay.FaultException.Kind;
import liftwright.flight.profile.Profile;
import liftwright.flight.profile.ProfileReading;
import liftwright.rig.Problem;
import liftwright.rig.Rig;
import liftwright.rig.file.RigReading;

/**
 * The profiles in the folder {@code profiles} beside the rigs of the opened folder.
 *
 * @param records say where a rig lies
 * @param folder that is open; profiles elsewhere are none
 */
record Profiles(Records records, Path folder) {

    private static final String BESIDE = "profiles";
    private static final String USUAL = "usual";
    private static final int MOST = 64;

    /** No profile is longer than this: a step takes some tens of bytes. */
    private static final long MOST_BYTES = 256 << 10;

    /**
     * Names of the files, in order.
     *
     * @param rig its path from the folder
     * @throws FaultException where the rig leads out of the folder
     */
    List<String> names(String rig) {
        Path at = beside(rig);
        if (!Files.isDirectory(at)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(at)) {
            return all.filter(file -> Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS))
                    .map(file -> file.getFileName().toString())
                    .filter(OpenedFolder::isRigName)
                    .sorted()
                    .limit(MOST)
                    .toList();
        } catch (IOException e) {
            return List.of(); // a folder that may not be read holds nothing for us
        }
    }

    /**
     * The profile that was asked for, else the first beside the rig, else the usual one.
     *
     * @param rig its path from the folder
     * @param named one of {@link #names}; empty where none was chosen
     * @param declared the rig whose parts it names
     * @throws FaultException where there is no such profile, or it does not read
     */
    Profile of(String rig, Optional<String> named, Rig declared) {
        return chosen(rig, named, declared).profile();
    }

    /**
     * A profile that is flown.
     *
     * @param name of its file; empty for the usual one
     * @param digest of the file
     */
    record Chosen(Optional<String> name, Profile profile, String digest) {}

    /** As {@link #of}, with where it comes from. */
    Chosen chosen(String rig, Optional<String> named, Rig declared) {
        List<String> names = names(rig);
        if (named.isPresent() && !names.contains(named.get())) {
            throw new FaultException(Kind.MISSING, "There is no such profile beside the rig file.");
        }
        Optional<String> name = named.or(() -> names.stream().findFirst());
        return name.isPresent()
                ? read(rig, name.get(), declared)
                : new Chosen(name, Profile.usual(), USUAL);
    }

    private Chosen read(String rig, String name, Rig declared) {
        byte[] bytes = bytes(beside(rig).resolve(name));
        ProfileReading reading = ProfileReading.read(BESIDE + "/" + name, bytes, declared);
        return new Chosen(
                Optional.of(name),
                reading.profile().orElseThrow(() -> unread(reading.problems().getFirst())),
                RigReading.digest(bytes));
    }

    private static byte[] bytes(Path file) {
        try {
            if (Files.size(file) > MOST_BYTES) {
                throw new FaultException(Kind.REFUSED, "The profile is longer than any can be.");
            }
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new FaultException(
                    Kind.REFUSED,
                    AnswerLines.harmless("The profile cannot be read: " + e.getMessage()));
        }
    }

    private static FaultException unread(Problem problem) {
        return new FaultException(
                Kind.REFUSED,
                AnswerLines.harmless(
                        problem.at().file()
                                + ", line "
                                + problem.at().line()
                                + ": found "
                                + problem.found()
                                + ", expected "
                                + problem.expected()
                                + "."));
    }

    /** The folder beside a rig, where it leads nowhere else. */
    private Path beside(String rig) {
        Path file = records.of(rig).rigFile();
        Path at = file.resolveSibling(BESIDE);
        if (Files.isSymbolicLink(at) || !at.normalize().startsWith(folder)) {
            throw new FaultException(
                    Kind.MISSING, "The profiles beside the rig file lead out of the folder.");
        }
        return at;
    }
}
