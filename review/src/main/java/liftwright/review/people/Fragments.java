package liftwright.review.people;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import liftwright.answer.Finding;
import liftwright.answer.Finding.Severity;
import liftwright.answer.Section;
import liftwright.answer.Sentence;
import liftwright.answer.Value;
import liftwright.physics.Fragment;
import liftwright.quantity.Band;
import liftwright.quantity.Measure;
import liftwright.review.people.FullThrottle.Moment;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.LimitName;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;

/** What fans throw when they break at full throttle on full packs, how hard, and how far. */
final class Fragments {

    /** One piece of one type's fastest fan, flown. */
    private record Thrown(
            Fan fan,
            Piece piece,
            double energyJ,
            double tumblingM,
            double compactM,
            double hazardM) {}

    private final Rig rig;
    private final FullThrottle full;
    private final double heightM;
    private final List<Thrown> thrown = new ArrayList<>();
    private final List<Finding> untold = new ArrayList<>();

    /**
     * @param heightM from which pieces are thrown, over the ground
     */
    Fragments(Rig rig, Numbers numbers, FullThrottle full, double heightM) {
        this.rig = rig;
        this.full = full;
        this.heightM = heightM;
        Moment declared = full.declared();
        for (FanType type : rig.fanTypes()) {
            int fastest = -1;
            for (int fan = 0; fan < rig.fans().size(); fan++) {
                if (rig.fans().get(fan).type().equals(type)
                        && declared.speedRadps[fan] > 0
                        && (fastest < 0
                                || declared.speedRadps[fan] > declared.speedRadps[fastest])) {
                    fastest = fan;
                }
            }
            if (fastest < 0) {
                continue;
            }
            List<String> missing = new ArrayList<>();
            for (Piece piece : Piece.of(rig, fastest, numbers, declared, missing)) {
                thrown.add(fly(rig.fans().get(fastest), piece));
            }
            if (!missing.isEmpty()) {
                untold.add(cannotTell(type, missing));
            }
        }
    }

    private Thrown fly(Fan fan, Piece piece) {
        Moment at = full.declared();
        double energy = piece.energyJ(at);
        double mass = piece.massKg().applyAsDouble(at);
        double speed = piece.speedMps().applyAsDouble(at);
        double reach = reachM(piece, speed, piece.compactM2());
        return new Thrown(
                fan,
                piece,
                energy,
                reachM(piece, speed, piece.tumblingM2()),
                reach,
                Math.min(reach, hazardM(mass, speed, energy, piece.compactM2())));
    }

    /** Flat throws lose energy by drag alone; high ones may gain it again as they fall. */
    private double hazardM(double massKg, double speedMps, double energyJ, double dragM2) {
        double limit = rig.limits().si(LimitName.FRAGMENT_ENERGY);
        double density = full.declared().densityKgpm3;
        return Math.max(
                Fragment.wayToEnergyM(energyJ, limit, massKg, dragM2, density),
                Fragment.farthestWithM(speedMps, heightM, massKg, dragM2, density, limit));
    }

    private double reachM(Piece piece, double speedMps, double dragAreaM2) {
        return Fragment.farthestM(
                speedMps,
                heightM,
                piece.massKg().applyAsDouble(full.declared()),
                dragAreaM2,
                full.declared().densityKgpm3);
    }

    /** The farthest that any piece can fly, m; 0 without a turning fan. */
    double farthestM() {
        return thrown.stream().mapToDouble(Thrown::compactM).max().orElse(0);
    }

    /** Nearer than this a piece of the most compact shape still has the hazardous energy, m. */
    double hazardM() {
        return thrown.stream().mapToDouble(Thrown::hazardM).max().orElse(0);
    }

    /**
     * Nobody but the crew is nearer than this: the larger of the limit and what was computed, m.
     */
    double keepOutM() {
        return Math.max(rig.limits().si(LimitName.KEEP_OUT), farthestM());
    }

    Optional<Section> section() {
        if (thrown.isEmpty()) {
            return Optional.empty();
        }
        List<List<Value>> rows = new ArrayList<>();
        for (Thrown one : thrown) {
            Piece piece = one.piece();
            rows.add(
                    List.of(
                            Value.words("part", one.fan().id().text()),
                            Value.words("piece", piece.words()),
                            full.value("piece-mass", piece.massKg()),
                            full.value("piece-speed", piece.speedMps()),
                            full.value("piece-energy", piece::energyJ),
                            reach("piece-reach-tumbling", one, one.tumblingM(), piece.tumblingM2()),
                            reach("piece-reach", one, one.compactM(), piece.compactM2()),
                            Value.of("piece-hazard-way", one.hazardM()),
                            piece.mountN()
                                    .map(load -> full.value("mount-load", load))
                                    .orElse(
                                            new Value(
                                                    "mount-load",
                                                    new Value.Figure.NotComputed(
                                                            "its mount is gone"))),
                            Value.words("piece-how", piece.how())));
        }
        return Optional.of(
                new Section.Table(
                        "people-fragments",
                        "What flies when a fan breaks at full throttle on full packs",
                        List.of(
                                "part",
                                "piece",
                                "piece-mass",
                                "piece-speed",
                                "piece-energy",
                                "piece-reach-tumbling",
                                "piece-reach",
                                "piece-hazard-way",
                                "mount-load",
                                "piece-how"),
                        rows));
    }

