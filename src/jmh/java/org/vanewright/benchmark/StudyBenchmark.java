package org.vanewright.benchmark;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import org.jspecify.annotations.Nullable;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.springframework.boot.SpringApplication;
import org.springframework.context.ConfigurableApplicationContext;
import org.vanewright.Vanewright;

/**
 * The placement study of a demonstration layout as a page, over HTTP from a service in the same process, warm: asked for
 * again; with the device's height moved to where it was not before, so that its row is drawn anew; and at a mass not asked
 * for before, so that all flows are new.
 */
@State(Scope.Benchmark)
public class StudyBenchmark {
    private static final String PAGE = "/layouts/high-wing-one-row-co-rotating/study";

    private final HttpClient client = HttpClient.newHttpClient();
    private @Nullable ConfigurableApplicationContext service;
    private String address = "";
    private int asked;

    @Setup
    public void start() {
        ConfigurableApplicationContext started = SpringApplication.run(
                Vanewright.class,
                "--server.port=0",
                "--spring.profiles.active=demo",
                "--spring.datasource.url=jdbc:h2:mem:benchmark;MODE=PostgreSQL;DATABASE_TO_LOWER=TRUE;DEFAULT_NULL_ORDERING=HIGH;DB_CLOSE_DELAY=-1",
                "--spring.main.banner-mode=off",
                "--logging.level.root=warn",
                "--vanewright.limits.calculations-per-minute=1000000");
        service = started;
        address = "http://localhost:" + started.getEnvironment().getRequiredProperty("local.server.port") + PAGE;
    }

    @TearDown
    public void stop() {
        if (service != null) {
            service.close();
        }
    }

    private String page(String query) {
        try {
            HttpResponse<String> answer = client.send(
                    HttpRequest.newBuilder(URI.create(address + query)).build(), HttpResponse.BodyHandlers.ofString());
            if (answer.statusCode() != 200) {
                throw new IllegalStateException(answer.statusCode() + " for " + query);
            }
            return answer.body();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(e);
        }
    }

    @Benchmark
    public String pageAskedForAgain() {
        return page("?condition=CRUISE");
    }

    @Benchmark
    public String pageWithAnotherHeight() {
        return page("?condition=CRUISE&heightMm=" + (4 + asked++ % 100_000 / 10_000.0));
    }

    @Benchmark
    public String pageAtAnotherMass() {
        return page("?condition=CRUISE&massKg=" + (380 + asked++ % 100_000 / 10_000.0));
    }
}
