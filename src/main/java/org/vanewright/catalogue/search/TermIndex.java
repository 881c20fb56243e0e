package org.vanewright.catalogue.search;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.roaringbitmap.RoaringBitmap;
import org.vanewright.catalogue.search.WordIndexRepository.Fitting;
import org.vanewright.catalogue.search.WordIndexRepository.Wanted;
import org.vanewright.platform.HeapShare;

/**
 * The entries in which a term is, as the database found them: read once, and then only what has changed since. A word that
 * most entries have is so read once for many searches.
 */
final class TermIndex {
    private static final long KEPT_BYTES = HeapShare.bytes(40);
    private static final int BYTES_BESIDES = 200;

    private final WordIndexRepository words;
    private final Cache<String, Read> kept = Caffeine.newBuilder()
            .maximumWeight(KEPT_BYTES)
            .weigher((String key, Read read) ->
                    BYTES_BESIDES + key.length() + read.entries().getSizeInBytes())
            .build();

    /** Entries after so many changes; never altered. */
    private record Read(long changes, RoaringBitmap entries) {}

    TermIndex(WordIndexRepository words) {
        this.words = words;
    }

    /**
     * The entries of each of the terms, in their order, and maybe some that are gone; not to be altered.
     *
     * @param changes that are seen in it at least
     */
    List<RoaringBitmap> each(List<Term> terms, long changes) {
        Map<String, Read> found = new HashMap<>();
        List<Wanted> wanted = new ArrayList<>();
        for (Term term : terms) {
            @Nullable Read read = kept.getIfPresent(term.key());
            if (read != null) {
                found.put(term.key(), read);
            }
            if (read == null || read.changes() < changes) {
                wanted.add(new Wanted(term, read == null ? null : read.changes()));
            }
        }
        if (!wanted.isEmpty()) {
            List<Fitting> fitting = words.fitting(wanted);
            for (int i = 0; i < wanted.size(); i++) {
                String key = wanted.get(i).term().key();
                Read fresh = new Read(changes, brought(found.get(key), fitting.get(i)));
                kept.put(key, fresh);
                found.put(key, fresh);
            }
        }
        return terms.stream()
                .map(term -> Objects.requireNonNull(found.get(term.key())).entries())
                .toList();
    }

    private static RoaringBitmap brought(@Nullable Read before, Fitting since) {
        RoaringBitmap fits = FacetIndex.bitmap(since.fits());
        if (before == null) {
            fits.runOptimize();
            return fits;
        }
        RoaringBitmap entries = before.entries().clone();
        entries.andNot(FacetIndex.bitmap(since.looked()));
        entries.or(fits);
        return entries;
    }
}
