package liftwright.flight.sense;

import java.util.List;
import liftwright.numerics.CounterStream;
import liftwright.plant.body.Inertia;
import liftwright.rig.Vec3;

/**
 * What the rotors' unbalance does to sensors at the centre of mass. Each rotor's centre runs round
 * its axis at the distance e, and the rig, taken as rigid, is pushed by m e Ω² in the plane of the
 * rotor, once a revolution. A sensor read at less than twice that rate shows it at a wrong, lower
 * frequency.
 *
 * <p>Source: unbalance m e from the balance grade e Ω, ISO 21940-11 (from memory); rigid-body
 * dynamics. A frame that rings at that frequency shakes more: not told here.
 */
public final class Vibration {

    /** Balance grade e Ω of fans at top speed, m/s: G 6.3 of ISO 21940-11 (common practice). */
    public static final double USUAL_GRADE_MPS = 6.3e-3;

    private static final long PHASE = CounterStream.channel("flight: phase of rotors");

    private static final int EACH = 12;

    private static final double SINE_3 = -1.0 / 6;
    private static final double SINE_5 = 1.0 / 120;
    private static final double SINE_7 = -1.0 / 5040;
    private static final double SINE_9 = 1.0 / 362_880;
    private static final double SINE_11 = -1.0 / 39_916_800;
    private static final double SINE_13 = 1.0 / 6_227_020_800.0;

    private final int fans;

    /** Specific force and turn acceleration per m e Ω², at phase 0 and a quarter turn on. */
    private final double[] share;

    private final double[] unbalance;

    /** Turns of each rotor at the last tick, −½ to ½, and speed then, rad/s. */
    private final double[] turns;

    private final double[] speed;
    private final double[] next;

    /** Share of the tick at which the rotors were found last. */
    private double foundAt = Double.NaN;

    // There: turns of all rotors and, after them, the same a quarter turn back; their cosines, the
    // latter being sines; what each pushes with, and that over its speed.
    private final double[] at;
    private final double[] cosines;
    private final double[] omega;
    private final double[] force;
    private final double[] perOmega;

    /** What all do together there: specific force, then turn rate. */
    private final double[] all = new double[6];

    /**
     * @param massKg of the rig
     * @param inertia about its centre of mass
     * @param at middle of each rotor, from the centre of mass, m
     * @param axis of each rotor, of length 1
     * @param unbalanceKgm m e of each rotor, ≥ 0
     */
    public Vibration(
            double massKg, Inertia inertia, List<Vec3> at, List<Vec3> axis, double[] unbalanceKgm) {
        fans = unbalanceKgm.length;
        if (at.size() != fans || axis.size() != fans) {
            throw new IllegalArgumentException(
                    "places, axes and unbalance of other numbers of fans");
        }
        share = new double[EACH * fans];
        unbalance = unbalanceKgm.clone();
        turns = new double[fans];
        speed = new double[fans];
        next = new double[fans];
        cosines = new double[2 * fans];
        perOmega = new double[fans];
        omega = new double[fans];
        force = new double[fans];
        this.at = new double[2 * fans];
        double[] inverse = inverse(inertia);
        for (int f = 0; f < fans; f++) {
            Vec3 first = across(axis.get(f));
            put(f, 0, first, at.get(f), massKg, inverse);
            put(f, 6, cross(axis.get(f), first), at.get(f), massKg, inverse);
        }
    }

    /** Of a rig that nothing shakes. */
    public static Vibration none(int fans) {
        List<Vec3> zero = java.util.Collections.nCopies(fans, new Vec3(0, 0, 0));
        List<Vec3> up = java.util.Collections.nCopies(fans, new Vec3(0, 0, -1));
        return new Vibration(1, new Inertia(1, 1, 1, 0, 0, 0), zero, up, new double[fans]);
    }

    /** Puts every rotor at a random angle, standing. */
    void begin(long seed, int number) {
        foundAt = Double.NaN;
        for (int f = 0; f < fans; f++) {
            turns[f] = CounterStream.uniform(seed, PHASE, number, f) - 0.5;
            speed[f] = 0;
            next[f] = 0;
        }
    }

    /** Goes on by a tick, at the end of which the rotors have these speeds. */
    void advance(double dtS, double[] speedRadps) {
        foundAt = Double.NaN;
        for (int f = 0; f < fans; f++) {
            double gone = turns[f] + dtS * (speed[f] + next[f]) / (4 * Math.PI);
            turns[f] = gone - Math.rint(gone);
            speed[f] = next[f];
            next[f] = Math.abs(speedRadps[f]);
        }
    }

