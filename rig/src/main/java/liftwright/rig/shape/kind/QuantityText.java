package liftwright.rig.shape.kind;

import java.util.Map;
import liftwright.quantity.Dimension;
import liftwright.quantity.Quantity;
import liftwright.quantity.Tolerance;
import liftwright.rig.Problem.Code;

/** The door to the parser of quantities: what it says, in the words of a problem. */
final class QuantityText {

    private QuantityText() {}

    sealed interface Result {
        record Good(Quantity quantity) implements Result {}

        record Bad(Code code, String found, String advice) implements Result {}
    }

    /** Interim: replaced by the parser of module quantity when it lands. */
    static Result read(String text, Measure measure) {
        try {
            return new Result.Good(new Interim(text.replace('−', '-')).quantity(measure));
        } catch (WrongUnit wrong) {
            return new Result.Bad(Code.WRONG_UNIT, Problems.quote(text), "");
        } catch (RuntimeException bad) {
            return new Result.Bad(Code.NOT_A_QUANTITY, Problems.quote(text), "");
        }
    }

    private static final class WrongUnit extends RuntimeException {
        private static final long serialVersionUID = 1;
    }

    @SuppressWarnings({
        "UnusedVariable",
        "OperatorPrecedence",
        "ShortCircuitBoolean",
        "StatementSwitchToExpressionSwitch"
    })
    private static final class Interim {
        private static final Map<String, Double> PREFIX =
                Map.of(
                        "", 1.0, "m", 1e-3, "µ", 1e-6, "k", 1e3, "c", 1e-2, "n", 1e-9, "M", 1e6,
                        "h", 100.0);
        private String rest;

        Interim(String text) {
            this.rest = text.strip();
        }

        Quantity quantity(Measure measure) {
            double number = number();
            String unit = unit();
            double factor = factor(unit, measure);
            double si = unit.equals("°C") ? number + 273.15 : number * factor;
            double plus = 0;
            double minus = 0;
            var scope = Tolerance.Scope.SHARED;
            var form = Tolerance.Form.NORMAL;
            if (!rest.isEmpty()) {
                if (rest.startsWith("±")) {
                    rest = rest.substring(1).strip();
                    plus = number();
                    minus = plus;
                } else if (rest.startsWith("+")) {
                    rest = rest.substring(1).strip();
                    plus = number();
                    rest = rest.substring(1);
                    minus = -number();
                } else {
                    throw new IllegalArgumentException(rest);
                }
                String tolUnit = rest.startsWith("bound") || rest.startsWith("each") ? "" : unit();
                double f =
                        tolUnit.isEmpty()
                                ? 1
                                : tolUnit.equals("%") && !unit.equals("%")
                                        ? Math.abs(si) * 0.01
                                        : tolUnit.equals("%") ? 0.01 : factor(tolUnit, measure);
                plus *= f;
                minus *= f;
                if (rest.startsWith("bound")) {
                    form = Tolerance.Form.BOUND;
                    rest = rest.substring(5).strip();
                }
                if (rest.equals("each")) {
                    scope = Tolerance.Scope.EACH;
                    rest = "";
                }
                if (!rest.isEmpty()) {
                    throw new IllegalArgumentException(rest);
                }
            }
            return new Quantity(si, measure.dimension(), new Tolerance(plus, minus, form, scope));
        }

        private double number() {
            int end = 0;
            while (end < rest.length()
                    && "+-.0123456789".indexOf(rest.charAt(end)) >= 0
                    && (end == 0 || "+-".indexOf(rest.charAt(end)) < 0)) {
                end++;
            }
            double value = Double.parseDouble(rest.substring(0, end));
            rest = rest.substring(end).strip();
            return value;
        }

        private String unit() {
            int end = 0;
            while (end < rest.length()
                    && " ±+".indexOf(rest.charAt(end)) < 0
                    && rest.charAt(end) != '/'
                            | (end > 0
                                    && end + 1 < rest.length()
                                    && Character.isLetter(rest.charAt(end + 1)))) {
                end++;
            }
            String unit = rest.substring(0, end);
            rest = rest.substring(end).strip();
            return unit;
        }

