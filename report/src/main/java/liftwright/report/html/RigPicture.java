package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import liftwright.answer.Section.Drawing;
import liftwright.quantity.UnitSystem;
import liftwright.report.html.RigScene.Fan;
import liftwright.report.html.RigScene.Limb;
import liftwright.report.html.RigScene.Point;

/**
 * The rig from behind, from above and from the side: fans with their spin and thrust, the wearer's
 * segments, packs, centre of mass and the line along which the lift acts. All three to one scale.
 */
final class RigPicture {

    static final int WIDTH = 360;
    static final double MARGIN = 22;

    /** Length of the arrow of the strongest fan, m, over the size of the rig. */
    private static final double ARROW_SHARE = 0.13;

    private final Markup page;
    private final UnitSystem units;

    RigPicture(Markup page, UnitSystem units) {
        this.page = page;
        this.units = units;
    }

    void draw(Drawing drawing, String id) {
        RigScene scene = RigScene.of(drawing);
        List<Point> all = corners(scene);
        if (all.isEmpty()) {
            return;
        }
        double size = 0;
        for (RigView view : RigView.values()) {
            size = Math.max(size, span(view, all, true));
        }
        double scale = (WIDTH - 2 * MARGIN) / Math.max(size, 1e-6);
        double tall = Math.max(span(RigView.BEHIND, all, false), span(RigView.SIDE, all, false));
        if (tall * scale > 1.6 * WIDTH) { // a tall rig shall not outgrow a page
            scale = 1.6 * WIDTH / tall;
        }
        for (RigView view : RigView.values()) {
            new RigViewPicture(page, units, scene, view, all, scale)
                    .draw(drawing.title(), id + "-" + view.name().toLowerCase(Locale.ROOT));
        }
    }

    /** Points that must be seen: rims of fans, tips of arrows, ends of limbs, parts. */
    private static List<Point> corners(RigScene scene) {
        List<Point> all = new ArrayList<>();
        double arrow = arrowM(scene);
        for (Fan fan : scene.fans()) {
            double r = fan.tipM() / 2;
            all.add(fan.at().plus(new Point(r, r, 0), 1));
            all.add(fan.at().plus(new Point(r, r, 0), -1));
            all.add(fan.at().plus(fan.push(), arrow * share(scene, fan)));
        }
        for (Limb limb : scene.limbs()) {
            double half = limb.name().equals("head") ? 0.1 : 0.05;
            for (Point end : List.of(limb.from(), limb.to())) {
                all.add(end.plus(new Point(half, half, 0), 1));
                all.add(end.plus(new Point(half, half, 0), -1));
            }
        }
        scene.parts().forEach(part -> all.add(part.at()));
        scene.centre().ifPresent(all::add);
        return all;
    }

    /** Thrust over that of the strongest fan. */
    static double share(RigScene scene, Fan fan) {
        double most = scene.fans().stream().mapToDouble(Fan::thrustN).max().orElse(0);
        return most > 0 ? Math.max(0, fan.thrustN()) / most : 0;
    }

    /** Length of the arrow of the strongest fan, m. */
    static double arrowM(RigScene scene) {
        double reach = 0;
        for (Fan fan : scene.fans()) {
            reach = Math.max(reach, fan.at().length());
        }
        for (Limb limb : scene.limbs()) {
            reach = Math.max(reach, limb.to().length());
        }
        return Math.max(0.05, ARROW_SHARE * 2 * reach);
    }

    /** How much of the page all points take, m. */
    static double span(RigView view, List<Point> all, boolean across) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Point point : all) {
            double value = across ? view.across(point) : view.upward(point);
            low = Math.min(low, value);
            high = Math.max(high, value);
        }
        return high - low;
    }
}
