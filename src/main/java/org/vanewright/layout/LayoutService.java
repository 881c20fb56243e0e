package org.vanewright.layout;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.springframework.stereotype.Service;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.platform.EditingPolicy;
import org.vanewright.record.RecordNotFoundException;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/** Layouts and their revisions. */
@Service
public class LayoutService {
    private static final String KIND = "layout";

    private final LayoutRepository layouts;
    private final LayoutPlanner planner;
    private final EditingPolicy editing;

    LayoutService(LayoutRepository layouts, LayoutPlanner planner, EditingPolicy editing) {
        this.layouts = layouts;
        this.planner = planner;
        this.editing = editing;
    }

    public Optional<Revision<LayoutDocument>> latest(String slug) {
        return layouts.latest(slug);
    }

    /** @throws RecordNotFoundException if nothing is published under that slug */
    public Revision<LayoutDocument> published(String slug) {
        return layouts.latest(slug).orElseThrow(() -> new RecordNotFoundException(KIND, slug, null));
    }

    public Optional<Revision<LayoutDocument>> find(RevisionRef ref) {
        return layouts.find(ref);
    }

    /** @throws RecordNotFoundException if there is no such revision */
    public Revision<LayoutDocument> exactly(RevisionRef ref) {
        return layouts.find(ref).orElseThrow(() -> new RecordNotFoundException(KIND, ref.slug(), ref.revision()));
    }

    /** Every revision, newest first. */
    public List<Revision<LayoutDocument>> history(String slug) {
        return layouts.history(slug);
    }

    /** Published layouts, newest first. */
    public RecordPage<Revision<LayoutDocument>> list(@Nullable String cursor, int limit) {
        return layouts.list(cursor, limit);
    }

    public boolean verify(Revision<LayoutDocument> revision) {
        return layouts.verify(revision);
    }

    /**
     * Publishes a new layout.
     *
     * @throws InvalidInputException with every problem the rules find
     */
    public Revision<LayoutDocument> create(
            LayoutDocument layout, String contributor, @Nullable RevisionRef derivedFrom) {
        editing.requireOpen();
        return publish(layout, contributor, derivedFrom);
    }

    /**
     * Publishes the next revision.
     *
     * @throws InvalidInputException with every problem the rules find
     * @throws org.vanewright.record.RevisionConflictException if {@code base} is no longer the published one
     */
    public Revision<LayoutDocument> revise(RevisionRef base, LayoutDocument layout, String contributor) {
        editing.requireOpen();
        return publishNext(base, layout, contributor);
    }

    /** As {@link #create} without asking who may edit: for data that comes with the service. */
    Revision<LayoutDocument> publish(LayoutDocument layout, String contributor, @Nullable RevisionRef derivedFrom) {
        requireValid(layout);
        return layouts.publishNew(layout, contributor, derivedFrom);
    }

    Revision<LayoutDocument> publishNext(RevisionRef base, LayoutDocument layout, String contributor) {
        requireValid(layout);
        return layouts.publishNext(base, layout, contributor);
    }

    /** A layout is valid when its devices can be placed and its template drawn. */
    private void requireValid(LayoutDocument layout) {
        LayoutTemplates.requireDrawable(planner.plan(layout));
    }
}
