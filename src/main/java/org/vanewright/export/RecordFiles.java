package org.vanewright.export;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.Licence;
import org.vanewright.record.PublicDocument;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.photograph.PhotographUse;

/** Tables and documents, each in a file, as they are gathered from the records. */
final class RecordFiles implements Closeable {
    private static final int AT_ONCE = 25;

    private final Path directory;
    private final Map<String, RecordTables<?>> ofKind;
    private final Map<String, TableFile> tables = new LinkedHashMap<>();
    private final Map<String, PartFile> documents = new TreeMap<>();
    private final Set<String> photographs = new TreeSet<>();
    private final Set<Licence> licences = EnumSet.noneOf(Licence.class);
    private final Set<DataPackage.Source> sources =
            new TreeSet<>(Comparator.comparing(DataPackage.Source::path).thenComparing(DataPackage.Source::title));
    private @Nullable Instant changedAt;
    private boolean anyInvented;

    RecordFiles(Path directory, List<RecordTables<?>> kinds) throws IOException {
        this.directory = directory;
        this.ofKind = kinds.stream().collect(Collectors.toMap(RecordTables::kind, k -> k));
        List<Table<?>> all = new ArrayList<>(SharedTables.all());
        kinds.forEach(kind -> kind.tables().forEach(t -> all.add(t.table())));
        for (Table<?> table : all) {
            tables.put(table.name(), new TableFile(table, directory));
        }
        for (Licence licence : Licence.values()) {
            add(SharedTables.LICENCES, licence);
        }
    }

    private <R> void add(Table<R> table, R row) {
        file(table).row(table.cells(row));
    }

    private TableFile file(Table<?> table) {
        TableFile file = tables.get(table.name());
        if (file == null) {
            throw new IllegalStateException("no such table: " + table.name());
        }
        return file;
    }

    void gather(List<RecordService<?>> services, JobProgress progress) throws IOException {
        Map<RecordService<?>, List<String>> slugs = new LinkedHashMap<>();
        services.forEach(
                service -> slugs.put(service, service.everythingPublic().slugs()));
        long of = slugs.values().stream().mapToLong(List::size).sum();
        long done = 0;
        for (Map.Entry<RecordService<?>, List<String>> each : slugs.entrySet()) {
            done = gather(each.getKey(), each.getValue(), progress, done, of);
        }
    }

    private <T extends RecordContent> long gather(
            RecordService<T> service, List<String> slugs, JobProgress progress, long done, long of) throws IOException {
        String name = "documents/" + service.plural() + ".jsonl";
        PartFile lines = new PartFile(directory.resolve(service.plural() + ".jsonl"));
        documents.put(name, lines);
        List<RecordTable<T, ?>> own = tablesOf(service);
        int line = 0;
        for (int from = 0; from < slugs.size(); from += AT_ONCE) {
            progress.report(done + from, of, service.plural() + ": " + from + " of " + slugs.size());
            for (PublicDocument<T> document :
                    service.everythingPublic().of(slugs.subList(from, Math.min(slugs.size(), from + AT_ONCE)))) {
                lines.line(document.canonicalJson());
                line++;
                own.forEach(table -> table.write(document.revision(), file(table.table())::row));
                shared(service.kind(), document.revision(), name, line);
            }
        }
        lines.close();
        return done + slugs.size();
    }

    @SuppressWarnings("unchecked") // the kind names the type
    private <T extends RecordContent> List<RecordTable<T, ?>> tablesOf(RecordService<T> service) {
        RecordTables<?> found = ofKind.get(service.kind());
        return found == null ? List.of() : ((RecordTables<T>) found).tables();
    }

    private void shared(String kind, Revision<?> revision, String document, int line) {
        add(SharedTables.REVISIONS, new SharedTables.Entry(kind, revision, document, line));
        int number = 0;
        for (var origin : revision.content().provenance()) {
            add(SharedTables.ORIGINS, new SharedTables.Part<>(kind, revision, ++number, origin));
        }
        number = 0;
        for (PhotographUse use : revision.content().photographs()) {
            add(SharedTables.PHOTOGRAPH_USES, new SharedTables.Part<>(kind, revision, ++number, use));
            if (use.sha256() != null) {
                photographs.add(use.sha256());
            }
        }
        if (revision.standing().licence() != null) {
            licences.add(revision.standing().licence());
        }
        ImportOrigin origin = revision.standing().origin();
        if (origin != null) {
            sources.add(new DataPackage.Source(origin.instance(), origin.url()));
        }
        anyInvented |= revision.content().invented();
        changedAt = Stream.of(changedAt, revision.shownAt(), revision.standing().publishedAt(), closedAt(revision))
                .flatMap(Stream::ofNullable)
                .max(Comparator.naturalOrder())
                .orElse(null);
    }

    private static @Nullable Instant closedAt(Revision<?> revision) {
        return revision.standing().closedAt();
    }

    /** A photograph that has been put into the export. */
    void note(SharedTables.Photograph photograph) {
        add(SharedTables.PHOTOGRAPHS, photograph);
    }

    /** No more rows. */
    void finish() throws IOException {
        for (TableFile table : tables.values()) {
            table.close();
        }
    }

    List<TableFile> tables() {
        return List.copyOf(tables.values());
    }

    Map<String, PartFile> documents() {
        return documents;
    }

    Set<String> photographs() {
        return photographs;
    }

    List<Licence> licences() {
        return List.copyOf(licences);
    }

    Set<DataPackage.Source> sources() {
        return sources;
    }

    @Nullable
    Instant changedAt() {
        return changedAt;
    }

    boolean anyInvented() {
        return anyInvented;
    }

    @Override
    public void close() throws IOException {
        finish();
        for (PartFile lines : documents.values()) {
            lines.close();
        }
    }
}
