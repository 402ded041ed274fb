package liftwright.review;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import liftwright.answer.Section;
import liftwright.answer.Section.Cases.Case;
import liftwright.answer.Section.Cases.Spot;
import liftwright.answer.Section.Playback.Place;
import liftwright.plant.LossPoint;
import liftwright.plant.Plant;
import liftwright.plant.body.MassItem;
import liftwright.plant.fault.Effect;
import liftwright.rig.Vec3;

/**
 * Each failure on the rig: which fans and packs are lost, and how busy the others are. A fan shows
 * its share of full thrust, a pack its current over the greatest of all packs in the case.
 */
final class FailureScenes {

    private final Plant plant;
    private final List<FaultView> views;

    FailureScenes(Plant plant, List<FaultView> views) {
        this.plant = plant;
        this.views = views;
    }

    Section section() {
        List<Spot> spots = new ArrayList<>();
        double[] p = plant.parameters().nominal();
        for (int fan = 0; fan < plant.rig().fans().size(); fan++) {
            spots.add(
                    new Spot(
                            plant.rig().fans().get(fan).id().text(),
                            "fan",
                            place(plant.fanPlace(p, fan))));
        }
        List<MassItem> items = plant.mass().items();
        plant.rig()
                .packs()
                .forEach(
                        pack ->
                                spots.add(
                                        new Spot(
                                                pack.id().text(),
                                                "pack",
                                                place(at(items, pack.id().text())))));
        List<Case> cases = new ArrayList<>();
        for (FaultView view : views) {
            view.found().point().ifPresent(point -> cases.add(scene(view, point)));
        }
        return new Section.Cases(
                "failure-cases", "Failures on the rig", "share-of-whole", spots, cases);
    }

    private static Vec3 at(List<MassItem> items, String name) {
        return items.stream()
                .filter(item -> item.name().equals(name))
                .findFirst()
                .map(MassItem::at)
                .orElse(Vec3.ZERO);
    }

    private static Case scene(FaultView view, LossPoint point) {
        List<Boolean> lost = new ArrayList<>();
        List<Double> values = new ArrayList<>();
        Effect whole = point.whole();
        List<Double> share = point.flow().share();
        for (int fan = 0; fan < share.size(); fan++) {
            add(lost, values, isAmong(whole.deadFans(), fan), share.get(fan));
        }
        List<Double> packA = point.flow().packA();
        double most = packA.stream().mapToDouble(Math::abs).max().orElse(0);
        for (int pack = 0; pack < packA.size(); pack++) {
            add(
                    lost,
                    values,
                    isAmong(whole.lostPacks(), pack),
                    most > 0 ? packA.get(pack) / most : 0);
        }
        return new Case(
                view.part() + ", " + view.how(),
                view.found().fate().outcome().words(),
                lost,
                values);
    }

    private static void add(List<Boolean> lost, List<Double> values, boolean gone, double value) {
        lost.add(gone);
        values.add(gone ? 0 : Math.rint(value * 1e4) / 1e4);
    }

    private static boolean isAmong(int[] numbers, int number) {
        return IntStream.of(numbers).anyMatch(each -> each == number);
    }

    /** Inside axes to those of the rig file: up is against z. */
    private static Place place(Vec3 at) {
        return new Place(
                Rounding.off(at.x(), Rounding.M),
                Rounding.off(at.y(), Rounding.M),
                Rounding.off(0.0 - at.z(), Rounding.M));
    }
}
