package liftwright.app.bay;

/**
 * Something that the page can ask: {@code POST /api/NAME} with a JSON object.
 *
 * @param name letters only
 * @param mostBytes the largest body it reads
 * @param handler answers; called on many threads at once
 */
record Route(String name, int mostBytes, Handler handler) {

    /** Enough for everything that carries no text of a rig file. */
    static final int SMALL = 256 << 10;

    /** Enough for the text of the largest rig file, escaped. */
    static final int TEXT = 4 << 20;

    /** What a route does. */
    @FunctionalInterface
    interface Handler {

        /**
         * @throws FaultException when it cannot be done; the page is told why
         */
        Reply answer(Call call);
    }

    Route {
        if (!name.matches("[a-z]+")) {
            throw new IllegalArgumentException("no name of a route: " + name);
        }
    }

    /** A route with a small body. */
    static Route of(String name, Handler handler) {
        return new Route(name, SMALL, handler);
    }

    /** A route whose body may hold the text of a rig file. */
    static Route ofText(String name, Handler handler) {
        return new Route(name, TEXT, handler);
    }
}
