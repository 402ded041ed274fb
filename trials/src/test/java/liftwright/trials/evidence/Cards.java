package liftwright.trials.evidence;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.random.RandomGenerator;
import liftwright.rig.Rig;
import liftwright.trials.Basis;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;
import liftwright.trials.Planned;
import liftwright.trials.Topic;

/** Cards and passes made by hand, for tests. */
final class Cards {

    static final LocalDate DAY = LocalDate.of(2026, 3, 14);
    static final Basis ALL = new Basis(EnumSet.allOf(Topic.class), Optional.empty());
    private static final String DIGEST = "sha256:" + "0".repeat(64);

    private Cards() {}

    static CardId id(int number) {
        return new CardId(CardKind.POD, "c" + (char) ('a' + number));
    }

    static Planned card(CardId id, List<Set<CardId>> needs, double minutes) {
        return card(id, needs, Set.of(), false, ALL, Optional.empty(), minutes, 1);
    }

    static Planned card(
            CardId id,
            List<Set<CardId>> needs,
            Set<String> questions,
            boolean killProof,
            Basis basis,
            Optional<Integer> ages,
            double minutes,
            int repeats) {
        return new Planned(
                id,
                "test",
                needs,
                questions,
                killProof,
                basis,
                ages,
                minutes,
                repeats,
                Optional.empty());
    }

    static Pass pass(int number, Planned card, Inputs inputs, LocalDate on, int runs) {
        return record(number, card, inputs, on, Pass.Outcome.PASSED, runs);
    }

    static Pass record(
            int number, Planned card, Inputs inputs, LocalDate on, Pass.Outcome came, int runs) {
        return new Pass(
                number,
                card.id(),
                on,
                came,
                List.of("A. Wader"),
                runs,
                DIGEST,
                1,
                Optional.empty(),
                "",
                inputs.restingOn(card.basis()));
    }

    /** Cards that rest on random topics of random parts. */
    static List<Planned> random(Rig rig, RandomGenerator random) {
        var names = new TreeSet<String>();
        rig.fans().forEach(fan -> names.add(fan.id().text()));
        rig.packs().forEach(pack -> names.add(pack.id().text()));
        rig.mounts().forEach(mount -> names.add(mount.name()));
        rig.fanTypes().forEach(type -> names.add(type.name()));
        rig.wiring().chains().forEach(chain -> names.add(chain.id().text()));
        var cards = new ArrayList<Planned>();
        for (int i = 0; i < 12; i++) {
            Set<Topic> topics = EnumSet.noneOf(Topic.class);
            for (Topic topic : Topic.values()) {
                if (random.nextInt(4) == 0) {
                    topics.add(topic);
                }
            }
            var parts = new TreeSet<String>();
            names.stream().filter(_ -> random.nextInt(3) == 0).forEach(parts::add);
            Basis basis =
                    new Basis(topics, random.nextBoolean() ? Optional.of(parts) : Optional.empty());
            cards.add(
                    card(
                            new CardId(CardKind.LAG, "random " + i),
                            List.of(),
                            Set.of(),
                            false,
                            basis,
                            Optional.empty(),
                            10,
                            1));
        }
        return cards;
    }
}
