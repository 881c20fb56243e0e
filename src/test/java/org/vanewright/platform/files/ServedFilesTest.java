package org.vanewright.platform.files;

import static org.assertj.core.api.Assertions.assertThat;

import io.micrometer.core.instrument.MeterRegistry;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.concurrent.CompletableFuture;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.record.Revision;
import org.vanewright.testing.CountedStatements;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;

/** Generated files as browsers and proxies meet them. */
class ServedFilesTest extends ServerTest {
    private static final String LAYOUT = "/layouts/high-wing-one-row-co-rotating";

    private double renders() {
        return context().getBean(MeterRegistry.class).get("vanewright.files.renders").timers().stream()
                .mapToLong(t -> t.count())
                .sum();
    }

    /** None of these was asked for before: no other test uses that radius. */
    @Test
    void aHundredRequestsAtOnceMakeOneFile() {
        String address = "/devices/rectangular-vane-8-by-20/solid.stl?undersideRadiusMm=4321.5";
        double before = renders();
        HttpClient client = HttpClient.newHttpClient();
        HttpRequest request =
                HttpRequest.newBuilder(URI.create(origin() + address)).build();
        List<CompletableFuture<HttpResponse<byte[]>>> asked = IntStream.range(0, 100)
                .mapToObj(i -> client.sendAsync(request, BodyHandlers.ofByteArray()))
                .toList();
        byte[] first = asked.get(0).join().body();
        assertThat(asked).allSatisfy(a -> {
            assertThat(a.join().statusCode()).isEqualTo(200);
            assertThat(a.join().body()).isEqualTo(first);
        });
        assertThat(renders() - before).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/devices/rectangular-vane-8-by-20/solid.stl?",
                "/devices/rectangular-vane-8-by-20/plate.3mf?",
                "/devices/rectangular-vane-8-by-20/drawing.pdf?",
                LAYOUT + "/template.pdf?side=LEFT",
                LAYOUT + "/template.svg?side=LEFT",
                LAYOUT + "/stations.csv?",
                LAYOUT + "/gauge.stl?",
                LAYOUT + "/install-sheet.pdf?",
                LAYOUT + "/tape-plan.dxf?",
                "/campaigns/clean-stall-with-pairs-over-the-taper/test-card.pdf?",
                "/campaigns/clean-stall-with-pairs-over-the-taper/results.csv?",
            })
    void whoHasTheFileCostsOneReadOfTheDatabase(String address) {
        for (String asked : List.of(address, address + "&revision=1")) {
            String tag = get(asked).headers().firstValue("ETag").orElseThrow();
            assertThat(tag).matches("\"[0-9a-f]{64}\"");
            HttpResponse<String> again = get(asked, "If-None-Match", tag, CountedStatements.HEADER, "tag " + asked);
            assertThat(again.statusCode()).isEqualTo(304);
            assertThat(CountedStatements.of("tag " + asked))
                    .singleElement()
                    .asString()
                    .contains("where slug = ?");
            double before = renders();
            HttpResponse<String> kept = get(asked, CountedStatements.HEADER, "kept " + asked);
            assertThat(kept.statusCode()).isEqualTo(200);
            assertThat(CountedStatements.of("kept " + asked)).hasSize(1);
            assertThat(renders()).isEqualTo(before);
        }
    }

    /** The counting counts: a page of the same layout asks for more. */
    @Test
    void aPageReadsMore() {
        get(LAYOUT, CountedStatements.HEADER, "page");
        assertThat(CountedStatements.of("page")).hasSizeGreaterThan(1);
    }

    @Test
    void aFileThatCannotBeMadeIsAskedForAgain() {
        for (int i = 0; i < 2; i++) {
            assertThat(get(LAYOUT + "/template.svg?row=9").statusCode()).isEqualTo(400);
            assertThat(get(LAYOUT + "/template.svg?row=9", "If-None-Match", "*").statusCode())
                    .isEqualTo(400);
        }
        assertThat(get(LAYOUT + "/template.svg", "If-None-Match", "*").statusCode())
                .isEqualTo(304);
    }

    @Test
    void whatIsKeptIsMeasured() {
        get(LAYOUT + "/stations.csv");
        get(LAYOUT + "/stations.csv");
        MeterRegistry meters = context().getBean(MeterRegistry.class);
        assertThat(meters.get("vanewright.files.hits")
                        .tag("tier", "memory")
                        .counter()
                        .count())
                .isPositive();
        assertThat(meters.get("vanewright.files.misses").counter().count()).isPositive();
        assertThat(meters.get("vanewright.files.memory").gauge().value()).isPositive();
    }

    @Test
    void whatIsNotPublicIsMadeEachTimeAndKeptByNobody() {
        SignedIn author = signIn(Role.MEMBER);
        JsonNode device =
                json(get("/api/v1/devices/rectangular-vane-8-by-20"), 200).get("content");
        String draft = json(
                        postJson("/api/v1/devices", device.toString(), "Authorization", bearer(author.person())), 201)
                .get("id")
                .asString();
        Revision<?> revision = publishing().submit(author.person(), "/devices/drafts/" + draft);
        String address = "/devices/" + revision.slug() + "/solid.stl?revision=" + revision.number();
        double before = misses();
        for (int i = 0; i < 2; i++) {
            HttpResponse<String> file = author.get(address);
            assertThat(file.statusCode()).isEqualTo(200);
            assertThat(file.headers().firstValue("Cache-Control").orElseThrow()).contains("no-store", "private");
        }
        assertThat(misses()).as("asked of the cache").isEqualTo(before);
        assertThat(get(address).statusCode()).isEqualTo(404);
    }

    private double misses() {
        return context()
                .getBean(MeterRegistry.class)
                .get("vanewright.files.misses")
                .counter()
                .count();
    }
}
