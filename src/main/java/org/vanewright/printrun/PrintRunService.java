package org.vanewright.printrun;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.device.DeviceDocument;
import org.vanewright.device.DeviceService;
import org.vanewright.engineering.input.Checks;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.layout.LayoutDocument;
import org.vanewright.layout.LayoutService;
import org.vanewright.layout.RowDocument;
import org.vanewright.photograph.Photographs;
import org.vanewright.record.RecordDesk;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Print runs and their revisions. Each revision pins the device that was printed. */
@Service
public class PrintRunService extends RecordService<PrintRunDocument> {
    private final DeviceService devices;
    private final LayoutService layouts;
    private final Photographs photographs;

    PrintRunService(
            PrintRunRepository runs,
            DeviceService devices,
            LayoutService layouts,
            Photographs photographs,
            RecordDesk desk) {
        super("print-run", "print-runs", runs, desk);
        this.devices = devices;
        this.layouts = layouts;
        this.photographs = photographs;
    }

    @Override
    protected List<FieldProblem> problems(PrintRunDocument run) {
        Checks checks = new Checks();
        PrintRunRules.check(run).forEach(checks::add);
        if (checks.isClean()) {
            checks.require(
                    device(run).isPresent(), "device", RevisionRef.words(run.device()), "a revision that exists");
            Optional<Revision<LayoutDocument>> layout = layout(run);
            checks.require(
                    run.layout() == null || layout.isPresent(),
                    "layout",
                    RevisionRef.words(run.layout()),
                    "a revision that exists");
            layout.ifPresent(l -> checks.require(
                    l.content().rows().stream().map(RowDocument::device).anyMatch(d -> sameDevice(d, run.device())),
                    "layout",
                    RevisionRef.words(run.layout()),
                    "a layout with some revision of that device"));
            photographs.missing(run.photographs()).forEach(checks::add);
        }
        return checks.problems();
    }

    private static boolean sameDevice(@Nullable RevisionRef one, @Nullable RevisionRef other) {
        return one != null && other != null && one.slug().equals(other.slug());
    }

    @Override
    protected List<FieldProblem> referenceProblems(PrintRunDocument run) {
        Checks checks = new Checks();
        checks.present("device", run.device(), "a published revision");
        requirePublic("device", run.device(), device(run), checks);
        requirePublic("layout", run.layout(), layout(run), checks);
        return checks.problems();
    }

    /** The exact revision of its device, if it names one that may be seen. */
    public Optional<Revision<DeviceDocument>> device(PrintRunDocument run) {
        return Optional.ofNullable(run.device()).flatMap(devices::find);
    }

    /** The exact revision of its layout, if it names one that may be seen. */
    public Optional<Revision<LayoutDocument>> layout(PrintRunDocument run) {
        return Optional.ofNullable(run.layout()).flatMap(layouts::find);
    }
}