    /** A faster piece of the same shape flies farther: the ends of its speed give the ends. */
    private Value reach(String field, Thrown one, double atDeclaredM, double dragAreaM2) {
        return Value.of(
                field,
                atDeclaredM,
                full.band(one.piece().speedMps())
                        .map(
                                speed ->
                                        new Band(
                                                reachM(one.piece(), speed.low(), dragAreaM2),
                                                reachM(one.piece(), speed.high(), dragAreaM2),
                                                speed.coverage(),
                                                "flown with the ends of the band of its speed",
                                                speed.draws(),
                                                0)));
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(untold);
        worst().ifPresent(findings::add);
        lostBlade().ifPresent(findings::add);
        if (!thrown.isEmpty()) {
            findings.add(keepOut());
        }
        return findings;
    }

    private Optional<Finding> worst() {
        double limit = rig.limits().si(LimitName.FRAGMENT_ENERGY);
        return thrown.stream()
                .max(Comparator.comparingDouble(Thrown::energyJ))
                .filter(one -> one.energyJ() >= limit)
                .map(
                        one ->
                                finding(
                                        Severity.WARNS,
                                        "fragment-energy",
                                        Optional.of(one.fan().id().text()),
                                        Optional.of(
                                                RigPath.of(
                                                        "fan types",
                                                        one.fan().type().name(),
                                                        "rotor")),
                                        Sentence.words(
                                                        one.piece().words()
                                                                + " of "
                                                                + one.fan().id()
                                                                + " can leave with ")
                                                .then(
                                                        Measure.IMPACT_ENERGY,
                                                        one.energyJ(),
                                                        full.band(one.piece()::energyJ))
                                                .then(" at ")
                                                .then(
                                                        Measure.SPEED,
                                                        one.piece()
                                                                .speedMps()
                                                                .applyAsDouble(full.declared()))
                                                .then("; ")
                                                .then(Measure.IMPACT_ENERGY, limit)
                                                .then(" counts as hazardous"),
                                        Value.of("piece-energy", one.energyJ()),
                                        Value.of("piece-energy", limit),
                                        rig.limits().origin(LimitName.FRAGMENT_ENERGY),
                                        "nobody in the plane of a fan, and a barrier that holds it on the"
                                                + " bench; what duct and guard hold back is not counted"));
    }

    private Optional<Finding> lostBlade() {
        Moment at = full.declared();
        return thrown.stream()
                .filter(one -> one.piece().words().equals(Piece.BLADE))
                .max(
                        Comparator.comparingDouble(
                                one -> one.piece().mountN().orElseThrow().applyAsDouble(at)))
                .map(
                        one -> {
                            var load = one.piece().mountN().orElseThrow();
                            return Finding.of(
                                            Severity.NOTES,
                                            "lost-blade-load",
                                            Sentence.words(
                                                            "without one blade "
                                                                    + one.fan().id()
                                                                    + " shakes its mount with ")
                                                    .then(
                                                            Measure.THRUST,
                                                            load.applyAsDouble(at),
                                                            full.band(load))
                                                    .then(" that turn with the rotor"),
                                            "m r Ω² of the blade that is gone: until the rotor stands, what holds"
                                                    + " the fan has to hold this too")
                                    .about(one.fan().id().text())
                                    .judging(Value.of("mount-load", load.applyAsDouble(at)));
                        });
    }

    private Finding keepOut() {
        double limit = rig.limits().si(LimitName.KEEP_OUT);
        double computed = farthestM();
        return finding(
                Severity.NOTES,
                "keep-out",
                Optional.empty(),
                Optional.empty(),
                Sentence.words("nobody but the crew nearer than ")
                        .then(Measure.LENGTH, keepOutM())
                        .then(
                                computed > limit
                                        ? ": so far a compact piece can fly at the worst angle; one that tumbles as a plate, "
                                        : ": the distance asked for; the farthest piece reaches ")
                        .then(
                                Measure.LENGTH,
                                computed > limit
                                        ? thrown.stream()
                                                .mapToDouble(Thrown::tumblingM)
                                                .max()
                                                .orElse(0)
                                        : computed),
                Value.of("keep-out", keepOutM()),
                Value.of("keep-out", limit),
                rig.limits().origin(LimitName.KEEP_OUT),
                String.format(
                        Locale.ROOT,
                        "thrown from %.1f m above the ground, over all angles from 10° below level to 60°"
                                + " above; a wall or a barrier that holds shortens it",
                        heightM));
    }

    private static Finding cannotTell(FanType type, List<String> missing) {
        return Finding.of(
                        Severity.NOTES,
                        "fragments-cannot-be-told",
                        Sentence.words(
                                "not every piece that "
                                        + type.name()
                                        + " can throw is told: declare "
                                        + String.join("; and ", missing)),
                        "a blade is weighed in a minute; without it the distances told are those of other pieces")
                .about(type.name())
                .at(RigPath.of("fan types", type.name(), "rotor").toString());
    }

    private static Finding finding(
            Severity severity,
            String code,
            Optional<String> part,
            Optional<RigPath> at,
            Sentence sentence,
            Value value,
            Value limit,
            String origin,
            String cause) {
        return Finding.of(severity, code, sentence, cause)
                .about(part)
                .at(at.map(RigPath::toString))
                .against(value, new Finding.Limit(limit, origin));
    }
}
