package org.vanewright.kit;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.DigestOutputStream;
import java.security.MessageDigest;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.UUID;
import java.util.function.Function;
import java.util.function.Supplier;
import org.springframework.stereotype.Service;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.TransactionStatus;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.audit.AuditLog;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.editing.Picture;
import org.vanewright.platform.editing.RecordView;
import org.vanewright.platform.page.Units;
import org.vanewright.record.Actors;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.DraftClosedException;
import org.vanewright.record.PersonRef;
import org.vanewright.record.Power;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.RevisionRef;

/**
 * Takes kits in, in two steps: what was sent is looked at, then kept or given up. A preview is the keeping itself, undone
 * again, so that it shows exactly what will be. Everything asks for {@link Power#SUBMIT}; a preview is its sender's alone.
 */
@Service
public class KitImports {
    private static final Duration LEFT_LYING = Duration.ofDays(1);

    private final KitReader reader;
    private final KitKeeping keeping;
    private final KitRepository kits;
    private final Records records;
    private final List<RecordView<?>> views;
    private final CanonicalJson json;
    private final Actors actors;
    private final AuditLog audit;
    private final TransactionTemplate transactions;
    private final Clock clock;

    KitImports(
            KitReader reader,
            KitKeeping keeping,
            KitRepository kits,
            Records records,
            List<RecordView<?>> views,
            CanonicalJson json,
            Actors actors,
            AuditLog audit,
            PlatformTransactionManager transactions,
            Clock clock) {
        this.reader = reader;
        this.keeping = keeping;
        this.kits = kits;
        this.records = records;
        this.views = List.copyOf(views);
        this.json = json;
        this.actors = actors;
        this.audit = audit;
        this.transactions = new TransactionTemplate(transactions);
        this.clock = clock;
    }

    /** @throws org.vanewright.record.NotAllowedException for who may not import, before anything is read */
    public PersonRef requireImporter() {
        return actors.current().person(Power.SUBMIT);
    }

    /**
     * Looks at a kit and keeps it apart until its sender decides.
     *
     * @return id of the import
     * @throws InvalidInputException naming {@code file}, with the reason for what is not a sound kit; nothing is kept then
     */
    public String send(InputStream content) throws IOException {
        PersonRef person = requireImporter();
        Path file = Files.createTempFile("vanewright-import", ".zip");
        try {
            String sha256 = copy(content, file);
            KitArchive archive = KitArchive.read(file);
            return stage(reader.read(archive), archive, sha256, person);
        } finally {
            Files.deleteIfExists(file);
        }
    }

    private static String copy(InputStream content, Path file) throws IOException {
        MessageDigest digest = Downloads.sha256();
        try (OutputStream out = new DigestOutputStream(Files.newOutputStream(file), digest)) {
            byte[] buffer = new byte[8192];
            long count = 0;
            for (int n = content.read(buffer); n >= 0; n = content.read(buffer)) {
                count += n;
                KitRefusal.require(
                        count <= ZipDirectory.MOST_BYTES,
                        "a larger file",
                        "at most " + (ZipDirectory.MOST_BYTES >> 20) + " MB");
                out.write(buffer, 0, n);
            }
        }
        return HexFormat.of().formatHex(digest.digest());
    }

    private String stage(ReceivedKit kit, KitArchive archive, String sha256, PersonRef person) {
        List<Map.Entry<String, byte[]>> pictures = new ArrayList<>();
        for (String photograph : kit.photographs()) {
            pictures.add(Map.entry(photograph, archive.bytes("photographs/" + photograph + ".jpg")));
        }
        String id = UUID.randomUUID().toString();
        Instant now = now();
        // every rule of every record is asked before anything is kept
        tried(() -> keeping.keep(kit, pictures, id, person, now), items -> true);
        transactions.executeWithoutResult(status -> {
            kits.sweep(person.id(), now.minus(LEFT_LYING));
            kits.insert(id, person, sha256, now, json.write(kit));
            pictures.forEach(p -> kits.insertPhotograph(id, p.getKey(), p.getValue()));
        });
        return id;
    }

