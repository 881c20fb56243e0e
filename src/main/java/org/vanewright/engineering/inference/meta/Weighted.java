package org.vanewright.engineering.inference.meta;

import java.util.List;

/**
 * Effects weighted by w = 1/(v + τ²).
 *
 * @param sum Σ w
 * @param squares Σ w²
 * @param mean Σ w y / Σ w
 * @param q Σ w (y − mean)²
 * @param score Σ w² (y − mean)²
 */
record Weighted(double sum, double squares, double mean, double q, double score) {
    static Weighted at(double tauSquared, List<Effect> effects) {
        double sum = 0;
        double squares = 0;
        double total = 0;
        for (Effect effect : effects) {
            double w = 1 / (effect.variance() + tauSquared);
            sum += w;
            squares += w * w;
            total += w * effect.value();
        }
        double mean = total / sum;
        double q = 0;
        double score = 0;
        for (Effect effect : effects) {
            double w = 1 / (effect.variance() + tauSquared);
            double away = effect.value() - mean;
            q += w * away * away;
            score += w * w * away * away;
        }
        return new Weighted(sum, squares, mean, q, score);
    }
}
