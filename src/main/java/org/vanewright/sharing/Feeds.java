package org.vanewright.sharing;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.stream.Collectors;
import org.springframework.stereotype.Service;
import org.vanewright.airframe.AirframeService;
import org.vanewright.campaign.CampaignService;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRef;

/**
 * What is newly published. One statement for each kind of record finds what is new without reading it; texts are read once
 * for each revision.
 */
@Service
public class Feeds {
    /** Entries of one page. */
    public static final int PER_PAGE = 50;

    /** Older entries than those of so many pages are found by the lists of records. */
    public static final int MOST_PAGES = 20;

    private static final long MOST_KEPT = 5000;
    private static final Comparator<Place> NEWEST_FIRST = Comparator.comparing(
                    (Place p) -> p.head().publishedAt())
            .reversed()
            .thenComparing(p -> p.records().plural())
            .thenComparing(p -> p.head().slug());

    private final Records records;
    private final AirframeService airframes;
    private final LayoutService layouts;
    private final CampaignService campaigns;
    private final Cache<Key, FeedEntry> kept =
            Caffeine.newBuilder().maximumSize(MOST_KEPT).build();

    Feeds(Records records, AirframeService airframes, LayoutService layouts, CampaignService campaigns) {
        this.records = records;
        this.airframes = airframes;
        this.layouts = layouts;
        this.campaigns = campaigns;
    }

    private record Key(String plural, RevisionRef ref, String sha256) {}

    private record Place(RecordService<?> records, RevisionHead head) {
        Key key() {
            return new Key(records.plural(), head.ref(), head.sha256());
        }
    }

    /**
     * One page of a feed before anything of it is read.
     *
     * @param number counts from 1
     * @param places of its entries
     * @param more whether an older page follows
     */
    public record Page(int number, List<?> places, boolean more, Instant updatedAt, String contentKey) {}

    /** What is new of all kinds. */
    public Page all(int number) {
        int most = number * PER_PAGE + 1;
        List<Place> places = new ArrayList<>();
        for (RecordService<?> each : records.services()) {
            each.heads(0, most).forEach(head -> places.add(new Place(each, head)));
        }
        return page(number, places);
    }

    /** What is new of one airframe: itself, layouts for it and campaigns with it. */
    public Page ofAirframe(Revision<?> airframe, int number) {
        int most = number * PER_PAGE + 1;
        List<Place> places = new ArrayList<>();
        airframes
                .latest(airframe.slug())
                .ifPresent(r -> places.add(
                        new Place(airframes, new RevisionHead(r.slug(), r.number(), r.sha256(), r.shownAt()))));
        layouts.headsOfAirframe(airframe.slug(), most).forEach(h -> places.add(new Place(layouts, h)));
        campaigns.headsOfAirframe(airframe.slug(), most).forEach(h -> places.add(new Place(campaigns, h)));
        return page(number, places);
    }

    private static Page page(int number, List<Place> all) {
        List<Place> sorted = all.stream().sorted(NEWEST_FIRST).toList();
        int from = Math.min(sorted.size(), (number - 1) * PER_PAGE);
        int to = Math.min(sorted.size(), from + PER_PAGE);
        List<Place> places = sorted.subList(from, to);
        Instant updated =
                places.isEmpty() ? Instant.EPOCH : places.get(0).head().publishedAt();
        boolean more = to < sorted.size() && number < MOST_PAGES;
        String key = places.stream()
                .map(p -> p.key().toString())
                .collect(Collectors.joining("\n", number + " " + more + "\n", ""));
        return new Page(number, List.copyOf(places), more, updated, key);
    }

    /** What stands on a page, newest first. */
    public List<FeedEntry> entries(Page page) {
        List<Place> places = page.places().stream().map(Place.class::cast).toList();
        places.stream()
                .filter(p -> kept.getIfPresent(p.key()) == null)
                .collect(Collectors.groupingBy(
                        Place::records, Collectors.mapping(p -> p.head().ref(), Collectors.toList())))
                .forEach(this::read);
        return places.stream()
                .map(p -> kept.getIfPresent(p.key()))
                .filter(Objects::nonNull)
                .toList();
    }

    private <T extends RecordContent> void read(RecordService<T> from, List<RevisionRef> refs) {
        for (Revision<T> each : from.allPublic(refs)) {
            kept.put(new Key(from.plural(), each.ref(), each.sha256()), FeedEntry.of(from.kind(), from.plural(), each));
        }
    }
}
