package org.vanewright.review;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;

/**
 * A revision and what was made from it, as far as the reader may see it.
 *
 * @param revision the one
 * @param here whether it belongs to the record in question
 * @param children made from it, oldest first
 * @param cut whether more was made from it than is shown
 */
public record Lineage(Revision<?> revision, boolean here, List<Lineage> children, boolean cut) {
    private static final int HIGHEST = 60;
    private static final int DEEPEST = 60;
    private static final int MOST = 200;

    /** The tree that a revision stands in, from its oldest ancestor down. */
    public static <T extends RecordContent> Lineage of(RecordService<T> service, Revision<T> revision) {
        Revision<T> root = revision;
        Set<RevisionRef> seen = new HashSet<>();
        while (root.derivedFrom() != null && seen.size() < HIGHEST && seen.add(root.ref())) {
            Revision<T> parent = service.find(root.derivedFrom()).orElse(null);
            if (parent == null) {
                break;
            }
            root = parent;
        }
        return new Builder<>(service, revision.slug()).node(root, 0);
    }

    /** How many revisions it shows. */
    public int size() {
        return 1 + children.stream().mapToInt(Lineage::size).sum();
    }

    private static final class Builder<T extends RecordContent> {
        private final RecordService<T> service;
        private final String slug;
        private final Set<RevisionRef> shown = new HashSet<>();

        Builder(RecordService<T> service, String slug) {
            this.service = service;
            this.slug = slug;
        }

        Lineage node(Revision<T> revision, int depth) {
            shown.add(revision.ref());
            List<Lineage> children = new ArrayList<>();
            boolean cut = false;
            for (Revision<T> child : service.children(revision.ref())) {
                if (shown.size() >= MOST || depth >= DEEPEST) {
                    cut = true;
                } else if (!shown.contains(child.ref())) {
                    children.add(node(child, depth + 1));
                }
            }
            return new Lineage(revision, revision.slug().equals(slug), List.copyOf(children), cut);
        }
    }
}
