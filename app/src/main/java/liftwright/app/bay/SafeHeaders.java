package liftwright.app.bay;

import com.sun.net.httpserver.Headers;
import java.util.Map;

/** What every reply says about itself, so that a browser does nothing with it that is not meant. */
final class SafeHeaders {

    /** The page runs what the server gave it and nothing else. */
    static final String POLICY =
            "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self' blob:;"
                    + " connect-src 'self'; font-src 'self'; base-uri 'none'; form-action 'none';"
                    + " frame-ancestors 'none'";

    private static final Map<String, String> ALWAYS =
            Map.of(
                    "Content-Security-Policy", POLICY,
                    "X-Content-Type-Options", "nosniff",
                    "X-Frame-Options", "DENY",
                    "Referrer-Policy", "no-referrer",
                    "Cross-Origin-Opener-Policy", "same-origin",
                    "Cross-Origin-Resource-Policy", "same-origin",
                    "Permissions-Policy",
                            "camera=(), microphone=(), geolocation=(), usb=(), serial=(),"
                                    + " payment=(), display-capture=()",
                    "Cache-Control", "no-store");

    private SafeHeaders() {}

    static void put(Headers headers) {
        ALWAYS.forEach(headers::set);
    }
}
