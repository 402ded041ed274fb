package liftwright.physics;

/**
 * Closed forms for what is over before a network step begins: plugging in, cutting a current,
 * ripple, fault current. A lead of inductance L and resistance R feeds the capacitance C at the
 * controllers (series circuit; any text on circuits).
 */
public final class FastEffects {

    /**
     * Inductance of the loop of out and back together, per metre of its one-way length, wires laid
     * touching, H/m; common practice. A pair of round wires, radius a, a distance D apart has
     * (μ₀/π)(ln(D/a) + 1/4) (Grover 1946, from memory), which gives 0.6 µH/m where insulation keeps
     * D/a at 3.5.
     */
    public static final double LOW_LEAD_HPM = 0.6e-6;

    /** The same for wires some five diameters apart (D/a = 9.5), H/m; common practice. */
    public static final double HIGH_LEAD_HPM = 1.0e-6;

    private FastEffects() {}

    /** Damping ratio ζ = (R/2) √(C/L). */
    public static double damping(double resistanceOhm, double inductanceH, double capacitanceF) {
        return resistanceOhm / 2 * Math.sqrt(capacitanceF / inductanceH);
    }

    /**
     * Highest capacitor voltage when a source is plugged onto empty capacitors: E (1 + exp(−π ζ /
     * √(1 − ζ²))), and E where ζ ≥ 1.
     *
     * @return V
     */
    public static double plugInPeakV(
            double sourceV, double resistanceOhm, double inductanceH, double capacitanceF) {
        return peakV(sourceV, 0, 0, resistanceOhm, inductanceH, capacitanceF);
    }

    /**
     * Highest capacitor voltage after the load is cut while current flows in the lead and the
     * source stays connected: the first maximum of the series circuit from v(0) = {@code startV},
     * v'(0) = I/C.
     *
     * @param sourceV E behind the resistance, V
     * @param startV capacitor voltage when the load is cut, V; E − I R for a source that has sagged
     * @param currentA I ≥ 0 in the lead at that moment, A
     * @return V, never below the greater of {@code sourceV} and {@code startV}
     */
    public static double cutPeakV(
            double sourceV,
            double startV,
            double currentA,
            double resistanceOhm,
            double inductanceH,
            double capacitanceF) {
        return peakV(sourceV, startV, currentA, resistanceOhm, inductanceH, capacitanceF);
    }

    /**
     * Highest current when a source is switched onto capacitors that lie {@code stepV} below it:
     * the first maximum of the series circuit from rest, ΔV √(C/L) exp(−(α/ω) atan(ω/α)) with α =
     * R/2L and ω² = 1/LC − α², and its hyperbolic twin where α² exceeds 1/LC. Never above the ΔV/R
     * of {@link Inrush#peakA}, which leaves the inductance out.
     *
     * @param stepV ΔV ≥ 0, V
     * @return A
     */
    public static double inrushPeakA(
            double stepV, double resistanceOhm, double inductanceH, double capacitanceF) {
        double alpha = resistanceOhm / (2 * inductanceH);
        double below = 1 / (inductanceH * capacitanceF) - alpha * alpha;
        double fall;
        if (below > 0) {
            double omega = Math.sqrt(below);
            fall = alpha / omega * Math.atan2(omega, alpha);
        } else {
            double beta = Math.sqrt(-below);
            fall = beta > 0 ? alpha / beta * atanh(beta / alpha) : 1;
        }
        return stepV * Math.sqrt(capacitanceF / inductanceH) * Math.exp(-fall);
    }

    /**
     * Voltage of a bus that is given power while the pack behind it takes it up: V (V − E) = R P,
     * so (E + √(E² + 4 R P))/2.
     *
     * @param sourceV E of the pack, V
     * @param resistanceOhm R of pack and leads, Ω
     * @param powerW P ≥ 0 given to the bus, W
     * @return V
     */
    public static double fedBackV(double sourceV, double resistanceOhm, double powerW) {
        return (sourceV + Math.sqrt(sourceV * sourceV + 4 * resistanceOhm * powerW)) / 2;
    }

    /**
     * Most power that a motor can give back at a speed while its controller brakes it, e I − R I²
     * at I = e/2R, or at the controller's current limit where that is less. An upper bound: iron
     * and switches take some of it.
     *
     * @param emfV e, speed over speed constant, V
     * @param resistanceOhm R of winding and switches, Ω
     * @param limitA current limit, A; infinite where there is none
     * @return W
     */
    public static double mostBrakingW(double emfV, double resistanceOhm, double limitA) {
        double current = Math.min(emfV / (2 * resistanceOhm), limitA);
        return current * (emfV - resistanceOhm * current);
    }

