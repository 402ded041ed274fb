package liftwright.bench;

/** What a JVM costs that does nothing: the reference of every start. */
final class EmptyMain {

    private EmptyMain() {}

    public static void main(String[] args) {
        // nothing, and that is the point
    }
}
