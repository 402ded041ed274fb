package liftwright.review.referee;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import liftwright.answer.Section;
import liftwright.answer.Value;
import liftwright.plant.Effects;
import liftwright.plant.Plant;
import liftwright.plant.SteadyState;
import liftwright.review.people.People;
import liftwright.rig.Rig;
import liftwright.testkit.Seeded;
import org.junit.jupiter.api.Test;

/**
 * What is told of people near rigs drawn at random, against arithmetic of its own: rotor speeds by
 * bisection, flights stepped in time at every degree, sound added as pressures, energy summed over
 * the curve.
 */
class PeopleOnRandomRigsTest {

    private static final double G = 9.80665;
    private static final int RIGS = 6;

    /** A drawn rig, what is declared of its rotor, and who stands near. */
    private record Near(
            RefereeRig drawn,
            int blades,
            Optional<Double> bladeKg,
            Optional<Double> centreM,
            double inertiaKgm2,
            Optional<Double> rotorKg,
            double noiseDba,
            double hoverS,
            int runs,
            double heightM,
            double distanceM) {

        static Near draw(RandomGenerator random) {
            RefereeRig rig = RefereeRandom.rig(random);
            double tip = rig.fan().tipMm() / 2000;
            double hub = rig.fan().hubMm() / 2000;
            double bladeKg = random.nextInt(2, 20) / 1000.0;
            boolean weighed = random.nextBoolean();
            int blades = random.nextInt(3, 13);
            double rotorKg = blades * bladeKg * random.nextInt(12, 30) / 10.0;
            double gyration = tip * random.nextInt(40, 70) / 100.0;
            return new Near(
                    rig,
                    blades,
                    weighed ? Optional.of(bladeKg) : Optional.empty(),
                    random.nextBoolean()
                            ? Optional.of(Math.round(1e4 * (0.6 * hub + 0.4 * tip)) / 1e4)
                            : Optional.empty(),
                    rounded(rotorKg * gyration * gyration),
                    random.nextBoolean() ? Optional.of(rotorKg) : Optional.empty(),
                    random.nextInt(80, 125),
                    random.nextInt(5, 200),
                    random.nextInt(1, 6),
                    random.nextInt(1, 40) / 10.0,
                    random.nextInt(2, 300) / 2.0);
        }

        private static double rounded(double value) {
            return Double.parseDouble(String.format(Locale.ROOT, "%.4g", value));
        }

        Rig rig() {
            String rotor =
                    String.format(
                            Locale.ROOT,
                            "    rotor: {inertia: %s kg·m², blades: %d%s%s%s}%n    noise: %s dBA%n",
                            inertiaKgm2,
                            blades,
                            rotorKg.map(kg -> ", mass: " + kg + " kg").orElse(""),
                            bladeKg.map(kg -> ", blade mass: " + kg + " kg").orElse(""),
                            centreM.map(m -> ", blade centre: " + m + " m").orElse(""),
                            noiseDba);
            String text = RefereeText.of(drawn);
            assertThat(text).contains("    motor: {").contains("demands: {");
            return Written.rig(
                    text.replace("    motor: {", rotor + "    motor: {")
                                    .replace(
                                            "demands: {",
                                            String.format(
                                                    Locale.ROOT,
                                                    "demands: {hover: %s s, runs: %d, height: %s m, ",
                                                    hoverS,
                                                    runs,
                                                    heightM))
                            + String.format(
                                    Locale.ROOT,
                                    "crew:%n  watcher: {distance: %s m}%n",
                                    distanceM));
        }

        double tipM() {
            return drawn.fan().tipMm() / 1000;
        }

        double hubM() {
            return drawn.fan().hubMm() / 1000;
        }

        double density() {
            return RefereeLift.density(drawn.elevationM(), drawn.temperatureC(), drawn.humidity());
        }
    }

