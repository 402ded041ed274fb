package liftwright.learning.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import liftwright.learning.explain.Hypothesis.Sizing;
import liftwright.learning.explain.Suspect.Change;
import liftwright.learning.explain.Suspect.Lost;
import liftwright.learning.explain.Suspect.Numbers;
import liftwright.learning.explain.Suspect.Shown;
import liftwright.learning.explain.Suspect.Stops;
import liftwright.learning.fit.Compared;
import liftwright.plant.fault.Effect;
import liftwright.plant.parameters.ParameterTable;
import liftwright.plant.recording.Signal;
import liftwright.plant.recording.Track;
import liftwright.quantity.Quantity;
import liftwright.rig.Element;
import liftwright.rig.Fan;
import liftwright.rig.FanType;
import liftwright.rig.Pack;
import liftwright.rig.Rig;
import liftwright.rig.Wiring;

/**
 * Everything about a test that may be wrong. A cause begins where the declared tolerance ends, or
 * at the least size below where that is less, and ends at what can be at all; between the two every
 * octave is as likely. Every kind is as likely as another before anything is measured but where
 * said, and within a kind every part. Sizes and priors are from memory.
 */
final class Suspects {

    private static final double KIND = 0.2;

    private final Rig rig;
    private final Bench bench;
    private final ParameterTable table;
    private final List<Suspect> all = new ArrayList<>();

    private Suspects(Bench bench) {
        this.bench = bench;
        rig = bench.rig();
        table = bench.openTable();
    }

    static List<Suspect> of(Bench bench) {
        Suspects suspects = new Suspects(bench);
        suspects.fans();
        suspects.allFans();
        suspects.packs();
        suspects.wiring();
        suspects.air();
        suspects.instruments();
        return List.copyOf(suspects.all);
    }

    private void add(
            CauseKind kind,
            String part,
            double prior,
            double[] sizes,
            double least,
            Change change,
            Sizing words) {
        all.add(new Suspect(new Cause(kind, part), prior, sizes, least, 0, change, words));
    }

    /**
     * The same of a number of a part. What is less than the least size is no cause, but there: a
     * builder writes down what a seller says, and no part is exactly so.
     *
     * @param declared tolerance of what is declared of it, in sizes; two standard deviations
     */
    private void add(
            CauseKind kind,
            String part,
            double prior,
            double[] sizes,
            double least,
            double declared,
            Numbers change,
            Sizing words) {
        double unsaid = Math.sqrt(Math.max(0, least * least - declared * declared)) / 2;
        all.add(new Suspect(new Cause(kind, part), prior, sizes, least, unsaid, change, words));
    }

    private static Sizing percent(String words) {
        return (low, size, high) ->
                String.format(
                        Locale.ROOT,
                        "%.0f %% %s (%.0f to %.0f %%)",
                        100 * Math.abs(size),
                        words,
                        100 * Math.min(Math.abs(low), Math.abs(high)),
                        100 * Math.max(Math.abs(low), Math.abs(high)));
    }

    private static Sizing plain(String words) {
        return (_, _, _) -> words;
    }

    private static double wide(Quantity of) {
        return Math.max(of.tolerance().plus(), of.tolerance().minus());
    }

    private static double relative(Quantity of) {
        return of.si() == 0 ? 0 : wide(of) / Math.abs(of.si());
    }

    private void fans() {
        int turning = (int) IntStream.range(0, rig.fans().size()).filter(bench::turns).count();
        for (int k = 0; k < rig.fans().size(); k++) {
            if (bench.turns(k)) {
                fan(k, KIND / turning);
            }
        }
    }

