package org.vanewright.account;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVRecord;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.vanewright.audit.AuditLog;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;

/** The audit log as stewards read it and take it away. */
class AuditLogPagesTest extends ServerTest {
    private static final int MANY = LogDesk.PAGE + 5;

    @BeforeEach
    void fill() {
        AuditLog log = context().getBean(AuditLog.class);
        for (int i = 0; i < MANY; i++) {
            log.add(null, "Quill " + i, "test.many", "layouts/heron-" + i, "");
        }
        log.add(null, "=cmd|'/c calc'!A1", "test.formula", "+1 heron, \"quoted\"", "@SUM(A1)\nsecond line");
    }

    @Test
    void theLogIsPagedNewestFirst() {
        SignedIn steward = signIn(Role.STEWARD);
        List<String> subjects = new ArrayList<>();
        String next = "/steward/log?event=test.many&words=";
        Set<String> asked = new HashSet<>();
        while (next != null && asked.add(next)) {
            Document page = steward.page(next, 200);
            assertThat(page.select(".log li").size()).isLessThanOrEqualTo(LogDesk.PAGE);
            subjects.addAll(page.select(".log .what span").eachText());
            Element link = page.selectFirst("a[rel=next]");
            next = link == null ? null : link.attr("href");
        }
        assertThat(asked).hasSizeGreaterThan(1);
        assertThat(subjects.size() % MANY).isZero();
        assertThat(subjects.subList(0, 2))
                .containsExactly("layouts/heron-" + (MANY - 1), "layouts/heron-" + (MANY - 2));
        assertThat(subjects.get(MANY - 1)).isEqualTo("layouts/heron-0");
        assertThat(steward.page("/steward/log?cursor=-1%20or%201=1", 400).text())
                .contains("cursor");
    }

    @Test
    void wordsMustAllStandInPersonOrSubject() {
        SignedIn steward = signIn(Role.STEWARD);
        assertThat(steward.page("/steward/log?words=QUILL+heron-7", 200)
                        .select(".log .what span")
                        .eachText())
                .isNotEmpty()
                .containsOnly("layouts/heron-7");
        assertThat(steward.page("/steward/log?words=heron-7+nobody", 200).text())
                .contains("Nothing like that");
        assertThat(steward.page("/steward/log?words=heron_7", 200).select(".log li"))
                .as("an underscore is no wildcard")
                .isEmpty();
        assertThat(steward.page("/steward/log?words=%00&event=%00", 200).select(".log li"))
                .isNotEmpty();
        assertThat(steward.page("/steward/log?event=test.formula", 200)
                        .select("option[selected]")
                        .text())
                .isEqualTo("test.formula");
    }

    @Test
    void theTableIsWholeAndDefused() throws IOException {
        SignedIn steward = signIn(Role.STEWARD);
        HttpResponse<String> file = steward.get("/steward/log.csv");
        assertThat(file.headers().firstValue("Content-Type")).contains("text/csv;charset=UTF-8");
        assertThat(file.headers().firstValue("Content-Disposition")).contains("attachment; filename=\"audit-log.csv\"");
        assertThat(file.headers().firstValue("Cache-Control")).contains("no-store");
        List<CSVRecord> rows = rows(file.body());
        CSVRecord formula = rows.stream()
                .filter(row -> row.get("event").equals("test.formula"))
                .findFirst()
                .orElseThrow();
        assertThat(formula.get("person")).isEqualTo("'=cmd|'/c calc'!A1");
        assertThat(formula.get("subject")).isEqualTo("'+1 heron, \"quoted\"");
        assertThat(formula.get("detail")).isEqualTo("'@SUM(A1)\nsecond line");
        assertThat(rows.stream().map(row -> Long.valueOf(row.get("id"))).toList())
                .isSorted();
        CSVRecord last = rows.get(rows.size() - 1);
        assertThat(last.get("event")).as("taking it away is in it, too").isEqualTo("audit.exported");
        assertThat(last.get("person")).isEqualTo(steward.name());
        assertThat(rows(steward.get("/steward/log.csv?event=test.many&words=heron-3")
                                .body())
                        .stream()
                        .map(row -> row.get("event"))
                        .distinct())
                .containsExactly("test.many");
    }

    @Test
    void theSameComesAsJsonLines() {
        SignedIn steward = signIn(Role.STEWARD);
        HttpResponse<String> file = steward.get("/steward/log.jsonl?event=test.formula");
        assertThat(file.headers().firstValue("Content-Type").orElseThrow()).startsWith("application/jsonl");
        List<JsonNode> entries = file.body().lines().map(mapper()::readTree).toList();
        assertThat(entries).isNotEmpty().allSatisfy(entry -> {
            assertThat(entry.get("person").asString()).isEqualTo("=cmd|'/c calc'!A1");
            assertThat(entry.get("detail").asString()).isEqualTo("@SUM(A1)\nsecond line");
            assertThat(entry.get("at").asString()).endsWith("Z");
        });
    }

    private static List<CSVRecord> rows(String body) throws IOException {
        CSVFormat format = CSVFormat.RFC4180
                .builder()
                .setHeader()
                .setSkipHeaderRecord(true)
                .get();
        return format.parse(new StringReader(body)).getRecords();
    }
}
