package org.vanewright.catalogue.search;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.function.Function;
import org.vanewright.catalogue.FacetValue;

/**
 * The facet index of this instance, brought up to what the database holds: all of it at the first search, then what has
 * changed since.
 */
final class EntryIndex {
    private static final long NOTHING = -1;

    private final SearchRepository entries;
    private final ReadWriteLock lock = new ReentrantReadWriteLock();
    private final FacetIndex index = new FacetIndex();
    private long changes = NOTHING;

    EntryIndex(SearchRepository entries) {
        this.entries = entries;
    }

    /**
     * Looks something up that is as it was after so many changes, or later.
     *
     * @param wanted number of changes
     */
    <T> T at(long wanted, Function<FacetIndex, T> question) {
        catchUp(wanted);
        lock.readLock().lock();
        try {
            return question.apply(index);
        } finally {
            lock.readLock().unlock();
        }
    }

    private void catchUp(long wanted) {
        lock.readLock().lock();
        boolean there = changes >= wanted;
        lock.readLock().unlock();
        if (there) {
            return;
        }
        lock.writeLock().lock();
        try {
            if (changes < wanted) {
                read();
                // Only now: where the database went away meanwhile, the next search begins again.
                changes = wanted;
            }
        } finally {
            lock.writeLock().unlock();
        }
    }

    private void read() {
        if (changes != NOTHING) {
            entries.removedSince(changes).forEach(id -> index.remove(Math.toIntExact(id)));
        }
        List<EntryRow> rows = entries.since(changes);
        rows.forEach(index::put);
        Set<Long> signatures = new HashSet<>();
        rows.forEach(row -> signatures.add(row.signature()));
        if (!signatures.isEmpty()) {
            entries.signatures(signatures, new InStep(rows, index)::values);
        }
    }

    /** Entries and signatures, both by the number of the signature. */
    private static final class InStep {
        private final List<EntryRow> rows;
        private final FacetIndex index;
        private int next;

        InStep(List<EntryRow> rows, FacetIndex index) {
            this.rows = rows;
            this.index = index;
        }

        void values(long signature, List<FacetValue> values) {
            while (next < rows.size() && rows.get(next).signature() <= signature) {
                if (rows.get(next).signature() == signature) {
                    index.add(rows.get(next).id(), values);
                }
                next++;
            }
        }
    }
}