    private void fan(int number, double prior) {
        Fan fan = rig.fans().get(number);
        FanType type = fan.type();
        String id = fan.id().text();
        String at = "fan types/" + type.name();
        row(id, at + "/scatter")
                .ifPresent(
                        row -> {
                            Numbers less = new Numbers((size, p) -> p[row] *= 1 - size);
                            double least = Math.max(0.03, relative(type.scatter()));
                            double[] sizes = {0.05, 0.2, 0.6};
                            add(
                                    CauseKind.WEAK_FAN,
                                    id,
                                    prior,
                                    sizes,
                                    least,
                                    relative(type.scatter()),
                                    less,
                                    percent("less thrust"));
                            if (fan.intake().isPresent() || type.intake().isPresent()) {
                                add(
                                        CauseKind.BLOCKED_INTAKE,
                                        id,
                                        prior / 2,
                                        sizes,
                                        least,
                                        less,
                                        percent("less thrust"));
                            }
                        });
        torque(type, id)
                .ifPresent(
                        row ->
                                add(
                                        CauseKind.HUNGRY_FAN,
                                        id,
                                        prior,
                                        new double[] {0.08, 0.3, 1},
                                        0.06,
                                        0,
                                        new Numbers((size, p) -> p[row] *= 1 + size),
                                        percent("more torque at equal speed")));
        row(id, at + "/motor/speed constant")
                .ifPresent(
                        row ->
                                add(
                                        CauseKind.MOTOR,
                                        id,
                                        prior,
                                        new double[] {0.03, 0.08, 0.2},
                                        Math.max(
                                                0.025,
                                                type.motor()
                                                        .speedConstant()
                                                        .map(Suspects::relative)
                                                        .orElse(0.0)),
                                        type.motor()
                                                .speedConstant()
                                                .map(Suspects::relative)
                                                .orElse(0.0),
                                        new Numbers((size, p) -> p[row] *= 1 + size),
                                        percent("more speed per volt")));
        double top = bench.topThrottle();
        add(
                CauseKind.LIMITED_FAN,
                id,
                prior,
                new double[] {0.05, 0.15, 0.3, 0.5, 0.7},
                0.04,
                new Lost(size -> Effect.noMore(number, top * (1 - size))),
                (low, size, high) ->
                        String.format(
                                Locale.ROOT,
                                "no more than %.0f %% duty (%.0f to %.0f %%)",
                                100 * top * (1 - size),
                                100 * top * (1 - high),
                                100 * top * (1 - low)));
        double[] one = {1};
        add(
                CauseKind.STOPPED_FAN,
                id,
                prior / 2,
                one,
                1,
                new Lost(size -> Effect.dead(number)),
                plain("from the start"));
        add(CauseKind.STOPPED_FAN, id, prior / 2, one, 1, new Stops(number), plain("in mid-run"));
        add(
                CauseKind.REVERSED_FAN,
                id,
                prior / 4,
                one,
                1,
                new Lost(size -> Effect.reversed(number)),
                plain("turns the wrong way round"));
    }

    private Optional<Integer> row(String part, String path) {
        return Bench.row(table, part, path);
    }

    private Optional<Integer> torque(FanType type, String id) {
        String at = "fan types/" + type.name();
        return switch (type.performance()) {
            case FanType.Performance.AtSpeed _ -> row(id, at + "/at speed/shaft power");
            case FanType.Performance.Coefficients _ -> row(id, at + "/coefficients/torque");
            case FanType.Performance.Measured _ -> Optional.empty();
        };
    }

    private void allFans() {
        int[] rows =
                rig.fans().stream()
                        .flatMap(
                                fan ->
                                        row(
                                                fan.id().text(),
                                                "fan types/" + fan.type().name() + "/scatter")
                                                .stream())
                        .mapToInt(Integer::intValue)
                        .toArray();
        if (rows.length > 1) {
            add(
                    CauseKind.INSTALLATION,
                    "",
                    KIND,
                    new double[] {0.04, 0.15, 0.4},
                    0.03,
                    relative(rig.fans().getFirst().type().installation()),
                    new Numbers(
                            (size, p) -> {
                                for (int row : rows) {
                                    p[row] *= 1 - size;
                                }
                            }),
                    percent("less thrust of all fans"));
        }
        double top = bench.topThrottle();
        if (rig.fans().size() > 1) {
            add(
                    CauseKind.THROTTLE,
                    "",
                    KIND / 4,
                    new double[] {0.05, 0.15, 0.3, 0.5},
                    0.04,
                    new Lost(
                            size ->
                                    IntStream.range(0, rig.fans().size())
                                            .mapToObj(k -> Effect.noMore(k, top * (1 - size)))
                                            .reduce(Effect.NONE, Effect::and)),
                    (low, size, high) ->
                            String.format(
                                    Locale.ROOT,
                                    "no fan gets more than %.0f %% duty",
                                    100 * top * (1 - size)));
        }
    }

    private void packs() {
        double prior = KIND / rig.packs().size();
        for (Pack pack : rig.packs()) {
            String id = pack.id().text();
            String cell = "cells/" + pack.cell().name();
            row(id, cell + "/resistance")
                    .ifPresent(
                            row ->
                                    add(
                                            CauseKind.CELL_RESISTANCE,
                                            id,
                                            prior,
                                            new double[] {0.2, 0.8, 3},
                                            0.15,
                                            pack.cell()
                                                    .resistance()
                                                    .map(Suspects::relative)
                                                    .orElse(0.0),
                                            new Numbers((size, p) -> p[row] *= 1 + size),
                                            percent("more resistance of its cells")));
            row(id, cell + "/capacity")
                    .ifPresent(
                            row ->
                                    add(
                                            CauseKind.CAPACITY,
                                            id,
                                            prior / 2,
                                            new double[] {0.1, 0.3, 0.6},
                                            0.05,
                                            pack.cell()
                                                    .capacity()
                                                    .map(Suspects::relative)
                                                    .orElse(0.0),
                                            new Numbers((size, p) -> p[row] *= 1 - size),
                                            percent("less capacity")));
            row(id, pack.declaredAt().child("charge").toString())
                    .ifPresent(
                            row ->
                                    add(
                                            CauseKind.CHARGE,
                                            id,
                                            prior,
                                            new double[] {0.05, 0.2, 0.4, 0.6},
                                            0.04,
                                            Math.max(2 * Doubts.CHARGE, wide(pack.charge())),
                                            new Numbers(
                                                    (size, p) ->
                                                            p[row] =
                                                                    Math.clamp(
                                                                            p[row] - size,
                                                                            0.02,
                                                                            1)),
                                            percent("less charge at the start")));
        }
    }

