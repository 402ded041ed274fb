package liftwright.app.bay;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.Optional;
import liftwright.app.bay.FaultException.Kind;

/**
 * How one comes in: {@code enter} exchanges a token for a key, {@code link} makes another link. A
 * link may also be asked for by a second {@code liftwright open}, which shows the secret of the
 * file that only the folder's owner can read; that secret opens nothing else.
 */
final class Entry {

    static final String ENTER = "enter";
    static final String LINK = "link";

    private final Bay bay;
    private final String address;
    private final byte[] secret;

    /**
     * @param address of the server, such as {@code http://127.0.0.1:4000}
     * @param secret of the owner's file
     */
    Entry(Bay bay, String address, String secret) {
        this.bay = bay;
        this.address = address;
        this.secret = secret.getBytes(StandardCharsets.US_ASCII);
    }

    /** A fresh link: the token stands behind the #, which a browser never sends. */
    String link(Optional<String> open) {
        return address + "/#enter=" + bay.keys().token(open);
    }

    Reply answer(String name, String shown, Json.Members body) {
        if (name.equals(ENTER)) {
            String key = bay.keys().enter(body.text("token")).orElseThrow(Entry::usedUp);
            return Reply.json(json -> json.object(() -> json.member("key", key)));
        }
        if (!mayLink(shown)) {
            throw noKey();
        }
        Optional<String> rig = body.optionalText("rig");
        rig.ifPresent(bay.folder()::rig);
        String url = link(rig);
        return Reply.json(json -> json.object(() -> json.member("url", url)));
    }

    /** Whether whoever shows this may have another link. */
    boolean mayLink(String shown) {
        return MessageDigest.isEqual(secret, shown.getBytes(StandardCharsets.UTF_8))
                || bay.keys().session(shown).isPresent();
    }

    static FaultException noKey() {
        return new FaultException(
                Kind.KEY,
                "This page is not let in (any more). Run `liftwright open` for a fresh link.");
    }

    private static FaultException usedUp() {
        return new FaultException(
                Kind.KEY,
                "This link was used already or is too old: each is good once. Run `liftwright"
                        + " open` for a fresh one.");
    }
}
