package org.vanewright.catalogue.search;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import org.roaringbitmap.IntIterator;
import org.roaringbitmap.RoaringBitmap;
import org.vanewright.catalogue.Facet;
import org.vanewright.catalogue.FacetValue;

/**
 * Which entries have which facet value, as compressed bitmaps of their ids, and what orders them. A few megabytes for some
 * hundred thousand entries; not for several threads at a time.
 */
final class FacetIndex {
    private final RoaringBitmap all = new RoaringBitmap();
    private final Map<Facet, Map<String, Known>> values = new EnumMap<>(Facet.class);
    private long[] publishedMicros = {};
    private int[] effectPpm = {};

    /** A value and the entries that have it. */
    record Known(FacetValue value, RoaringBitmap entries) {}

    /** Puts an entry in the place of what was there, without any facet value yet. */
    void put(EntryRow row) {
        remove(row.id());
        if (row.id() >= publishedMicros.length) {
            int size = Math.max(row.id() + 1, publishedMicros.length + publishedMicros.length / 2);
            publishedMicros = Arrays.copyOf(publishedMicros, size);
            effectPpm = Arrays.copyOf(effectPpm, size);
        }
        all.add(row.id());
        publishedMicros[row.id()] = row.publishedMicros();
        effectPpm[row.id()] = row.effectPpm();
    }

    /** Gives an entry its facet values. */
    void add(int id, Collection<FacetValue> its) {
        for (FacetValue value : its) {
            values.computeIfAbsent(value.facet(), f -> new LinkedHashMap<>())
                    .computeIfAbsent(value.choice(), c -> new Known(value, new RoaringBitmap()))
                    .entries()
                    .add(id);
        }
    }

    void remove(int id) {
        if (all.checkedRemove(id)) {
            values.values()
                    .forEach(known -> known.values().forEach(v -> v.entries().remove(id)));
        }
    }

    /** Every entry. */
    RoaringBitmap all() {
        return all;
    }

    /** The values of a facet that any entry has or had. */
    Collection<Known> values(Facet facet) {
        return values.getOrDefault(facet, Map.of()).values();
    }

    /** A value by its choice; null where no entry ever had it. */
    @Nullable
    Known value(Facet facet, String choice) {
        return values.getOrDefault(facet, Map.of()).get(choice);
    }

    /**
     * The first of some entries in an order.
     *
     * @param after entry before the first one, by that order; null for the first of all
     */
    List<Integer> first(RoaringBitmap among, SearchSort sort, @Nullable SearchCursor after, int most) {
        Comparator<Integer> order = order(sort);
        PriorityQueue<Integer> kept = new PriorityQueue<>(order.reversed());
        // What came last is mostly the newest: from there on, hardly anything has to give way to something better.
        for (IntIterator ids = among.getReverseIntIterator(); ids.hasNext(); ) {
            int id = ids.next();
            if (after != null && !follows(id, sort, after)) {
                continue;
            }
            if (kept.size() < most) {
                kept.add(id);
            } else if (order.compare(id, kept.element()) < 0) {
                kept.remove();
                kept.add(id);
            }
        }
        return kept.stream().sorted(order).toList();
    }

    private Comparator<Integer> order(SearchSort sort) {
        Comparator<Integer> newest = Comparator.<Integer>comparingLong(id -> publishedMicros[id])
                .thenComparingInt(id -> id)
                .reversed();
        return sort == SearchSort.EFFECT
                ? Comparator.<Integer>comparingInt(id -> effectPpm[id])
                        .reversed()
                        .thenComparing(newest)
                : newest;
    }

    private boolean follows(int id, SearchSort sort, SearchCursor after) {
        if (sort == SearchSort.EFFECT && effectPpm[id] != after.weight()) {
            return effectPpm[id] < after.weight();
        }
        long at = ChronoUnit.MICROS.between(Instant.EPOCH, after.publishedAt());
        return publishedMicros[id] < at || publishedMicros[id] == at && id < after.id();
    }

    /** Entries that have any of some values of a facet. */
    RoaringBitmap any(Facet facet, Collection<String> choices) {
        RoaringBitmap any = new RoaringBitmap();
        choices.forEach(choice -> {
            Known known = value(facet, choice);
            if (known != null) {
                any.or(known.entries());
            }
        });
        return any;
    }

    /** Of ids as the database gives them. */
    static RoaringBitmap bitmap(long[] ids) {
        return RoaringBitmap.bitmapOf(
                IntStream.range(0, ids.length).map(i -> Math.toIntExact(ids[i])).toArray());
    }
}