    private static Section.Table table(People people, String id) {
        return people.sections().stream()
                .filter(section -> section.id().equals(id))
                .map(Section.Table.class::cast)
                .findFirst()
                .orElseThrow();
    }

    private static double si(Section.Table table, List<Value> row, String field) {
        Value value = row.get(table.columns().indexOf(field));
        return ((Value.Figure.Amount) value.figure()).si();
    }

    private static Optional<List<Value>> row(Section.Table table, String words) {
        return table.rows().stream()
                .filter(
                        row ->
                                row.stream()
                                        .anyMatch(
                                                value ->
                                                        value.figure()
                                                                .equals(
                                                                        new Value.Figure.Words(
                                                                                words))))
                .findFirst();
    }

    @Test
    void piecesFlyAsTheRefereeSays() {
        int[] seen = new int[3];
        Seeded.check(
                RIGS,
                random -> {
                    Near near = Near.draw(random);
                    Plant plant = Plant.assemble(near.rig());
                    People people = People.of(plant, 1, 0);
                    Section.Table told = table(people, "people-fragments");
                    double omega = RefereeLift.fastestOnFullPacks(near.drawn());
                    double r = near.centreM().orElse((near.tipM() + near.hubM()) / 4);
                    double blade =
                            near.bladeKg().orElse(near.inertiaKgm2() / (near.blades() * r * r));
                    double length = (near.tipM() - near.hubM()) / 2;
                    seen[0]++;
                    check(near, told, "a blade", blade, omega * r, 0.6 * length * length, 2700);
                    assertThat(si(told, row(told, "a blade").orElseThrow(), "mount-load"))
                            .isCloseTo(
                                    blade * r * omega * omega,
                                    within(3e-3 * blade * r * omega * omega));
                    double disc = Math.PI * near.tipM() * near.tipM() / 4;
                    near.rotorKg()
                            .ifPresentOrElse(
                                    kg -> {
                                        seen[1]++;
                                        check(
                                                near,
                                                told,
                                                "a third of the rotor",
                                                kg / 3,
                                                omega * Math.sqrt(near.inertiaKgm2() / kg),
                                                disc / 3,
                                                7850);
                                        // At most m r Ω² with all of the third at its gyration.
                                        double most =
                                                kg
                                                        / 3
                                                        * Math.sqrt(near.inertiaKgm2() / kg)
                                                        * omega
                                                        * omega;
                                        assertThat(
                                                        si(
                                                                told,
                                                                row(told, "a third of the rotor")
                                                                        .orElseThrow(),
                                                                "mount-load"))
                                                .isCloseTo(most, within(3e-3 * most));
                                    },
                                    () ->
                                            assertThat(people.findings())
                                                    .anyMatch(
                                                            f ->
                                                                    f.code()
                                                                            .equals(
                                                                                    "fragments-cannot-be-told")));
                    List<Value> whole = row(told, "the whole fan").orElseThrow();
                    double kg = near.drawn().fan().massKg().value();
                    assertThat(si(told, whole, "piece-mass")).isCloseTo(kg, within(1e-9));
                    double speed = torn(near, plant, omega, kg);
                    assertThat(si(told, whole, "piece-speed"))
                            .isCloseTo(speed, within(0.01 * speed));
                    flies(
                            near,
                            told,
                            whole,
                            kg,
                            si(told, whole, "piece-speed"),
                            1.17 * disc / 2,
                            0.47 * disc);
                    near(people, told, near);
                    seen[2]++;
                });
        assertThat(seen[0]).isPositive();
        assertThat(seen[2]).isPositive();
        assertThat(seen[1]).isBetween(1, seen[0] - 1);
    }

