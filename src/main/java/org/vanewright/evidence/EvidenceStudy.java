package org.vanewright.evidence;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every published comparison of one quantity, and what those come to that are comparable.
 *
 * @param query what was asked for
 * @param known how much of the catalogue is behind it
 * @param items of that quantity, newest first
 * @param groups of comparable ones, those that were flown first, the largest first
 * @param group that is summed up; null where there is none
 * @param groupMissing whether the group that was asked for does not exist
 * @param summary null where fewer than {@value #FEWEST} campaigns are comparable
 * @param refusal why there is no summary; null where there is one
 */
public record EvidenceStudy(
        EvidenceQuery query,
        Findings.Known known,
        List<Item> items,
        List<Group> groups,
        @Nullable Group group,
        boolean groupMissing,
        @Nullable Summary summary,
        @Nullable String refusal) {
    /** Campaigns below which their differences say next to nothing of those of others. */
    public static final int FEWEST = 5;

    public EvidenceStudy {
        items = List.copyOf(items);
        groups = List.copyOf(groups);
    }

    /**
     * One comparison.
     *
     * @param finding what was found
     * @param alike with what it compares
     * @param change in the scale asked for; null where it cannot be given so
     * @param counted whether it is among those that are summed up
     * @param why not; empty where it is
     */
    public record Item(Finding finding, Alike alike, Scale.@Nullable Change change, boolean counted, List<String> why) {
        public Item {
            why = List.copyOf(why);
        }
    }

    /**
     * Comparable findings.
     *
     * @param alike what they have in common
     * @param campaigns how many there are
     * @param findings how many comparisons
     */
    public record Group(Alike alike, int campaigns, int findings) {}

    /** Those that are summed up. */
    public List<Item> counted() {
        return items.stream().filter(Item::counted).toList();
    }
}
