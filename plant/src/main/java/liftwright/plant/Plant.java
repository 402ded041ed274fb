package liftwright.plant;

import java.util.List;
import liftwright.plant.body.MassProperties;
import liftwright.plant.parameters.ParameterTable;
import liftwright.rig.Rig;

/**
 * A rig in numbers: its structure, assembled once, and its parameter table. Immutable and safe to
 * share; each thread brings its own {@link Workspace} and {@link SteadyState}.
 */
@SuppressWarnings("DoNotCallSuggester") // until the solver stands
public final class Plant {

    private Plant() {}

    /** Assembles a rig. */
    public static Plant assemble(Rig rig) {
        throw new UnsupportedOperationException(rig.name());
    }

    /** The rig it was made from. */
    public Rig rig() {
        throw new UnsupportedOperationException();
    }

    public ParameterTable parameters() {
        throw new UnsupportedOperationException();
    }

    public Workspace workspace() {
        return new Workspace();
    }

    public SteadyState state() {
        return new SteadyState(0, 0, 0);
    }

    /** The operating point at full throttle. Allocates nothing. */
    public void solve(double[] p, Effects effects, Workspace workspace, SteadyState out) {
        throw new UnsupportedOperationException();
    }

    /** Mass of the whole rig, kg. */
    public double massKg(double[] p) {
        throw new UnsupportedOperationException();
    }

    /** Weight of the whole rig, N. */
    public double weightN(double[] p) {
        throw new UnsupportedOperationException();
    }

    /** Mass, centre and parts as declared. */
    public MassProperties mass() {
        throw new UnsupportedOperationException();
    }

    /** Added intake loss K of one fan, over the exit dynamic pressure. */
    public double intakeLoss(double[] p, int fan) {
        throw new UnsupportedOperationException();
    }

    /** Every part against its limits at one operating point. */
    public List<OperatingLimit> limits(double[] p, SteadyState state) {
        throw new UnsupportedOperationException();
    }

    /** Density of the air of the site, kg/m³. */
    public double siteDensityKgpm3(double[] p) {
        throw new UnsupportedOperationException();
    }
}
