package org.vanewright.kit;

import java.util.List;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * What goes into a kit.
 *
 * @param layout whose kit it is
 * @param results campaigns whose results are in it, as they are named here
 * @param revisions every revision involved, a named one before what names it
 * @param contentKey names everything the bytes depend on but the build of the service
 */
public record KitPlan(
        Revision<?> layout, List<RevisionRef> results, List<KitRevision<?>> revisions, String contentKey) {
    /** As the address of the kit names the campaigns. */
    public String resultsParameter() {
        return results.isEmpty()
                ? NONE
                : String.join(
                        ",",
                        results.stream().map(r -> r.slug() + "." + r.revision()).toList());
    }

    static final String NONE = "none";

    KitRevision<?> main() {
        return revisions.stream()
                .filter(r -> r.here().ref().equals(layout.ref())
                        && r.service().kind().equals("layout"))
                .findFirst()
                .orElseThrow();
    }
}
