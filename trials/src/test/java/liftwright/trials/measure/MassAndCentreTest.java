package liftwright.trials.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.SplittableRandom;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Plant;
import liftwright.plant.body.MassItem;
import liftwright.rig.Fan;
import liftwright.rig.Mount;
import liftwright.rig.OtherPart;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.testkit.Seeded;
import liftwright.trials.CardKind;
import liftwright.trials.Reading;
import org.junit.jupiter.api.Test;

/** Weights and scale readings, against sums and statics by hand from the records of the rig. */
class MassAndCentreTest {

    /** A part as the test weighs it. */
    @SuppressWarnings("ArrayRecordComponent") // read, never compared
    record Part(Mount mount, Vec3 at, double kg, double[] ownAbout) {}

    static double kg(Fan fan) {
        return fan.type().mass().si() + fan.type().controller().mass().si();
    }

    static double kg(Pack pack) {
        return pack.mass().isPresent()
                ? pack.mass().get().si()
                : pack.series() * pack.parallel() * pack.cell().mass().si() + pack.extraMass().si();
    }

    @Test
    void weightsAreSumsOfTheRecords() {
        Seeded.check(
                150,
                random -> {
                    Rig rig = Made.anyRig(random);
                    Map<String, Reading> read = Made.readings(rig, CardKind.MASS);
                    double parts = 0;
                    for (Fan fan : rig.fans()) {
                        parts += kg(fan);
                        String name = fan.type().name();
                        close(starting(read, "fan " + name + " without"), fan.type().mass().si());
                        if (fan.type().controller().mass().si() > 0) {
                            close(
                                    starting(read, "controller of " + name),
                                    fan.type().controller().mass().si());
                        }
                    }
                    for (Pack pack : rig.packs()) {
                        parts += kg(pack);
                    }
                    for (OtherPart part : rig.otherParts()) {
                        parts += part.mass().si();
                        close(Made.of(read, part.id().text()), part.mass().si());
                    }
                    close(Made.of(read, "all parts together, without the wearer"), parts);
                    if (rig.wearer().isPresent()) {
                        double body = rig.wearer().get().mass().si();
                        close(Made.of(read, "the wearer, clothed, without the rig"), body);
                        close(Made.of(read, "the wearer in the rig, ready to fly"), body + parts);
                    }
                });
    }

    private static void close(Reading reading, double si) {
        assertThat(reading.expectedSi()).isCloseTo(si, within(1e-9 * si));
    }

    private static Reading starting(Map<String, Reading> read, String with) {
        return read.entrySet().stream()
                .filter(one -> one.getKey().startsWith(with))
                .findFirst()
                .orElseThrow()
                .getValue();
    }

    /** Turned about an axis by the formula of Rodrigues. */
    static Vec3 turned(Vec3 v, Vec3 axis, double rad) {
        double along = v.x() * axis.x() + v.y() * axis.y() + v.z() * axis.z();
        return v.times(Math.cos(rad))
                .plus(axis.cross(v).times(Math.sin(rad)))
                .plus(axis.times(along * (1 - Math.cos(rad))));
    }

    /** A direction of a mount on frame or trunk in the axes of the trunk. */
    static Vec3 ofTrunk(Mount mount, Vec3 v) {
        Vec3 right = turned(v, new Vec3(1, 0, 0), -mount.turnRight().si());
        return turned(right, new Vec3(0, 1, 0), mount.turnForward().si());
    }

    static boolean onTrunk(Mount mount) {
        return mount.on() == Mount.Carrier.FRAME || mount.on() == Mount.Carrier.TRUNK;
    }

    /** Points of every body: name, then places and masses. */
    static Map<String, List<Part>> bodies(Rig rig) {
        List<Part> all = new ArrayList<>();
        rig.fans().forEach(fan -> all.add(new Part(fan.mount(), fan.at(), kg(fan), fan(fan))));
        rig.packs()
                .forEach(
                        pack ->
                                all.add(
                                        new Part(
                                                pack.mount(), pack.at(), kg(pack), new double[3])));
        rig.otherParts()
                .forEach(
                        part ->
                                all.add(
                                        new Part(
                                                part.mount(),
                                                part.at(),
                                                part.mass().si(),
                                                box(part))));
        boolean limbs = all.stream().anyMatch(part -> !onTrunk(part.mount()));
        Map<String, List<Part>> bodies = new LinkedHashMap<>();
        for (Part part : all) {
            boolean trunk = onTrunk(part.mount);
            String name =
                    !trunk ? part.mount.name() : limbs ? "what is on frame and trunk" : "the rig";
            Vec3 at = trunk ? part.mount.at().plus(ofTrunk(part.mount, part.at)) : part.at;
            bodies.computeIfAbsent(name, _ -> new ArrayList<>())
                    .add(new Part(part.mount, at, part.kg, part.ownAbout));
        }
        return bodies;
    }

    private static Vec3[] axes() {
        return new Vec3[] {new Vec3(1, 0, 0), new Vec3(0, 1, 0), new Vec3(0, 0, 1)};
    }

