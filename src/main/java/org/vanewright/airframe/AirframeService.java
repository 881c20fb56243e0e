package org.vanewright.airframe;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.EditingPolicy;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Airframes and their revisions. */
@Service
public class AirframeService {
    private static final String KIND = "airframe";

    private final AirframeRepository airframes;
    private final EditingPolicy editing;

    AirframeService(AirframeRepository airframes, EditingPolicy editing) {
        this.airframes = airframes;
        this.editing = editing;
    }

    public Optional<Revision<AirframeDocument>> latest(String slug) {
        return airframes.latest(slug);
    }

    /** @throws RecordNotFoundException if nothing is published under that slug */
    public Revision<AirframeDocument> published(String slug) {
        return airframes.latest(slug).orElseThrow(() -> new RecordNotFoundException(KIND, slug, null));
    }

    public Optional<Revision<AirframeDocument>> find(RevisionRef ref) {
        return airframes.find(ref);
    }

    /** @throws RecordNotFoundException if there is no such revision */
    public Revision<AirframeDocument> exactly(RevisionRef ref) {
        return airframes.find(ref).orElseThrow(() -> new RecordNotFoundException(KIND, ref.slug(), ref.revision()));
    }

    /** Every revision, newest first. */
    public List<Revision<AirframeDocument>> history(String slug) {
        return airframes.history(slug);
    }

    /** Published airframes, newest first. */
    public RecordPage<Revision<AirframeDocument>> list(@Nullable String cursor, int limit) {
        return airframes.list(cursor, limit);
    }

    public boolean verify(Revision<AirframeDocument> revision) {
        return airframes.verify(revision);
    }

    /**
     * Publishes a new airframe.
     *
     * @throws InvalidInputException with every problem the rules find
     */
    public Revision<AirframeDocument> create(
            AirframeDocument airframe, String contributor, @Nullable RevisionRef derivedFrom) {
        editing.requireOpen();
        return publish(airframe, contributor, derivedFrom);
    }

    /**
     * Publishes the next revision.
     *
     * @throws InvalidInputException with every problem the rules find
     * @throws org.vanewright.record.RevisionConflictException if {@code base} is no longer the published one
     */
    public Revision<AirframeDocument> revise(RevisionRef base, AirframeDocument airframe, String contributor) {
        editing.requireOpen();
        return publishNext(base, airframe, contributor);
    }

    /** As {@link #create} without asking who may edit: for data that comes with the service. */
    Revision<AirframeDocument> publish(
            AirframeDocument airframe, String contributor, @Nullable RevisionRef derivedFrom) {
        requireValid(airframe);
        return airframes.publishNew(airframe, contributor, derivedFrom);
    }

    Revision<AirframeDocument> publishNext(RevisionRef base, AirframeDocument airframe, String contributor) {
        requireValid(airframe);
        return airframes.publishNext(base, airframe, contributor);
    }

    private static void requireValid(AirframeDocument airframe) {
        List<FieldProblem> problems = AirframeRules.check(airframe);
        if (!problems.isEmpty()) {
            throw new InvalidInputException(problems);
        }
    }
}
