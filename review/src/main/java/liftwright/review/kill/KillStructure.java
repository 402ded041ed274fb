package liftwright.review.kill;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import liftwright.numerics.CutSets;
import liftwright.numerics.Monotone;
import liftwright.rig.Contactor;
import liftwright.rig.FanType;
import liftwright.rig.Kill;
import liftwright.rig.Rig;
import liftwright.rig.RigPath;
import liftwright.rig.Supplies;

/**
 * What must work for thrust to stop. Each way from a pack to a fan has to be interrupted by one of
 * the contactors in it, each of which needs a kill that reaches it, or every fan has to be
 * commanded to zero.
 *
 * <p>A kill needs its switch; who holds it; its radio link, also where the loss of it acts by
 * itself, since a receiver can hang with its output on; its ground, since an open one lets a signal
 * float; its supply unless the loss of that acts by itself; a computer where it is a command; and
 * whatever the builder named. A contactor needs itself, and what feeds its coil only where it does
 * not open without. Whoever and whatever serves several kills is one thing.
 */
final class KillStructure {

    static final String COMPUTER = "flight computer";
    static final String LINK = "throttle line";

    private final Rig rig;
    private final FeedGraph graph;
    private final List<String> contactors;
    private final List<Need> needs = new ArrayList<>();
    private final List<Chain> chains = new ArrayList<>();
    private final Monotone stops;
    private final List<String> beyond;

    /**
     * One kill.
     *
     * @param always numbers of what it needs for anything
     * @param opening numbers of its contactors, and of what they need
     * @param commanding numbers of what its command of zero needs beside that; empty where it gives
     *     none
     */
    record Chain(Kill kill, Set<Integer> always, Set<Integer> opening, Set<Integer> commanding) {

        boolean commands() {
            return kill.order() != Kill.Order.OPEN_AT_ONCE;
        }

        boolean opens(String contactor) {
            return kill.order() != Kill.Order.COMMAND_ZERO_ONLY && kill.opens().contains(contactor);
        }

        /** Every number, in the order of the chain. */
        Set<Integer> all() {
            Set<Integer> all = new LinkedHashSet<>(always);
            all.addAll(commanding);
            all.addAll(opening);
            return all;
        }
    }

    KillStructure(Rig rig) {
        this.rig = rig;
        graph = FeedGraph.of(rig);
        List<Kill> kills = rig.wiring().kills();
        contactors =
                kills.stream()
                        .filter(kill -> kill.order() != Kill.Order.COMMAND_ZERO_ONLY)
                        .flatMap(kill -> kill.opens().stream())
                        .distinct()
                        .toList();
        List<Set<Integer>> always = kills.stream().map(this::always).toList();
        List<Set<Integer>> opening = kills.stream().map(this::opening).toList();
        List<Set<Integer>> commanding = kills.stream().map(this::commanding).toList();
        for (int number = 0; number < kills.size(); number++) {
            Kill kill = kills.get(number);
            // Names of the builder's own come last: they may mean what another kill declares.
            RigPath at = kill.declaredAt().child("through");
            kill.through().stream().map(name -> named(name, at)).forEach(always.get(number)::add);
            chains.add(
                    new Chain(
                            kill, always.get(number), opening.get(number), commanding.get(number)));
        }
        boolean commanded = chains.stream().anyMatch(Chain::commands);
        beyond = commanded ? List.of() : graph.fed(Set.copyOf(contactors));
        Monotone opened = opened(graph.ways(contactors, fan -> !beyond.contains(fan)));
        stops = commanded ? Monotone.any(zeroed(), opened) : opened;
    }

    private Set<Integer> always(Kill kill) {
        RigPath at = kill.declaredAt();
        Set<Integer> numbers = new LinkedHashSet<>();
        kill.heldBy()
                .ifPresent(
                        person ->
                                numbers.add(number(Need.Sort.PERSON, person, at.child("held by"))));
        numbers.add(number(Need.Sort.SWITCH, kill.id(), at));
        if (kill.by() == Kill.Means.RADIO || kill.radio().isPresent()) {
            numbers.add(
                    kill.radio()
                            .map(link -> number(Need.Sort.RADIO, link, at.child("radio")))
                            .orElseGet(
                                    () ->
                                            number(
                                                    Need.Sort.RADIO,
                                                    "of " + kill.id(),
                                                    at.child("by"))));
        }
        kill.ground()
                .ifPresent(
                        ground ->
                                numbers.add(number(Need.Sort.GROUND, ground, at.child("ground"))));
        kill.fedBy()
                .filter(_ -> !kill.opensOnLoss())
                .ifPresent(supply -> numbers.add(supply(supply, kill.id(), at.child("fed by"))));
        if (kill.by() == Kill.Means.SOFTWARE) {
            numbers.add(number(Need.Sort.COMPUTER, COMPUTER, at.child("by")));
        }
        return numbers;
    }

    private Set<Integer> opening(Kill kill) {
        Set<Integer> numbers = new LinkedHashSet<>();
        if (kill.order() == Kill.Order.COMMAND_ZERO_ONLY) {
            return numbers;
        }
        for (String name : kill.opens()) {
            numbers.add(number(Need.Sort.CONTACTOR, name, kill.declaredAt().child("opens")));
            coil(name).ifPresent(numbers::add);
        }
        return numbers;
    }

