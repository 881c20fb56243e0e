package org.vanewright.installation;

import java.util.List;

/** What was seen of an installation later. Whoever keeps inspections gives one; installations know nothing of them. */
public interface InspectionHistory {
    /** Published inspections of any revision of the installation, by hours flown. */
    List<Seen> of(String installationSlug);

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
