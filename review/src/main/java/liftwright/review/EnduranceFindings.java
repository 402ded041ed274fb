package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.plant.Discharge;
import liftwright.plant.Order;
import liftwright.plant.Plant;
import liftwright.quantity.Measure;
import liftwright.rig.Pack;
import liftwright.rig.Rig;

/** What a builder should know of a flight on these packs. */
final class EnduranceFindings {

    /** Currents into an idle pack below this share of its capacity in an hour are no matter. */
    private static final double IDLE_SHARE_PER_H = 0.05;

    private EnduranceFindings() {}

    static List<Finding> of(
            Plant plant, Task task, EnduranceJudgement judgement, EnduranceRun run) {
        Rig rig = plant.rig();
        List<Finding> findings = new ArrayList<>();
        run.end().ifPresent(end -> findings.add(firstEnd(rig, end)));
        continuousCurrent(rig, run).ifPresent(findings::add);
        circulating(plant).ifPresent(findings::add);
        RippleFinding.of(plant).ifPresent(findings::add);
        if (task instanceof Task.Hover) {
            findings.add(byHand(judgement, run));
        }
        return findings;
    }

    private static Finding firstEnd(Rig rig, Discharge.End end) {
        return Finding.of(
                        Severity.NOTES,
                        "first-end",
                        Sentence.words(CauseWords.first(end.cause()) + " comes first, after ")
                                .then(Measure.TIME, end.timeS())
                                .then(": ")
                                .then(CauseWords.limit(rig, end.cause())),
                        CauseWords.why(end.cause()))
                .about(end.part().map(part -> CauseWords.part(rig, end.cause(), part)))
                .judging(Value.of("time-reached", end.timeS()));
    }

    /** A current beyond what a cell may give for long, and for how long the hover asks for it. */
    private static Optional<Finding> continuousCurrent(Rig rig, EnduranceRun run) {
        for (EnduranceRun.Moment at : run.moments()) {
            Pack pack = rig.packs().get(at.pack());
            double cellA = at.packA() / pack.parallel();
            Optional<Double> most = pack.cell().continuousCurrent().map(limit -> limit.si());
            if (most.isPresent() && cellA > most.get()) {
                return Optional.of(
                        Finding.of(
                                        Severity.WARNS,
                                        "cell-continuous-current",
                                        Sentence.words(
                                                        "each cell of "
                                                                + pack.id().text()
                                                                + " gives ")
                                                .then(Measure.CURRENT, cellA)
                                                .then(" after ")
                                                .then(Measure.TIME, at.timeS())
                                                .then(", more than it may give for long, ")
                                                .then(Measure.CURRENT, most.get()),
                                        "heat grows with the square of current and ages the cell")
                                .about(pack.id().text())
                                .at("cells/" + pack.cell().name() + "/continuous current")
                                .against(
                                        Value.of("cell-current", cellA),
                                        new Finding.Limit(
                                                Value.of("cell-current", most.get()),
                                                "declared in the rig file")));
            }
        }
        return Optional.empty();
    }

    /** Packs side by side at unlike charge feed each other while the fans stand still. */
    private static Optional<Finding> circulating(Plant plant) {
        Rig rig = plant.rig();
        Discharge idle = EnduranceJudge.declared(plant, true);
        idle.follow(new Order.Throttle(0), 0, run -> {});
        int worst = -1;
        for (int pack = 0; pack < rig.packs().size(); pack++) {
            double perHour = -idle.packA(pack) * 3600 / idle.packCapacityAs(pack);
            if (perHour > IDLE_SHARE_PER_H && (worst < 0 || idle.packA(pack) < idle.packA(worst))) {
                worst = pack;
            }
        }
        if (worst < 0) {
            return Optional.empty();
        }
        Pack pack = rig.packs().get(worst);
        return Optional.of(
                Finding.of(
                                Severity.STOPS,
                                "circulating-current",
                                Sentence.words("with all fans at rest ")
                                        .then(Measure.CURRENT, -idle.packA(worst))
                                        .then(
                                                " flows into "
                                                        + pack.id().text()
                                                        + " from other packs"),
                                "packs that share a bus have unlike voltages; bring them to one charge"
                                        + " before they are joined")
                        .about(pack.id().text())
                        .at(pack.declaredAt().toString())
                        .judging(Value.of("pack-current", idle.packA(worst))));
    }

    private static Finding byHand(EnduranceJudgement judgement, EnduranceRun run) {
        return Finding.of(
                        Severity.NOTES,
                        "by-hand",
                        Sentence.words(
                                        "charge above the reserve over the first current, without sag or"
                                                + " unlike cells, would give ")
                                .then(Measure.TIME, run.byHandS())
                                .then(" against ")
                                .then(Measure.TIME, judgement.nominal())
                                .then(" of hover"),
                        "sagging packs ask for more current, and the weakest cell ends it")
                .judging(Value.of("time-by-hand", run.byHandS()));
    }
}
