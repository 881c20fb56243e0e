package org.vanewright.installation;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.adhesive.AdhesiveDocument;
import org.vanewright.adhesive.AdhesiveService;
import org.vanewright.adhesive.Temperatures;
import org.vanewright.device.PrintMaterial;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutPlan;
import org.vanewright.layout.LayoutPlanner;
import org.vanewright.layout.LayoutService;
import org.vanewright.photograph.Photographs;
import org.vanewright.printrun.PrintRunDocument;
import org.vanewright.printrun.PrintRunService;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Installations and their revisions. Each revision pins the layout that was put on. */
@Service
public class InstallationService extends RecordService<InstallationDocument> {
    private static final String EXISTS = "a revision that exists";

    private final InstallationRepository installations;
    private final LayoutService layouts;
    private final LayoutPlanner planner;
    private final AdhesiveService adhesives;
    private final PrintRunService runs;
    private final Photographs photographs;

    InstallationService(
            InstallationRepository installations,
            LayoutService layouts,
            LayoutPlanner planner,
            AdhesiveService adhesives,
            PrintRunService runs,
            Photographs photographs,
            RecordDesk desk) {
        super("installation", "installations", installations, desk);
        this.installations = installations;
        this.layouts = layouts;
        this.planner = planner;
        this.adhesives = adhesives;
        this.runs = runs;
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(InstallationDocument installation) {
        Checks checks = new Checks();
        InstallationRules.check(installation).forEach(checks::add);
        if (checks.isClean()) {
            Optional<Fitting> fitting = fitting(installation);
            checks.require(fitting.isPresent(), "layout", RevisionRef.words(installation.layout()), EXISTS);
            fitting.ifPresent(f -> onLayout(installation, f, checks));
            requireFound("adhesive", installation.adhesive(), adhesiveRecord(installation), checks);
            requireFound("printRun", installation.printRun(), printRun(installation), checks);
            photographs.missing(installation.photographs()).forEach(checks::add);
        }
        return checks.problems();
    }

    private static void requireFound(String field, @Nullable RevisionRef ref, Optional<?> found, Checks checks) {
        checks.require(ref == null || found.isPresent(), field, RevisionRef.words(ref), EXISTS);
    }

    private static void onLayout(InstallationDocument installation, Fitting fitting, Checks checks) {
        for (int i = 0; i < installation.leftOff().size(); i++) {
            onLayout("leftOff[" + i + "]", installation.leftOff().get(i), fitting, checks);
        }
        for (int i = 0; i < installation.samples().size(); i++) {
            onLayout("samples[" + i + "].at", installation.samples().get(i).at(), fitting, checks);
        }
        checks.require(!fitting.devices().isEmpty(), "leftOff", "all of them", "fewer than the layout has");
    }

    private static void onLayout(String field, @Nullable DeviceAt at, Fitting fitting, Checks checks) {
        checks.require(
                at != null && fitting.find(at).isPresent(),
                field,
                at == null ? null : at.words(),
                "a device of the layout's station table");
    }

    @Override
    protected List<FieldProblem> referenceProblems(InstallationDocument installation) {
        Checks checks = new Checks();
        requirePublic("layout", installation.layout(), layout(installation), checks);
        requirePublic("adhesive", installation.adhesive(), adhesiveRecord(installation), checks);
        requirePublic("printRun", installation.printRun(), printRun(installation), checks);
        return checks.problems();
    }

    /** The exact revision of its layout, if it names one that may be seen. */
    public Optional<Revision<LayoutDocument>> layout(InstallationDocument installation) {
        return Optional.ofNullable(installation.layout()).flatMap(layouts::find);
    }

    /** Names of the exact public revisions of layouts that were put on. */
    public Map<RevisionRef, String> layoutNames(List<Revision<InstallationDocument>> installations) {
        return layouts.allPublic(named(installations, InstallationDocument::layout)).stream()
                .collect(Collectors.toMap(Revision::ref, r -> r.content().name()));
    }

    /** The exact revision of its adhesive, if it names one that may be seen. */
    public Optional<Revision<AdhesiveDocument>> adhesiveRecord(InstallationDocument installation) {
        return Optional.ofNullable(installation.adhesive()).flatMap(adhesives::find);
    }

    /** The exact revision of its print run, if it names one that may be seen. */
    public Optional<Revision<PrintRunDocument>> printRun(InstallationDocument installation) {
        return Optional.ofNullable(installation.printRun()).flatMap(runs::find);
    }

    /** Its devices; empty where its layout cannot be seen or placed. */
    public Optional<Fitting> fitting(InstallationDocument installation) {
        return layout(installation).flatMap(layout -> {
            try {
                return Optional.of(
                        Fitting.of(layout.content(), planner.plan(layout.content()), installation.leftOff()));
            } catch (InvalidInputException e) {
                return Optional.empty(); // a draft's layout need not be placeable
            }
        });
    }

    /** What the pieces are made of, as its print run or it says. */
    public Optional<String> material(InstallationDocument installation) {
        return printRun(installation)
                .map(r -> r.content().printing().material())
                .or(() -> Optional.ofNullable(installation.material()))
                .map(m -> m.label());
    }

    /** What holds the pieces, as its adhesive's record or it says. */
    public Optional<String> adhesive(InstallationDocument installation) {
        return adhesiveRecord(installation)
                .map(a -> a.content().name())
                .or(() -> Optional.ofNullable(installation.adhesiveClass()));
    }

    /** What the adhesive's record says against the temperature of the day. */
    public Optional<String> temperatureWarning(InstallationDocument installation) {
        Double skin = installation.conditions().skinTemperatureC();
        return adhesiveRecord(installation)
                .map(a -> a.content().application())
                .filter(range -> skin != null && isOutside(skin, range))
                .map(range -> "The skin was outside the range in which this adhesive is to be applied by its record.");
    }

    private static boolean isOutside(double skinC, Temperatures range) {
        Double lowest = range.lowestC();
        Double highest = range.highestC();
        return lowest != null && skinC < lowest || highest != null && skinC > highest;
    }

    /** The newest that are published, newest first. */
    public List<Revision<InstallationDocument>> newest(int most) {
        return installations.newest(most);
    }

    /**
     * Published installations with what the records they name say, in as many statements however many there are.
     *
     * @return in the order given
     */
    public List<Described> described(List<Revision<InstallationDocument>> wanted) {
        Map<RevisionRef, Revision<LayoutDocument>> layout =
                byRef(layouts.allPublic(named(wanted, InstallationDocument::layout)));
        Map<RevisionRef, Revision<AdhesiveDocument>> adhesive =
                byRef(adhesives.allPublic(named(wanted, InstallationDocument::adhesive)));
        Map<RevisionRef, Revision<PrintRunDocument>> run =
                byRef(runs.allPublic(named(wanted, InstallationDocument::printRun)));
        Map<RevisionRef, LayoutPlan> plans = planner.plans(List.copyOf(layout.values()));
        return wanted.stream()
                .map(r -> {
                    InstallationDocument document = r.content();
                    Optional<Revision<LayoutDocument>> ofLayout = known(layout, document.layout());
                    return new Described(
                            r,
                            ofLayout.map(l -> l.content().name()).orElse(null),
                            known(adhesive, document.adhesive())
                                    .map(a -> a.content().name())
                                    .orElse(document.adhesiveClass()),
                            known(run, document.printRun())
                                    .map(p -> p.content().printing().material())
                                    .or(() -> Optional.ofNullable(document.material()))
                                    .map(PrintMaterial::label)
                                    .orElse(null),
                            ofLayout.flatMap(l -> Optional.ofNullable(plans.get(l.ref()))
                                            .map(plan -> Fitting.of(l.content(), plan, document.leftOff())
                                                    .devices()))
                                    .orElse(List.of()));
                })
                .toList();
    }

    /**
     * An installation with what it names.
     *
     * @param layoutName null where the layout is not known
     * @param adhesive null where nothing says it
     * @param material null where nothing says it
     * @param devices none where the layout cannot be placed
     */
    public record Described(
            Revision<InstallationDocument> revision,
            @Nullable String layoutName,
            @Nullable String adhesive,
            @Nullable String material,
            List<FittedDevice> devices) {}

    private static List<RevisionRef> named(
            List<Revision<InstallationDocument>> all, Function<InstallationDocument, @Nullable RevisionRef> which) {
        return all.stream()
                .flatMap(r -> Stream.ofNullable(which.apply(r.content())))
                .distinct()
                .toList();
    }

    private static <T extends RecordContent> Map<RevisionRef, Revision<T>> byRef(List<Revision<T>> revisions) {
        return revisions.stream().collect(Collectors.toMap(Revision::ref, Function.identity()));
    }

    private static <T> Optional<T> known(Map<RevisionRef, T> all, @Nullable RevisionRef ref) {
        return ref == null ? Optional.empty() : Optional.ofNullable(all.get(ref));
    }
}