    /**
     * What was sent and what becomes, or became, of it.
     *
     * @throws RecordNotFoundException if the person asking has no such import
     */
    public KitPreview preview(String id, Units units) {
        PersonRef person = requireImporter();
        KitRepository.Row row = row(id, person);
        if (row.outcome() != null) {
            Outcome outcome = json.read(row.outcome(), Outcome.class);
            return preview(row, outcome, List.of());
        }
        ReceivedKit kit = json.read(row.contents(), ReceivedKit.class);
        return tried(() -> keeping.keep(kit, kits.photographs(id), id, person, now()), items -> {
            Outcome outcome = Outcome.of(kit, items);
            return preview(row, outcome, pictures(outcome.layout(), units));
        });
    }

    private static KitPreview preview(KitRepository.Row row, Outcome outcome, List<Picture> pictures) {
        return new KitPreview(
                row.id(),
                row.sha256(),
                row.sentAt(),
                row.keptAt(),
                outcome.layout(),
                outcome.items(),
                outcome.photographs(),
                pictures);
    }

    /** What came of an import, as it is stored. */
    record Outcome(KitItem layout, List<KitItem> items, int photographs) {
        static Outcome of(ReceivedKit kit, List<KitItem> items) {
            int index = kit.documents().indexOf(kit.main());
            return new Outcome(items.get(index), items, kit.photographs().size());
        }
    }

    private List<Picture> pictures(KitItem layout, Units units) {
        return records.ofPlural("layouts").map(s -> pictures(s, layout, units)).orElse(List.of());
    }

    private <T extends RecordContent> List<Picture> pictures(RecordService<T> service, KitItem layout, Units units) {
        T content = service.exactly(new RevisionRef(layout.localSlug(), layout.localRevision()))
                .content();
        return views.stream()
                .filter(v -> v.kind().equals(service.kind()))
                .flatMap(v -> KitImports.<T>ofKind(v).pictures(content, units, "kit-").stream())
                .toList();
    }

    @SuppressWarnings("unchecked") // the kind names the type
    private static <T extends RecordContent> RecordView<T> ofKind(RecordView<?> view) {
        return (RecordView<T>) view;
    }

    /**
     * Keeps what was sent.
     *
     * @throws InvalidInputException where something here has changed meanwhile so that it cannot be kept
     * @throws DraftClosedException if it is kept already
     */
    public KitItem keep(String id) {
        PersonRef person = requireImporter();
        KitRepository.Row row = row(id, person);
        if (row.keptAt() != null) {
            throw new DraftClosedException("This kit is kept already.");
        }
        ReceivedKit kit = json.read(row.contents(), ReceivedKit.class);
        Instant now = now();
        return Objects.requireNonNull(transactions.execute(status -> {
            List<KitItem> items = keeping.keep(kit, kits.photographs(id), id, person, now);
            Outcome outcome = Outcome.of(kit, items);
            if (!kits.markKept(id, now, json.write(outcome))) {
                throw new DraftClosedException("This kit is kept already.");
            }
            kits.deletePhotographs(id);
            audit.add(
                    person.id(),
                    person.name(),
                    "kit.imported",
                    "layouts/" + outcome.layout().localSlug() + " revision "
                            + outcome.layout().localRevision(),
                    "sha256 " + row.sha256());
            return outcome.layout();
        }));
    }

    /** Gives up what was sent and not kept. */
    public void discard(String id) {
        PersonRef person = requireImporter();
        if (!kits.discard(id, person.id())) {
            row(id, person);
            throw new DraftClosedException("This kit is kept already.");
        }
    }

    private KitRepository.Row row(String id, PersonRef person) {
        return kits.find(id, person.id()).orElseThrow(() -> new RecordNotFoundException("import", id, null));
    }

    /** Does it, looks at what has come of it, and undoes it. */
    private <A, R> R tried(Supplier<A> work, Function<A, R> look) {
        return Objects.requireNonNull(transactions.execute((TransactionStatus status) -> {
            status.setRollbackOnly();
            return look.apply(work.get());
        }));
    }

    private Instant now() {
        return clock.instant().truncatedTo(ChronoUnit.MICROS);
    }
}
