package org.vanewright.export;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionDefinition;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.account.BaseUrl;
import org.vanewright.account.InstanceSettings;
import org.vanewright.photograph.Photographs;
import org.vanewright.platform.files.WorkingFiles;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.page.Cautions;
import org.vanewright.record.Records;

/**
 * Writes everything public into one file. It is read as it stood at one moment, some records at a time, and goes through
 * files of its own, so that its size asks for disk and not for memory.
 */
@Component
class RecordExport {
    private final Records records;
    private final List<RecordTables<?>> tables;
    private final Photographs photographs;
    private final Cautions cautions;
    private final InstanceSettings instance;
    private final BaseUrl baseUrl;
    private final WorkingFiles working;
    private final TransactionTemplate moment;
    private final TransactionTemplate aside;

    RecordExport(
            Records records,
            List<RecordTables<?>> tables,
            Photographs photographs,
            Cautions cautions,
            InstanceSettings instance,
            BaseUrl baseUrl,
            WorkingFiles working,
            PlatformTransactionManager transactions) {
        this.records = records;
        this.tables = tables.stream()
                .sorted(Comparator.comparing((RecordTables<?> t) -> t.kind()))
                .toList();
        this.photographs = photographs;
        this.cautions = cautions;
        this.instance = instance;
        this.baseUrl = baseUrl;
        this.working = working;
        this.moment = new TransactionTemplate(transactions);
        moment.setReadOnly(true);
        moment.setIsolationLevel(TransactionDefinition.ISOLATION_REPEATABLE_READ);
        this.aside = new TransactionTemplate(transactions);
        aside.setPropagationBehavior(TransactionDefinition.PROPAGATION_NOT_SUPPORTED);
    }

    /**
     * Writes it.
     *
     * @throws IOException where there is no room for it
     */
    void write(OutputStream out, JobProgress progress) throws IOException {
        Path directory = working.directory("export");
        try {
            moment.executeWithoutResult(status -> write(directory, out, seenAside(progress)));
        } catch (UncheckedIOException e) {
            throw e.getCause();
        } finally {
            WorkingFiles.remove(directory);
        }
    }

    /** How far it has come is written by a connection of its own, which sees what others write to it. */
    private JobProgress seenAside(JobProgress progress) {
        return (done, of, words) -> aside.executeWithoutResult(status -> progress.report(done, of, words));
    }

    private void write(Path directory, OutputStream out, JobProgress progress) {
        try (RecordFiles files = new RecordFiles(directory, tables)) {
            files.gather(records.services(), progress);
            new ExportArchive(files, photographs, head(files), cautions.all(files.anyInvented())).write(out, progress);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private DataPackage.Head head(RecordFiles files) {
        String home = baseUrl.of("/");
        files.sources().add(new DataPackage.Source(instance.name(), home));
        return new DataPackage.Head(
                "The public record of " + instance.name(), home, files.changedAt(), files.licences(), files.sources());
    }

    /** Writes it to a place of one's own, for the command line; nothing is left where that fails. */
    void write(Path file, JobProgress progress) throws IOException {
        Path part = file.resolveSibling(Objects.requireNonNull(file.getFileName()) + ".part");
        try {
            try (OutputStream out = Files.newOutputStream(part)) {
                write(out, progress);
            }
            Files.move(part, file);
        } finally {
            Files.deleteIfExists(part);
        }
    }
}
