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
import java.util.Random;
import java.util.concurrent.Future;
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
    private static final int LONG_ROWS = 4_000_000;
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

    @Test
    void whoSignedInOnOneGoesOnAtTheOther() {
        NewPerson person = instances().newPerson(Role.MEMBER);
        SignedIn first = instances().signIn(instances().origin(0), person);
        Caller second = instances().visitor(instances().origin(1));
        second.setCookie("SESSION", Objects.requireNonNull(first.cookie("SESSION")));
        assertThat(second.page("/drafts", 200).select(".me").text()).contains(person.name());
        HttpResponse<String> saved = second.postFormWithoutToken(
                "/devices/new", Map.of("_csrf", first.token(), "action", "save", "name", "Begun on the other"));
        assertThat(saved.statusCode()).isEqualTo(303);
        assertThat(first.page("/drafts", 200).text()).contains("Begun on the other");
        SignedIn behind = instances().signIn(instances().front(), instances().newPerson(Role.MEMBER));
        for (int i = 0; i < 4; i++) {
            assertThat(behind.page("/drafts", 200).select(".me").text()).contains(behind.name());
        }
    }

    /** One of them is killed by SIGKILL while it reads a long log, takes files and publishes. */
    @Test
    void whatIsKilledInTheMiddleLosesNothingAndDoesNothingTwice() throws Exception {
        long seed = Long.getLong("fault.seed", 20_260_117);
        Random random = new Random(seed);
        NewPerson member = instances().newPerson(Role.MEMBER);
        NewPerson maintainer = instances().newPerson(Role.MAINTAINER);
        SignedIn session = instances().signIn(instances().front(), member);
        Traffic traffic = new Traffic(instances(), member, maintainer);
        traffic.prepare(10, Files.readString(Path.of("db/demo/devices/rectangular-vane-8-by-20.json")).replaceFirst("\"name\": *\"[^\"]+\"", "\"name\":\"NAME\""));

        String draft = traffic.newDraft();
        String table = Traffic.table(LONG_ROWS);
        String log = traffic.send(instances().visitor(instances().origin(0)), draft, table);
        await().atMost(Duration.ofSeconds(60)).pollInterval(Duration.ofMillis(20)).until(() -> runner(log) != null);
        List<Future<?>> begun = traffic.begin(random);
        int enough = 3 + random.nextInt(6);
        await().atMost(Duration.ofSeconds(60))
                .pollInterval(Duration.ofMillis(5))
                .until(() -> traffic.answered() >= enough);
        int victim = victim(log);
        instances().kill(victim);
        for (Future<?> done : begun) {
            done.get();
        }
        await().atMost(Duration.ofSeconds(90)).until(() -> count("select count(*) from flight_log where state in ('MAPPED', 'READING', 'FAILED')", Map.of()) == 0);

        System.out.println("seed " + seed + ": killed instance " + victim + " after " + enough + " answers, "
                + traffic.unanswered() + " without an answer, attempts " + attempts(log));
        assertThat(attempts(log)).as("begun again").isBetween(2, 4);
        assertThat(count("select row_count from flight_log where id = :id", Map.of("id", log))).isEqualTo(LONG_ROWS);
        traffic.drafts().forEach(d -> assertThat(count("select count(*) from flight_log where draft_id = :id", Map.of("id", d)))
                .isEqualTo(1));
        assertThat(traffic.sizes()).hasSize(10);
        traffic.sizes().forEach((id, size) -> assertThat(count("select size_bytes from flight_log where id = :id", Map.of("id", id)))
                .isEqualTo(size));
        traffic.submitted().forEach(slug -> {
            assertThat(count("select count(*) from device_revision where slug = :id and state = 'PUBLISHED'", Map.of("id", slug)))
                    .isEqualTo(1);
            assertThat(count("select count(*) from audit_entry where event = 'revision.published' and subject like :id",
                            Map.of("id", "devices/" + slug + " %")))
                    .isEqualTo(1);
        });
        assertThat(count("select count(*) from job where state <> 'DONE'", Map.of())).isZero();
        assertThat(session.page("/drafts", 200).select(".me").text()).contains(member.name());
        instances().restart(victim);
        assertThat(instances().visitor(instances().origin(victim)).get("/devices").statusCode()).isEqualTo(200);
    }

    private @Nullable String runner(String log) {
        return instances()
                .sql()
                .sql("select t.picked_by from scheduled_tasks t join flight_log l on l.job_id = t.task_instance"
                        + " where l.id = :id and l.state = 'READING' and l.read_bytes > 0 and t.picked_by is not null")
                .param("id", log)
                .query(String.class)
                .optional()
                .orElse(null);
    }

    /** Whoever reads the long log, but for what a test may not wait for. */
    private int victim(String log) {
        String runner = Objects.requireNonNull(runner(log), "it was read before anybody could be killed");
        return runner.startsWith(instances().process(0).pid() + "@") ? 0 : 1;
    }

    private int attempts(String log) {
        return count("select j.attempts from job j join flight_log l on l.job_id = j.id where l.id = :id", Map.of("id", log));
    }

    private int count(String sql, Map<String, ?> parameters) {
        return instances().sql().sql(sql).params(parameters).query(Integer.class).single();
    }
}
