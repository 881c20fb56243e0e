package org.vanewright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.util.HexFormat;
import org.springframework.stereotype.Component;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.files.WorkingFiles;
import org.vanewright.platform.job.JobKind;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.JobResult;

/** The export as a job. */
@Component
class ExportJob implements JobKind<ExportJob.Parameters> {
    private final RecordExport export;
    private final WorkingFiles working;

    ExportJob(RecordExport export, WorkingFiles working) {
        this.export = export;
        this.working = working;
    }

    /** @param record which state of the record was asked for; a later one may be what is exported */
    record Parameters(String record) {}

    @Override
    public String name() {
        return "record-export";
    }

    @Override
    public Class<Parameters> parameters() {
        return Parameters.class;
    }

    /** Its name says which bytes it has. */
    @Override
    public JobResult run(Parameters parameters, JobProgress progress) {
        MessageDigest digest = Downloads.sha256();
        try {
            Path file = working.written("record", path -> {
                try (OutputStream out = new DigestOutputStream(Files.newOutputStream(path), digest)) {
                    export.write(out, progress);
                }
            });
            String sha256 = HexFormat.of().formatHex(digest.digest());
            return JobResult.file("vanewright-record-" + sha256.substring(0, 12) + ".zip", "application/zip", file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
