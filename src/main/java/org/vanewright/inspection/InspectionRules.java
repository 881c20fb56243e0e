package org.vanewright.inspection;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.installation.DeviceAt;
import org.vanewright.record.RevisionRef;
import org.vanewright.record.photograph.PhotographRules;
import org.vanewright.record.provenance.ProvenanceRules;

/** What must hold of an inspection by itself, before its installation is looked up. */
public final class InspectionRules {
    public static final int MAX_LOSSES = 90;

    private static final double LEAST_HOURS = 0.1;
    private static final double MOST_HOURS = 20_000;

    private InspectionRules() {}

    public static List<FieldProblem> check(InspectionDocument inspection) {
        Checks checks = new Checks();
        checks.text("name", inspection.name(), 120);
        checks.optionalText("description", inspection.description(), 4_000);
        RevisionRef ref = inspection.installation();
        checks.require(
                ref != null && ref.slug() != null && ref.slug().matches("[a-z0-9-]{1,80}") && ref.revision() >= 1,
                "installation",
                RevisionRef.words(ref),
                "a record and its revision, such as {\"slug\":\"…\",\"revision\":1}");
        checks.day("inspectedOn", inspection.inspectedOn());
        checks.range("hoursFlown", inspection.hoursFlown(), LEAST_HOURS, MOST_HOURS, "h");
        losses(inspection.losses(), checks);
        ProvenanceRules.check(inspection, inspection.provenance()).forEach(checks::add);
        PhotographRules.check(inspection.photographs()).forEach(checks::add);
        return checks.problems();
    }

    private static void losses(List<LossDocument> all, Checks checks) {
        checks.require(all.size() <= MAX_LOSSES, "losses", all.size(), "at most " + MAX_LOSSES + " devices");
        Set<DeviceAt> seen = new HashSet<>();
        for (int i = 0; i < Math.min(all.size(), MAX_LOSSES); i++) {
            LossDocument each = all.get(i);
            String path = "losses[" + i + "]";
            DeviceAt at = each.at();
            boolean known = at != null && DeviceAt.ofKey(at.key()).isPresent();
            if (checks.require(known, path + ".at", at == null ? null : at.words(), "a device of the installation")) {
                checks.require(
                        at != null && seen.add(at),
                        path + ".at",
                        at == null ? null : at.words(),
                        "a device that is not named before");
            }
            checks.present(path + ".state", each.state(), "MISSING or LOOSE");
            checks.present(path + ".cause", each.cause(), "one of the causes; UNKNOWN where nobody can say");
        }
    }
}
