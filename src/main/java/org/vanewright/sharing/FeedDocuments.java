package org.vanewright.sharing;

import org.springframework.stereotype.Service;
import org.vanewright.account.BaseUrl;
import org.vanewright.account.InstanceSettings;
import org.vanewright.record.Revision;

/** Feeds written out. Addresses in them come from the configuration, never from what a request claims to be. */
@Service
public class FeedDocuments {
    private final Feeds feeds;
    private final BaseUrl baseUrl;
    private final InstanceSettings instance;

    FeedDocuments(Feeds feeds, BaseUrl baseUrl, InstanceSettings instance) {
        this.feeds = feeds;
        this.baseUrl = baseUrl;
        this.instance = instance;
    }

    /** The first part of every address. */
    public String base() {
        return baseUrl.of("");
    }

    /** Everything that is new. */
    public String all(Feeds.Page page) {
        AtomWriter.Head head = new AtomWriter.Head(instance.name() + ": newly published", "/feed.atom", "/");
        return new AtomWriter(base()).write(head, page, feeds.entries(page));
    }

    /** What is new of one airframe. */
    public String ofAirframe(Revision<?> airframe, Feeds.Page page) {
        String path = "/airframes/" + airframe.slug();
        AtomWriter.Head head =
                new AtomWriter.Head(instance.name() + ": " + airframe.content().name(), path + "/feed.atom", path);
        return new AtomWriter(base()).write(head, page, feeds.entries(page));
    }

    /** All that a page's bytes depend on besides the build. */
    public String contentKey(Feeds.Page page) {
        return base() + "\n" + instance.name() + "\n" + page.contentKey();
    }
}
