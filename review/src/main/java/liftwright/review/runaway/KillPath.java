package liftwright.review.runaway;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.plant.motion.Stop;
import liftwright.quantity.Quantity;
import liftwright.rig.Contactor;
import liftwright.rig.Control;
import liftwright.rig.Kill;
import liftwright.rig.Reaction;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/**
 * One way in which a runaway is stopped, or not: a declared kill, a throttle that is let go, or
 * what a lost link does.
 *
 * @param source what of the rig it is
 * @param label in words
 * @param detectionS until something notices, s; a person's reaction counts from the fault
 * @param reactionS from there until someone presses, s: the 95 % end of what is declared
 * @param reactionFrom where that is from, in words; empty where nobody presses
 * @param measured whether the reaction was declared
 * @param switchS from the press until the fans are told or cut off, s
 * @param acts what it does
 * @param share lift over weight that it lowers to; 0 for a stop
 * @param contactors that it opens
 * @param tailS where it was measured: from half of the thrust to a tenth, s; {@code switchS} is
 *     then the measured time from the press to half
 */
public record KillPath(
        Source source,
        String label,
        double detectionS,
        double reactionS,
        String reactionFrom,
        boolean measured,
        double switchS,
        Acts acts,
        double share,
        Set<String> contactors,
        Optional<Double> tailS) {

    /** What of a rig stops it. */
    public sealed interface Source {

        /**
         * A declared kill.
         *
         * @param id of it
         */
        record Declared(String id) implements Source {}

        /** The throttle, let go. */
        record Throttle() implements Source {}

        /** The link of the throttle, lost. */
        record Link() implements Source {}
    }

    /** What it does. */
    public enum Acts {
        OPENS,
        COMMANDS_THEN_OPENS,
        COMMANDS,
        /** Nothing: the throttle stays as it is. */
        NOTHING
    }

    /** A contactor that follows a command opens so much later, s; common practice. */
    private static final double OPENS_AFTER_S = 0.5;

    public KillPath {
        contactors = Set.copyOf(contactors);
    }

    /**
     * The same with measured times in place of the computed chain. One that lowers or does nothing
     * stays as it is: its thrust does not go.
     *
     * @param halfS from the press until half of the thrust was gone, s
     * @param tenthS from the press until a tenth was left, s
     */
    public KillPath measured(double halfS, double tenthS) {
        return acts == Acts.NOTHING || share > 0
                ? this
                : new KillPath(
                        source,
                        label,
                        detectionS(source, detectionS),
                        reactionS,
                        reactionFrom,
                        measured,
                        halfS,
                        acts,
                        share,
                        contactors,
                        Optional.of(tenthS - halfS));
    }

    /** What is timed from the loss of the link has the time of noticing it within. */
    private static double detectionS(Source source, double declaredS) {
        return source instanceof Source.Link ? 0 : declaredS;
    }

    /**
     * From the fault until the fans are told or cut off, s; where that was measured, until half of
     * the thrust is gone.
     */
    public double totalS() {
        return detectionS + reactionS + switchS;
    }

    /** The same for the rotors. */
    public Stop stop() {
        if (tailS.isPresent()) {
            return Stop.asMeasured(totalS(), totalS() + tailS.get());
        }
        return switch (acts) {
            case OPENS -> new Stop(Double.POSITIVE_INFINITY, totalS(), contactors);
            case COMMANDS_THEN_OPENS ->
                    new Stop(totalS(), share, totalS() + OPENS_AFTER_S, contactors);
            case COMMANDS -> new Stop(totalS(), share, Double.POSITIVE_INFINITY, contactors);
            case NOTHING -> Stop.NEVER;
        };
    }

    /** All of a rig: its kills, then its throttle, then its link. */
    public static List<KillPath> of(Rig rig) {
        List<KillPath> paths = new ArrayList<>();
        for (Kill kill : rig.wiring().kills()) {
            paths.add(of(rig, kill));
        }
        Control control = rig.control();
        double delayS = control.delay().map(Quantity::si).orElse(0.0);
        control.stop().ifPresent(stop -> paths.add(letGo(rig, stop, delayS)));
        paths.add(lostLink(rig, delayS));
        return paths;
    }

    private static KillPath of(Rig rig, Kill kill) {
        Press reaction = press(rig, kill);
        boolean command = kill.order() != Kill.Order.OPEN_AT_ONCE;
        double opening =
                command
                        ? 0
                        : rig.wiring().contactors().stream()
                                .filter(one -> kill.opens().contains(one.name()))
                                .map(Contactor::opensIn)
                                .mapToDouble(Quantity::si)
                                .max()
                                .orElse(0);
        Acts acts =
                switch (kill.order()) {
                    case OPEN_AT_ONCE -> kill.opens().isEmpty() ? Acts.NOTHING : Acts.OPENS;
                    case COMMAND_ZERO_THEN_OPEN -> Acts.COMMANDS_THEN_OPENS;
                    case COMMAND_ZERO_ONLY -> Acts.COMMANDS;
                };
        return new KillPath(
                new Source.Declared(kill.id()),
                "kill " + kill.id(),
                0,
                reaction.s,
                reaction.from,
                reaction.measured,
                kill.delay().si() + opening,
                acts,
                0,
                Set.copyOf(kill.opens()),
                Optional.empty());
    }

    private record Press(double s, String from, boolean measured) {}

    private static Press press(Rig rig, Kill kill) {
        Reaction reaction = Reaction.of(rig, kill);
        boolean measured = reaction.declared().isPresent();
        if (!measured && kill.heldBy().isEmpty() && kill.by() == Kill.Means.SOFTWARE) {
            return new Press(0, "", true);
        }
        return press(reaction, kill.heldBy().orElse("nobody named"));
    }

    private static Press press(Reaction reaction, String who) {
        boolean measured = reaction.declared().isPresent();
        return new Press(
                reaction.slowS(), who + (measured ? ", declared" : ", not measured"), measured);
    }

    private static KillPath letGo(Rig rig, Control.Stop stop, double delayS) {
        Press press =
                press(Reaction.atThrottle(rig), rig.wearer().isPresent() ? Kill.WEARER : "watcher");
        double share =
                switch (stop) {
                    case CUT, HOLD_TO_RUN -> 0;
                    case LOWER -> rig.control().lowering().si();
                };
        return new KillPath(
                new Source.Throttle(),
                share > 0 ? "throttle let go, which lowers" : "throttle let go, which cuts",
                0,
                press.s,
                press.from,
                press.measured,
                delayS,
                Acts.COMMANDS,
                share,
                Set.of(),
                Optional.empty());
    }

    private static KillPath lostLink(Rig rig, double delayS) {
        Control control = rig.control();
        String said =
                rig.isDeclared(RigPath.of("control", "link loss"))
                        ? ""
                        : ", as nothing is declared";
        Acts acts =
                switch (control.linkLoss()) {
                    case CUT, LOWER -> Acts.COMMANDS;
                    case HOLD -> Acts.NOTHING;
                };
        double share =
                switch (control.linkLoss()) {
                    case LOWER -> control.lowering().si();
                    case CUT, HOLD -> 0;
                };
        String does =
                switch (control.linkLoss()) {
                    case CUT -> "link lost, which cuts";
                    case LOWER -> "link lost, which lowers";
                    case HOLD -> "link lost, which holds the throttle";
                };
        return new KillPath(
                new Source.Link(),
                does + said,
                control.lossTime().si(),
                0,
                "",
                true,
                delayS,
                acts,
                share,
                Set.of(),
                Optional.empty());
    }
}