    /** Own inertia of a fan about each axis: m r²/4 (1 + (axis · jet)²). */
    private static double[] fan(Fan fan) {
        Vec3 jet = onTrunk(fan.mount()) ? ofTrunk(fan.mount(), fan.blows()) : fan.blows();
        double r = fan.type().tip().si() / 2;
        return Arrays.stream(axes())
                .mapToDouble(n -> kg(fan) * r * r / 4 * (1 + Math.pow(dot(n, jet), 2)))
                .toArray();
    }

    /** Of an even box about each axis: m/12 Σ edge² (1 − (axis · edge)²). */
    private static double[] box(OtherPart part) {
        double[] own = new double[3];
        if (part.box().isEmpty()) {
            return own;
        }
        Vec3 edges = part.box().get();
        double[] length = {edges.x(), edges.y(), edges.z()};
        for (int n = 0; n < 3; n++) {
            for (int e = 0; e < 3; e++) {
                Vec3 edge = axes()[e];
                Vec3 way = onTrunk(part.mount()) ? ofTrunk(part.mount(), edge) : edge;
                own[n] +=
                        part.mass().si()
                                / 12
                                * length[e]
                                * length[e]
                                * (1 - Math.pow(dot(axes()[n], way), 2));
            }
        }
        return own;
    }

    static double dot(Vec3 a, Vec3 b) {
        return a.x() * b.x() + a.y() * b.y() + a.z() * b.z();
    }

    private static double along(Vec3 v, String axis) {
        return switch (axis) {
            case "forward" -> v.x();
            case "right" -> v.y();
            default -> -v.z();
        };
    }

    @Test
    void scalesReadWhatStaticsGives() {
        Seeded.check(
                150,
                random -> {
                    Rig rig = Made.anyRig(random);
                    Measured card = Made.card(rig, CardKind.CENTRE);
                    Map<String, Reading> read = Made.readings(card);
                    Map<String, List<Part>> bodies = bodies(rig);
                    if (rig.wearer().isPresent()) {
                        bodies.put("the wearer in the rig, on a board", worn(rig));
                    }
                    Section.Table supports = Made.table(card, "centre-supports");
                    int seen = 0;
                    for (List<Value> row : supports.rows()) {
                        String what = ((Value.Figure.Words) row.get(0).figure()).text();
                        String axis = what.substring(what.lastIndexOf(' ') + 1);
                        String body = what.substring(0, what.lastIndexOf(','));
                        double a = Made.amount(row.get(1));
                        double b = Made.amount(row.get(2));
                        // Σ F = 0 and Σ M = 0 about a point that is neither support.
                        double pole = 0.37;
                        double force = 0;
                        double moment = 0;
                        for (Part part : Objects.requireNonNull(bodies.get(body))) {
                            force += part.kg;
                            moment += part.kg * (along(part.at, axis) - pole);
                            assertThat(along(part.at, axis)).isBetween(a, b);
                        }
                        double det = (b - pole) - (a - pole);
                        double first = (force * (b - pole) - moment) / det;
                        double second = (moment - force * (a - pole)) / det;
                        assertThat(Made.of(read, what + ": first scale").expectedSi())
                                .isCloseTo(first, within(1e-9 * force));
                        assertThat(Made.of(read, what + ": second scale").expectedSi())
                                .isCloseTo(second, within(1e-9 * force));
                        seen++;
                    }
                    assertThat(seen).isGreaterThanOrEqualTo(3);
                    assertThat(read).hasSize(2 * seen);
                });
    }

    /** The posed person is judged elsewhere (PosedPersonTest); here only what it weighs where. */
    private static List<Part> worn(Rig rig) {
        List<Part> parts = new ArrayList<>();
        for (MassItem item : Plant.assemble(rig).mass().items()) {
            parts.add(
                    new Part(
                            rig.fans().getFirst().mount(),
                            item.at(),
                            item.massKg(),
                            new double[3]));
        }
        return parts;
    }

    @Test
    void theCentreIsWorthWhatRepeatedWeighingsShow() {
        Seeded.check(
                25,
                random -> {
                    double kg = 2 + 80 * random.nextDouble();
                    double apart = 0.2 + random.nextDouble();
                    double share = 0.1 + 0.8 * random.nextDouble();
                    double first = kg * (1 - share);
                    double second = kg * share;
                    var own = new SplittableRandom(random.nextLong());
                    double[] found = new double[40_000];
                    for (int k = 0; k < found.length; k++) {
                        double a = own.nextGaussian() * 0.001;
                        double b = apart + own.nextGaussian() * 0.001;
                        double readA = read(kg * (b - share * apart) / (b - a), own);
                        double readB = read(kg * (share * apart - a) / (b - a), own);
                        found[k] = apart * readB / (readA + readB) - share * apart;
                    }
                    Arrays.sort(found);
                    double half = (found[38_999] - found[999]) / 2; // 95 %
                    // The worth is k = 2, 95.45 %.
                    assertThat(CentreCard.worthM(first, second, apart) * 1.96 / 2)
                            .isCloseTo(half, within(0.04 * half));
                });
    }

    private static double read(double kg, SplittableRandom random) {
        double half = Math.hypot(0.02, 0.002 * kg);
        return kg + random.nextGaussian() * half / 2;
    }
}
