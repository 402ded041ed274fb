package liftwright.quantity;

import java.util.ArrayList;
import java.util.List;

/**
 * One unit of the table: how it is written and what it is in SI.
 *
 * @param symbol how the product writes it
 * @param ascii the same without signs beyond ASCII
 * @param name in words
 * @param dimension what it measures
 * @param scale one of it in coherent SI
 * @param offset added to the value before it is scaled; not 0 only for °C and °F
 * @param prefixes symbols of the SI prefixes that may stand before it, as one word
 * @param spellings every way to read it, symbol first
 * @param source where its size comes from
 */
record Unit(
        String symbol,
        String ascii,
        String name,
        Dimension dimension,
        Scale scale,
        Decimal offset,
        String prefixes,
        List<String> spellings,
        String source) {

    static Unit of(String symbol, String name, Dimension dimension, Scale scale, String source) {
        return new Unit(
                symbol, symbol, name, dimension, scale, Decimal.ZERO, "", List.of(symbol), source);
    }

    Unit withPrefixes(String letters) {
        return new Unit(symbol, ascii, name, dimension, scale, offset, letters, spellings, source);
    }

    Unit withAscii(String plain) {
        return new Unit(
                symbol, plain, name, dimension, scale, offset, prefixes, and(plain), source);
    }

    Unit alsoWritten(String spelling) {
        return new Unit(
                symbol, ascii, name, dimension, scale, offset, prefixes, and(spelling), source);
    }

    Unit withOffset(Decimal zero) {
        return new Unit(symbol, ascii, name, dimension, scale, zero, prefixes, spellings, source);
    }

    boolean hasOffset() {
        return !offset.isZero();
    }

    private List<String> and(String spelling) {
        var longer = new ArrayList<>(spellings);
        longer.add(spelling);
        return List.copyOf(longer);
    }
}
