package org.vanewright.export;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.apache.commons.csv.CSVRecord;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Acting;
import org.vanewright.account.NewPeople.NewPerson;
import org.vanewright.account.Role;
import org.vanewright.photograph.Photographs;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.platform.job.JobStopped;
import org.vanewright.record.RecordContent;
import org.vanewright.record.RecordService;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.testing.Pictures;
import org.vanewright.testing.ServerTest;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Everything public, and nothing else, as a Data Package. */
class ExportTest extends ServerTest {
    private static final AtomicInteger COUNT = new AtomicInteger();

    private ObjectNode document(String name) {
        ObjectNode device = mapper().valueToTree(
                        devices().published("rectangular-vane-8-by-20").content());
        return device.put("name", name + " " + COUNT.incrementAndGet());
    }

    private RecordService<?> devices() {
        return context().getBean(Records.class).ofPlural("devices").orElseThrow();
    }

    private ReadPackage exported() throws IOException {
        return new ReadPackage(bytes());
    }

    private byte[] bytes() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        context().getBean(RecordExport.class).write(out, JobProgress.UNSEEN);
        return out.toByteArray();
    }

    @Test
    void everyTableIsAsItsSchemaSays() throws IOException {
        ReadPackage read = exported();
        assertThat(read.problems()).isEmpty();
        assertThat(read.descriptor().get("profile").asString()).isEqualTo("data-package");
        assertThat(List.of(
                        "airframes",
                        "airframe_panels",
                        "devices",
                        "layouts",
                        "layout_rows",
                        "adhesives",
                        "adhesive_strengths",
                        "print_runs",
                        "installations",
                        "inspections",
                        "campaigns",
                        "campaign_configurations",
                        "campaign_flights",
                        "test_points",
                        "tuft_surveys",
                        "tufts",
                        "campaign_comparisons",
                        "revisions",
                        "figure_origins",
                        "licences"))
                .allSatisfy(table -> assertThat(read.table(table)).as(table).isNotEmpty());
        assertThat(read.text("CAUTIONS.txt")).contains("WITHDRAWN").contains("Invented");
    }

    /** By another way than the export's: the service's own addresses. */
    @Test
    void theFiguresAreThoseOfTheRecord() throws IOException {
        ReadPackage read = exported();
        JsonNode campaign = json(get("/api/v1/campaigns/clean-stall-with-pairs-over-the-taper"), 200)
                .get("content");
        assertThat(read.table("test_points").stream()
                        .filter(r -> r.get("slug").equals("clean-stall-with-pairs-over-the-taper"))
                        .map(r -> Double.valueOf(r.get("indicated_airspeed_kt"))))
                .containsExactlyElementsOf(Stream.iterate(0, i -> i + 1)
                        .limit(campaign.get("points").size())
                        .map(i -> campaign.get("points")
                                .get(i)
                                .get("indicatedAirspeedKt")
                                .doubleValue())
                        .toList());
        for (CSVRecord row : read.table("revisions")) {
            String line =
                    read.text(row.get("document_path")).split("\n", -1)[Integer.parseInt(row.get("document_line")) - 1];
            assertThat(Downloads.sha256(line.getBytes(StandardCharsets.UTF_8))).isEqualTo(row.get("sha256"));
        }
        assertThat(read.table("tufts"))
                .hasSize(read.table("tuft_surveys").stream()
                        .mapToInt(s -> Stream.of("steady", "unsteady", "reversed", "not_seen")
                                .mapToInt(c -> Integer.parseInt(s.get(c)))
                                .sum())
                        .sum());
    }

    @Test
    void onlyWhatAVisitorSeesIsInIt() throws IOException {
        NewPerson author = newPerson(Role.MEMBER);
        String secret = "kept-" + COUNT.incrementAndGet() + "-to-themselves";
        Photographs photographs = context().getBean(Photographs.class);
        byte[] file = Pictures.encoded(Pictures.quarters(71, 30), "png");
        String unseen = Acting.as(author, () -> photographs.take(file));
        Acting.as(author, () -> start(devices(), document("Draft " + secret)));
        String submitted = Acting.as(author, () -> start(devices(), document("Submitted " + secret)));
        publishing().submit(author, submitted);
        String returned = Acting.as(author, () -> start(devices(), document("Returned " + secret)));
        Revision<?> refused = publishing().submit(author, returned);
        publishing().giveBack("devices", refused.ref(), "Not so, " + secret);
        ReadPackage read = exported();
        assertThat(read.problems()).isEmpty();
        for (byte[] content : read.files().values()) {
            assertThat(new String(content, StandardCharsets.ISO_8859_1))
                    .doesNotContain(secret)
                    .doesNotContain(author.email())
                    .doesNotContain("club.example")
                    .doesNotContain(author.id())
                    .doesNotContain(unseen);
        }
    }

    private <T extends RecordContent> String start(RecordService<T> service, ObjectNode document) {
        return "/devices/drafts/"
                + service.drafts()
                        .start(mapper().treeToValue(document, service.contentType()))
                        .id();
    }

    @Test
    void withdrawnOnesAndPhotographsAndOddTextsAreInIt() throws IOException {
        NewPerson author = newPerson(Role.MEMBER);
        byte[] file = Pictures.encoded(Pictures.quarters(83, 40), "png");
        String photograph =
                Acting.as(author, () -> context().getBean(Photographs.class).take(file));
        ObjectNode document = document("=HYPERLINK(\"http://x\")");
        document.put("description", "Two lines\nwith \"quotes\", commas and “é”");
        document.putArray("photographs").addObject().put("sha256", photograph).put("alt", "Quarters");
        String path = Acting.as(author, () -> start(devices(), document));
        String slug = publishing().publish(author, path).replace("/devices/", "");
        publishing().withdraw("devices", devices().published(slug).ref(), "It broke off");
        ReadPackage read = exported();
        assertThat(read.problems()).isEmpty();
        CSVRecord device = read.row("devices", "slug", slug);
        assertThat(device.get("name")).startsWith("'=HYPERLINK(\"http://x\")");
        assertThat(device.get("description")).isEqualTo("Two lines\nwith \"quotes\", commas and “é”");
        CSVRecord revision = read.row("revisions", "slug", slug);
        assertThat(revision.get("state")).isEqualTo("WITHDRAWN");
        assertThat(revision.get("withdrawn_reason")).isEqualTo("It broke off");
        assertThat(revision.get("licence")).isEqualTo("CC-BY-SA-4.0");
        assertThat(revision.get("contributor")).isEqualTo(author.name());
        byte[] jpeg = Objects.requireNonNull(read.files().get("photographs/" + photograph + ".jpg"));
        assertThat(Downloads.sha256(jpeg)).isEqualTo(photograph);
        assertThat(read.row("photograph_uses", "sha256", photograph).get("slug"))
                .isEqualTo(slug);
    }

    @Test
    void theSameRecordGivesTheSameBytes() throws IOException {
        byte[] once = bytes();
        assertThat(bytes()).isEqualTo(once);
    }

    @Test
    void whatIsCancelledLeavesNothing() throws IOException {
        long before = working();
        assertThatExceptionOfType(JobStopped.class)
                .isThrownBy(() -> context()
                        .getBean(RecordExport.class)
                        .write(OutputStream.nullOutputStream(), (done, of, words) -> {
                            throw new JobStopped(JobStopped.Reason.CANCELLED);
                        }));
        assertThat(working()).isEqualTo(before);
    }

    private static long working() throws IOException {
        try (Stream<Path> files = Files.list(Path.of(System.getProperty("java.io.tmpdir")))) {
            return files.filter(f -> f.getFileName().toString().startsWith("vanewright-working-export"))
                    .count();
        }
    }

    /** Asked for twice, made once; asked for again when something has changed. */
    @Test
    void visitorsHaveItMadeOnceForEachStateOfTheRecord() throws IOException {
        shipped("devices", document("Before"));
        JsonNode first = made();
        assertThat(json(get("/api/v1/export"), 200).get("fileName")).isEqualTo(first.get("fileName"));
        HttpResponse<byte[]> whole = fetch();
        assertThat(whole.statusCode()).isEqualTo(200);
        assertThat(Downloads.sha256(whole.body()))
                .startsWith(first.get("fileName").asString().replaceAll("vanewright-record-([0-9a-f]{12}).zip", "$1"));
        String tag = whole.headers().firstValue("ETag").orElseThrow();
        assertThat(fetch("If-None-Match", tag).statusCode()).isEqualTo(304);
        HttpResponse<byte[]> part = fetch("Range", "bytes=1000-1999");
        assertThat(part.statusCode()).isEqualTo(206);
        assertThat(part.body()).isEqualTo(Arrays.copyOfRange(whole.body(), 1000, 2000));
        assertThat(made().get("fileName")).isEqualTo(first.get("fileName"));
        assertThat(fetch().headers().firstValue("ETag")).hasValue(tag);
        assertThat(page("/export", 200).select("main form")).isEmpty();
        assertThat(page("/export", 200).select("main a[href=/export/record.zip]"))
                .hasSize(1);

        shipped("devices", document("Behind"));
        assertThat(json(get("/api/v1/export"), 200).get("current").asBoolean()).isFalse();
        assertThat(page("/export", 200).select("main form button").text()).contains("as it is now");
        assertThat(made().get("fileName")).isNotEqualTo(first.get("fileName"));
        assertThat(page("/", 200).select("footer a[href=/export]")).hasSize(1);
    }

    private JsonNode made() {
        json(postJson("/api/v1/export", ""), 202);
        Awaitility.await("export")
                .atMost(Duration.ofMinutes(1))
                .until(() -> json(get("/api/v1/export"), 200).get("current").asBoolean());
        return json(get("/api/v1/export"), 200);
    }

    private HttpResponse<byte[]> fetch(String... headers) {
        HttpRequest.Builder request = HttpRequest.newBuilder(URI.create(origin() + "/export/record.zip"));
        try {
            return HttpClient.newHttpClient()
                    .send(
                            (headers.length == 0 ? request : request.headers(headers)).build(),
                            HttpResponse.BodyHandlers.ofByteArray());
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }
}