    /**
     * Adds what shakes a sensor, in the tick last advanced to.
     *
     * @param gone share of the tick gone by, 0 to 1
     * @param rate whether turn rate rather than specific force is read
     */
    void add(double dtS, double gone, boolean rate, double[] axes) {
        if (gone != foundAt) {
            find(dtS, gone);
        }
        int from = rate ? 3 : 0;
        for (int k = 0; k < 3; k++) {
            axes[k] += all[from + k];
        }
    }

    /**
     * Where every rotor is a share of the tick on, times what it pushes with, and what comes of it
     * all: for all sensors. Short loops without a branch, which the machine goes through several
     * rotors at a time.
     */
    private void find(double dtS, double gone) {
        foundAt = gone;
        double turnsPerRad = gone * dtS / (2 * Math.PI);
        for (int f = 0; f < fans; f++) {
            double faster = gone * (next[f] - speed[f]);
            omega[f] = speed[f] + faster;
            at[f] = turns[f] + turnsPerRad * (speed[f] + faster / 2);
            at[fans + f] = at[f] - 0.25;
        }
        for (int f = 0; f < fans; f++) {
            perOmega[f] = unbalance[f] * omega[f];
            force[f] = perOmega[f] * omega[f];
        }
        for (int k = 0; k < cosines.length; k++) {
            cosines[k] = cosineOfTurns(at[k]);
        }
        sumUp();
    }

    private void sumUp() {
        double x = 0;
        double y = 0;
        double z = 0;
        double p = 0;
        double q = 0;
        double r = 0;
        for (int f = 0; f < fans; f++) {
            double cosine = cosines[f] * force[f];
            double sine = cosines[fans + f] * force[f];
            // Of turn rate: the integral of cos is sin over the speed, that of sin is −cos.
            double along = cosines[fans + f] * perOmega[f];
            double aside = -cosines[f] * perOmega[f];
            int from = EACH * f;
            x += cosine * share[from] + sine * share[from + 6];
            y += cosine * share[from + 1] + sine * share[from + 7];
            z += cosine * share[from + 2] + sine * share[from + 8];
            p += along * share[from + 3] + aside * share[from + 9];
            q += along * share[from + 4] + aside * share[from + 10];
            r += along * share[from + 5] + aside * share[from + 11];
        }
        all[0] = x;
        all[1] = y;
        all[2] = z;
        all[3] = p;
        all[4] = q;
        all[5] = r;
    }

    /** cos 2πx to 3e-8: the sine's series of what lacks to a quarter turn, either way round. */
    static double cosineOfTurns(double x) {
        double a = 2 * Math.PI * (0.25 - Math.abs(x - Math.rint(x)));
        double s = a * a;
        double high = SINE_7 + s * (SINE_9 + s * (SINE_11 + s * SINE_13));
        return a * (1 + s * (SINE_3 + s * (SINE_5 + s * high)));
    }

    private void put(int fan, int from, Vec3 push, Vec3 at, double massKg, double[] inverse) {
        int to = EACH * fan + from;
        Vec3 moment = cross(at, push);
        share[to] = push.x() / massKg;
        share[to + 1] = push.y() / massKg;
        share[to + 2] = push.z() / massKg;
        for (int k = 0; k < 3; k++) {
            share[to + 3 + k] =
                    inverse[3 * k] * moment.x()
                            + inverse[3 * k + 1] * moment.y()
                            + inverse[3 * k + 2] * moment.z();
        }
    }

    private static double[] inverse(Inertia i) {
        double a = i.yy() * i.zz() - i.yz() * i.yz();
        double b = i.xz() * i.yz() - i.xy() * i.zz();
        double c = i.xy() * i.yz() - i.xz() * i.yy();
        double det = i.xx() * a + i.xy() * b + i.xz() * c;
        double d = i.xx() * i.zz() - i.xz() * i.xz();
        double e = i.xy() * i.xz() - i.xx() * i.yz();
        double f = i.xx() * i.yy() - i.xy() * i.xy();
        return new double[] {
            a / det, b / det, c / det, b / det, d / det, e / det, c / det, e / det, f / det
        };
    }

    /** Some direction at right angles. */
    private static Vec3 across(Vec3 axis) {
        Vec3 other = Math.abs(axis.x()) < 0.7 ? new Vec3(1, 0, 0) : new Vec3(0, 1, 0);
        Vec3 raw = cross(axis, other);
        double length = Math.sqrt(raw.x() * raw.x() + raw.y() * raw.y() + raw.z() * raw.z());
        return new Vec3(raw.x() / length, raw.y() / length, raw.z() / length);
    }

    private static Vec3 cross(Vec3 a, Vec3 b) {
        return new Vec3(
                a.y() * b.z() - a.z() * b.y(),
                a.z() * b.x() - a.x() * b.z(),
                a.x() * b.y() - a.y() * b.x());
    }
}
