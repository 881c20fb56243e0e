package org.vanewright.record;

import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;

/** What comes of one kind of record from other instances. Keeping it asks for {@link Power#SUBMIT}. */
public final class Imports<T extends RecordContent> {
    private final RecordService<T> service;
    private final RevisionRepository<T> records;
    private final RecordDesk desk;

    Imports(RecordService<T> service, RevisionRepository<T> records, RecordDesk desk) {
        this.service = service;
        this.records = records;
        this.desk = desk;
    }

    /**
     * The document in a text that claims to be its canonical JSON.
     *
     * @throws InvalidInputException naming {@code field} where it is not, or says what this version cannot keep
     */
    public T read(String field, String canonical) {
        T content;
        String again;
        try {
            content = desk.json().read(canonical, service.contentType());
            again = desk.json().write(content);
        } catch (RuntimeException e) {
            InvalidInputException refused = new InvalidInputException(
                    new FieldProblem(field, "unreadable", "a document of the kind " + service.kind()));
            refused.addSuppressed(e);
            throw refused;
        }
        if (!again.equals(canonical)) {
            throw new InvalidInputException(new FieldProblem(
                    field,
                    "another text",
                    "canonical JSON (RFC 8785) of a " + service.kind() + " as this version of the service knows it"));
        }
        return content;
    }

    /** The document with the records it names under their names here, as canonical JSON. */
    public String localised(T content, UnaryOperator<RecordUse> here) {
        return desk.json().write(content.relocated(here));
    }

    /**
     * The revision here that says the same: of the same hash, and naming the same records.
     *
     * @param localised the document as it would be read here
     */
    public Optional<Revision<T>> known(String sha256, String localised) {
        List<Revision<T>> same = records.withHash(sha256).stream()
                .filter(r -> desk.json().write(r.content()).equals(localised))
                .toList();
        return same.stream()
                .filter(r -> r.isPublic())
                .findFirst()
                .or(() -> same.stream().findFirst());
    }

    /**
     * Keeps it as it is, to be decided on by a reviewer.
     *
     * @throws InvalidInputException with every problem the feature's rules find
     */
    public Revision<T> keep(ImportedDocument document, ImportOrigin origin) {
        PersonRef person = desk.require(Power.SUBMIT);
        String read = document.localised() == null ? document.canonical() : document.localised();
        List<FieldProblem> problems = service.check(records.read(read));
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
        Revision<T> kept = records.keepImported(document, origin);
        desk.log(
                person,
                "revision.imported",
                service.subject(kept.ref()),
                "from " + origin.url() + ", sha256 " + kept.sha256());
        desk.tell(new RevisionEvent(service.kind(), kept.ref(), kept.state()));
        return kept;
    }

    /** The document exactly as it is hashed. */
    public String canonicalJson(Revision<T> revision) {
        return records.canonicalJson(revision.ref()).orElseThrow();
    }

    /** The document with the names that its text has, which for an imported one may be other ones than here. */
    public T asHashed(Revision<T> revision) {
        return records.read(canonicalJson(revision));
    }
}
