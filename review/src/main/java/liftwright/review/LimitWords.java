package liftwright.review;

import java.util.Locale;
import liftwright.answer.Sentence;
import liftwright.plant.OperatingLimit;
import liftwright.plant.OperatingLimit.Kind;
import liftwright.quantity.Measure;
import liftwright.rig.Rig;

/** How a limit is named, measured and explained. */
final class LimitWords {

    private LimitWords() {}

    static String name(Kind kind) {
        return switch (kind) {
            case ROTOR_SPEED -> "rotor speed";
            case TIP_MACH -> "tip Mach number";
            case ELECTRICAL_SPEED -> "electrical speed";
            case CONTROLLER_VOLTAGE -> "voltage at the controller";
            case CAPACITOR_VOLTAGE -> "voltage at the controller's capacitors";
            case CONTROLLER_CURRENT -> "controller current";
            case CUT_OFF -> "voltage at the controller under load";
            case INTAKE_LOSS -> "intake loss K";
            case JOINT_CURRENT -> "joint current";
            case FUSE_CURRENT -> "fuse current";
            case FUSE_BREAKING -> "fault current at the fuse";
            case FUSE_VOLTAGE -> "voltage at the fuse";
            case CONTACTOR_CURRENT -> "contactor current";
            case CONTACTOR_BREAKING -> "fault current at the contactor";
            case CONTACTOR_VOLTAGE -> "voltage at the contactor";
            case CELL_UNDER_LOAD -> "cell voltage under load";
            case CELL_CONTINUOUS_CURRENT -> "cell current";
            case CELL_PEAK_CURRENT -> "cell current";
            case REVERSE_CURRENT -> "current into a pack";
            case HAZARDOUS_VOLTAGE -> "voltage of a full pack";
        };
    }

    static Measure measure(Kind kind) {
        return switch (kind) {
            case ROTOR_SPEED, ELECTRICAL_SPEED -> Measure.ROTATION;
            case TIP_MACH, INTAKE_LOSS -> Measure.RATIO;
            case CONTROLLER_VOLTAGE,
                    CAPACITOR_VOLTAGE,
                    CUT_OFF,
                    FUSE_VOLTAGE,
                    CONTACTOR_VOLTAGE,
                    CELL_UNDER_LOAD,
                    HAZARDOUS_VOLTAGE ->
                    Measure.VOLTAGE;
            case CONTROLLER_CURRENT,
                    JOINT_CURRENT,
                    FUSE_CURRENT,
                    FUSE_BREAKING,
                    CONTACTOR_CURRENT,
                    CONTACTOR_BREAKING,
                    CELL_CONTINUOUS_CURRENT,
                    CELL_PEAK_CURRENT,
                    REVERSE_CURRENT ->
                    Measure.CURRENT;
        };
    }

    /** Id of the field that a finding's value belongs to. */
    static String field(Kind kind) {
        return switch (kind) {
            case ROTOR_SPEED -> "fan-speed";
            case TIP_MACH -> "tip-mach";
            case ELECTRICAL_SPEED -> "electrical-speed";
            case CONTROLLER_VOLTAGE,
                    CAPACITOR_VOLTAGE,
                    FUSE_VOLTAGE,
                    CONTACTOR_VOLTAGE,
                    HAZARDOUS_VOLTAGE ->
                    "pack-voltage-full";
            case CONTROLLER_CURRENT -> "winding-current";
            case CUT_OFF -> "fan-voltage";
            case INTAKE_LOSS -> "intake-loss";
            case JOINT_CURRENT, FUSE_CURRENT, CONTACTOR_CURRENT -> "part-current";
            case FUSE_BREAKING, CONTACTOR_BREAKING -> "fault-current";
            case CELL_UNDER_LOAD -> "cell-under-load";
            case CELL_CONTINUOUS_CURRENT, CELL_PEAK_CURRENT -> "cell-current";
            case REVERSE_CURRENT -> "reverse-current";
        };
    }

    static String cause(Kind kind) {
        return switch (kind) {
            case ROTOR_SPEED -> "stress in the blades grows with the square of speed";
            case TIP_MACH -> "near the speed of sound thrust and noise leave the laws used here";
            case ELECTRICAL_SPEED -> "above it a controller loses step with the rotor";
            case CONTROLLER_VOLTAGE, CAPACITOR_VOLTAGE ->
                    "a full pack at rest, before any ringing at plug-in or rise under braking";
            case CONTROLLER_CURRENT ->
                    "advertised currents assume the seller's own air over the controller";
            case CUT_OFF -> "the controller stops its motor when its supply sags below the cut-off";
            case INTAKE_LOSS -> "a screen as tight as this changes the fan's own operating point";
            case JOINT_CURRENT -> "the joint is usually the hottest part of a branch";
            case FUSE_CURRENT -> "a fuse close to its rating ages and opens in flight";
            case FUSE_BREAKING, CONTACTOR_BREAKING ->
                    "pack voltage over the resistance of a dead short behind it; what cannot break it will burn";
            case FUSE_VOLTAGE, CONTACTOR_VOLTAGE -> "above its DC rating an arc does not go out";
            case CONTACTOR_CURRENT -> "its contacts heat with the square of current";
            case CELL_UNDER_LOAD -> "below it cells are damaged and the weakest reverses first";
            case CELL_CONTINUOUS_CURRENT, CELL_PEAK_CURRENT ->
                    "cells heat with the square of current";
            case REVERSE_CURRENT ->
                    "packs of unequal charge on one bus charge each other without control";
            case HAZARDOUS_VOLTAGE ->
                    "guards, gloves, marking and a discharge path are due above it";
        };
    }

    static Sentence amount(Kind kind, double si) {
        return Sentence.start().then(measure(kind), si);
    }

    /** Where the limit comes from. */
    static String origin(Rig rig, OperatingLimit limit) {
        return limit.name()
                .map(
                        name ->
                                limit.limit() == limit.rating()
                                        ? rig.limits().origin(name)
                                        : String.format(
                                                Locale.ROOT,
                                                "%.0f %% of the declared rating, %s%s: %s",
                                                100 * limit.limit() / limit.rating(),
                                                name.key(),
                                                limit.kind() == Kind.CONTACTOR_BREAKING
                                                        ? ", which holds for contactors too"
                                                        : "",
                                                rig.limits().origin(name)))
                .orElse("declared rating");
    }
}
