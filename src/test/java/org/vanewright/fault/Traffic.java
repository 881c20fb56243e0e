package org.vanewright.fault;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.testing.Caller;
import org.vanewright.testing.Instances;

/**
 * What several people do at once through the proxy: each draft gets one log that is then read, each submission is
 * published. Whoever is left without an answer looks what became of it, as a person would, and only then does it again.
 */
final class Traffic {
    private static final String MAPPING = "{\"columns\":[{\"quantity\":\"TIME\",\"column\":0,\"unit\":\"SECONDS\"},"
            + "{\"quantity\":\"AIRSPEED\",\"column\":1,\"unit\":\"KT\"}]}";

    private final Instances instances;
    private final String author;
    private final String reviewer;
    private final Map<String, String> uploaded = new ConcurrentHashMap<>();
    private final List<String> drafts = new ArrayList<>();
    private final List<String> submitted = new ArrayList<>();
    private final AtomicInteger answered = new AtomicInteger();
    private final AtomicInteger unanswered = new AtomicInteger();

    Traffic(Instances instances, NewPerson member, NewPerson maintainer) {
        this.instances = instances;
        this.author = instances.bearer(member, Role.MEMBER);
        this.reviewer = instances.bearer(maintainer, Role.MAINTAINER);
    }

    private Caller caller() {
        return instances.visitor(instances.front());
    }

    private static HttpResponse<String> expect(HttpResponse<String> answer, int status) {
        if (answer.statusCode() != status) {
            throw new AssertionError(answer.statusCode() + " instead of " + status + "\n" + answer.body());
        }
        return answer;
    }

    String newDraft() {
        HttpResponse<String> made = caller().postJson(
                        "/api/v1/campaigns", "{\"name\":\"Flown\",\"invented\":true}", "Authorization", author);
        return expect(made, 201).headers().firstValue("Location").orElseThrow().replaceFirst("^.*/", "");
    }

    /** Submits the example of a device under another name. */
    private String newSubmission(String device) {
        HttpResponse<String> made = caller().postJson("/api/v1/devices", device, "Authorization", author);
        String draft =
                expect(made, 201).headers().firstValue("Location").orElseThrow().replaceFirst("^.*/", "");
        HttpResponse<String> done = caller().postJson(
                        "/api/v1/drafts/" + draft + "/submission",
                        "{\"version\":1,\"licence\":\"CC0_1_0\"}",
                        "Authorization",
                        author);
        return expect(done, 201)
                .headers()
                .firstValue("Location")
                .orElseThrow()
                .replaceFirst("^.*/([^/]+)/revisions/1$", "$1");
    }

    void prepare(int count, String device) {
        for (int i = 0; i < count; i++) {
            drafts.add(newDraft());
            submitted.add(newSubmission(device.replace("NAME", "Vane " + i)));
        }
    }

    /** Sends a log and has it read; gives its id. */
    String send(Caller to, String draft, String table) {
        String logs = "/api/v1/campaigns/drafts/" + draft + "/logs";
        HttpResponse<String> sent =
                to.postMultipartWithoutToken(logs, Map.of(), Map.of("file", table), "Authorization", author);
        if (sent.statusCode() == 502) {
            unanswered.incrementAndGet();
            instances.awaitDead();
            String there = expect(to.get(logs, "Authorization", author), 200).body();
            if (there.equals("[]")) {
                return send(to, draft, table);
            }
            return map(to, logs, there.replaceFirst("^\\[\\{\"id\":\"([^\"]+)\".*$", "$1"));
        }
        answered.incrementAndGet();
        return map(
                to,
                logs,
                expect(sent, 202).headers().firstValue("Location").orElseThrow().replaceFirst("^.*/", ""));
    }

    private String map(Caller to, String logs, String log) {
        HttpResponse<String> mapped = to.call(
                "PUT",
                logs + "/" + log + "/mapping",
                MAPPING,
                "Authorization",
                author,
                "Content-Type",
                "application/json");
        if (mapped.statusCode() == 502) {
            unanswered.incrementAndGet();
            instances.awaitDead();
            return map(to, logs, log);
        }
        expect(mapped, 202);
        return log;
    }

    private void publish(String slug) {
        HttpResponse<String> done =
                caller().postJson("/api/v1/review/devices/" + slug + "/1/publish", "", "Authorization", reviewer);
        if (done.statusCode() == 502) {
            unanswered.incrementAndGet();
            instances.awaitDead();
            if (caller().get("/api/v1/devices/" + slug).statusCode() == 404) {
                publish(slug);
            }
            return;
        }
        expect(done, 200);
        answered.incrementAndGet();
    }

    /** Begins; each result fails with what went wrong. */
    List<Future<?>> begin(Random random) {
        List<Runnable> work = new ArrayList<>();
        drafts.forEach(draft -> {
            String table = table(200 + random.nextInt(20_000));
            work.add(() -> uploaded.put(send(caller(), draft, table), table));
        });
        submitted.forEach(slug -> work.add(() -> publish(slug)));
        Collections.shuffle(work, random);
        ExecutorService threads = Executors.newFixedThreadPool(4);
        List<Future<?>> begun = new ArrayList<>();
        work.forEach(w -> begun.add(threads.submit(w)));
        threads.shutdown();
        return begun;
    }

    static String table(int rows) {
        StringBuilder text = new StringBuilder("t,v\n");
        for (int i = 0; i < rows; i++) {
            text.append(i).append(",60\n");
        }
        return text.toString();
    }

    int answered() {
        return answered.get();
    }

    int unanswered() {
        return unanswered.get();
    }

    List<String> drafts() {
        return drafts;
    }

    List<String> submitted() {
        return submitted;
    }

    /** By the id of the log. */
    Map<String, Integer> sizes() {
        Map<String, Integer> sizes = new ConcurrentHashMap<>();
        uploaded.forEach((log, table) -> sizes.put(log, table.getBytes(UTF_8).length));
        return sizes;
    }
}
