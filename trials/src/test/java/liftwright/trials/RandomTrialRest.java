package liftwright.trials;

import java.util.List;
import java.util.random.RandomGenerator;
import liftwright.testkit.RandomText;

/** The part of a random rig that is around it: people, what holds it, rates. */
final class RandomTrialRest extends RandomText {

    private final StringBuilder to;
    private final boolean worn;
    private final boolean crewed;
    private final List<String> held;

    RandomTrialRest(
            RandomGenerator random,
            StringBuilder to,
            boolean worn,
            boolean crewed,
            List<String> held) {
        super(random);
        this.to = to;
        this.worn = worn;
        this.crewed = crewed;
        this.held = held;
    }

    void write() {
        if (crewed) {
            crew();
        }
        boolean stand = chance(0.7);
        boolean tether = chance(0.7);
        boolean scale = (worn || stand) && chance(0.6);
        if (stand || tether || scale) {
            line("restraint:");
        }
        if (stand) {
            stand();
        }
        if (tether) {
            tether();
        }
        if (scale) {
            line(
                    "  platform: {length: %.2f m, width: %.2f m, resolution: %.0f g}",
                    in(0.5, 1), in(0.5, 1), in(20, 200));
        }
        if (chance(0.6)) {
            line(
                    "rates: {exposure: %.0f h, fan: %.1e /h, controller: 5e-5 /h, pack: 1e-5 /h,"
                            + " link: 1e-4 /h}",
                    in(1, 20), in(1e-6, 1e-4));
        }
        to.append(out);
    }

    private boolean chance(double share) {
        return random.nextDouble() < share;
    }

    private void crew() {
        line("crew:");
        line(
                "  watcher: {reaction: %.1f s, distance: %.0f m, role: holds the remote kill}",
                in(1, 2), in(6, 20));
        if (chance(0.5)) {
            line(
                    "  second: {distance: %.0f m%s}",
                    in(6, 20), chance(0.5) ? ", role: watches the packs" : "");
        }
    }

    private void stand() {
        line(
                "  stand: {kind: %s, thrust: %s, height: %.2f m, mass: %.0f kg, feet apart: %.2f m,"
                        + " feet deep: %.2f m, friction: %.2f ± 0.1 bound%s%s}",
                word("bench", "stand", "table"),
                word("up", "down", "forward"),
                in(0.6, 1.5),
                in(40, 200),
                in(0.8, 2),
                in(0.8, 2),
                in(0.3, 0.6),
                chance(0.7)
                        ? text(
                                ", bolts: %d, bolt size: %s, bolt class: 8.8",
                                4 + random.nextInt(4), word("M8", "M10", "M12"))
                        : "",
                chance(0.5) ? ", fans: [" + held.getFirst() + "]" : "");
    }

    private void tether() {
        double anchorM = in(3.4, 4.5);
        line(
                "  tether: {anchor height: %.2f m, anchor strength: %.1f kN, length: %.2f m,"
                        + " stiffness: %.1f kN/m ± 20 %%, damping: %.0f N·s/m, line strength: %.1f kN,"
                        + " harness point: %.2f m, harness limit: %.1f kN, side reach: %.1f m%s%s%s}",
                anchorM,
                in(22.3, 30),
                anchorM - (worn ? 1.4 : 0.5) - in(0.3, 1),
                in(8, 40),
                in(0, 500),
                in(12, 24),
                worn ? 1.4 : 0.3,
                in(6, 14),
                in(1.5, 3),
                chance(0.6)
                        ? text(
                                ", down-lines: %d, down-line length: %.2f m, down-line spread: %.1f"
                                        + " m, down-line strength: %.1f kN",
                                3 + random.nextInt(2), in(1.8, 2.6), in(0.4, 1), in(3, 12))
                        : "",
                chance(0.3)
                        ? text(
                                ", gantry: {mass: %.0f kg, feet apart: %.1f m}",
                                in(100, 400), in(2, 5))
                        : "",
                worn ? ", getting down: the watcher lowers the winch" : "");
        if (chance(0.6)) {
            line(
                    "  room: {ceiling: %.1f m, beam: %.1f m, length: 12 m, width: 9 m, floor:"
                            + " concrete}",
                    anchorM + in(0.5, 1.5), anchorM);
        }
    }
}
