package liftwright.plant.identify;

import java.util.List;
import liftwright.rig.CellType;
import liftwright.rig.table.CellTests;

/**
 * Heat capacity of a cell and its conductance to the air, by least squares on the surface of some
 * measured runs (Gauss and Newton, in logarithms).
 */
final class CellSurfaceFit {

    private static final double STEP = 0.02;

    final double jpK;
    final double wpK;

    CellSurfaceFit(CellType type, List<CellTests.Run> told) {
        double c = Math.log(60);
        double g = Math.log(0.04);
        for (int k = 0; k < 6; k++) {
            double cc = 0;
            double cg = 0;
            double gg = 0;
            double cr = 0;
            double gr = 0;
            for (CellTests.Run run : told) {
                CellSurface here = new CellSurface(type, run, Math.exp(c), Math.exp(g));
                CellSurface more = new CellSurface(type, run, Math.exp(c + STEP), Math.exp(g));
                CellSurface open = new CellSurface(type, run, Math.exp(c), Math.exp(g + STEP));
                double weight = 1.0 / here.timeS.length;
                for (int row = 1; row < here.timeS.length; row++) {
                    double miss = here.measuredK[row] - here.surfaceK[row];
                    double byC = (more.surfaceK[row] - here.surfaceK[row]) / STEP;
                    double byG = (open.surfaceK[row] - here.surfaceK[row]) / STEP;
                    cc += weight * byC * byC;
                    cg += weight * byC * byG;
                    gg += weight * byG * byG;
                    cr += weight * byC * miss;
                    gr += weight * byG * miss;
                }
            }
            double det = cc * gg - cg * cg;
            c += Math.clamp((gg * cr - cg * gr) / det, -0.5, 0.5);
            g += Math.clamp((cc * gr - cg * cr) / det, -0.5, 0.5);
        }
        jpK = Math.exp(c);
        wpK = Math.exp(g);
    }
}
