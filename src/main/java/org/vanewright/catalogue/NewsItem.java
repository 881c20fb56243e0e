package org.vanewright.catalogue;

import java.time.Instant;
import org.vanewright.record.Revision;

/**
 * Something newly published.
 *
 * @param kind what it is, such as {@code Airframe}
 * @param path its page
 * @param name what people call it
 * @param revision counts from 1
 * @param contributor who published it
 * @param at when
 * @param invented true for demonstration data
 */
public record NewsItem(
        String kind, String path, String name, int revision, String contributor, Instant at, boolean invented) {
    public static NewsItem of(String kind, String plural, Revision<?> r) {
        return new NewsItem(
                kind,
                "/" + plural + "/" + r.slug(),
                r.content().name(),
                r.number(),
                r.contributor(),
                r.createdAt(),
                r.content().invented());
    }
}