    /** What feeds the coil of a contactor that stays closed without. */
    private Optional<Integer> coil(String name) {
        return contactor(name)
                .filter(one -> !one.normallyOpen())
                .flatMap(Contactor::coil)
                .map(
                        supply ->
                                supply(
                                        supply,
                                        name,
                                        RigPath.of("wiring", "contactors", name, "coil from")));
    }

    private Optional<Contactor> contactor(String name) {
        return rig.wiring().contactors().stream()
                .filter(one -> one.name().equals(name))
                .findFirst();
    }

    private Set<Integer> commanding(Kill kill) {
        Set<Integer> numbers = new LinkedHashSet<>();
        if (kill.order() == Kill.Order.OPEN_AT_ONCE) {
            return numbers;
        }
        RigPath at = kill.declaredAt().child("order");
        switch (rig.control().kind()) {
            case FLIGHT_COMPUTER -> numbers.add(number(Need.Sort.COMPUTER, COMPUTER, at));
            case SHARED_THROTTLE -> numbers.add(number(Need.Sort.LINK, LINK, at));
        }
        boolean turnsOn =
                rig.fans().stream()
                        .anyMatch(
                                fan ->
                                        fan.type().controller().misbehaviour().signalLoss()
                                                == FanType.SignalLoss.HOLD);
        if (turnsOn) {
            rig.control()
                    .fedBy()
                    .ifPresent(
                            supply ->
                                    numbers.add(
                                            supply(
                                                    supply,
                                                    "control",
                                                    RigPath.of("control", "fed by"))));
        }
        return numbers;
    }

    private int supply(String supply, String owner, RigPath at) {
        return number(
                Need.Sort.SUPPLY, Supplies.isShared(supply) ? supply : supply + " of " + owner, at);
    }

    private int number(Need.Sort sort, String name, RigPath at) {
        for (int number = 0; number < needs.size(); number++) {
            if (needs.get(number).is(sort, name)) {
                return number;
            }
        }
        needs.add(new Need(sort, name, at));
        return needs.size() - 1;
    }

    private int named(String name, RigPath at) {
        for (int number = 0; number < needs.size(); number++) {
            Need need = needs.get(number);
            if (need.sort() != Need.Sort.SWITCH && need.is(need.sort(), name)) {
                return number;
            }
        }
        return number(Need.Sort.NAMED, name, at);
    }

    private static Monotone allOf(Set<Integer> numbers) {
        return new Monotone.All(numbers.stream().map(Monotone::element).toList());
    }

    private Monotone zeroed() {
        return new Monotone.Any(
                chains.stream()
                        .filter(Chain::commands)
                        .map(chain -> Monotone.all(allOf(chain.always), allOf(chain.commanding)))
                        .toList());
    }

    private Monotone opened(List<BitSet> ways) {
        return new Monotone.All(
                ways.stream()
                        .<Monotone>map(
                                way ->
                                        new Monotone.Any(
                                                way.stream().mapToObj(this::interrupted).toList()))
                        .toList());
    }

    private Monotone interrupted(int place) {
        String name = contactors.get(place);
        Set<Integer> itself = new LinkedHashSet<>();
        itself.add(number(Need.Sort.CONTACTOR, name, RigPath.of("wiring", "contactors", name)));
        coil(name).ifPresent(itself::add);
        return Monotone.all(
                allOf(itself),
                new Monotone.Any(
                        chains.stream()
                                .filter(chain -> chain.opens(name))
                                .map(chain -> allOf(chain.always))
                                .toList()));
    }

    List<Chain> chains() {
        return chains;
    }

    List<Need> needs() {
        return needs;
    }

    /** Fans that no kill reaches. */
    List<String> beyond() {
        return beyond;
    }

    /**
     * Minimal sets of needs whose failing leaves thrust on that a kill should stop; fans that none
     * reaches are left out.
     */
    List<BitSet> cuts(int largest) {
        return CutSets.cuts(stops, largest);
    }

    /** Kills that need a thing. */
    List<Kill> served(int need) {
        return chains.stream()
                .filter(chain -> chain.all().contains(need))
                .map(Chain::kill)
                .toList();
    }

    /** "none", "all 24", or some by name. */
    String words(List<String> fans) {
        if (fans.isEmpty()) {
            return "none";
        }
        return fans.size() == rig.fans().size() ? "all " + fans.size() : Alarm.list(fans);
    }

    /** Fans that stay fed, and are not commanded to zero, when a kill acts alone and whole. */
    List<String> leftBy(Chain chain) {
        return left(Set.of(), List.of(chain));
    }

    /** The same when every kill acts and some of their needs have failed. */
    List<String> leftWithout(BitSet failed) {
        Set<Integer> gone = new LinkedHashSet<>();
        failed.stream().forEach(gone::add);
        return left(gone, chains);
    }

    private List<String> left(Set<Integer> gone, List<Chain> acting) {
        Set<String> open = new LinkedHashSet<>();
        for (Chain chain : acting) {
            if (chain.always.stream().anyMatch(gone::contains)) {
                continue;
            }
            if (chain.commands() && chain.commanding.stream().noneMatch(gone::contains)) {
                return List.of();
            }
            contactors.stream()
                    .filter(chain::opens)
                    .filter(name -> opens(name, gone))
                    .forEach(open::add);
        }
        return graph.fed(open);
    }

    private boolean opens(String contactor, Set<Integer> gone) {
        return !gone.contains(number(Need.Sort.CONTACTOR, contactor, RigPath.of("wiring")))
                && coil(contactor).filter(gone::contains).isEmpty();
    }
}