        private static double factor(String unit, Measure measure) {
            if (unit.isEmpty() && measure.dimension().equals(Dimension.NONE)) {
                return 1;
            }
            if (unit.equals(measure.unit()) && measure != Measure.TEMPERATURE) {
                return measure.show(1).isEmpty() ? 1 : scale(measure);
            }
            for (Measure other : Measure.values()) {
                for (var prefix : PREFIX.entrySet()) {
                    for (String base :
                            new String[] {
                                "m", "g", "s", "Hz", "V", "A", "Ω", "F", "W", "N", "J", "Pa", "Ah",
                                "K", "rad", "rad/s", "m/s", "m²", "kg·m²", "min", "lb", "deg/s",
                                "%", "°C", "°", "cm²", "mm²", "kg·mm²", "rpm", "rpm/V"
                            }) {
                        if (unit.equals(prefix.getKey() + base)) {
                            return known(prefix.getValue(), base, measure);
                        }
                    }
                }
            }
            throw new IllegalArgumentException(unit);
        }

        private static double scale(Measure m) {
            return switch (m) {
                case SHARE, PER_KELVIN, PER_SECOND -> 0.01;
                case LENGTH, RESISTANCE -> 1e-3;
                case AREA -> 1e-4;
                case ANGLE, TURN_RATE -> Math.PI / 180;
                case ROTATION, SPEED_CONSTANT -> Math.PI / 30;
                case PRESSURE -> 100;
                case CAPACITANCE, INDUCTANCE -> 1e-6;
                case CHARGE -> 3600;
                default -> 1;
            };
        }

        private static double known(double prefix, String base, Measure measure) {
            for (Measure m : Measure.values()) {
                if (m.dimension().equals(measure.dimension())) {
                    switch (base) {
                        case "m":
                            if (m == Measure.LENGTH) return prefix;
                            break;
                        case "g":
                            if (m == Measure.MASS) return prefix * 1e-3;
                            break;
                        case "s":
                            if (m == Measure.TIME) return prefix;
                            break;
                        case "min":
                            if (m == Measure.TIME) return 60;
                            break;
                        case "Hz":
                            if (m == Measure.FREQUENCY) return prefix;
                            break;
                        case "V":
                            if (m == Measure.VOLTAGE) return prefix;
                            break;
                        case "A":
                            if (m == Measure.CURRENT) return prefix;
                            break;
                        case "Ω":
                            if (m == Measure.RESISTANCE) return prefix;
                            break;
                        case "F":
                            if (m == Measure.CAPACITANCE) return prefix;
                            break;
                        case "W":
                            if (m == Measure.POWER) return prefix;
                            break;
                        case "N":
                            if (m == Measure.FORCE) return prefix;
                            break;
                        case "J":
                            if (m == Measure.ENERGY) return prefix;
                            break;
                        case "Pa":
                            if (m == Measure.PRESSURE) return prefix;
                            break;
                        case "Ah":
                            if (m == Measure.CHARGE) return prefix * 3600;
                            break;
                        case "K", "°C":
                            if (m == Measure.TEMPERATURE) return 1;
                            break;
                        case "rad":
                            if (m == Measure.ANGLE) return prefix;
                            break;
                        case "rad/s":
                            if (m == Measure.ROTATION) return prefix;
                            break;
                        case "kg·mm²":
                            if (m == Measure.INERTIA) return 1e-6;
                            break;
                        case "kg·m²":
                            if (m == Measure.INERTIA) return 1;
                            break;
                        case "m/s":
                            if (m == Measure.SPEED) return 1;
                            break;
                        case "rpm":
                            if (m == Measure.ROTATION) return Math.PI / 30;
                            break;
                        case "°":
                            if (m == Measure.ANGLE) return Math.PI / 180;
                            break;
                        case "deg/s":
                            if (m == Measure.TURN_RATE) return Math.PI / 180;
                            break;
                        case "cm²":
                            if (m == Measure.AREA) return 1e-4;
                            break;
                        case "mm²":
                            if (m == Measure.AREA) return 1e-6;
                            break;
                        case "%":
                            if (measure.dimension().equals(Dimension.NONE)) return 0.01;
                            break;
                        default:
                            break;
                    }
                }
            }
            throw new WrongUnit();
        }
    }
}