    private static void check(
            Near near,
            Section.Table told,
            String words,
            double kg,
            double speed,
            double faceM2,
            double materialKgpm3) {
        List<Value> row = row(told, words).orElseThrow();
        assertThat(si(told, row, "piece-mass")).isCloseTo(kg, within(1e-9));
        assertThat(si(told, row, "piece-speed")).isCloseTo(speed, within(1e-3 * speed));
        double energy = kg * speed * speed / 2;
        assertThat(si(told, row, "piece-energy")).isCloseTo(energy, within(3e-3 * energy));
        double radius = Math.cbrt(3 * kg / (4 * Math.PI * materialKgpm3));
        flies(near, told, row, kg, speed, 1.17 * faceM2 / 2, 0.47 * Math.PI * radius * radius);
    }

    private static void flies(
            Near near,
            Section.Table told,
            List<Value> row,
            double kg,
            double speed,
            double plate,
            double ball) {
        double energy = kg * speed * speed / 2;
        double h = 1 + near.heightM(); // nobody wears it and no stand holds it
        double[] tumbling = flown(speed, h, near.density() * plate / (2 * kg), 79 / kg * 2);
        double k = near.density() * ball / (2 * kg);
        // Whether a throw ends just fast enough turns on its angle: a little more, a little less.
        double[] compact = flown(speed, h, k, 1.02 * 79 / kg * 2);
        double[] easier = flown(speed, h, k, 0.98 * 79 / kg * 2);
        assertThat(si(told, row, "piece-reach-tumbling"))
                .isCloseTo(tumbling[0], within(4e-3 * tumbling[0]));
        assertThat(si(told, row, "piece-reach")).isCloseTo(compact[0], within(4e-3 * compact[0]));
        double hazard = si(told, row, "piece-hazard-way");
        if (energy < 79) {
            assertThat(hazard)
                    .isBetween(
                            0.97 * compact[1] - 0.3, 1.03 * easier[1] + (easier[1] > 0 ? 0.3 : 0));
        } else {
            // Anywhere on a flight, over the ground, with the energy: told to be within it.
            assertThat(hazard).isGreaterThanOrEqualTo(compact[1] * 0.97 - 0.05);
            assertThat(hazard).isLessThanOrEqualTo(compact[0] * 1.004);
        }
    }

    /**
     * Farthest landing, and the farthest place on any flight, up to 2 m above the ground, with the
     * square of a speed or more.
     */
    private static double[] flown(double v, double h, double k, double square) {
        double most = 0;
        double hazard = 0;
        for (int degrees = -10; degrees <= 60; degrees++) {
            double a = Math.toRadians(degrees);
            double[] s = {0, h, v * Math.cos(a), v * Math.sin(a)};
            while (true) {
                double speed = Math.hypot(s[2], s[3]);
                // Short against what drag does, and against the time to fall a little.
                double dt = Math.min(0.02, 0.04 / (1e-9 + k * speed));
                double[] next = step(s, k, dt);
                if (next[1] <= 2 && speed * speed >= square) {
                    hazard = Math.max(hazard, s[0]);
                }
                if (next[1] < 0) {
                    double share = s[1] / (s[1] - next[1]);
                    most = Math.max(most, s[0] + share * (next[0] - s[0]));
                    break;
                }
                s = next;
            }
        }
        return new double[] {most, hazard};
    }

    private static double[] step(double[] s, double k, double dt) {
        double[] a = slope(s, k);
        double[] b = slope(moved(s, a, dt / 2), k);
        double[] c = slope(moved(s, b, dt / 2), k);
        double[] d = slope(moved(s, c, dt), k);
        double[] next = new double[4];
        for (int i = 0; i < 4; i++) {
            next[i] = s[i] + dt / 6 * (a[i] + 2 * b[i] + 2 * c[i] + d[i]);
        }
        return next;
    }

    private static double[] moved(double[] s, double[] rate, double dt) {
        return new double[] {
            s[0] + dt * rate[0], s[1] + dt * rate[1], s[2] + dt * rate[2], s[3] + dt * rate[3]
        };
    }

    private static double[] slope(double[] s, double k) {
        double speed = Math.hypot(s[2], s[3]);
        return new double[] {s[2], s[3], -k * speed * s[2], -G - k * speed * s[3]};
    }

