package liftwright.trials;

/** What an input of a rig is about; a card names the topics it rests on. */
public enum Topic {
    /** Masses of parts and of the wearer. */
    MASS,
    /** Where parts, fans and mounts are, where fans point, posture, stiffness of mounts. */
    PLACE,
    /** What a fan does with volts: duct, rotor, motor, controller, grille, spin. */
    FAN,
    /** Cells and packs without their mass and place. */
    PACK,
    /** Chains from pack to fan: wires, joints, fuses, contactors, and who feeds whom. */
    WIRING,
    /** What warms how fast and how hot it may get. */
    HEAT,
    /** How throttle reaches the fans and what its loss does. */
    CONTROL,
    /** Kills and what they need. */
    KILL,
    /** What holds the rig: stands, tether, mats, platform, room. */
    HOLD,
    /** Wearer and crew as people: reaction, distance, strength. */
    PEOPLE,
    /** Site and weather as declared. */
    SITE,
    /** What is asked: demands. */
    DEMAND,
    /** Limits in force, rates and risk matrix. */
    LIMIT,
    /** Serial numbers. */
    SERIAL,
    /** The plan of the thrust stand. */
    BENCH,
    /** How soon somebody presses. */
    REACTION
}
