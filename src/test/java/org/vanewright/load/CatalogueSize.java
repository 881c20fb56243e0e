package org.vanewright.load;

/**
 * How much is invented, and from which seed. The same size and seed give the same documents, names and times on any machine.
 *
 * @param layouts of any airframe
 * @param points test points over all campaigns
 * @param installations of layouts
 * @param inspections over all installations
 * @param people who own it all
 */
public record CatalogueSize(
        long seed,
        int people,
        int airframes,
        int devices,
        int layouts,
        int campaigns,
        int points,
        int installations,
        int inspections) {
    /** What a club would need a larger machine for. */
    public static final CatalogueSize LARGE =
            new CatalogueSize(7, 2_000, 3_000, 2_000, 100_000, 5_000, 1_000_000, 10_000, 40_000);

    public CatalogueSize {
        if (people < 2 || airframes < 1 || devices < 4 || layouts < airframes || points < 2 * campaigns) {
            throw new IllegalArgumentException("too few of something");
        }
    }

    /** As large as {@link #LARGE} by that share, with the same proportions. */
    public static CatalogueSize ofLayouts(int layouts, long seed) {
        double share = (double) layouts / LARGE.layouts;
        return new CatalogueSize(
                seed,
                Math.max(4, part(LARGE.people, share)),
                Math.max(3, part(LARGE.airframes, share)),
                Math.max(8, part(LARGE.devices, share)),
                layouts,
                part(LARGE.campaigns, share),
                part(LARGE.points, share),
                part(LARGE.installations, share),
                part(LARGE.inspections, share));
    }

    private static int part(int whole, double share) {
        return Math.max(1, (int) Math.round(whole * share));
    }

    /** Installations and inspections. */
    public int retentionRecords() {
        return installations + inspections;
    }
}
