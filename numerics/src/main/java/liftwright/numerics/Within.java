package liftwright.numerics;

/** Work whose progress is told by the stage around it. */
record Within(Work whole) implements Work {

    @Override
    public void stage(String name, long total) {}

    @Override
    public void done(long units) {}

    @Override
    public Kept kept() {
        return whole.kept();
    }

    @Override
    public boolean stopped() {
        return whole.stopped();
    }
}
