package liftwright.flight.run;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import liftwright.flight.profile.Profile;
import liftwright.plant.Drive;
import liftwright.plant.fault.Fault;
import liftwright.rig.Control;
import liftwright.rig.Rig;

/** What a profile lets go wrong, and the kill that somebody presses. Allocates at events alone. */
final class Happenings {

    /** How long the computer takes to know that a fan gives nothing, s; from memory. */
    static final double KNOWN_AFTER_S = 0.1;

    private final Rig rig;
    private final List<Profile.Scripted> faults;
    private final Optional<Profile.Press> press;
    private final Optional<Chains.Acts> acts;
    private final Drive drive;
    private final List<FlightOutcome.Event> events;
    private final BitSet lost = new BitSet();
    private final BitSet stuck = new BitSet();
    private final BitSet known = new BitSet();
    private int next;
    private double tellS = Double.POSITIVE_INFINITY;
    private double nextS;
    private boolean zero;
    private boolean opened;
    private boolean silent;

    /** Whether the throttle link asks for a landing. */
    boolean wantsLanding;

    Happenings(Rig rig, Profile profile, Drive drive, List<FlightOutcome.Event> events) {
        this.rig = rig;
        this.drive = drive;
        this.events = events;
        faults = profile.faults();
        press = profile.kill();
        acts = press.flatMap(told -> Chains.of(rig, told.id()));
        nextS = soonest();
    }

    /** When something is due next, s. */
    double nextS() {
        return nextS;
    }

    /** Whether a kill has commanded all fans to zero. */
    boolean isZero() {
        return zero;
    }

    boolean isOpened() {
        return opened;
    }

    /** Whether the computer has stopped: nobody tells the fans anything new. */
    boolean isSilent() {
        return silent;
    }

    void go(double timeS, Steersman steersman, Lookout lookout) {
        while (next < faults.size() && faults.get(next).atS() <= timeS) {
            happen(timeS, faults.get(next++).fault(), lookout);
        }
        if (tellS <= timeS) {
            tellS = Double.POSITIVE_INFINITY;
            steersman.lost(lost);
            known.or(stuck);
        }
        press.ifPresent(told -> kill(timeS, told));
        nextS = soonest();
    }

    /** What stuck fans give, as the speeds tell that controllers report. */
    void report(Steersman steersman) {
        for (int fan = known.nextSetBit(0); fan >= 0; fan = known.nextSetBit(fan + 1)) {
            steersman.pushesOn(fan, drive.thrustN(fan));
        }
    }

    private void happen(double timeS, Fault fault, Lookout lookout) {
        events.add(new FlightOutcome.Event(timeS, fault.words(), fault.part().text()));
        if (!fault.effect().isNone()) {
            drive.fail(fault.effect());
            for (int fan : fault.effect().deadFans()) {
                lost.set(fan);
            }
            for (int fan : fault.effect().stuckDuty().keySet()) {
                lost.set(fan);
                stuck.set(fan);
            }
            tellS = timeS + KNOWN_AFTER_S;
        }
        if (fault.kind() == Fault.Kind.SENSOR && alone(fault.part().text())) {
            lookout.lose(fault.part().text());
        }
        silent |= fault.kind() == Fault.Kind.COMPUTER && rig.control().computers() == 1;
        if (fault.kind() == Fault.Kind.LINK_LOST || fault.kind() == Fault.Kind.LINK_FROZEN) {
            wantsLanding |= rig.control().linkLoss() == Control.LinkLoss.LOWER;
            zero |= rig.control().linkLoss() == Control.LinkLoss.CUT;
        }
    }

    private boolean alone(String sensor) {
        return rig.control().sensors().stream()
                .filter(one -> one.name().equals(sensor))
                .allMatch(one -> one.count() == 1);
    }

    private void kill(double timeS, Profile.Press told) {
        if (acts.isEmpty()) {
            return;
        }
        if (!zero && told.atS() + acts.get().zeroS() <= timeS) {
            zero = true;
            events.add(new FlightOutcome.Event(timeS, "the kill commands zero", told.id()));
        }
        if (!opened && told.atS() + acts.get().openS() <= timeS) {
            opened = true;
            drive.kill(acts.get().opens());
            events.add(
                    new FlightOutcome.Event(
                            timeS, "the kill has opened its contactors", told.id()));
        }
    }

    private double soonest() {
        List<Double> times = new ArrayList<>();
        times.add(tellS);
        if (next < faults.size()) {
            times.add(faults.get(next).atS());
        }
        if (press.isPresent() && acts.isPresent()) {
            if (!zero) {
                times.add(press.get().atS() + acts.get().zeroS());
            }
            if (!opened) {
                times.add(press.get().atS() + acts.get().openS());
            }
        }
        return times.stream().min(Double::compare).orElse(Double.POSITIVE_INFINITY);
    }
}
