package liftwright.rig.book;

import java.util.List;

/**
 * A generic form of fuse, for the page: which one a rig has, and so what it can break, only its
 * builder knows.
 *
 * @param form what it is called
 * @param leastA smallest common rating, A
 * @param mostA largest common rating, A
 * @param voltage DC voltage it is made for, in words
 * @param breaks what it can break, in words
 * @param source where that comes from
 */
public record BookFuse(
        String form, double leastA, double mostA, String voltage, String breaks, String source) {

    private static final String MEMORY = "from memory, read yours";

    /** In the order of the page. */
    static final List<BookFuse> ALL =
            List.of(
                    new BookFuse("blade", 1, 40, "32 V", "1 kA", MEMORY),
                    new BookFuse("large blade", 20, 100, "32 V, some 58 V", "1 kA", MEMORY),
                    new BookFuse(
                            "bolt-down link", 40, 500, "32 V, some 58 V or 70 V", "2 kA", MEMORY),
                    new BookFuse(
                            "DC cartridge", 10, 400, "500 V to 1000 V", "20 kA and more", MEMORY));
}
