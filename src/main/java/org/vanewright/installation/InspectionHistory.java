package org.vanewright.installation;

import java.util.Collection;
import java.util.List;
import java.util.Map;

/** What was seen of an installation later. Whoever keeps inspections gives one; installations know nothing of them. */
public interface InspectionHistory {
    /** Published inspections of any revision of each installation, by hours flown, in one statement. */
    Map<String, List<Seen>> of(Collection<String> installationSlugs);

    /** Published inspections of any revision of the installation, by hours flown. */
    default List<Seen> of(String installationSlug) {
        return of(List.of(installationSlug)).getOrDefault(installationSlug, List.of());
    }

    /**
     * One inspection.
     *
     * @param name of it
     * @param path of its page, at the revision that was published
     * @param on the day
     * @param hoursFlown since the installation
     * @param missing how many devices were missing
     * @param loose how many were loose
     * @param invented true for demonstration data
     */
    record Seen(String name, String path, String on, double hoursFlown, int missing, int loose, boolean invented) {}
}
