package org.vanewright.inspection;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.installation.DeviceAt;
import org.vanewright.installation.Fitting;
import org.vanewright.installation.InstallationDocument;
import org.vanewright.installation.InstallationService;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Inspections and their revisions. Hours never run backwards along the published inspections of one installation. */
@Service
public class InspectionService extends RecordService<InspectionDocument> {
    private static final Comparator<Revision<InspectionDocument>> BY_HOURS = Comparator.comparing(
                    (Revision<InspectionDocument> r) -> hours(r.content()))
            .thenComparing(r -> String.valueOf(r.content().inspectedOn()))
            .thenComparing(Revision::slug);

    private final InspectionRepository inspections;
    private final InstallationService installations;
    private final Photographs photographs;

    InspectionService(
            InspectionRepository inspections,
            InstallationService installations,
            Photographs photographs,
            RecordDesk desk) {
        super("inspection", "inspections", inspections, desk);
        this.inspections = inspections;
        this.installations = installations;
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(InspectionDocument inspection) {
        Checks checks = new Checks();
        InspectionRules.check(inspection).forEach(checks::add);
        if (checks.isClean()) {
            Optional<Revision<InstallationDocument>> installation = installation(inspection);
            checks.require(
                    installation.isPresent(),
                    "installation",
                    RevisionRef.words(inspection.installation()),
                    "a revision that exists");
            installation.ifPresent(i -> against(inspection, i, checks));
            photographs.missing(inspection.photographs()).forEach(checks::add);
        }
        return checks.problems();
    }

    private void against(InspectionDocument inspection, Revision<InstallationDocument> installation, Checks checks) {
        Optional<Fitting> fitting = installations.fitting(installation.content());
        for (int i = 0; i < inspection.losses().size(); i++) {
            DeviceAt at = inspection.losses().get(i).at();
            checks.require(
                    at != null && fitting.isPresent() && fitting.get().fitted(at),
                    "losses[" + i + "].at",
                    at == null ? null : at.words(),
                    "a device that this installation has");
        }
        checks.require(
                inspection.invented() == installation.content().invented(),
                "invented",
                inspection.invented(),
                "the same as its installation: what was seen of a real one is not invented");
        String on = String.valueOf(inspection.inspectedOn());
        String begun = installation.content().installedOn();
        checks.require(
                begun == null || on.compareTo(begun) >= 0,
                "inspectedOn",
                on,
                "no day before the installation, " + begun);
        others(inspection, installation.slug()).forEach(other -> inOrder(inspection, on, other.content(), checks));
    }

    /** Those of the same installation but the one that this corrects, which goes by the same name. */
    private List<Revision<InspectionDocument>> others(InspectionDocument inspection, String slug) {
        return of(slug).stream()
                .filter(r -> !r.content().name().equals(inspection.name()))
                .toList();
    }

    private static void inOrder(InspectionDocument inspection, String on, InspectionDocument other, Checks checks) {
        double own = hours(inspection);
        double theirs = hours(other);
        int order = on.compareTo(String.valueOf(other.inspectedOn()));
        String words = String.format(Locale.ROOT, "%.1f h of the inspection on %s", theirs, other.inspectedOn());
        checks.require(order <= 0 || own >= theirs, "hoursFlown", inspection.hoursFlown(), "at least the " + words);
        checks.require(order >= 0 || own <= theirs, "hoursFlown", inspection.hoursFlown(), "at most the " + words);
    }

    private static double hours(InspectionDocument inspection) {
        Double hours = inspection.hoursFlown();
        return hours == null ? 0 : hours;
    }

    @Override
    protected List<FieldProblem> referenceProblems(InspectionDocument inspection) {
        Checks checks = new Checks();
        RevisionRef ref = inspection.installation();
        Optional<Revision<InstallationDocument>> found = installation(inspection);
        checks.require(
                found.isPresent() && found.get().isPublic(),
                "installation",
                RevisionRef.words(ref),
                "a published revision");
        return checks.problems();
    }

    /** The exact revision of its installation, if it names one that may be seen. */
    public Optional<Revision<InstallationDocument>> installation(InspectionDocument inspection) {
        return installation(inspection.installation());
    }

    private Optional<Revision<InstallationDocument>> installation(@Nullable RevisionRef ref) {
        return Optional.ofNullable(ref).flatMap(installations::find);
    }

    /** Published inspections of any revision of an installation, by hours flown. */
    public List<Revision<InspectionDocument>> of(String installationSlug) {
        return inspections.ofInstallation(installationSlug).stream()
                .sorted(BY_HOURS)
                .toList();
    }

    /** As {@link #of(String)}, of each of several installations. */
    public Map<String, List<Revision<InspectionDocument>>> of(Collection<String> installationSlugs) {
        return inspections.ofInstallations(installationSlugs).stream()
                .filter(r -> r.content().installation() != null)
                .sorted(BY_HOURS)
                .collect(Collectors.groupingBy(
                        r -> Objects.requireNonNull(r.content().installation()).slug()));
    }

    /** Names of the exact public revisions that inspections looked at. */
    public Map<RevisionRef, String> installationNames(List<Revision<InspectionDocument>> inspections) {
        List<RevisionRef> refs = inspections.stream()
                .flatMap(r -> Stream.ofNullable(r.content().installation()))
                .distinct()
                .toList();
        return installations.allPublic(refs).stream()
                .collect(Collectors.toMap(Revision::ref, r -> r.content().name()));
    }
}