    /** One joint of each chain stands for all of it, but those with a thermometer of their own. */
    private void wiring() {
        record Place(Element element, int row, double ohm) {}
        List<Place> places = new ArrayList<>();
        for (Wiring.Chain chain : rig.wiring().chains()) {
            boolean stands = false;
            List<Element> order = new ArrayList<>(chain.elements());
            order.sort(
                    java.util.Comparator.comparing(element -> !(element instanceof Element.Joint)));
            for (Element element : order) {
                boolean watched =
                        bench.channels().stream()
                                .anyMatch(
                                        channel ->
                                                channel.signal() == Signal.TEMPERATURE
                                                        && channel.of()
                                                                .equals(element.id().text()));
                Optional<Integer> row =
                        switch (element) {
                            case Element.Joint joint ->
                                    row(
                                            joint.id().text(),
                                            joint.declaredAt().child("resistance").toString());
                            case Element.Fuse fuse ->
                                    row(
                                            fuse.id().text(),
                                            fuse.declaredAt().child("resistance").toString());
                            case Element.Run _, Element.Pole _ -> Optional.empty();
                        };
                if (row.isPresent() && (watched || !stands)) {
                    double ohm =
                            switch (element) {
                                case Element.Joint joint -> joint.resistance().si();
                                case Element.Fuse fuse -> fuse.resistance().si();
                                case Element.Run _, Element.Pole _ -> 0;
                            };
                    places.add(new Place(element, row.get(), ohm));
                    stands |= !watched;
                }
            }
        }
        for (Place place : places) {
            double least = Math.max(0.5 * place.ohm, 5e-5);
            double most = ohmsThatMatter();
            add(
                    CauseKind.JOINT,
                    place.element.id().text(),
                    KIND / places.size(),
                    new double[] {most / 40, most / 8, most},
                    Math.min(least, most / 40),
                    0,
                    new Numbers((size, p) -> p[place.row] += Math.max(0, size)),
                    (low, size, high) ->
                            String.format(
                                    Locale.ROOT,
                                    "%.2f mΩ more (%.2f to %.2f mΩ)",
                                    1e3 * size,
                                    1e3 * low,
                                    1e3 * high));
        }
    }

    /** Ohms in a fan's lead that would take a third of its voltage. */
    private double ohmsThatMatter() {
        Pack pack = rig.packs().getFirst();
        double volt = 3.7 * pack.series();
        double most = 30;
        for (Compared channel : bench.channels()) {
            if (channel.signal() == Signal.CURRENT) {
                for (double amp : channel.measuredSi()) {
                    most = Math.max(most, amp);
                }
            }
        }
        return volt / 3 / most;
    }

    private void air() {
        boolean pressure =
                bench.openTable().rows().stream()
                        .anyMatch(row -> row.name().equals("site/pressure"));
        Optional<Integer> row = Bench.row(table, pressure ? "site/pressure" : "site/elevation");
        row.ifPresent(
                at ->
                        add(
                                CauseKind.AIR,
                                "",
                                KIND / 4,
                                new double[] {0.03, 0.06, 0.12},
                                0.02,
                                0,
                                new Numbers(
                                        (size, p) ->
                                                p[at] =
                                                        pressure
                                                                ? p[at] * (1 - size)
                                                                : p[at] + 9000 * size),
                                percent("thinner air")));
    }

    private void instruments() {
        List<Integer> cells = new ArrayList<>();
        for (int c = 0; c < bench.channels().size(); c++) {
            Signal signal = bench.channels().get(c).signal();
            if (signal == Signal.THRUST || signal == Signal.SCALE || signal == Signal.TETHER_LOAD) {
                cells.add(c);
            }
        }
        for (int c : cells) {
            Compared channel = bench.channels().get(c);
            double least = Math.max(0.02, 1.5 * channel.errorShare());
            double share = KIND / cells.size() / 2;
            for (int sign = -1; sign <= 1; sign += 2) {
                add(
                        CauseKind.SCALE,
                        channel.name(),
                        share * (sign < 0 ? 1.5 : 0.5),
                        new double[] {sign * 0.05, sign * 0.2},
                        least,
                        new Shown(c, 1, 0),
                        percent(sign < 0 ? "shown too little" : "shown too much"));
            }
            if (channel.signal() == Signal.SCALE && channel.of().equals(Track.ALL)) {
                double[] kilograms = {0.5, 5, 40};
                add(
                        CauseKind.HEAVIER,
                        "",
                        KIND,
                        kilograms,
                        0.3,
                        new Shown(c, 0, 1),
                        (low, size, high) ->
                                String.format(
                                        Locale.ROOT,
                                        "%.1f kg more (%.1f to %.1f kg)",
                                        size,
                                        low,
                                        high));
            }
        }
    }
}