    /** A fan pushed along its leads, then by a rotor that only its blades slow, step by step. */
    private static double torn(Near near, Plant plant, double omega, double kg) {
        SteadyState full = full(plant);
        int fastest = 0;
        for (int k = 0; k < full.fans(); k++) {
            if (full.fanSpeedRadps(k) > full.fanSpeedRadps(fastest)) {
                fastest = k;
            }
        }
        double thrust = full.fanThrustN(fastest);
        double kappa = full.fanShaftW(fastest) / Math.pow(omega, 3);
        double lead = near.drawn().branch().lengthMm().value() / 1000;
        double v = 0;
        double way = 0;
        double dt = 1e-5;
        while (way < lead) {
            v += thrust / kg * dt;
            way += v * dt;
        }
        double speed = omega;
        dt = 1e-4;
        while (speed > 1e-3 * omega) {
            double share = speed / omega;
            v += thrust / kg * share * share * dt;
            speed -= kappa * speed * speed / near.inertiaKgm2() * dt;
            dt *= 1.001;
        }
        return v;
    }

    private static SteadyState full(Plant plant) {
        SteadyState state = plant.state();
        plant.solve(
                plant.parameters().nominal(),
                Effects.ALL.withCharge(false),
                plant.workspace(),
                state);
        assertThat(state.converged()).isTrue();
        return state;
    }

    private static void near(People people, Section.Table told, Near near) {
        double farthest =
                told.rows().stream()
                        .mapToDouble(row -> si(told, row, "piece-reach"))
                        .max()
                        .orElseThrow();
        double hazard =
                told.rows().stream()
                        .mapToDouble(row -> si(told, row, "piece-hazard-way"))
                        .max()
                        .orElseThrow();
        var finding =
                people.findings().stream()
                        .filter(f -> f.code().equals("crew-too-near"))
                        .findFirst();
        assertThat(finding.isPresent()).isEqualTo(near.distanceM() < Math.max(20, farthest));
        finding.ifPresent(
                f ->
                        assertThat(f.severity().name())
                                .isEqualTo(near.distanceM() < hazard ? "WARNS" : "NOTES"));
        assertThat(people.findings()).noneMatch(f -> f.code().equals("crew-distance-not-told"));
    }

    @Test
    void jetsBlowAsTheRefereeSays() {
        Seeded.check(
                RIGS,
                random -> {
                    Plant plant = Plant.assemble(Near.draw(random).rig());
                    SteadyState full = full(plant);
                    double density = plant.siteDensityKgpm3(plant.parameters().nominal());
                    double best = 0;
                    double bestArea = 0;
                    double area = 0;
                    double momentum = 0;
                    for (int k = 0; k < full.fans(); k++) {
                        double own = plant.rig().fans().get(k).type().exitArea().si();
                        // Momentum theory: F = ρ A V².
                        double v = Math.sqrt(full.fanThrustN(k) / (density * own));
                        area += own;
                        momentum += full.fanThrustN(k);
                        if (v > best) {
                            best = v;
                            bestArea = own;
                        }
                    }
                    double together = Math.sqrt(momentum / (density * area));
                    double one = Math.sqrt(4 * bestArea / Math.PI);
                    double all = Math.sqrt(4 * area / Math.PI);
                    People people = People.of(plant, 1, 0);
                    Section.Table told = table(people, "people-jets");
                    // Twice where the wind along the ground is 5.5 m/s, two diameters at least.
                    double dust = all * Math.exp(Math.log(together / 5.5) / 1.1);
                    double swept =
                            people.findings().stream()
                                    .filter(f -> f.code().equals("swept-ground"))
                                    .map(f -> f.value().orElseThrow().figure())
                                    .mapToDouble(figure -> ((Value.Figure.Amount) figure).si())
                                    .findFirst()
                                    .orElseThrow();
                    assertThat(swept).isCloseTo(2 * Math.max(2 * all, dust), within(1e-6));
                    assertThat(told.rows()).hasSizeGreaterThan(5);
                    for (List<Value> row : told.rows()) {
                        double x = si(told, row, "jet-way");
                        assertThat(si(told, row, "jet-speed-one"))
                                .isCloseTo(best * Math.min(1, 6.1 * one / x), within(1e-6));
                        assertThat(si(told, row, "jet-speed-merged"))
                                .isCloseTo(together * Math.min(1, 6.1 * all / x), within(1e-6));
                        Value wall = row.get(told.columns().indexOf("wall-jet-speed"));
                        if (x >= 2 * all) {
                            double speed = together * Math.exp(-1.1 * Math.log(x / all));
                            assertThat(si(told, row, "wall-jet-speed"))
                                    .isCloseTo(speed, within(1e-6));
                            assertThat(wall.band().orElseThrow().low())
                                    .isCloseTo(0.7 * speed, within(1e-6));
                            assertThat(wall.band().orElseThrow().high())
                                    .isCloseTo(1.3 * speed, within(1e-6));
                        } else {
                            assertThat(wall.figure()).isInstanceOf(Value.Figure.NotComputed.class);
                        }
                    }
                });
    }

