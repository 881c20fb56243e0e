package org.vanewright.kit;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Component;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.photograph.Photographs;
import org.vanewright.platform.Downloads;
import org.vanewright.record.ImportOrigin;
import org.vanewright.record.ImportedDocument;
import org.vanewright.record.Imports;
import org.vanewright.record.Licence;
import org.vanewright.record.Lists;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.RecordState;
import org.vanewright.record.RecordUse;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * Puts the revisions of a kit beside what is here. A document keeps its bytes, in which it names others by their slugs at
 * its origin; where those are other records here, it is read with the names that they have here, and both are kept.
 */
@Component
class KitKeeping {
    private final Records records;
    private final Photographs photographs;
    private final KitRepository kits;

    KitKeeping(Records records, Photographs photographs, KitRepository kits) {
        this.records = records;
        this.photographs = photographs;
        this.kits = kits;
    }

    /**
     * Keeps everything that is not here yet. To be called in a transaction, so that all of it is kept or nothing.
     *
     * @throws InvalidInputException with the reason where one of them breaks a rule or was refused here before
     */
    List<KitItem> keep(
            ReceivedKit kit, List<Map.Entry<String, byte[]>> pictures, String importId, PersonRef person, Instant at) {
        pictures.forEach(p -> photographs.adopt(p.getKey(), p.getValue()));
        Map<String, RecordUse> here = new HashMap<>();
        List<KitItem> items = new ArrayList<>();
        for (ReceivedKit.Document document : kit.documents()) {
            RecordService<?> service =
                    records.ofPlural(String.valueOf(document.entry().plural())).orElseThrow();
            KitItem item = keep(service, document, here, new Import(importId, person, at));
            here.put(
                    String.valueOf(document.entry().path()),
                    new RecordUse(item.plural(), new RevisionRef(item.localSlug(), item.localRevision())));
            items.add(item);
        }
        return items;
    }

    private record Import(String id, PersonRef person, Instant at) {}

    private <T extends RecordContent> KitItem keep(
            RecordService<T> service, ReceivedKit.Document document, Map<String, RecordUse> here, Import by) {
        KitIndex.Entry entry = document.entry();
        String path = String.valueOf(entry.path());
        Imports<T> imports = service.imports();
        try {
            T content = imports.read("", document.canonical());
            KitRefusal.require(
                    content.name().equals(entry.name()), "called " + entry.name(), "the name in the document");
            Map<RecordUse, RecordUse> names = names(content, entry, here);
            String localised = imports.localised(content, names::get);
            String sha256 = String.valueOf(entry.sha256());
            Optional<Revision<T>> known = imports.known(sha256, localised);
            known.ifPresent(KitKeeping::requireNotRefused);
            if (known.isPresent()) {
                return item(entry, known.get().ref(), true);
            }
            return item(entry, keep(service, document, localised, by).ref(), false);
        } catch (InvalidInputException e) {
            throw new InvalidInputException(
                    e.problems().stream().map(p -> within(path, p)).toList());
        }
    }

    private static FieldProblem within(String path, FieldProblem p) {
        return new FieldProblem(
                KitRefusal.FIELD, path + (p.field().isEmpty() ? "" : ", " + p.field()) + ": " + p.value(), p.allowed());
    }

    private static void requireNotRefused(Revision<?> known) {
        KitRefusal.require(
                known.state() != RecordState.RETURNED,
                "refused here by " + known.standing().closedBy() + ": "
                        + known.standing().reason(),
                "what reviewers here have not refused");
    }

    /** What each name in the document means here. */
    private static Map<RecordUse, RecordUse> names(
            RecordContent content, KitIndex.Entry entry, Map<String, RecordUse> here) {
        Map<RecordUse, RecordUse> meant = new LinkedHashMap<>();
        for (KitIndex.Reference r : Lists.present(entry.references())) {
            RevisionRef name = new RevisionRef(String.valueOf(r.slug()), r.revision() == null ? 0 : r.revision());
            RecordUse found = Objects.requireNonNull(here.get(String.valueOf(r.path())));
            KitRefusal.require(
                    found.plural().equals(r.plural()), r.path() + " as " + r.plural(), "a document of that kind");
            meant.put(new RecordUse(found.plural(), name), found);
        }
        for (RecordUse use : content.uses()) {
            KitRefusal.require(
                    meant.containsKey(use),
                    use.plural() + "/" + RevisionRef.words(use.ref()) + " missing",
                    "every revision that a document names");
        }
        return meant;
    }

    private <T extends RecordContent> Revision<T> keep(
            RecordService<T> service, ReceivedKit.Document document, String localised, Import by) {
        KitIndex.Entry entry = document.entry();
        boolean same = localised.equals(document.canonical());
        ImportOrigin origin = new ImportOrigin(
                by.id(),
                String.valueOf(entry.instance()),
                String.valueOf(entry.url()),
                String.valueOf(entry.slug()),
                Objects.requireNonNull(entry.revision()),
                entry.publishedAt(),
                entry.derivedFrom(),
                entry.withdrawn(),
                by.person().id(),
                by.person().name(),
                by.at(),
                same ? null : Downloads.sha256(localised.getBytes(StandardCharsets.UTF_8)));
        ImportedDocument imported = new ImportedDocument(
                document.canonical(),
                same ? null : localised,
                String.valueOf(entry.contributor()),
                Objects.requireNonNull(entry.createdAt()),
                licence(entry.licence()));
        Revision<T> kept = service.imports().keep(imported, origin);
        kits.insertProvenance(service.plural(), kept.ref(), document.provenance());
        return kept;
    }

    private static @Nullable Licence licence(@Nullable String spdx) {
        return Arrays.stream(Licence.values())
                .filter(l -> l.spdx().equals(spdx))
                .findFirst()
                .orElse(null);
    }

    private static KitItem item(KitIndex.Entry e, RevisionRef here, boolean known) {
        return new KitItem(
                String.valueOf(e.plural()),
                String.valueOf(e.name()),
                String.valueOf(e.slug()),
                Objects.requireNonNull(e.revision()),
                String.valueOf(e.sha256()),
                String.valueOf(e.instance()),
                String.valueOf(e.url()),
                String.valueOf(e.contributor()),
                Objects.requireNonNull(e.createdAt()),
                e.licence(),
                e.withdrawn(),
                known,
                here.slug(),
                here.revision());
    }
}
