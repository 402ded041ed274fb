package liftwright.app;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.report.ProblemReport;
import liftwright.report.TableCsv;
import liftwright.review.HeatAnswer;
import liftwright.review.HeatCase;
import liftwright.review.Task;
import liftwright.rig.Rig;
import liftwright.rig.csv.StartText;
import liftwright.rig.csv.TableReader;
import liftwright.rig.csv.TableReading;
import liftwright.rig.table.StartState;

/** What the question of heat takes from files, and what it leaves in files. */
final class HeatAsking {

    private final Options options;
    private final Surroundings around;

    HeatAsking(Options options, Surroundings around) {
        this.options = options;
        this.around = around;
    }

    /**
     * Looks at the files before anything is computed.
     *
     * @throws UsageException when one is there already, or several rigs would write it
     */
    void check(List<String> rigs) {
        for (String option : Grammar.WRITTEN_BY_HEAT) {
            file(option)
                    .ifPresent(
                            file -> {
                                if (rigs.size() > 1) {
                                    throw new UsageException(
                                            option + " writes about one rig; name only one");
                                }
                                if (Files.exists(file.path())) {
                                    throw new UsageException(
                                            file.named()
                                                    + " exists, and what exists is not overwritten:"
                                                    + " give another name");
                                }
                            });
        }
    }

    private Optional<UserFile> file(String option) {
        return options.text(option)
                .map(named -> new UserFile(named, UserFile.path(named, around.folder())));
    }

    /**
     * A task from where the options say.
     *
     * @throws UsageException when the file of the start is none of this rig
     */
    HeatCase from(Task task, Rig rig) {
        return new HeatCase(task, file(Grammar.START_STATE).map(file -> read(file, rig)));
    }

    private StartState read(UserFile file, Rig rig) {
        return switch (TableReader.startState(file.named(), file.read(), rig)) {
            case TableReading.Whole<StartState>(var state) -> state;
            case TableReading.Broken<StartState>(var problems) ->
                    throw new UsageException(
                            "the state to start from cannot be used.\n"
                                    + ProblemReport.write(
                                                    file.named(), "", problems, options.look())
                                            .strip());
        };
    }

    /** Writes what was asked for, each file whole or not at all; the names of those written. */
    List<String> write(HeatAnswer answer) {
        List<String> written = new ArrayList<>();
        file(Grammar.END_STATE)
                .ifPresent(
                        file -> {
                            file.create(
                                    StartText.write(answer.left())
                                            .getBytes(StandardCharsets.UTF_8));
                            written.add(file.named());
                        });
        file(Grammar.SOLDERING)
                .ifPresent(
                        file -> {
                            if (answer.sections().stream()
                                    .noneMatch(section -> section.id().equals("soldering"))) {
                                throw new UsageException(
                                        "nothing to list in "
                                                + file.named()
                                                + ": the rig declares no wire, joint, fuse or"
                                                + " contactor");
                            }
                            file.create(
                                    TableCsv.solderingList(
                                                    answer.sections(), options.look().units())
                                            .getBytes(StandardCharsets.UTF_8));
                            written.add(file.named());
                        });
        return written;
    }
}
