package liftwright.trials.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Sentence;
import liftwright.quantity.Measure;
import liftwright.quantity.Quantity;
import liftwright.rig.Control;
import liftwright.rig.FanType;
import liftwright.rig.RigPath;
import liftwright.trials.Channel.Instrument;

/** End points of the throttle, how fast it may rise, and what its loss does; rotors off. */
final class ThrottleCard {

    static final double LOSS_S = 0.3;
    static final double BENCH_RISE = 1.0;
    static final double WORN_RISE = 0.5;
    static final double LIVE_BELOW = 0.03;

    private static final Instrument LOG =
            new Instrument(
                    "log of command and signal, 1000 rows a second", 0.002, 0, "common practice");
    private static final Instrument COMMAND =
            new Instrument("throttle as the log shows it", 0.005, 0, "common practice");

    /** What is read, and the row it stands in; a loss counts up to one more round of commands. */
    private record Told(int row, double more, boolean inverse) {}

    private final Asked asked;
    private final Control control;
    private final Doubts doubts = new Doubts("throttle");
    private final Sheet sheet;
    private final List<Told> told = new ArrayList<>();
    private final List<Wanted> wanted = new ArrayList<>();

    ThrottleCard(Asked asked) {
        this.asked = asked;
        control = asked.rig().control();
        sheet = new Sheet(asked);
    }

    Optional<Measured> content() {
        loss();
        rise();
        live();
        asked.fanTypes().forEach(this::fanType);
        words();
        sheet.leftOut(wanted);
        return Predicted.of(asked, doubts, wanted, Predicted.DRAWS, () -> this::at)
                .map(sheet::done);
    }

    private void at(double[] p, double[] out) {
        for (int k = 0; k < out.length; k++) {
            Told one = told.get(k);
            out[k] = (one.inverse ? 1 / p[one.row] : p[one.row]) + one.more;
        }
    }

    private void loss() {
        RigPath at = RigPath.of("control", "loss time");
        double roundS = control.rate().map(rate -> 1 / rate.si()).orElse(0.0);
        told.add(new Told(doubts.declared(at, control.lossTime()), roundS / 2, false));
        double share = roundS / 2 / (control.lossTime().si() + roundS / 2);
        wanted.add(
                Wanted.of(
                        "from the loss of the signal to the changed command",
                        Measure.TIME,
                        LOG,
                        share > 0
                                ? Doubts.LeftOut.even(
                                        share, "the loss falls anywhere within a round of commands")
                                : Doubts.LeftOut.NOTHING));
        sheet.write(at, Measure.TIME, LOG.errorSi());
        sheet.write(RigPath.of("control", "link loss"), "link loss: ________ (cut, lower, hold)");
        if (!asked.rig().isDeclared(at)) {
            sheet.note("loss time is not declared; 0.3 s stands in");
        }
        sheet.note("the rig file says of a lost signal: " + linkLoss());
    }

    private String linkLoss() {
        String declared =
                asked.rig().isDeclared(RigPath.of("control", "link loss"))
                        ? ""
                        : " (not declared: the worst)";
        return switch (control.linkLoss()) {
                    case CUT -> "cut";
                    case LOWER -> "lower";
                    case HOLD -> "hold, the last throttle stays";
                }
                + declared;
    }

    private void rise() {
        RigPath at = RigPath.of("control", "rise");
        if (control.rise().isPresent()) {
            told.add(new Told(doubts.declared(at, control.rise().get()), 0, true));
            wanted.add(Wanted.of("from nothing to full throttle, stick thrown", Measure.TIME, LOG));
        } else {
            sheet.note("no rise is declared: nothing limits it. Measure it all the same");
        }
        sheet.write(at, "rise: ________ %/s");
    }

    private void live() {
        RigPath at = RigPath.of("control", "live below");
        if (control.liveBelow().isPresent()) {
            told.add(new Told(doubts.declared(at, control.liveBelow().get()), 0, false));
            wanted.add(
                    Wanted.of(
                            "greatest throttle at which it can be made live",
                            Measure.PERCENT,
                            COMMAND));
        } else {
            sheet.note("live below is not declared");
        }
        sheet.write(at, "live below: ________ %");
    }

    private void fanType(FanType type) {
        RigPath at = RigPath.of("fan types", type.name(), "controller");
        Optional<Quantity> idle = type.controller().misbehaviour().idle();
        if (idle.isPresent()) {
            told.add(new Told(doubts.declared(at.child("idle"), idle.get()), 0, false));
            wanted.add(
                    Wanted.of(
                            "throttle at which a motor of " + type.name() + " starts to turn",
                            Measure.PERCENT,
                            COMMAND));
        }
        sheet.write(at.child("idle"), "idle: ________ %");
        sheet.write(at.child("signal loss"), "signal loss: ________ (stop, hold, idle)");
        sheet.note(
                "a controller of "
                        + type.name()
                        + " whose own signal is pulled: "
                        + switch (type.controller().signalLoss()) {
                            case STOP -> "stops";
                            case HOLD -> "keeps the last command";
                            case IDLE -> "goes to idle";
                        }
                        + (asked.rig().isDeclared(at.child("signal loss"))
                                ? ""
                                : " (default, common practice)"));
    }

    private void words() {
        sheet.step(
                "Rotors off, or the motors’ leads off: nothing that turns may carry blades. A supply"
                        + " with a current limit in place of the packs, the cut at hand.");
        sheet.step(
                "Throttle at rest before anything is plugged in. Plug in with the throttle at 0, at 2"
                        + " %, at 5 % and at full: note at which it comes live.");
        sheet.step(
                "Teach the end points to every controller, one after the other; then all on one"
                        + " signal: note the throttle at which each starts to turn.");
        sheet.step("Throw the throttle from 0 to full and back; log the command.");
        sheet.step(
                "At a quarter throttle: transmitter off; receiver’s lead out; signal frozen; one"
                        + " controller’s signal out; supply of the receiver off. Log each, five times.");
        sheet.good(
                Sentence.words("a lost or frozen signal cuts within ")
                        .then(Measure.TIME, LOSS_S)
                        .then(", each way of losing it (common practice)"));
        sheet.good(
                Sentence.words("rise at most ")
                        .then(Measure.PERCENT, BENCH_RISE)
                        .then(" a second on the bench, ")
                        .then(Measure.PERCENT, WORN_RISE)
                        .then(" worn (common practice): from nothing to full in no less than ")
                        .then(Measure.TIME, 1 / BENCH_RISE)
                        .then(" and ")
                        .then(Measure.TIME, 1 / WORN_RISE));
        sheet.good(
                Sentence.words("not live above ")
                        .then(Measure.PERCENT, LIVE_BELOW)
                        .then(" throttle (common practice)"));
        sheet.good("all start within 2 % of throttle of each other; none moves when plugged in");
        control.rise()
                .filter(rise -> rise.si() > BENCH_RISE)
                .ifPresent(
                        rise ->
                                sheet.note(
                                        Sentence.words("as declared it may rise by ")
                                                .then(Measure.PERCENT, rise.si())
                                                .then(
                                                        " a second, faster than what counts as good")));
        control.liveBelow()
                .filter(live -> live.si() > LIVE_BELOW)
                .ifPresent(
                        live ->
                                sheet.note(
                                        Sentence.words("as declared it comes live up to ")
                                                .then(Measure.PERCENT, live.si())
                                                .then(", more than what counts as good")));
        if (control.lossTime().si() > LOSS_S) {
            sheet.note(
                    Sentence.words("as declared a loss is seen after ")
                            .then(Measure.TIME, control.lossTime().si())
                            .then(", later than what counts as good"));
        }
    }
}