    @Test
    void soundIsThatOfTheReferee() {
        int[] loud = {0, 0};
        Seeded.check(
                4 * RIGS,
                random -> {
                    Near near = Near.draw(random);
                    Plant plant = Plant.assemble(near.rig());
                    People people = People.of(plant, 1, 0);
                    Section.Table told = table(people, "people-noise");
                    List<Value> row = row(told, "watcher").orElseThrow();
                    // All in one ring of 0.7 m: far from 1.4 m on.
                    double away = near.distanceM();
                    double nearest = away >= 1.4 ? away : Math.max(near.tipM(), away - 0.7);
                    double pascal2 = 0;
                    for (int k = 0; k < near.drawn().fans(); k++) {
                        pascal2 += Math.pow(10, near.noiseDba() / 10) / (nearest * nearest);
                    }
                    double level = 10 * Math.log10(pascal2);
                    assertThat(si(told, row, "noise-level")).isCloseTo(level, within(1e-6));
                    double asked = near.hoverS() * near.runs();
                    assertThat(si(told, row, "noise-time")).isCloseTo(asked, within(1e-9));
                    double niosh = 28_800 * Math.exp(-(level - 85) / 3 * Math.log(2));
                    assertThat(si(told, row, "niosh-time")).isCloseTo(niosh, within(1e-6 * niosh));
                    assertThat(si(told, row, "niosh-dose"))
                            .isCloseTo(asked / niosh, within(1e-6 * asked / niosh));
                    Value osha = row.get(told.columns().indexOf("osha-dose"));
                    if (level > 115 || level < 80) {
                        assertThat(osha.figure()).isInstanceOf(Value.Figure.NotComputed.class);
                    } else {
                        double permitted = 28_800 * Math.pow(0.5, (level - 90) / 5);
                        assertThat(si(told, row, "osha-dose"))
                                .isCloseTo(asked / permitted, within(1e-6 * asked / permitted));
                    }
                    boolean warned =
                            people.findings().stream()
                                    .anyMatch(
                                            f ->
                                                    f.code().equals("noise")
                                                            && f.part()
                                                                    .equals(
                                                                            Optional.of(
                                                                                    "watcher")));
                    assertThat(warned).isEqualTo(level >= 85);
                    loud[warned ? 1 : 0]++;
                    String due = level >= 100 ? "double" : level >= 85 ? "yes" : "below the limit";
                    assertThat(row.getLast()).isEqualTo(Value.words("ear-protection", due));
                });
        assertThat(loud[0]).isPositive();
        assertThat(loud[1]).isPositive();
    }

