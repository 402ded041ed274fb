package liftwright.review.bench;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import liftwright.answer.Checks;
import liftwright.answer.Evidence;
import liftwright.answer.Outcome;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Verdict;
import liftwright.numerics.LeastSquaresFit;
import liftwright.physics.FanLaw.Plausibility;
import liftwright.plant.identify.FanFit;
import liftwright.plant.identify.FanUnknown;
import liftwright.plant.identify.FanUnknown.Channel;
import liftwright.plant.identify.NotToldException;
import liftwright.quantity.Measure;
import liftwright.rig.table.BenchTable;

/** Whether the rows of one bench table make a fan, which one, and whether they can be true. */
public final class BenchQuestion {

    /** Stands in where nothing tells the rotor's diameter; only streams of air need it. */
    private static final double SOME_TIP_M = 0.1;

    private final BenchTable table;
    private final Known known;
    private final String digest;
    private final Map<Integer, RowPower> powers = new HashMap<>();

    private BenchQuestion(BenchTable table, Known known, String digest) {
        this.table = table;
        this.known = known;
        this.digest = digest;
        known.exitM2()
                .ifPresent(
                        exitM2 ->
                                table.rows()
                                        .forEach(
                                                row ->
                                                        RowPower.of(row, table.current(), exitM2)
                                                                .ifPresent(
                                                                        power ->
                                                                                powers.put(
                                                                                        row.line(),
                                                                                        power))));
    }

    /**
     * Answers.
     *
     * @param digest of the table
     */
    public static BenchAnswer ask(BenchTable table, Known known, String digest) {
        return new BenchQuestion(table, known, digest).answer();
    }

    private BenchAnswer answer() {
        Optional<FanFit> fit;
        String why = "no row tells a speed or a current";
        try {
            FanFit found = FanFit.of(table, known.priors(SOME_TIP_M));
            boolean whole =
                    found.status() == LeastSquaresFit.Status.CONVERGED
                            && found.coefficient(FanUnknown.THRUST).isPresent();
            fit = whole ? Optional.of(found) : Optional.empty();
            why = why(found.status());
        } catch (NotToldException e) {
            fit = Optional.empty();
            why = Objects.requireNonNullElse(e.getMessage(), why);
        } catch (IllegalArgumentException e) {
            fit = Optional.empty(); // rows that no fit can be tried on
        }
        BenchFindings findings = new BenchFindings(table, known, powers);
        fit.ifPresent(findings::ofFit);
        findings.ofPower();
        List<Section> sections = new ArrayList<>();
        BenchTables tables = new BenchTables(table, powers);
        fit.ifPresent(
                found -> {
                    sections.addAll(BenchPlots.of(table, found));
                    sections.add(tables.coefficients(found));
                    known.type()
                            .flatMap(type -> tables.differences(found.against(type)))
                            .ifPresent(sections::add);
                    found.lot().map(tables::lot).ifPresent(sections::add);
                });
        sections.add(tables.rows(fit));
        Evidence evidence = evidence(fit);
        return new BenchAnswer(
                Checks.downgrade(verdict(fit, why), evidence),
                findings.found(),
                sections,
                evidence);
    }

    private static String why(LeastSquaresFit.Status status) {
        return switch (status) {
            case CONVERGED -> "they tell no thrust";
            case UNDETERMINED -> "they leave open more than one set of coefficients";
            case NOT_CONVERGED -> "no set of coefficients comes near them";
        };
    }

    private Verdict verdict(Optional<FanFit> fit, String why) {
        long impossible =
                powers.values().stream()
                        .filter(power -> power.plausibility() == Plausibility.IMPOSSIBLE)
                        .count();
        if (impossible > 0) {
            return new Verdict(
                    Outcome.DOES_NOT_HOLD,
                    Sentence.words(
                            impossible
                                    + " of "
                                    + rows(table.rows().size())
                                    + (impossible == 1 ? " tells" : " tell")
                                    + " more thrust than momentum theory allows for the power"),
                    Optional.empty(),
                    List.of());
        }
        if (fit.isEmpty()) {
            return new Verdict(
                    Outcome.CANNOT_BE_TOLD,
                    Sentence.words("the rows make no fan: " + why),
                    Optional.empty(),
                    List.of());
        }
        return new Verdict(Outcome.HOLDS, told(fit.get()), Optional.empty(), List.of());
    }

    private Sentence told(FanFit fit) {
        int aside = fit.outliers().size();
        Sentence said =
                Sentence.words(
                        rows(table.rows().size())
                                + " make one fan"
                                + (aside == 0 ? "" : ", " + aside + " set aside")
                                + "; a row's thrust scatters by ");
        said =
                said.then(
                        Measure.PERCENT,
                        fit.scatter(Channel.THRUST).orElse(0) * 2); // k = 2, as everywhere
        said = said.then(" (95 %) about them, and its coefficient is known to ± ");
        FanFit.Coefficient own = fit.coefficient(FanUnknown.THRUST).orElseThrow();
        return said.then(Measure.PERCENT, (own.high() - own.low()) / 2 / own.value());
    }

    private static String rows(int count) {
        return count == 1 ? "1 row" : count + " rows";
    }

    private Evidence evidence(Optional<FanFit> fit) {
        List<Evidence.Assumption> assumed = new ArrayList<>();
        if (known.type().isEmpty() && table.isElectric()) {
            assumed.add(
                    new Evidence.Assumption(
                            "controller",
                            "as a rig file that leaves it open",
                            "from memory; name the fan type with --rig and --type"));
        }
        if (known.tipM().isEmpty()
                && table.rows().stream().anyMatch(row -> row.airspeedMps().orElse(0) != 0)) {
            assumed.add(
                    new Evidence.Assumption(
                            "tip", "100 mm", "scales the advance ratio, and nothing else"));
        }
        List<Evidence.Law> laws = new ArrayList<>();
        fit.ifPresent(
                found ->
                        laws.add(
                                new Evidence.Law(
                                        "thrust and torque over speed squared, motor of first order",
                                        "docs/explanation/fitting-a-fan.md",
                                        "speeds between the slowest and the fastest row",
                                        true)));
        if (known.exitM2().isPresent()) {
            laws.add(
                    new Evidence.Law(
                            "least power for a thrust",
                            "momentum theory of the ducted fan: thrust^1.5 / sqrt(4 rho exit area)",
                            "any fan whose jet leaves through that area",
                            true));
        }
        return new Evidence(
                digest,
                "none",
                0,
                0,
                Sentence.words(
                        "on the stand, as measured; coefficients in still air of 1.225 kg/m³"),
                laws,
                assumed,
                List.of());
    }
}