    private static double peakV(
            double sourceV,
            double startV,
            double currentA,
            double resistanceOhm,
            double inductanceH,
            double capacitanceF) {
        double offset = startV - sourceV;
        double rate = currentA / capacitanceF;
        double alpha = resistanceOhm / (2 * inductanceH);
        double square = 1 / (inductanceH * capacitanceF);
        double below = square - alpha * alpha;
        double turn = alpha * rate + square * offset;
        double peak;
        if (below > 0) {
            double omega = Math.sqrt(below);
            // The slope vanishes where tan(ω t)/ω = rate/turn; half a turn on from rest below.
            double time = Math.atan2(rate * omega, turn) / omega;
            peak =
                    Math.exp(-alpha * time)
                            * (offset * Math.cos(omega * time)
                                    + (rate + alpha * offset) / omega * Math.sin(omega * time));
        } else {
            double beta = Math.sqrt(-below);
            // The slope vanishes where tanh(β t)/β = rate/turn; never, if that exceeds 1/β.
            if (!(turn > 0 && rate * beta < turn)) {
                return Math.max(sourceV, startV);
            }
            double time = beta > 0 ? atanh(rate * beta / turn) / beta : rate / turn;
            double swing = beta > 0 ? Math.sinh(beta * time) / beta : time;
            peak =
                    Math.exp(-alpha * time)
                            * (offset * Math.cosh(beta * time) + (rate + alpha * offset) * swing);
        }
        return sourceV + Math.max(peak, Math.max(offset, 0));
    }

    private static double atanh(double x) {
        return 0.5 * Math.log1p(2 * x / (1 - x));
    }

    /** Peak without any damping: V + I √(L/C), V; an upper bound. */
    public static double undampedCutPeakV(
            double startV, double currentA, double inductanceH, double capacitanceF) {
        return startV + currentA * Math.sqrt(inductanceH / capacitanceF);
    }

    /** Ripple current that the capacitors carry at duty d, I √(d (1 − d)), A rms. */
    public static double rippleA(double windingA, double duty) {
        return windingA * Math.sqrt(duty * (1 - duty));
    }

    /**
     * Ripple at the capacitors, peak to peak: charge balance I d (1 − d)/(f C). The leads carry d I
     * without ripple, the switches take I for the share d of each period.
     *
     * @param windingA I, A
     * @param duty d, 0 to 1
     * @param frequencyHz f of the pulse width modulation, Hz
     * @return V; a series resistance R of the capacitors adds I R at most
     */
    public static double rippleV(
            double windingA, double duty, double frequencyHz, double capacitanceF) {
        return windingA * duty * (1 - duty) / (frequencyHz * capacitanceF);
    }

    /**
     * Voltage of capacitors that take all energy a rotor gives when it is slowed: √(V² + J (Ω₀² −
     * Ω₁²)/C). An upper bound: drag and the winding take some of it.
     *
     * @param startV V before, V
     * @param inertiaKgm2 J, kg·m²
     * @param fromRadps Ω₀, rad/s
     * @param toRadps Ω₁ ≤ Ω₀, rad/s
     * @return V
     */
    public static double brakePeakV(
            double startV,
            double inertiaKgm2,
            double fromRadps,
            double toRadps,
            double capacitanceF) {
        double given = inertiaKgm2 * (fromRadps * fromRadps - toRadps * toRadps);
        return absorbedPeakV(startV, given / 2, capacitanceF);
    }

    /**
     * Voltage of capacitors that take an energy, √(V² + 2 E/C): of all rotors on a bus together, E
     * = Σ ½ J Ω². An upper bound, as above.
     *
     * @param startV V before, V
     * @param energyJ E ≥ 0, J
     * @return V
     */
    public static double absorbedPeakV(double startV, double energyJ, double capacitanceF) {
        return Math.sqrt(startV * startV + 2 * energyJ / capacitanceF);
    }

    /**
     * Share of a rotor's energy that lifts capacitors from one voltage to another: C (V₁² − V₀²)/(J
     * Ω²); 0 where V₁ ≤ V₀.
     */
    public static double brakeShare(
            double startV,
            double endV,
            double inertiaKgm2,
            double speedRadps,
            double capacitanceF) {
        double taken = capacitanceF * Math.max(0, endV * endV - startV * startV);
        return taken / (inertiaKgm2 * speedRadps * speedRadps);
    }

    /** Prospective fault current E/R, A. */
    public static double prospectiveA(double sourceV, double loopOhm) {
        return sourceV / loopOhm;
    }

    /** Shift of a signal ground that shares a power return, I R, V. */
    public static double groundBounceV(double currentA, double returnOhm) {
        return currentA * returnOhm;
    }
}
