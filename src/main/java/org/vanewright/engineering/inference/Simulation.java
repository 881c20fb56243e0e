package org.vanewright.engineering.inference;

import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;

/**
 * Campaigns flown by chance with a known truth, to see what a method makes of them.
 *
 * @param seed the same seed gives the same campaigns
 * @param runs how many campaigns
 */
public record Simulation(long seed, int runs) {
    /** One campaign. */
    public interface Campaign {
        /** What the method says of one campaign flown with this chance. */
        boolean succeeds(RandomGenerator chance);
    }

    /** The fraction of campaigns of which the method says yes. */
    public double fraction(Campaign campaign) {
        RandomGenerator chance = new Well19937c(seed);
        int yes = 0;
        for (int run = 0; run < runs; run++) {
            yes += campaign.succeeds(chance) ? 1 : 0;
        }
        return (double) yes / runs;
    }

    /** So many normal values. */
    public static double[] values(RandomGenerator chance, int count, double mean, double standardDeviation) {
        double[] values = new double[count];
        for (int i = 0; i < count; i++) {
            values[i] = mean + standardDeviation * chance.nextGaussian();
        }
        return values;
    }
}
