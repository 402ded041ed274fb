package liftwright.trials.day;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import liftwright.answer.Outcome;
import liftwright.rig.Rig;
import liftwright.rig.table.KillLog.Signal;
import liftwright.trials.Planned;
import liftwright.trials.programme.Programme;
import liftwright.trials.proof.KillProof;
import liftwright.trials.proof.PathProof;
import liftwright.trials.proof.ProofPath;
import liftwright.trials.proof.Span;

/** Days, crews, packs and standings as they may come, most of them good enough for something. */
final class RandomDay {

    static final String DIGEST = "ab".repeat(32);

    private RandomDay() {}

    static Day day(RandomGenerator random, Rig rig) {
        Map<String, Day.ReadyPack> packs = new LinkedHashMap<>();
        rig.packs()
                .forEach(
                        pack -> {
                            if (random.nextInt(12) > 0) {
                                packs.put(
                                        pack.id().text(),
                                        new Day.ReadyPack(
                                                random.nextInt(4) == 0
                                                        ? random.nextDouble()
                                                        : random.nextDouble(0.8, 1),
                                                273.15
                                                        + (random.nextInt(8) == 0
                                                                ? random.nextDouble(0, 60)
                                                                : random.nextDouble(16, 40)),
                                                random.nextInt(20) == 0
                                                        ? Optional.empty()
                                                        : Optional.of(
                                                                random.nextInt(12) == 0
                                                                        ? random.nextDouble(0, 0.1)
                                                                        : random.nextDouble(
                                                                                0, 0.04))));
                            }
                        });
        double wind = random.nextInt(3) == 0 ? random.nextDouble(0, 9) : random.nextDouble(0, 3);
        int start = random.nextInt(5, 20);
        return new Day(
                LocalDate.of(2026, 5, 2),
                LocalTime.of(start, random.nextInt(60)),
                3600 * random.nextDouble(1, 14),
                LocalTime.of(random.nextInt(start + 1, 24), random.nextInt(60)),
                random.nextDouble(263, 308),
                wind,
                wind + random.nextDouble(0, random.nextInt(3) == 0 ? 6 : 2),
                packs,
                people(random, rig),
                Optional.empty(),
                random.nextInt(8) == 0 ? random.nextInt(4) : 0,
                random.nextInt(15) == 0,
                List.of());
    }

    private static Map<String, Set<String>> people(RandomGenerator random, Rig rig) {
        List<String> roles =
                new ArrayList<>(List.of(Day.WEARER, Day.THROTTLE, Day.KILL, Day.FIRE, Day.LINES));
        rig.crew().forEach(member -> roles.add(member.name()));
        Map<String, Set<String>> people = new LinkedHashMap<>();
        int count = random.nextInt(10) == 0 ? 0 : random.nextInt(1, 9);
        for (int k = 0; k < count; k++) {
            Set<String> own = new HashSet<>();
            for (String role : roles) {
                if (random.nextInt(3) > 0) {
                    own.add(role);
                }
            }
            people.put("Person " + k, own);
        }
        return people;
    }

    static List<DayCard> cards(RandomGenerator random, Programme programme) {
        int share = random.nextInt(1, 10);
        List<DayCard> cards = new ArrayList<>();
        for (Planned planned : programme.cards()) {
            Map<String, Double> taken = new HashMap<>();
            if (planned.run().isPresent() && random.nextInt(20) > 0) {
                double each = random.nextInt(4) == 0 ? 0.3 : 0.02;
                programme
                        .rig()
                        .packs()
                        .forEach(
                                pack -> {
                                    if (random.nextInt(3) > 0) {
                                        taken.put(
                                                pack.id().text(),
                                                random.nextInt(5) == 0
                                                        ? 0
                                                        : each * random.nextDouble());
                                    }
                                });
            }
            cards.add(
                    new DayCard(
                            planned,
                            random.nextInt(10) < share,
                            random.nextInt(12) == 0 ? List.of("a finding stops it") : List.of(),
                            taken,
                            List.of()));
        }
        return cards;
    }

    static Optional<KillProof> proof(RandomGenerator random, Rig rig, LocalDate date) {
        if (random.nextInt(3) == 0) {
            return Optional.empty();
        }
        List<PathProof> paths = new ArrayList<>();
        boolean bad = random.nextInt(5) == 0;
        for (ProofPath path : ProofPath.of(rig)) {
            paths.add(
                    new PathProof(
                            path.name(),
                            3,
                            Optional.of(new Span(0.1, 0.2)),
                            Optional.of(new Span(0.2, 0.3)),
                            bad ? Outcome.CANNOT_BE_TOLD : Outcome.HOLDS,
                            List.of()));
        }
        return Optional.of(
                new KillProof(
                        random.nextInt(4) == 0 ? date.minusDays(1) : date,
                        random.nextInt(8) == 0 ? "cd".repeat(32) : DIGEST,
                        "kills.csv",
                        DIGEST,
                        Signal.THRUST,
                        0.5,
                        paths));
    }
}
