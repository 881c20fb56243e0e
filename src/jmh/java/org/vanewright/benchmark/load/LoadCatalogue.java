package org.vanewright.benchmark.load;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.vanewright.Vanewright;
import org.vanewright.load.CatalogueSize;
import org.vanewright.load.LargeCatalogue;

/** Writes the invented catalogue into a database that has none; what is there already is kept. */
final class LoadCatalogue {
    /** What was begun and is not there is begun again from an empty database; an index may be filled up. */
    static final String RECORDS = "records.txt";

    private static final String COMPLETE = "catalogue.txt";

    private LoadCatalogue() {}

    static void ensure(LoadDatabase database, CatalogueSize size) {
        Path mark = database.directory().resolve(COMPLETE);
        try {
            if (Files.exists(mark)) {
                String there = Files.readString(mark);
                if (!there.equals(size.toString())) {
                    throw new IllegalStateException(database.directory()
                            + " holds another catalogue; remove it or name another place: " + there);
                }
                System.out.println("kept from before: " + there);
                return;
            }
            write(database, size, database.directory().resolve(RECORDS));
            Files.writeString(mark, size.toString());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static void write(LoadDatabase database, CatalogueSize size, Path records) throws IOException {
        Instant begun = Instant.now();
        // H2 writes its index of words in no order: a quarter of the heap for its pages.
        String url = database.isPostgres()
                ? database.url() + "?reWriteBatchedInserts=true"
                : database.url() + ";CACHE_SIZE=" + (Runtime.getRuntime().maxMemory() >> 12);
        try (ConfigurableApplicationContext service = SpringApplication.run(
                Vanewright.class,
                "--server.port=0",
                "--spring.profiles.active=demo",
                "--spring.datasource.url=" + url,
                "--spring.datasource.username=" + database.user(),
                "--spring.datasource.password=" + database.password(),
                "--vanewright.files.directory=" + database.directory().resolve("files"),
                "--vanewright.jobs.threads=0",
                "--spring.main.banner-mode=off",
                "--logging.level.root=warn")) {
            if (!Files.exists(records)) {
                LargeCatalogue.records(service, size, line -> System.out.println("  " + line));
                Files.writeString(records, size.toString());
            }
            LargeCatalogue.index(service, size, line -> System.out.println("  " + line));
        }
        database.execute(database.isPostgres() ? "vacuum analyze" : "analyze");
        Runtime now = Runtime.getRuntime();
        System.out.printf(
                "catalogue written in %d s, with a heap of %d MB at most%n",
                Duration.between(begun, Instant.now()).toSeconds(), now.maxMemory() >> 20);
    }
}
