package liftwright.review;

import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.quantity.Measure;

/** Parts that get hotter than the laws of heat reach: what is computed there is no temperature. */
final class HeatBeyondLaws {

    /** Up to here copper's resistance is linear and insulation of any material is still there. */
    static final double END_K = 523.15;

    private HeatBeyondLaws() {}

    /** Told of the flight as far as it goes; empty where every part stays within the laws. */
    static Optional<Finding> of(HeatParts parts, HeatRun run) {
        int hottest = -1;
        int count = 0;
        for (int part = 0; part < parts.all().size(); part++) {
            if (run.onwards().hottestK(part) > END_K) {
                count++;
                if (hottest < 0 || run.onwards().hottestK(part) > run.onwards().hottestK(hottest)) {
                    hottest = part;
                }
            }
        }
        if (hottest < 0) {
            return Optional.empty();
        }
        double kelvin = run.onwards().hottestK(hottest);
        return Optional.of(
                Finding.of(
                                Severity.NOTES,
                                "beyond-laws",
                                Sentence.words(count == 1 ? "one part goes" : count + " parts go")
                                        .then(" beyond ")
                                        .then(Measure.TEMPERATURE, END_K)
                                        .then(
                                                ", where the laws of heat end, if the flight goes on: "
                                                        + parts.what(hottest)
                                                        + " ("
                                                        + parts.id(hottest)
                                                        + ") most of all"),
                                "insulation burns and joints melt before that; what is computed beyond says"
                                        + " that they do, not how hot they get")
                        .about(parts.id(hottest))
                        .at(parts.part(hottest).declaredAt().toString())
                        .against(
                                Value.of("hottest", kelvin),
                                new Finding.Limit(
                                        Value.of("hottest", END_K), "range of the laws of heat")));
    }
}
