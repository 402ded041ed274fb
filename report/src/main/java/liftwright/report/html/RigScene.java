package liftwright.report.html;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import liftwright.answer.Section.Drawing;
import liftwright.answer.Section.Table;
import liftwright.answer.Value;

/**
 * A rig in space as an answer tells it, ready to be drawn. A layer that an answer lacks draws
 * nothing.
 *
 * @param fans in the order of the file
 * @param limbs of the wearer; empty without one
 * @param parts packs and others
 * @param centre of mass
 * @param lift line along which it acts
 */
record RigScene(
        List<Fan> fans,
        List<Limb> limbs,
        List<Part> parts,
        Optional<Point> centre,
        Optional<Line> lift) {

    /**
     * Forward, right, up; m, or a direction. A left-handed set of axes: mind the vector product.
     */
    record Point(double forward, double right, double up) {
        Point plus(Point other, double times) {
            return new Point(
                    forward + times * other.forward,
                    right + times * other.right,
                    up + times * other.up);
        }

        Point cross(Point other) {
            return new Point(
                    right * other.up - up * other.right,
                    up * other.forward - forward * other.up,
                    forward * other.right - right * other.forward);
        }

        double length() {
            return Math.sqrt(forward * forward + right * right + up * up);
        }

        Point unit() {
            double length = length();
            return new Point(forward / length, right / length, up / length);
        }
    }

    record Fan(String id, boolean rightHand, Point at, double tipM, double thrustN, Point push) {}

    record Limb(String name, Point from, Point to) {}

    record Part(String id, boolean pack, Point at) {}

    record Line(double forceN, Point at, Point along) {}

    static RigScene of(Drawing drawing) {
        List<Fan> fans = new ArrayList<>();
        List<Limb> limbs = new ArrayList<>();
        List<Part> parts = new ArrayList<>();
        Optional<Point> centre = Optional.empty();
        Optional<Line> lift = Optional.empty();
        for (Table layer : drawing.layers()) {
            for (List<Value> values : layer.rows()) {
                Row row = new Row(layer.columns(), values);
                switch (layer.id()) {
                    case "drawn-fans" ->
                            fans.add(
                                    new Fan(
                                            row.words("part"),
                                            row.words("spin").equals("right-hand"),
                                            row.point("place"),
                                            row.si("tip-diameter"),
                                            row.si("fan-thrust-at-lift-off"),
                                            row.point("push")));
                    case "drawn-wearer" ->
                            limbs.add(
                                    new Limb(
                                            row.words("segment"),
                                            row.point("place"),
                                            row.point("end")));
                    case "drawn-parts" ->
                            parts.add(
                                    new Part(
                                            row.words("part"),
                                            row.words("part-kind").equals("pack"),
                                            row.point("place")));
                    case "drawn-centre" -> centre = Optional.of(row.point("place"));
                    case "drawn-lift" ->
                            lift =
                                    Optional.of(
                                            new Line(
                                                    row.si("lift-at-lift-off"),
                                                    row.point("place"),
                                                    row.point("push")));
                    default -> {} // a layer of a later version: it stands in the table
                }
            }
        }
        return new RigScene(fans, limbs, parts, centre, lift);
    }

    private record Row(List<String> columns, List<Value> values) {
        private Value.Figure figure(String field) {
            int at = columns.indexOf(field);
            if (at < 0) {
                throw new IllegalArgumentException("a drawing without the column " + field);
            }
            return values.get(at).figure();
        }

        String words(String field) {
            return figure(field) instanceof Value.Figure.Words words ? words.text() : "";
        }

        double si(String field) {
            return figure(field) instanceof Value.Figure.Amount amount ? amount.si() : 0;
        }

        Point point(String kind) {
            return new Point(si(kind + "-forward"), si(kind + "-right"), si(kind + "-up"));
        }
    }
}
