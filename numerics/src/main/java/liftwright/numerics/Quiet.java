package liftwright.numerics;

/** Work without a listener. */
enum Quiet implements Work {
    QUIET;

    @Override
    public void stage(String name, long total) {}

    @Override
    public void done(long units) {}

    @Override
    public boolean stopped() {
        return false;
    }
}
