package liftwright.review;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import liftwright.plant.Plant;
import liftwright.plant.parameters.DeclaredInput;
import liftwright.plant.parameters.Parameter;
import liftwright.quantity.Quantity;
import liftwright.quantity.QuantityParser;
import liftwright.quantity.QuantityWriter;
import liftwright.quantity.Reading;
import liftwright.rig.Change;
import liftwright.rig.Declaration.Tree;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** Values over the band of a declared value, each as it would stand in the file. */
final class Stops {

    /** To each side of what is declared. */
    static final int SIDE = 10;

    private static final Pattern NUMBER = Pattern.compile("[-\u2212]?[0-9]+(\\.[0-9]+)?");

    private Stops() {}

    /**
     * From the lower end to the upper, what is declared, or stands in for it, in the middle; empty
     * where none can be set.
     */
    static List<String> of(Plant plant, DeclaredInput input) {
        Rig rig = plant.rig();
        Optional<String> text = text(rig, input.at());
        Optional<Quantity> found = text.isPresent() ? read(text.get()) : byDefault(plant, input);
        if (found.isEmpty()
                || found.get().tolerance().isNone()
                || Math.abs(found.get().si() - nominal(plant, input))
                        > 1e-9 * Math.abs(found.get().si())) {
            return List.of(); // a table tells it, or it stands in the file otherwise
        }
        Quantity declared = found.get();
        String like = text.orElseGet(() -> QuantityWriter.write(declared));
        List<String> stops = new ArrayList<>();
        for (int k = -SIDE; k <= SIDE; k++) {
            double half = k > 0 ? declared.tolerance().plus() : declared.tolerance().minus();
            stops.add(
                    k == 0
                            ? like
                            : QuantityWriter.writeLike(
                                    new Quantity(
                                            declared.si() + half * k / SIDE,
                                            declared.dimension(),
                                            declared.tolerance()),
                                    like));
        }
        double unit =
                number(like)
                        .flatMap(one -> number(stops.getLast()).map(end -> end - one))
                        .orElse(0.0);
        stops.replaceAll(stop -> stop.equals(like) ? like : rounded(stop, unit));
        boolean reads =
                reads(rig, input.at(), stops.getFirst()) && reads(rig, input.at(), stops.getLast());
        return reads ? stops : List.of();
    }

    private static Optional<Quantity> read(String text) {
        return QuantityParser.parse(text) instanceof Reading.Parsed<Quantity>(var declared)
                ? Optional.of(declared)
                : Optional.empty();
    }

    /** What stands in for it, where nothing else stands at its place: it can be declared there. */
    private static Optional<Quantity> byDefault(Plant plant, DeclaredInput input) {
        if (plant.rig().declaration().at(input.at()).isPresent()) {
            return Optional.empty();
        }
        Parameter row = plant.parameters().rows().get(input.rows().getFirst());
        return Optional.of(new Quantity(row.nominal(), row.dimension(), row.tolerance()));
    }

    private static Optional<Double> number(String text) {
        Matcher begins = NUMBER.matcher(text);
        return begins.lookingAt()
                ? Optional.of(Double.parseDouble(begins.group().replace('\u2212', '-')))
                : Optional.empty();
    }

    /**
     * The number that the text begins with, in its own unit, to a thousandth of the doubt: finer
     * than a slider.
     *
     * @param half of the band, in that unit
     */
    private static String rounded(String text, double half) {
        Matcher begins = NUMBER.matcher(text);
        if (!begins.lookingAt() || half == 0) {
            return text;
        }
        int places = 3 - (int) Math.floor(Math.log10(Math.abs(half)));
        String number =
                new BigDecimal(begins.group().replace('\u2212', '-'))
                        .setScale(places, RoundingMode.HALF_EVEN)
                        .stripTrailingZeros()
                        .toPlainString();
        return number + text.substring(begins.end());
    }

    private static double nominal(Plant plant, DeclaredInput input) {
        return plant.parameters().nominal()[input.rows().getFirst()];
    }

    private static Optional<String> text(Rig rig, RigPath at) {
        return rig.declaration()
                .at(at)
                .flatMap(
                        tree ->
                                tree instanceof Tree.Text(String text)
                                        ? Optional.of(text)
                                        : Optional.empty());
    }

    private static boolean reads(Rig rig, RigPath at, String value) {
        return Revised.with(rig, List.of(new Change.Set(at, value))).isPresent();
    }
}
