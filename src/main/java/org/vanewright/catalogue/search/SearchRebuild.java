package org.vanewright.catalogue.search;

import jakarta.annotation.PreDestroy;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Future;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.ThreadPoolExecutor;
import java.util.concurrent.TimeUnit;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.boot.context.event.ApplicationReadyEvent;
import org.springframework.boot.context.properties.EnableConfigurationProperties;
import org.springframework.context.event.EventListener;
import org.springframework.scheduling.annotation.Scheduled;
import org.springframework.stereotype.Component;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.platform.BackgroundStop;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordPage;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;

/**
 * Makes the index anew in the background where it was made by older rules, or where the one who starts the service asks for
 * it. One instance does it, in small transactions; what a crash left half done is gone on with by whichever looks first.
 */
@Component
@EnableConfigurationProperties(SearchSettings.class)
class SearchRebuild {
    private static final Logger LOG = LoggerFactory.getLogger(SearchRebuild.class);
    /** One that has done nothing for so long is gone. */
    private static final Duration SILENCE = Duration.ofMinutes(2);

    private static final int AT_ONCE = 50;

    private final Records records;
    private final SearchIndexer indexer;
    private final SearchIndexRepository index;
    private final SearchService search;
    private final TransactionTemplate together;
    private final SearchSettings settings;
    private final Clock clock;
    private volatile boolean stopped;
    private final ExecutorService executor =
            new ThreadPoolExecutor(1, 1, 1, TimeUnit.MINUTES, new LinkedBlockingQueue<>(), work -> {
                Thread thread = new Thread(work, "search-index");
                thread.setDaemon(true);
                return thread;
            });

    SearchRebuild(
            Records records,
            SearchIndexer indexer,
            SearchIndexRepository index,
            SearchService search,
            PlatformTransactionManager transactions,
            SearchSettings settings,
            Clock clock) {
        this.records = records;
        this.indexer = indexer;
        this.index = index;
        this.search = search;
        this.together = new TransactionTemplate(transactions);
        this.settings = settings;
        this.clock = clock;
    }

    @EventListener(ApplicationReadyEvent.class)
    void started() {
        if (settings.rebuild()) {
            outdate();
        }
        executor.execute(this::look);
        executor.execute(this::prepare);
    }

    private void prepare() {
        if (stopped) {
            return;
        }
        try {
            search.prepare();
        } catch (RuntimeException e) {
            // The first search does it.
            LOG.warn("what the search keeps in memory could not be read", e);
        }
    }

    /** Makes every entry count as old. */
    void outdate() {
        together.executeWithoutResult(status -> {
            index.hold();
            index.outdate();
        });
    }

    /** Looks soon whether there is anything to do. */
    Future<?> wake() {
        return executor.submit(this::look);
    }

    @Scheduled(initialDelay = 60, fixedDelay = 60, timeUnit = TimeUnit.SECONDS)
    void lookForWhatWasLeft() {
        executor.execute(this::look);
    }

    @PreDestroy
    void stop() {
        stopped = true;
        BackgroundStop.of(executor, "work on the index of the search");
    }

    private void look() {
        try {
            if (index.isOlderThan(SearchIndexer.VERSION) && claim(false)) {
                rebuild();
            }
        } catch (RuntimeException e) {
            // Asked again within a minute.
            LOG.warn("the index of the search could not be made anew", e);
        }
    }

    private boolean claim(boolean mine) {
        Instant now = clock.instant();
        return index.claim(mine, now, now.plus(SILENCE));
    }

    private void rebuild() {
        int made = 0;
        for (RecordService<?> service : records.services()) {
            made += rebuild(service);
        }
        // What is no longer published, and what an instance of an older version has written meanwhile.
        while (!stopped && indexer.refreshOutdated(AT_ONCE)) {
            claim(true);
        }
        if (stopped) {
            return;
        }
        together.executeWithoutResult(status -> {
            index.hold();
            index.finish(SearchIndexer.VERSION);
        });
        LOG.info("the index of the search is complete, {} entries were made", made);
    }

    private <T extends RecordContent> int rebuild(RecordService<T> service) {
        int made = 0;
        @Nullable String cursor = null;
        do {
            RecordPage<Revision<T>> page = service.list(cursor, AT_ONCE);
            made += indexer.refreshAll(service, page.items());
            claim(true);
            cursor = page.nextCursor();
        } while (cursor != null && !stopped);
        return made;
    }
}
