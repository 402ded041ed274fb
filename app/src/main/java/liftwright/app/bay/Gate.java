package liftwright.app.bay;

import com.sun.net.httpserver.Headers;
import com.sun.net.httpserver.HttpExchange;
import java.net.URI;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import liftwright.app.bay.FaultException.Kind;

/**
 * Judges a request by its head, before anything is looked up for it. Another page in the same
 * browser can send requests here; what it cannot do is name our host after its own name was made to
 * point here, leave out its origin where a browser states it, or know a key.
 */
final class Gate {

    /** Name of the header that carries the key. */
    static final String KEY = "Liftwright-Key";

    private final Set<String> hosts;

    /**
     * @param port that the server listens on
     */
    Gate(int port) {
        hosts = Set.of("127.0.0.1:" + port, "localhost:" + port);
    }

    /**
     * Lets in what is addressed to this server and comes from its own page.
     *
     * @param api whether it asks for more than the page itself
     * @throws FaultException for everything else
     */
    void judge(HttpExchange exchange, boolean api) {
        Headers headers = exchange.getRequestHeaders();
        String host =
                only(headers, "Host")
                        .filter(hosts::contains)
                        .orElseThrow(
                                () ->
                                        new FaultException(
                                                Kind.HOST,
                                                "This server answers only to its own address."));
        URI uri = exchange.getRequestURI();
        if (uri.getRawAuthority() != null || uri.getScheme() != null) {
            throw new FaultException(Kind.HOST, "This server answers only to its own address.");
        }
        if (headers.containsKey("Origin")
                && !only(headers, "Origin").filter(("http://" + host)::equals).isPresent()) {
            throw foreign();
        }
        if (headers.containsKey("Sec-Fetch-Site")) {
            String site = only(headers, "Sec-Fetch-Site").orElse("");
            boolean own = site.equals("same-origin") || (!api && site.equals("none"));
            if (!own && (api || !isVisit(headers))) {
                throw foreign();
            }
        }
    }

    /**
     * Whether a link was followed to here: that shows the page to the reader and to nobody else.
     */
    private static boolean isVisit(Headers headers) {
        return only(headers, "Sec-Fetch-Mode").filter("navigate"::equals).isPresent()
                && only(headers, "Sec-Fetch-Dest").filter("document"::equals).isPresent();
    }

    /** The body must say that it is JSON: a form of another page cannot. */
    static void judgeType(Headers headers) {
        String type = only(headers, "Content-Type").orElse("").toLowerCase(Locale.ROOT);
        if (!type.matches("application/json(\\s*;\\s*charset=\"?utf-8\"?)?")) {
            throw new FaultException(Kind.MEDIA_TYPE, "The body has to be application/json.");
        }
    }

    /** The key that was shown; a text that fits nothing where there is none. */
    static String key(Headers headers) {
        return only(headers, KEY).orElse("");
    }

    /** The value of a header that stands once. */
    static Optional<String> only(Headers headers, String name) {
        List<String> values = headers.getOrDefault(name, List.of());
        return values.size() == 1 ? Optional.of(values.getFirst()) : Optional.empty();
    }

    private static FaultException foreign() {
        return new FaultException(Kind.ORIGIN, "Another page may not ask this server.");
    }
}
