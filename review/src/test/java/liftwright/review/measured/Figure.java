package liftwright.review.measured;

import java.util.List;

/**
 * A figure from several points: their mean, and twice their sample standard deviation as its ± (k =
 * 2, JCGM 100).
 */
record Figure(double mean, double plusMinus) {

    static Figure of(List<Double> points) {
        double mean = points.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
        double squares = points.stream().mapToDouble(each -> (each - mean) * (each - mean)).sum();
        return new Figure(mean, 2 * Math.sqrt(squares / (points.size() - 1)));
    }

    double share() {
        return plusMinus / mean;
    }
}
