package liftwright.app.flights;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.flight.disperse.FlightReading;
import liftwright.flight.disperse.FlightSet;
import liftwright.flight.disperse.FlightText;
import liftwright.flight.disperse.FlightsOf;
import liftwright.rig.file.Disk;
import liftwright.rig.file.RigFiles;

/**
 * A file that keeps flights. It is only ever added to: what it holds is read, put together with
 * what is new, and takes the place of the old file in one step, so that it is whole at every
 * moment.
 */
public final class FlightsFile {

    private final String named;
    private final Path path;
    private final Disk disk;

    /**
     * @param named as the user knows it
     * @param path where it is, or will be
     */
    public FlightsFile(String named, Path path, Disk disk) {
        this.named = named;
        this.path = path;
        this.disk = disk;
    }

    /** As the user knows it. */
    public String named() {
        return named;
    }

    /**
     * What it holds; empty where there is no such file.
     *
     * @throws NotKeptException where it is no whole file of flights
     */
    public Optional<FlightSet> read() {
        if (!Files.exists(path)) {
            return Optional.empty();
        }
        byte[] bytes;
        try {
            bytes = RigFiles.read(path, FlightReading.MOST_BYTES + 1);
        } catch (IOException e) {
            throw new NotKeptException("cannot read " + named + ": " + e.getMessage());
        }
        return switch (FlightReading.of(bytes)) {
            case FlightReading.Read(FlightSet set) -> Optional.of(set);
            case FlightReading.Broken(int line, int column, String sentence) ->
                    throw new NotKeptException(named + ":" + line + ":" + column + ": " + sentence);
        };
    }

    /**
     * Adds flights to what it holds by now, and writes it where that changes it.
     *
     * @return all that it holds then
     * @throws NotKeptException where they do not belong together, or it cannot be written; what was
     *     there stands
     */
    public FlightSet add(FlightSet flown) {
        Optional<FlightSet> before = read();
        FlightSet all = together(flown.of(), named, before.stream().toList(), List.of(flown));
        if (before.isPresent() && before.get().equals(all)) {
            return all;
        }
        try {
            Path folder = path.toAbsolutePath().getParent();
            if (folder != null) {
                Files.createDirectories(folder);
            }
            RigFiles.write(path, FlightText.of(all).getBytes(StandardCharsets.UTF_8), disk);
        } catch (IOException e) {
            throw new NotKeptException("cannot write " + named + ": " + e.getMessage());
        }
        return all;
    }

    /**
     * Sets as one.
     *
     * @param of what they must be
     * @param name of the file they come from
     * @throws NotKeptException naming the flight, or the kind, that does not fit
     */
    public static FlightSet together(
            FlightsOf of, String name, List<FlightSet> first, List<FlightSet> then) {
        List<FlightSet> parts = new ArrayList<>();
        parts.add(FlightSet.none(of));
        parts.addAll(first);
        parts.addAll(then);
        return switch (FlightSet.merge(parts)) {
            case FlightSet.Merged.Whole(FlightSet set) -> set;
            case FlightSet.Merged.Refused(int _, var _, String reason) ->
                    throw new NotKeptException(
                            name + " holds flights that do not belong to these: " + reason);
        };
    }
}
