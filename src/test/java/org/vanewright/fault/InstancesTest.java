package org.vanewright.fault;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.awaitility.Awaitility.await;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.io.CleanupMode;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.Caller;
import org.vanewright.testing.Instances;
import org.vanewright.testing.SignedIn;

/** Two processes of the service on one PostgreSQL. The second one's disk is small. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class InstancesTest {
    private static final int DISK_KB = 2500;
    private static final String DEVICE = "{\"name\":\"Flat vane\",\"invented\":true}";

    private @Nullable Instances started;

    @BeforeAll
    void start(@TempDir(cleanup = CleanupMode.ON_SUCCESS) Path directory) {
        started = new Instances(directory, DISK_KB);
    }

    @AfterAll
    void stop() {
        if (started != null) {
            started.close();
        }
    }

    private Instances instances() {
        return Objects.requireNonNull(started);
    }

    private static String campaignDraft(Caller api, String bearer) {
        HttpResponse<String> made = api.postJson(
                "/api/v1/campaigns", "{\"name\":\"Flown in spring\",\"invented\":true}", "Authorization", bearer);
        assertThat(made.statusCode()).as(made.body()).isEqualTo(201);
        return made.headers().firstValue("Location").orElseThrow().replaceFirst("^.*/", "");
    }

    @Test
    void whileTheDatabaseIsAwayEverybodyIsToldToComeBackAndThenItGoesOn() {
        NewPerson person = instances().newPerson(Role.MEMBER);
        SignedIn member = instances().signIn(instances().origin(0), person);
        Caller visitor = instances().visitor(instances().origin(0));
        String bearer = instances().bearer(person, Role.MEMBER);
        String token = member.token();
        assertThat(visitor.get("/layouts").statusCode()).isEqualTo(200);

        instances().line().cut();
        for (int i = 0; i < 2; i++) {
            calm(visitor.get("/layouts"));
            calm(member.get("/drafts"));
            calm(member.postForm("/devices/new", Map.of("_csrf", token, "action", "save")));
            problem(visitor.get("/api/v1/layouts"));
            problem(visitor.get("/api/v1/drafts", "Authorization", bearer));
            problem(visitor.postJson("/api/v1/devices", DEVICE, "Authorization", bearer));
        }
        assertThat(visitor.get("/nothing-here").statusCode()).isEqualTo(404);
        assertThat(member.get("/nothing-here").statusCode()).isIn(404, 503);
        assertThat(visitor.get("/bench/atmosphere").statusCode()).isIn(200, 503);
        assertThat(visitor.get("/actuator/health/liveness").statusCode()).isEqualTo(200);
        HttpResponse<String> readiness = visitor.get("/actuator/health/readiness");
        assertThat(readiness.statusCode()).isEqualTo(503);
        assertThat(readiness.body()).contains("DOWN").doesNotContain("jdbc", "127.0.0.1");

        instances().line().mend();
        await().atMost(Duration.ofSeconds(30))
                .until(() -> visitor.get("/actuator/health/readiness").statusCode() == 200);
        assertThat(visitor.get("/layouts").statusCode()).isEqualTo(200);
        assertThat(member.page("/drafts", 200).select(".me").text()).contains(person.name());
        assertThat(visitor.postJson("/api/v1/devices", DEVICE, "Authorization", bearer)
                        .statusCode())
                .isEqualTo(201);
    }

    private static void calm(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).contains("5");
        assertThat(Jsoup.parse(answer.body()).select("h1").text()).isEqualTo("Back in a moment");
        assertThat(answer.body()).doesNotContain("Exception", "at org.", "jdbc");
    }

    private static void problem(HttpResponse<String> answer) {
        assertThat(answer.statusCode()).as(answer.body()).isEqualTo(503);
        assertThat(answer.headers().firstValue("Retry-After")).contains("5");
        assertThat(answer.headers().firstValue("Content-Type")).contains("application/problem+json");
        assertThat(answer.body()).contains("\"status\":503").doesNotContain("Exception", "at org.", "jdbc");
    }

    @Test
    void aFullDiskIsToldAndLeavesNothingHalfWritten() throws IOException {
        NewPerson person = instances().newPerson(Role.MEMBER);
        SignedIn member = instances().signIn(instances().origin(1), person);
        String draft = campaignDraft(member, instances().bearer(person, Role.MEMBER));
        String logs = "/campaigns/drafts/" + draft + "/logs";
        byte[] large = ("t,v\n" + "1,100\n".repeat(600_000)).getBytes(UTF_8);

        HttpResponse<String> refused = member.postFile(logs, Map.of(), "file", large);
        assertThat(refused.statusCode()).as(refused.body()).isEqualTo(507);
        assertThat(Jsoup.parse(refused.body()).select("h1").text()).isEqualTo("No room left");
        assertThat(refused.body()).doesNotContain("Exception");
        assertThat(uploads(1)).isEmpty();
        assertThat(member.page(logs, 200).text()).doesNotContain("txt");
        assertThat(instances().sql().sql("select count(*) from flight_log where draft_id = :d").param("d", draft).query(Integer.class).single())
                .isZero();

        byte[] fits = ("t,v\n" + "1,100\n".repeat(100_000)).getBytes(UTF_8);
        assertThat(member.postFile(logs, Map.of(), "file", fits).statusCode()).isEqualTo(303);
        assertThat(uploads(1)).isEmpty();
    }

    private List<Path> uploads(int instance) throws IOException {
        try (Stream<Path> files = Files.walk(instances().temporary(instance))) {
            return files.filter(f -> String.valueOf(f.getFileName()).startsWith("upload_")).toList();
        }
    }
}
