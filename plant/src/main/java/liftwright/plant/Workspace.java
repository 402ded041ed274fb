package liftwright.plant;

/** Scratch of one thread for one plant: {@link Plant#workspace()}. */
public final class Workspace {

    Workspace() {}
}
