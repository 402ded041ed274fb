package liftwright.app;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import liftwright.learning.fit.Fitted.Residual;
import liftwright.plant.recording.Signal;
import liftwright.quantity.SiText;

/** How channels fit, a line for each quantity: dozens of channels a test nobody reads. */
final class FitResiduals {

    private FitResiduals() {}

    /**
     * @param tests ids, in the order of the fit
     */
    static List<String> of(List<Residual> residuals, List<String> tests) {
        Map<Signal, List<Residual>> bySignal = new EnumMap<>(Signal.class);
        for (Residual one : residuals) {
            signal(one.channel())
                    .ifPresent(
                            signal ->
                                    bySignal.computeIfAbsent(signal, _ -> new ArrayList<>())
                                            .add(one));
        }
        List<String> lines = new ArrayList<>();
        bySignal.forEach((signal, own) -> lines.add(line(signal, own, tests)));
        return lines;
    }

    /** That of the longest word: a channel is called by it and by its part. */
    private static Optional<Signal> signal(String channel) {
        return Stream.of(Signal.values())
                .filter(
                        signal ->
                                channel.equals(signal.word())
                                        || channel.startsWith(signal.word() + " "))
                .max(Comparator.comparingInt(signal -> signal.word().length()));
    }

    private static String line(Signal signal, List<Residual> own, List<String> tests) {
        double declared = 0;
        double fitted = 0;
        for (Residual one : own) {
            declared += one.declaredRmsSi() * one.declaredRmsSi() / own.size();
            fitted += one.rmsSi() * one.rmsSi() / own.size();
        }
        Residual worst =
                own.stream().max(Comparator.comparingDouble(Residual::rmsSi)).orElseThrow();
        String unit = SiText.unit(signal.dimension());
        String whole =
                String.format(
                        Locale.ROOT,
                        "%s: %s as declared, %s fitted",
                        signal.word(),
                        number(Math.sqrt(declared), unit),
                        number(Math.sqrt(fitted), unit));
        return own.size() == 1
                ? whole
                : String.format(
                        Locale.ROOT,
                        "%s, over %d channels; farthest %s in %s, %s",
                        whole,
                        own.size(),
                        worst.channel(),
                        tests.get(worst.test()),
                        number(worst.rmsSi(), unit));
    }

    private static String number(double si, String unit) {
        return String.format(Locale.ROOT, "%.3g %s", si, unit).strip();
    }
}