    @Test
    void packsStoreWhatTheRefereeSays() {
        Seeded.check(
                RIGS,
                random -> {
                    Near near = Near.draw(random);
                    Plant plant = Plant.assemble(near.rig());
                    People people = People.of(plant, 1, 0);
                    Section.Table told = table(people, "people-energy");
                    var cell = near.drawn().cell();
                    int n = 20_000;
                    double sum = 0;
                    for (int k = 0; k < n; k++) {
                        sum += volt(cell, (k + 0.5) / n) / n;
                    }
                    // 8 Ah, one cell side by side.
                    double joule = near.drawn().series() * 8 * 3600 * sum;
                    List<Value> one = told.rows().getFirst();
                    assertThat(si(told, one, "stored-energy"))
                            .isCloseTo(joule, within(1e-4 * joule));
                    int packs = near.drawn().fansOfPack().size();
                    assertThat(si(told, told.rows().getLast(), "stored-energy"))
                            .isCloseTo(packs * joule, within(1e-4 * packs * joule));
                    double full = near.drawn().series() * volt(cell, 1);
                    assertThat(si(told, one, "pack-voltage-full")).isCloseTo(full, within(1e-9));
                    boolean hazardous =
                            people.findings().stream()
                                    .anyMatch(f -> f.code().equals("bus-hazardous"));
                    assertThat(hazardous).isEqualTo(full > 60);
                    Value reach = one.get(told.columns().indexOf("fire-reach"));
                    double far = Math.sqrt(0.4 * 3 * joule / (4 * Math.PI * 30 * 2500));
                    double close = Math.sqrt(0.2 * 1.5 * joule / (4 * Math.PI * 120 * 2500));
                    assertThat(reach.band().orElseThrow().high())
                            .isCloseTo(Math.max(1, far), within(1e-3));
                    assertThat(reach.band().orElseThrow().low())
                            .isCloseTo(Math.max(1, close), within(1e-3));
                });
    }

    private static double volt(RefereeRig.Cell cell, double charge) {
        int k = 1;
        while (k < cell.charge().size() - 1 && charge > cell.charge().get(k)) {
            k++;
        }
        double from = cell.charge().get(k - 1);
        double share = (charge - from) / (cell.charge().get(k) - from);
        return cell.volt().get(k - 1) + share * (cell.volt().get(k) - cell.volt().get(k - 1));
    }

    @Test
    void fallsEndAsTheRefereeSays() {
        Seeded.check(
                RIGS,
                random -> {
                    Near near = Near.draw(random);
                    Plant plant = Plant.assemble(near.rig());
                    People people = People.of(plant, 1, 0);
                    double mass = plant.massKg(plant.parameters().nominal());
                    Section.Table told = table(people, "impact-speeds");
                    boolean asked = false;
                    for (List<Value> row : told.rows()) {
                        double height = si(told, row, "drop-height");
                        asked |= Math.abs(height - near.heightM()) < 1e-12;
                        double dragged = fallen(height, near.density() * 0.2 / (2 * mass));
                        double free = fallen(height, 0);
                        assertThat(si(told, row, "drop-speed")).isCloseTo(free, within(2e-3));
                        assertThat(si(told, row, "drop-speed-drag"))
                                .isCloseTo(dragged, within(2e-3));
                        assertThat(si(told, row, "drop-energy"))
                                .isCloseTo(mass * G * height, within(1e-6 * mass));
                    }
                    assertThat(asked).isTrue();
                    var finding =
                            people.findings().stream()
                                    .filter(f -> f.code().equals("drop-speed"))
                                    .findFirst()
                                    .orElseThrow();
                    boolean over = Math.sqrt(2 * G * near.heightM()) > 3.2;
                    assertThat(finding.severity().name()).isEqualTo(over ? "WARNS" : "NOTES");
                });
    }

    private static double fallen(double height, double k) {
        double v = 0;
        double way = 0;
        double dt = 1e-5;
        while (way < height) {
            double middle = v + dt / 2 * (G - k * v * v);
            v += dt * (G - k * middle * middle);
            way += dt * middle;
        }
        return v;
    }
}
