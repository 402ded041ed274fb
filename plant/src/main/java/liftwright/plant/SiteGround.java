package liftwright.plant;

import liftwright.plant.parameters.ParameterRows;
import liftwright.plant.parameters.Range;
import liftwright.rig.RigPath;
import liftwright.rig.Site;

/**
 * The ground of the site from the parameter vector: a plane with dry friction after Coulomb. Where
 * a file says none, friction is that of rubber or wood on a dry floor [SERWAY].
 */
public final class SiteGround {

    private final int friction;
    private final int slope;
    private final int slopeTo;

    private SiteGround(int friction, int slope, int slopeTo) {
        this.friction = friction;
        this.slope = slope;
        this.slopeTo = slopeTo;
    }

    /** Declares its parameters. */
    static SiteGround declare(Site.Ground ground, ParameterRows table) {
        RigPath at = RigPath.of("site");
        return new SiteGround(
                table.row(
                        at.child("friction"),
                        "friction of the ground",
                        ground.friction(),
                        Range.NOT_NEGATIVE),
                table.row(at.child("slope"), "slope of the ground", ground.slope(), Range.ANY),
                table.row(
                        at.child("slope to"),
                        "way in which the ground falls",
                        ground.slopeTo(),
                        Range.ANY));
    }

    /** Force over force, ≥ 0. */
    public double friction(double[] p) {
        return p[friction];
    }

    /** Rad; below 0, as a drawn one can be, it falls the other way. */
    public double slopeRad(double[] p) {
        return p[slope];
    }

    /** Which way it falls: 0 ahead of the start, clockwise from above, rad. */
    public double slopeToRad(double[] p) {
        return p[slopeTo];
    }
}
