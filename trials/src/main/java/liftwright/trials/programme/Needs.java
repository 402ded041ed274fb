package liftwright.trials.programme;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Set;
import liftwright.trials.CardId;
import liftwright.trials.CardKind;

/** What a card rests on: every group, of each at least one. */
final class Needs {

    private final List<Set<CardId>> groups = new ArrayList<>();

    private Needs() {}

    static Needs none() {
        return new Needs();
    }

    static Needs all(CardKind... kinds) {
        Needs needs = new Needs();
        for (CardKind kind : kinds) {
            needs.and(CardId.of(kind));
        }
        return needs;
    }

    Needs and(CardKind kind) {
        return and(CardId.of(kind));
    }

    Needs and(CardKind kind, String subject) {
        return and(new CardId(kind, subject));
    }

    Needs and(CardKind kind, Collection<String> subjects) {
        subjects.forEach(subject -> and(kind, subject));
        return this;
    }

    Needs and(CardId id) {
        groups.add(Set.of(id));
        return this;
    }

    Needs oneOf(CardKind one, CardKind other) {
        groups.add(Set.of(CardId.of(one), CardId.of(other)));
        return this;
    }

    List<Set<CardId>> groups() {
        return List.copyOf(groups);
    }
}
