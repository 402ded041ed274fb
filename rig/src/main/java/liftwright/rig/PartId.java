package liftwright.rig;

/**
 * The lasting name of one part: {@code frame}, {@code p.7} for the seventh pack of group {@code p},
 * {@code left.3} for the third fan of group {@code left}. It survives edits; generated parts count
 * from 1.
 *
 * @param text as shown and written
 */
public record PartId(String text) implements Comparable<PartId> {

    /** The id of the {@code number}-th part that the group {@code group} makes, from 1. */
    public static PartId of(String group, int number) {
        return new PartId(group + "." + number);
    }

    @Override
    public int compareTo(PartId other) {
        return text.compareTo(other.text);
    }

    @Override
    public String toString() {
        return text;
    }
}
