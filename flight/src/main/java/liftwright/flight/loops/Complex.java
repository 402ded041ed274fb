package liftwright.flight.loops;

/** A complex number. */
public record Complex(double re, double im) {

    public static final Complex ONE = new Complex(1, 0);

    /** e^(−jωd): a delay of {@code d} seconds at {@code ω} rad/s. */
    public static Complex delay(double radps, double seconds) {
        double turn = radps * seconds;
        return new Complex(Math.cos(turn), -Math.sin(turn));
    }

    /** 1 + jωT. */
    public static Complex onePlus(double radps, double seconds) {
        return new Complex(1, radps * seconds);
    }

    public Complex times(Complex other) {
        return new Complex(re * other.re - im * other.im, re * other.im + im * other.re);
    }

    public Complex times(double factor) {
        return new Complex(re * factor, im * factor);
    }

    public Complex over(Complex other) {
        double square = other.re * other.re + other.im * other.im;
        return new Complex(
                (re * other.re + im * other.im) / square, (im * other.re - re * other.im) / square);
    }

    public Complex plus(Complex other) {
        return new Complex(re + other.re, im + other.im);
    }

    /** Magnitude, of what is neither so great nor so small that its square is none. */
    public double gain() {
        return Math.sqrt(re * re + im * im);
    }

    /** Angle, −π to π. */
    public double phaseRad() {
        return Math.atan2(im, re);
    }
}
