package org.vanewright.kit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.stereotype.Component;
import org.vanewright.platform.files.WorkingFiles;
import org.vanewright.platform.job.JobFailure;
import org.vanewright.platform.job.JobKind;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.JobResult;
import org.vanewright.record.RecordNotFoundException;

/** The kit of a public layout as a job. */
@Component
class KitJob implements JobKind<KitJob.Parameters> {
    private final ObjectProvider<Kits> kits;
    private final WorkingFiles working;

    KitJob(ObjectProvider<Kits> kits, WorkingFiles working) {
        this.kits = kits;
        this.working = working;
    }

    /** As the address of the kit names them. */
    record Parameters(String slug, int revision, String results) {}

    @Override
    public String name() {
        return "layout-kit";
    }

    @Override
    public Class<Parameters> parameters() {
        return Parameters.class;
    }

    @Override
    public JobResult run(Parameters parameters, JobProgress progress) {
        try {
            KitPlan plan = kits.getObject().plan(parameters.slug(), parameters.revision(), parameters.results());
            Path file = working.written("kit", path -> kits.getObject().write(plan, path, progress));
            return JobResult.file(Kits.fileName(plan), "application/zip", file);
        } catch (RecordNotFoundException e) {
            throw new JobFailure("The layout is not public any more.");
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
