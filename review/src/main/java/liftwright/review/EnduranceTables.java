package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Cause;
import liftwright.rig.Rig;

/** What ends the flight and when, and how the packs sag on the way. */
final class EnduranceTables {

    private EnduranceTables() {}

    static Section ends(Rig rig, EnduranceRun run, EnduranceJudgement judgement) {
        List<List<Value>> rows = new ArrayList<>();
        for (Cause cause : Cause.values()) {
            if (cause.isOfHeat()) {
                continue; // a question of its own
            }
            OptionalDouble time = run.run().reached(cause);
            rows.add(
                    List.of(
                            Value.words("cause", CauseWords.first(cause)),
                            time(time),
                            Value.words("part", time.isPresent() ? first(rig, run, cause) : "none"),
                            share(cause, judgement)));
        }
        return new Section.Table(
                "ends",
                "What would end it, if nothing before did",
                List.of("cause", "time-reached", "part", "ends-share"),
                rows);
    }

    private static Value share(Cause cause, EnduranceJudgement judgement) {
        return judgement.draws() == 0
                ? new Value("ends-share", new Value.Figure.NotComputed("no draws were made"))
                : Value.of("ends-share", judgement.sample().shareEndedBy(cause, judgement.draws()));
    }

    private static String first(Rig rig, EnduranceRun run, Cause cause) {
        int parts =
                switch (cause) {
                    case RESERVE, CELL_VOLTAGE, CELL_CURRENT, EMPTY -> rig.packs().size();
                    case CUT_OFF -> rig.fans().size();
                    case FULL_THROTTLE, OVERHEATED, FUSE_OPENED -> 1;
                };
        int first = 0;
        for (int part = 1; part < parts; part++) {
            if (orInfinite(run.reached(cause, part)) < orInfinite(run.reached(cause, first))) {
                first = part;
            }
        }
        return CauseWords.part(rig, cause, first);
    }

    private static double orInfinite(OptionalDouble time) {
        return time.orElse(Double.POSITIVE_INFINITY);
    }

    private static Value time(OptionalDouble time) {
        return time.isPresent()
                ? Value.of("time-reached", time.getAsDouble())
                : new Value("time-reached", new Value.Figure.Never());
    }

    static Section marks(EnduranceRun run, EnduranceJudgement judgement) {
        List<List<Value>> rows = new ArrayList<>();
        for (int mark = 0; mark < EnduranceSample.MARKS_S.length; mark++) {
            double[] draws = judgement.sample().ratiosAtMark(mark, judgement.draws());
            OptionalDouble nominal = run.ratioAtMark().get(mark);
            Value ratio;
            if (nominal.isPresent() && draws.length == judgement.draws()) {
                ratio =
                        Value.of(
                                "thrust-to-weight-then",
                                nominal.getAsDouble(),
                                Bands.shown(Bands.about(nominal.getAsDouble(), draws)));
            } else {
                ratio =
                        new Value(
                                "thrust-to-weight-then",
                                new Value.Figure.NotComputed(
                                        judgement.draws() == 0
                                                ? "it does not fly so long"
                                                : draws.length
                                                        + " of "
                                                        + judgement.draws()
                                                        + " draws fly so long"));
            }
            rows.add(List.of(Value.of("time", EnduranceSample.MARKS_S[mark]), ratio));
        }
        return new Section.Table(
                "thrust-later",
                "Lift over weight at full throttle after so long a hover",
                List.of("time", "thrust-to-weight-then"),
                rows);
    }

    static Section sag(EnduranceRun run) {
        List<List<Value>> rows = new ArrayList<>();
        for (EnduranceRun.Moment at : run.moments()) {
            rows.add(
                    List.of(
                            Value.of("time", at.timeS()),
                            Value.of("throttle", at.throttle()),
                            Value.of("pack-current", at.packA()),
                            Value.of("pack-voltage", at.packV()),
                            Value.of("least-cell-voltage", at.leastCellV()),
                            Value.of("charge-left", Math.max(0, at.chargeLeft()))));
        }
        return new Section.Table(
                "sag",
                "The pack with the lowest cell on the way",
                List.of(
                        "time",
                        "throttle",
                        "pack-current",
                        "pack-voltage",
                        "least-cell-voltage",
                        "charge-left"),
                rows);
    }

    static Section packs(Rig rig, EnduranceRun run) {
        List<List<Value>> rows = new ArrayList<>();
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            rows.add(
                    List.of(
                            Value.words("part", rig.packs().get(pack).id().text()),
                            reached("time-to-reserve", run.reached(Cause.RESERVE, pack)),
                            reached("time-to-cell-voltage", run.reached(Cause.CELL_VOLTAGE, pack)),
                            reached("time-to-empty", run.reached(Cause.EMPTY, pack)),
                            Value.words(
                                    "weakest-cell",
                                    Integer.toString(run.run().weakestCell(pack)))));
        }
        return new Section.Table(
                "packs",
                "When each pack reaches its limits",
                List.of(
                        "part",
                        "time-to-reserve",
                        "time-to-cell-voltage",
                        "time-to-empty",
                        "weakest-cell"),
                rows);
    }

    private static Value reached(String field, OptionalDouble time) {
        return time.isPresent()
                ? Value.of(field, time.getAsDouble())
                : Value.words(field, "not reached");
    }
}
