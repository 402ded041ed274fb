package liftwright.report;

/**
 * What every page of a card says of the rig that it was made for, so that a sheet that lies about
 * can be told from one for another build.
 *
 * @param rig as declared; empty where the file gives no name
 * @param file as the user named it
 * @param revision in words, such as {@code revision 4} or that none is declared
 * @param digest of the rig file, in full
 * @param version of the program
 */
public record CardHead(String rig, String file, String revision, String digest, String version) {

    private static final int SHORT = 12;

    /** What the rig is called. */
    public String name() {
        return rig.isBlank() ? file : rig;
    }

    /** So much of the digest that two builds of one rig do not share it by chance. */
    public String shortDigest() {
        String hex = digest.substring(digest.indexOf(':') + 1);
        return hex.length() <= SHORT ? hex : hex.substring(0, SHORT);
    }
}
