package liftwright.app.bay;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.SecureRandom;
import java.util.ArrayDeque;
import java.util.Base64;
import java.util.Deque;
import java.util.Iterator;
import java.util.Optional;

/**
 * Who may come in. A link carries a token that is good once; it is exchanged for a key, which every
 * later request shows. Both live in memory only and end with the server.
 */
final class Keys {

    /** Links that were handed out and not used; the oldest goes first. */
    private static final int MOST_TOKENS = 16;

    /** Tabs; the one that came in first goes first. */
    private static final int MOST_SESSIONS = 64;

    private static final int SECRET_BYTES = 32;

    @SuppressWarnings("ArrayRecordComponent") // compared by MessageDigest, never by equals
    private record Held(byte[] secret, Session session) {}

    private final SecureRandom random = new SecureRandom();
    private final Deque<Held> tokens = new ArrayDeque<>();
    private final Deque<Held> keys = new ArrayDeque<>();
    private int sessions;

    /**
     * A token that is good once.
     *
     * @param open the rig that whoever comes in by it shall see first
     */
    synchronized String token(Optional<String> open) {
        return hold(tokens, MOST_TOKENS, new Session(++sessions, open));
    }

    /** The key for a token, which then is used up; empty for any other text. */
    synchronized Optional<String> enter(String token) {
        Held found = null;
        for (Iterator<Held> held = tokens.iterator(); held.hasNext(); ) {
            Held each = held.next();
            if (matches(each, token)) {
                found = each;
                held.remove();
            }
        }
        return found == null
                ? Optional.empty()
                : Optional.of(hold(keys, MOST_SESSIONS, found.session()));
    }

    /** Whose key this is. */
    synchronized Optional<Session> session(String key) {
        Optional<Session> found = Optional.empty();
        for (Held each : keys) {
            if (matches(each, key)) {
                found = Optional.of(each.session());
            }
        }
        return found;
    }

    /** A text that nobody can guess, of letters that a link can carry. */
    String secret() {
        byte[] bytes = new byte[SECRET_BYTES];
        random.nextBytes(bytes);
        return Base64.getUrlEncoder().withoutPadding().encodeToString(bytes);
    }

    private String hold(Deque<Held> among, int most, Session session) {
        String secret = secret();
        among.addLast(new Held(secret.getBytes(StandardCharsets.US_ASCII), session));
        if (among.size() > most) {
            among.removeFirst();
        }
        return secret;
    }

    /** Takes as long for a near miss as for a far one. */
    private static boolean matches(Held held, String shown) {
        return MessageDigest.isEqual(held.secret(), shown.getBytes(StandardCharsets.UTF_8));
    }
}
