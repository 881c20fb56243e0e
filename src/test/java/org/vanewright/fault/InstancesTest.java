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
import java.util.UUID;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.jsoup.Jsoup;
import org.jspecify.annotations.Nullable;
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
    private static final int LONG_ROWS = 60_000;
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
        try {
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
        } finally {
            instances().line().mend();
        }
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
        assertThat(instances()
                        .sql()
                        .sql("select count(*) from flight_log where draft_id = :d")
                        .param("d", draft)
                        .query(Integer.class)
                        .single())
                .isZero();

        byte[] fits = ("t,v\n" + "1,100\n".repeat(100_000)).getBytes(UTF_8);
        assertThat(member.postFile(logs, Map.of(), "file", fits).statusCode()).isEqualTo(303);
        assertThat(uploads(1)).isEmpty();
    }

    private List<Path> uploads(int instance) throws IOException {
        try (Stream<Path> files = Files.walk(instances().temporary(instance))) {
            return files.filter(f -> String.valueOf(f.getFileName()).startsWith("upload_"))
                    .toList();
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
    void whatIsKilledInTheMiddleLosesNothingAndDoesNothingTwice(@TempDir Path directory) throws Exception {
        long seed = Long.getLong("fault.seed", 20_260_117);
        Random random = new Random(seed);
        NewPerson member = instances().newPerson(Role.MEMBER);
        NewPerson maintainer = instances().newPerson(Role.MAINTAINER);
        SignedIn session = instances().signIn(instances().front(), member);
        Traffic traffic = new Traffic(instances(), member, maintainer);
        traffic.prepare(
                10,
                Files.readString(Path.of("db/demo/devices/rectangular-vane-8-by-20.json"))
                        .replaceFirst("\"name\": *\"[^\"]+\"", "\"name\":\"NAME\""));

        String draft = traffic.newDraft();
        String table = Traffic.table(LONG_ROWS);
        Path held = Files.createFile(directory.resolve("held"));
        String job = startHeld(member.id(), held);
        await().atMost(Duration.ofSeconds(60)).until(() -> runner(job) != null);
        String log = traffic.send(instances().visitor(instances().front()), draft, table);
        List<Future<?>> begun = traffic.begin(random);
        int enough = 3 + random.nextInt(6);
        await().atMost(Duration.ofSeconds(60))
                .pollInterval(Duration.ofMillis(5))
                .until(() -> traffic.answered() >= enough);
        int victim = Objects.requireNonNull(runner(job))
                        .startsWith(instances().process(0).pid() + "@")
                ? 0
                : 1;
        instances().kill(victim);
        Files.delete(held);
        for (Future<?> done : begun) {
            done.get();
        }
        await().atMost(Duration.ofSeconds(90))
                .untilAsserted(() -> assertThat(unfinished()).isEmpty());

        System.out.println("seed " + seed + ": killed instance " + victim + " after " + enough + " answers, "
                + traffic.unanswered() + " without an answer, attempts " + attempts(job));
        assertThat(attempts(job)).as("begun again").isBetween(2, 4);
        assertThat(count("select row_count from flight_log where id = :id", Map.of("id", log)))
                .isEqualTo(LONG_ROWS);
        traffic.drafts()
                .forEach(d -> assertThat(count("select count(*) from flight_log where draft_id = :id", Map.of("id", d)))
                        .isEqualTo(1));
        assertThat(traffic.sizes()).hasSize(10);
        traffic.sizes()
                .forEach((id, size) -> assertThat(
                                count("select size_bytes from flight_log where id = :id", Map.of("id", id)))
                        .isEqualTo(size));
        traffic.submitted().forEach(slug -> {
            assertThat(count(
                            "select count(*) from device_revision where slug = :id and state = 'PUBLISHED'",
                            Map.of("id", slug)))
                    .isEqualTo(1);
            assertThat(count(
                            "select count(*) from audit_entry where event = 'revision.published' and subject like :id",
                            Map.of("id", "devices/" + slug + " %")))
                    .isEqualTo(1);
        });
        assertThat(count("select count(*) from job_part where job_id = :id", Map.of("id", job)))
                .isEqualTo(1);
        assertThat(session.page("/drafts", 200).select(".me").text()).contains(member.name());
        instances().restart(victim);
        assertThat(instances()
                        .visitor(instances().origin(victim))
                        .get("/devices")
                        .statusCode())
                .isEqualTo(200);
    }

    /** Work that another test's page could not start: it runs as long as the file is there. */
    private String startHeld(String owner, Path file) {
        String id = UUID.randomUUID().toString();
        instances()
                .sql()
                .sql("insert into job (id, kind, title, parameters, owner_id, state, created_at, changed_at)"
                        + " values (:id, 'note', 'Held', :parameters, :owner, 'WAITING', now(), now())")
                .param("id", id)
                .param("parameters", "{\"text\":\"hold:" + file + "\"}")
                .param("owner", owner)
                .update();
        instances()
                .sql()
                .sql("insert into scheduled_tasks (task_name, task_instance, execution_time, picked, version)"
                        + " values ('job', :id, now(), false, 1)")
                .param("id", id)
                .update();
        return id;
    }

    /** With what the queue knows of each. */
    private List<Map<String, Object>> unfinished() {
        return instances()
                .sql()
                .sql(
                        "select j.kind, j.state, j.attempts, j.done_count, j.problem, t.picked, t.picked_by,"
                                + " t.last_heartbeat, t.execution_time, now() as now from job j"
                                + " left join scheduled_tasks t on t.task_instance = j.id where j.state in ('WAITING', 'RUNNING', 'FAILED')")
                .query()
                .listOfRows();
    }

    /** The process that does the job, as it calls itself. */
    private @Nullable String runner(String job) {
        return instances()
                .sql()
                .sql("select t.picked_by from scheduled_tasks t join job j on j.id = t.task_instance"
                        + " where j.id = :id and j.state = 'RUNNING' and j.done_count > 0 and t.picked_by is not null")
                .param("id", job)
                .query(String.class)
                .optional()
                .orElse(null);
    }

    private int attempts(String job) {
        return count("select attempts from job where id = :id", Map.of("id", job));
    }

    private int count(String sql, Map<String, ?> parameters) {
        return instances()
                .sql()
                .sql(sql)
                .params(parameters)
                .query(Integer.class)
                .single();
    }
}
