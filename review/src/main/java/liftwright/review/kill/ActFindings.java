package liftwright.review.kill;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;
import liftwright.rig.Contactor;
import liftwright.rig.Element;
import liftwright.rig.Kill;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Supplies;

/** Whether a kill acts soon enough, breaks what flows, and acts by itself when it is lost. */
final class ActFindings {

    private final Rig rig;
    private final KillStructure structure;
    private final KillTimes times;

    ActFindings(Rig rig, KillStructure structure, KillTimes times) {
        this.rig = rig;
        this.structure = structure;
        this.times = times;
    }

    List<Finding> all() {
        List<Finding> findings = new ArrayList<>();
        for (KillStructure.Chain chain : structure.chains()) {
            late(chain).ifPresent(findings::add);
            onLoss(chain.kill()).ifPresent(findings::add);
            behind(chain.kill()).ifPresent(findings::add);
            untold(chain.kill()).ifPresent(findings::add);
        }
        for (Contactor contactor : rig.wiring().contactors()) {
            cannotBreak(contactor).ifPresent(findings::add);
        }
        untimed().ifPresent(findings::add);
        return findings;
    }

    private Optional<Finding> late(KillStructure.Chain chain) {
        Kill kill = chain.kill();
        double limit = rig.limits().si(LimitName.KILL_TIME);
        return times.pressToStillS(kill, structure.leftBy(chain))
                .filter(time -> time > limit)
                .map(
                        time ->
                                Alarm.of(
                                        Severity.WARNS,
                                        "kill-late",
                                        kill.id(),
                                        kill.declaredAt(),
                                        Sentence.words("thrust is under a tenth ")
                                                .then(Measure.TIME, time)
                                                .then(
                                                        " after the press of "
                                                                + kill.id()
                                                                + ", later than ")
                                                .then(Measure.TIME, limit),
                                        Value.of("kill-time", time),
                                        new Finding.Limit(
                                                Value.of("kill-time", limit),
                                                LimitName.KILL_TIME.key()
                                                        + ": "
                                                        + rig.limits().origin(LimitName.KILL_TIME)),
                                        "delay of the signal, contactor, and rotors that coast"));
    }

    private Optional<Finding> untimed() {
        if (structure.chains().isEmpty()) {
            return Optional.empty();
        }
        return times.withoutInertia()
                .map(
                        fan ->
                                Alarm.of(
                                        Severity.NOTES,
                                        "kill-time-cannot-be-told",
                                        fan.type().name(),
                                        RigPath.of("fan types", fan.type().name(), "rotor"),
                                        Sentence.words(
                                                "how long thrust lasts after a kill cannot be told:"
                                                        + " declare the “inertia” of the rotor of "
                                                        + fan.type().name()),
                                        "a rotor coasts for as long as its inertia carries it"));
    }

    private static Optional<Finding> onLoss(Kill kill) {
        if (kill.opensOnLoss()) {
            return Optional.empty();
        }
        String lost =
                switch (kill.by()) {
                    case RADIO -> "its supply or its link is lost";
                    case SOFTWARE -> "the computer or its supply is lost";
                    case WIRE, BUTTON -> "its line is torn or its supply lost";
                    case LANYARD -> kill.fedBy().isPresent() ? "its supply is lost" : "";
                };
        if (lost.isEmpty()) {
            return Optional.empty(); // to be torn out is how it acts
        }
        Optional<String> pack = kill.fedBy().filter(supply -> !Supplies.isBattery(supply));
        return Optional.of(
                Alarm.of(
                        Severity.WARNS,
                        "kill-lost-unseen",
                        kill.id(),
                        kill.declaredAt().child("opens on loss"),
                        Sentence.words(
                                "when "
                                        + lost
                                        + ", "
                                        + kill.id()
                                        + " does not act, and can no longer act"
                                        + pack.map(p -> "; pack " + p + " feeds it").orElse("")),
                        "a kill that holds a contactor closed while all is well acts by itself"));
    }

    /** A kill switch behind the fault that it should cut. */
    private Optional<Finding> behind(Kill kill) {
        boolean sameRadio =
                kill.radio().isPresent()
                        && rig.control().radio().map(Need::folded).isPresent()
                        && Need.folded(kill.radio().get())
                                .equals(Need.folded(rig.control().radio().get()));
        if (!sameRadio && kill.by() != Kill.Means.SOFTWARE) {
            return Optional.empty();
        }
        return Optional.of(
                Alarm.of(
                        Severity.WARNS,
                        "kill-behind-the-fault",
                        kill.id(),
                        kill.declaredAt().child(sameRadio ? "radio" : "by"),
                        Sentence.words(
                                sameRadio
                                        ? kill.id()
                                                + " goes through the throttle's own radio link: what"
                                                + " freezes the throttle can take it too"
                                        : kill.id()
                                                + " is a command that a computer carries out: what"
                                                + " makes that run wild can take it too"),
                        "a kill stands behind nothing that it may have to stop"));
    }

    private Optional<Finding> untold(Kill kill) {
        List<String> missing = new ArrayList<>();
        if (kill.heldBy().isEmpty()) {
            missing.add("“held by”");
        }
        if (kill.by() == Kill.Means.RADIO && kill.radio().isEmpty()) {
            missing.add("“radio”");
        }
        if (kill.by() == Kill.Means.RADIO && kill.fedBy().isEmpty() && !kill.opensOnLoss()) {
            missing.add("“fed by”");
        }
        if (missing.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                Alarm.of(
                        Severity.NOTES,
                        "kill-not-told",
                        kill.id(),
                        kill.declaredAt(),
                        Sentence.words(
                                "whether "
                                        + kill.id()
                                        + " has something in common with another kill is told only as"
                                        + " far as it is declared: write "
                                        + Alarm.list(missing)),
                        "what is not named counts as its own"));
    }

    /** A contactor that a kill opens at more than it can break. */
    private Optional<Finding> cannotBreak(Contactor contactor) {
        Optional<Kill> kill =
                structure.chains().stream()
                        .filter(chain -> chain.opens(contactor.name()))
                        .map(KillStructure.Chain::kill)
                        .findFirst();
        if (kill.isEmpty() || contactor.breaks().isEmpty()) {
            return Optional.empty();
        }
        double breaks = contactor.breaks().get().si();
        double most = 0;
        String chain = "";
        for (int number = 0; number < rig.wiring().chains().size(); number++) {
            boolean has =
                    rig.wiring().chains().get(number).elements().stream()
                            .anyMatch(
                                    element ->
                                            element instanceof Element.Pole pole
                                                    && pole.contactor()
                                                            .name()
                                                            .equals(contactor.name()));
            double ampere = Math.abs(times.full().chainA(number));
            if (has && ampere > most) {
                most = ampere;
                chain = rig.wiring().chains().get(number).id().text();
            }
        }
        if (most <= breaks) {
            return Optional.empty();
        }
        return Optional.of(
                Alarm.of(
                        Alarm.grave(rig),
                        "kill-cannot-break",
                        contactor.name(),
                        RigPath.of("wiring", "contactors", contactor.name(), "breaks"),
                        Sentence.words(
                                        kill.get().id()
                                                + " opens contactor "
                                                + contactor.name()
                                                + " at full throttle on ")
                                .then(Measure.CURRENT, most)
                                .then(" in " + chain + "; it breaks ")
                                .then(Measure.CURRENT, breaks),
                        Value.of("part-current", most),
                        new Finding.Limit(Value.of("part-current", breaks), "declared rating"),
                        "contacts that part on more weld or burn; a dead short is more still (see"
                                + " contactor-breaking)"));
    }
}
