package org.vanewright.load;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import javax.sql.DataSource;
import org.jspecify.annotations.Nullable;
import org.springframework.context.ApplicationContext;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.springframework.transaction.PlatformTransactionManager;
import org.springframework.transaction.support.TransactionTemplate;
import org.vanewright.account.BulkPeople;
import org.vanewright.campaign.CampaignService;
import org.vanewright.campaign.reduction.CampaignSummaries;
import org.vanewright.catalogue.search.BulkEntries;
import org.vanewright.layout.LayoutFigures;
import org.vanewright.layout.LayoutService;
import org.vanewright.record.BulkRevisions;
import org.vanewright.record.CanonicalJson;
import org.vanewright.record.PersonRef;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordPage;
import org.vanewright.record.Records;
import org.vanewright.record.RevisionHead;
import org.vanewright.record.RevisionRepository;

/**
 * Writes an invented catalogue into the database of a running service, one small transaction after the other, with nothing
 * held but the batch at hand and the list of people.
 */
public final class LargeCatalogue {
    private static final int AT_ONCE = 500;
    private static final int PART = 25;

    private final ApplicationContext service;
    private final CatalogueSize size;
    private final Consumer<String> progress;
    private final TransactionTemplate together;
    private List<PersonRef> owners = List.of();

    private LargeCatalogue(ApplicationContext service, CatalogueSize size, Consumer<String> progress) {
        this.service = service;
        this.size = size;
        this.progress = progress;
        this.together = new TransactionTemplate(service.getBean(PlatformTransactionManager.class));
    }

    /**
     * Writes people and records. The database holds none of them yet.
     *
     * @param progress told in a line what is done
     */
    public static void records(ApplicationContext service, CatalogueSize size, Consumer<String> progress) {
        new LargeCatalogue(service, size, progress).records();
    }

    /** Fills what lists say and the index of the search with what is not in them yet. */
    public static void index(ApplicationContext service, CatalogueSize size, Consumer<String> progress) {
        new LargeCatalogue(service, size, progress).index();
    }

    /** Addresses and documents of the kinds, as they are written. */
    public enum Kind {
        AIRFRAME("airframes"),
        DEVICE("devices"),
        LAYOUT("layouts"),
        CAMPAIGN("campaigns"),
        INSTALLATION("installations"),
        INSPECTION("inspections");

        private final String plural;

        Kind(String plural) {
            this.plural = plural;
        }

        /** As in addresses. */
        public String plural() {
            return plural;
        }

        /** How many of them a catalogue has. */
        public int count(CatalogueSize size) {
            return switch (this) {
                case AIRFRAME -> size.airframes();
                case DEVICE -> size.devices();
                case LAYOUT -> size.layouts();
                case CAMPAIGN -> size.campaigns();
                case INSTALLATION -> size.installations();
                case INSPECTION -> size.inspections();
            };
        }

        /** Makes a document by its number, from 0. */
        public IntFunction<? extends RecordContent> documents(CatalogueSize size) {
            return switch (this) {
                case AIRFRAME -> new InventedAircraft(size.seed())::airframe;
                case DEVICE -> new InventedVanes(size.seed())::device;
                case LAYOUT -> new InventedLayouts(size)::layout;
                case CAMPAIGN -> new InventedFlights(size)::campaign;
                case INSTALLATION -> new InventedRetention(size)::installation;
                case INSPECTION -> new InventedRetention(size)::inspection;
            };
        }

        /** The cursor of the list's page behind one, by its number. */
        public String cursor(CatalogueSize size, int number) {
            return BulkRevisions.cursor(Invention.publishedAt(number, count(size), ordinal()), slug(size, number));
        }

        /** The slug of one by its number. */
        public String slug(CatalogueSize size, int number) {
            return Invention.ref(documents(size).apply(number).name()).slug();
        }
    }

    private void records() {
        Instant begun = Instant.now();
        new BulkEntries(service).awaitOwn();
        owners = BulkPeople.add(
                service.getBean(DataSource.class),
                size.people(),
                IntStream.range(0, size.people()).mapToObj(this::person).toList());
        told(size.people() + " people", begun);
        for (Kind kind : Kind.values()) {
            Instant from = Instant.now();
            write(kind);
            told(kind.count(size) + " " + kind.plural(), from);
        }
    }

    private void index() {
        Instant begun = Instant.now();
        LayoutFigures figures = service.getBean(LayoutFigures.class);
        LayoutService layouts = service.getBean(LayoutService.class);
        CampaignSummaries campaigns = service.getBean(CampaignSummaries.class);
        everyPage(cursor -> layouts.list(cursor, RevisionRepository.LARGEST_PAGE), figures::of);
        everyPage(
                cursor -> service.getBean(CampaignService.class).listHeads(cursor, RevisionRepository.LARGEST_PAGE),
                heads -> campaigns.of(heads.stream().map(RevisionHead::ref).toList()));
        told("what lists say", begun);
        begun = Instant.now();
        told(new BulkEntries(service).fill() + " entries of the search", begun);
    }

    private <R> void everyPage(Function<@Nullable String, RecordPage<R>> list, Consumer<List<R>> work) {
        String cursor = null;
        do {
            RecordPage<R> page = list.apply(cursor);
            List<R> items = page.items();
            IntStream.rangeClosed(0, (items.size() - 1) / PART)
                    .parallel()
                    .mapToObj(i -> items.subList(i * PART, Math.min(items.size(), (i + 1) * PART)))
                    .forEach(part -> together.executeWithoutResult(status -> work.accept(part)));
            cursor = page.nextCursor();
        } while (cursor != null);
    }

    private String person(int number) {
        Chance chance = new Chance(size.seed(), "person", number);
        return String.format(Locale.ROOT, "Member %05d of %s", number + 1, Invention.place(chance));
    }

    private void told(String what, Instant since) {
        progress.accept(what + ": " + Duration.between(since, Instant.now()).toSeconds() + " s");
    }

    private void write(Kind kind) {
        Class<?> type = service.getBean(Records.class)
                .ofPlural(kind.plural())
                .orElseThrow()
                .contentType();
        RevisionRepository<?> repository = service.getBeansOfType(RevisionRepository.class).values().stream()
                .filter(r -> r.type() == type)
                .findFirst()
                .orElseThrow();
        write(kind, repository);
    }

    private <T extends RecordContent> void write(Kind kind, RevisionRepository<T> repository) {
        BulkRevisions<T> into = new BulkRevisions<>(
                repository, service.getBean(JdbcClient.class), service.getBean(CanonicalJson.class));
        IntFunction<? extends RecordContent> documents = kind.documents(size);
        int count = kind.count(size);
        for (int from = 0; from < count; from += AT_ONCE) {
            int first = from;
            int beyond = Math.min(count, from + AT_ONCE);
            together.executeWithoutResult(status -> {
                for (int i = first; i < beyond; i++) {
                    T document = repository.type().cast(documents.apply(i));
                    into.add(
                            Invention.ref(document.name()).slug(),
                            document,
                            owner(kind, i),
                            Invention.publishedAt(i, count, kind.ordinal()));
                }
            });
        }
    }

    /** A few do most of it, as everywhere. */
    private PersonRef owner(Kind kind, int number) {
        Chance chance = new Chance(size.seed(), "owner of " + kind, number);
        return owners.get((int) (owners.size() * Math.pow(chance.below(10_000) / 10_000.0, 2)));
    }
}
