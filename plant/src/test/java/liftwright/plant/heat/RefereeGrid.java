package liftwright.plant.heat;

/** How the referee cuts lines. */
interface RefereeGrid {
    double[] pieces(double lengthM, double finM);

    double[] shells(double innerM, double outerM);

    /** Places of the pieces' heat; in their middles unless said otherwise. */
    default double[] middles(double[] pieceM) {
        double[] at = new double[pieceM.length];
        double from = 0;
        for (int k = 0; k < at.length; k++) {
            at[k] = from + pieceM[k] / 2;
            from += pieceM[k];
        }
        return at;
    }

    /** Radii of the shells' heat; the geometric means of their edges unless said otherwise. */
    default double[] radii(double[] edge) {
        double[] node = new double[edge.length - 1];
        for (int k = 0; k < node.length; k++) {
            node[k] = Math.sqrt(edge[k] * edge[k + 1]);
        }
        return node;
    }

    /** 60 shells, 48 pieces, finest at the ends. */
    RefereeGrid FINE =
            new RefereeGrid() {
                @Override
                public double[] pieces(double lengthM, double finM) {
                    return HeatLine.graded(lengthM, 48, 1.15);
                }

                @Override
                public double[] shells(double innerM, double outerM) {
                    return HeatLine.fine(innerM, outerM, 60);
                }
            };

    /**
     * Seven pieces and three shells, as the laws say a run is cut: the heat of the first piece a
     * tenth of a fin length from the end, each gap to the next longer by one ratio up to the
     * middle, edges midway; shells by powers of 2.4. What is left then is the error in time.
     */
    RefereeGrid SAME =
            new RefereeGrid() {
                @Override
                public double[] pieces(double lengthM, double finM) {
                    double x = Math.min(0.1 * finM, lengthM / 28);
                    double low = 1;
                    double high = 1e6;
                    for (int k = 0; k < 200; k++) {
                        double r = Math.sqrt(low * high);
                        if (x * (1 + 2 * (1 + r + r * r)) < lengthM / 2) {
                            low = r;
                        } else {
                            high = r;
                        }
                    }
                    double second = x * (1 + 2);
                    double third = second + 2 * x * low;
                    double[] end = {
                        (x + second) / 2,
                        (third - x) / 2,
                        (lengthM / 2 - second) / 2,
                        lengthM / 2 - third
                    };
                    return new double[] {end[0], end[1], end[2], end[3], end[2], end[1], end[0]};
                }

                @Override
                public double[] middles(double[] pieceM) {
                    double sum = 0;
                    for (double piece : pieceM) {
                        sum += piece;
                    }
                    double third = sum / 2 - pieceM[3];
                    double second = sum / 2 - 2 * pieceM[2];
                    double first = third - 2 * pieceM[1];
                    return new double[] {
                        first, second, third, sum / 2, sum - third, sum - second, sum - first
                    };
                }

                @Override
                public double[] shells(double innerM, double outerM) {
                    double wall = outerM / innerM - 1;
                    return new double[] {
                        1,
                        1 + wall * Math.pow(1 / 3.0, 2.4),
                        1 + wall * Math.pow(2 / 3.0, 2.4),
                        1 + wall
                    };
                }

                @Override
                public double[] radii(double[] edge) {
                    double wall = edge[3] - 1;
                    return new double[] {
                        1 + wall * Math.pow(0.55 / 3, 2.4),
                        1 + wall * Math.pow(1.55 / 3, 2.4),
                        1 + wall * Math.pow(2.55 / 3, 2.4)
                    };
                }
            };
}
