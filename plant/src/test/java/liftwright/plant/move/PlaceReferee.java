package liftwright.plant.move;

import java.util.LinkedHashMap;
import java.util.Map;
import liftwright.physics.BodySegment;
import liftwright.rig.Mount;
import liftwright.rig.Rig;
import liftwright.rig.Vec3;
import liftwright.rig.Wearer;

/**
 * Where parts are, by products of elementary turns: written again from the definitions of the rig
 * file, without the code that places parts.
 */
final class PlaceReferee {

    private final Wearer wearer;

    private PlaceReferee(Rig rig) {
        this.wearer = rig.wearer().orElseThrow();
    }

    /** Places of all parts by id, and of mounts as {@code mounts/NAME}, in rig axes, m. */
    static Map<String, Vec3> places(Rig rig) {
        var referee = new PlaceReferee(rig);
        var places = new LinkedHashMap<String, Vec3>();
        rig.fans().forEach(f -> places.put(f.id().text(), referee.at(f.mount(), f.at())));
        rig.packs().forEach(p -> places.put(p.id().text(), referee.at(p.mount(), p.at())));
        rig.otherParts().forEach(o -> places.put(o.id().text(), referee.at(o.mount(), o.at())));
        rig.mounts().forEach(m -> places.put("mounts/" + m.name(), referee.at(m, Vec3.ZERO)));
        return places;
    }

    private Vec3 at(Mount mount, Vec3 own) {
        double[][] carrier = carrier(mount.on());
        double[][] tilted =
                times(
                        carrier,
                        times(aboutY(mount.turnForward().si()), aboutX(-mount.turnRight().si())));
        Vec3 along = new Vec3(0, 0, mount.along().si() * length(mount.on()));
        return start(mount.on())
                .plus(turn(carrier, mount.at().plus(along)))
                .plus(turn(tilted, own));
    }

    private double[][] lean() {
        return times(
                aboutY(-wearer.stance().leanForward().si()),
                aboutX(wearer.stance().leanRight().si()));
    }

    private double[][] carrier(Mount.Carrier on) {
        return switch (on) {
            case FRAME, TRUNK -> lean();
            case LEFT_UPPER_ARM -> times(lean(), mirror(upper(wearer.left())));
            case RIGHT_UPPER_ARM -> times(lean(), upper(wearer.right()));
            case LEFT_FOREARM -> times(lean(), mirror(lower(wearer.left())));
            case RIGHT_FOREARM -> times(lean(), lower(wearer.right()));
        };
    }

    private static double[][] upper(Wearer.Arm arm) {
        return times(
                aboutY(arm.shoulderFlexion().si()),
                times(aboutX(-arm.shoulderAbduction().si()), aboutZ(arm.shoulderRotation().si())));
    }

    private static double[][] lower(Wearer.Arm arm) {
        return times(upper(arm), aboutY(arm.elbowFlexion().si()));
    }

    private Vec3 start(Mount.Carrier on) {
        double half = BodySegment.SHOULDER_HALF_SPACING * wearer.stature().si();
        Vec3 left = turn(lean(), new Vec3(0, -half, 0));
        Vec3 right = turn(lean(), new Vec3(0, half, 0));
        Vec3 down = new Vec3(0, 0, length(Mount.Carrier.LEFT_UPPER_ARM));
        return switch (on) {
            case FRAME, TRUNK -> Vec3.ZERO;
            case LEFT_UPPER_ARM -> left;
            case RIGHT_UPPER_ARM -> right;
            case LEFT_FOREARM -> left.plus(turn(carrier(Mount.Carrier.LEFT_UPPER_ARM), down));
            case RIGHT_FOREARM -> right.plus(turn(carrier(Mount.Carrier.RIGHT_UPPER_ARM), down));
        };
    }

    private double length(Mount.Carrier on) {
        var body =
                wearer.body() == Wearer.Body.FEMALE
                        ? BodySegment.Reference.FEMALE
                        : BodySegment.Reference.MALE;
        return switch (on) {
            case FRAME, TRUNK -> 0;
            case LEFT_UPPER_ARM, RIGHT_UPPER_ARM ->
                    BodySegment.UPPER_ARM.lengthM(body, wearer.stature().si());
            case LEFT_FOREARM, RIGHT_FOREARM ->
                    BodySegment.FOREARM.lengthM(body, wearer.stature().si());
        };
    }

    private static double[][] aboutX(double a) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return new double[][] {{1, 0, 0}, {0, c, -s}, {0, s, c}};
    }

    private static double[][] aboutY(double a) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return new double[][] {{c, 0, s}, {0, 1, 0}, {-s, 0, c}};
    }

    private static double[][] aboutZ(double a) {
        double c = Math.cos(a);
        double s = Math.sin(a);
        return new double[][] {{c, -s, 0}, {s, c, 0}, {0, 0, 1}};
    }

    private static double[][] mirror(double[][] m) {
        double[][] plane = {{1, 0, 0}, {0, -1, 0}, {0, 0, 1}};
        return times(plane, times(m, plane));
    }

    private static double[][] times(double[][] a, double[][] b) {
        double[][] product = new double[3][3];
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 3; k++) {
                    product[i][j] += a[i][k] * b[k][j];
                }
            }
        }
        return product;
    }

    private static Vec3 turn(double[][] m, Vec3 v) {
        return new Vec3(
                m[0][0] * v.x() + m[0][1] * v.y() + m[0][2] * v.z(),
                m[1][0] * v.x() + m[1][1] * v.y() + m[1][2] * v.z(),
                m[2][0] * v.x() + m[2][1] * v.y() + m[2][2] * v.z());
    }
}
