package org.vanewright.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.beans.factory.ObjectProvider;
import org.springframework.boot.info.BuildProperties;
import org.springframework.core.io.Resource;
import org.springframework.stereotype.Service;
import org.vanewright.account.BaseUrl;
import org.vanewright.account.InstanceSettings;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.job.Job;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.Jobs;
import org.vanewright.record.PublicCount;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import tools.jackson.databind.json.JsonMapper;

/**
 * The export of everything public, for everybody. It is made when somebody asks and kept; the same record is not exported
 * twice, and one is made at a time, whoever asks wherever.
 */
@Service
public class Exports {
    /** Of the tables and files; count it up with any change of them. */
    private static final int VERSION = 1;

    private final RecordExport export;
    private final ExportJob job;
    private final Jobs jobs;
    private final Records records;
    private final InstanceSettings instance;
    private final BaseUrl baseUrl;
    private final JsonMapper mapper;
    private final String build;

    Exports(
            RecordExport export,
            ExportJob job,
            Jobs jobs,
            Records records,
            InstanceSettings instance,
            BaseUrl baseUrl,
            JsonMapper mapper,
            ObjectProvider<BuildProperties> builds) {
        this.export = export;
        this.job = job;
        this.jobs = jobs;
        this.records = records;
        this.instance = instance;
        this.baseUrl = baseUrl;
        this.mapper = mapper;
        BuildProperties properties = builds.getIfAvailable();
        this.build = properties == null ? "" : properties.getVersion() + "@" + properties.getTime();
    }

    /**
     * Where the export stands.
     *
     * @param revisions that are public now
     * @param made the last one that was made; absent where there is none
     * @param current whether that holds the record as it is now
     * @param underWay the one that is being made
     * @param problem why the last one could not be made, where none was made since
     */
    public record Status(
            long revisions,
            @Nullable Job made,
            boolean current,
            @Nullable Job underWay,
            @Nullable String problem) {
        /** Whether asking for it begins anything. */
        public boolean mayStart() {
            return !current && underWay == null;
        }
    }

    public Status status() {
        Standing now = standing();
        Job made = jobs.lastDone(job).orElse(null);
        Job failed = jobs.lastFailed(job).filter(f -> after(f, made)).orElse(null);
        return new Status(
                now.revisions(),
                made,
                made != null && isOf(made, now),
                jobs.underWay(job).orElse(null),
                failed == null ? null : failed.problem());
    }

    private static boolean after(Job failed, @Nullable Job made) {
        return made == null
                || failed.finishedAt() != null
                        && made.finishedAt() != null
                        && failed.finishedAt().isAfter(made.finishedAt());
    }

    private boolean isOf(Job made, Standing standing) {
        return mapper.readValue(made.parameters(), ExportJob.Parameters.class)
                .record()
                .equals(standing.key());
    }

    /** Has it made unless there is one of the record as it is now, or one is being made. */
    public Status start() {
        Standing now = standing();
        Optional<Job> made = jobs.lastDone(job);
        if (made.isEmpty() || !isOf(made.get(), now)) {
            jobs.startForAll(job, "Exporting the public record", new ExportJob.Parameters(now.key()));
        }
        return status();
    }

    /**
     * A file that was made.
     *
     * @param tag tells its bytes from others
     */
    public record Made(String name, String tag, Resource content) {}

    /** @throws RecordNotFoundException where none has been made */
    public Made file() {
        Job made = jobs.lastDone(job).orElseThrow(() -> new RecordNotFoundException("export", "record", null));
        Job.FileHead head = made.file();
        if (head == null) {
            throw new RecordNotFoundException("export", made.id(), null);
        }
        return new Made(head.name(), made.id(), jobs.file(made));
    }

    /** Writes one to a file of the machine, which must not exist, without looking whether there is one. */
    public void write(Path file, JobProgress progress) throws IOException {
        export.write(file, progress);
    }

    private record Standing(String key, long revisions) {}

    /** What the bytes depend on: counts of what only ever grows tell states of the record apart. */
    private Standing standing() {
        StringBuilder all = new StringBuilder(build + "\n" + VERSION + "\n" + instance.name() + "\n" + baseUrl.of("/"));
        long revisions = 0;
        for (RecordService<?> service : records.services()) {
            PublicCount count = service.everythingPublic().count();
            all.append('\n').append(service.kind()).append(' ').append(count);
            revisions += count.revisions();
        }
        return new Standing(Downloads.sha256(all.toString().getBytes(StandardCharsets.UTF_8)), revisions);
    }
}
