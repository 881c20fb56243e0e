package org.vanewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.Arrays;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TimeZone;
import org.awaitility.Awaitility;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.account.Role;
import org.vanewright.platform.Downloads;
import org.vanewright.platform.job.JobProgress;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import org.vanewright.testing.Tools;
import tools.jackson.databind.JsonNode;

class KitDownloadTest extends ServerTest {
    private static final String LAYOUT = "/layouts/low-wing-pairs-over-the-taper";
    private static final String CAMPAIGN = "clean-stall-with-pairs-over-the-taper";

    @TempDir
    private Path directory;

    private HttpResponse<byte[]> kit(String query, String... headers) {
        return newVisitor().file(LAYOUT + "/kit.zip" + query, headers);
    }

    @Test
    void theKitHoldsWhatAClubNeeds() {
        HttpResponse<byte[]> response = kit("?revision=1");
        assertThat(response.statusCode()).isEqualTo(200);
        assertThat(response.headers().firstValue("content-type")).contains("application/zip");
        assertThat(response.headers().firstValue("content-disposition"))
                .hasValueSatisfying(v -> assertThat(v).contains("low-wing-pairs-over-the-taper-r1-kit.zip"));
        TestKit kit = TestKit.of(response.body());
        Set<String> names = kit.files().keySet();
        String layout = "layouts/low-wing-pairs-over-the-taper-r1/";
        for (String side : List.of("left", "right")) {
            for (String paper : List.of("a4", "a3", "letter", "tabloid", "roll")) {
                assertThat(names).contains(layout + "template-" + side + "-" + paper + ".pdf");
            }
            assertThat(names).contains(layout + "template-" + side + ".svg", layout + "template-" + side + "-mm.dxf");
        }
        assertThat(names)
                .contains(
                        "README.txt",
                        "CAUTIONS.txt",
                        "LICENCES.txt",
                        layout + "stations.csv",
                        layout + "install-sheet-a4.pdf",
                        layout + "test-cards-to-begin-with.pdf",
                        layout + "piece-1.stl",
                        layout + "piece-1.3mf",
                        layout + "piece-1-plate-1-of-1.3mf",
                        "campaigns/" + CAMPAIGN + "-r1/results.csv",
                        "campaigns/" + CAMPAIGN + "-r1/test-cards.pdf");
        assertThat(names).anyMatch(n -> n.matches("devices/.*/solid\\.stl"));
        assertThat(names).anyMatch(n -> n.matches("devices/.*/solid\\.3mf"));
        assertThat(kit.text("CAUTIONS.txt")).contains("Invented demonstration data", "never an approval");
        assertThat(kit.text("LICENCES.txt")).contains("CC0 1.0", "https://creativecommons.org/publicdomain/zero/1.0/");
        for (String plural : List.of("airframes", "devices", "layouts", "campaigns")) {
            String path = kit.document(plural);
            assertThat(names).contains(path, path.replaceFirst("\\.json$", ".provenance.json"));
        }
        assertThat(kit.text("README.txt")).contains("Clean stall", CAMPAIGN);
    }

    @Test
    void everyFileHasTheHashThatManifestAndCrateSay() {
        TestKit kit = TestKit.of(kit("?revision=1").body());
        Map<String, String> manifest = new HashMap<>();
        kit.text("manifest-sha256.txt").lines().forEach(l -> manifest.put(l.substring(66), l.substring(0, 64)));
        Map<String, JsonNode> crate = new HashMap<>();
        mapper().readTree(kit.text("ro-crate-metadata.json"))
                .get("@graph")
                .forEach(e -> crate.put(e.get("@id").asString(), e));
        kit.files().forEach((name, bytes) -> {
            if (!name.equals("manifest-sha256.txt")) {
                assertThat(manifest).containsEntry(name, Downloads.sha256(bytes));
            }
            if (!name.equals("manifest-sha256.txt") && !name.equals("ro-crate-metadata.json")) {
                assertThat(in(crate, name).get("sha256").asString()).isEqualTo(Downloads.sha256(bytes));
                assertThat(in(crate, name).get("contentSize").asString()).isEqualTo(String.valueOf(bytes.length));
            }
        });
        assertThat(manifest).hasSize(kit.files().size() - 1);
        JsonNode entry = kit.index().get("revisions").get(0);
        assertThat(entry.get("sha256").asString())
                .as("the hash in the kit is the record's own")
                .isEqualTo(json(
                                get("/api/v1/" + entry.get("plural").asString() + "/"
                                        + entry.get("slug").asString() + "/revisions/1/verify"),
                                200)
                        .get("sha256")
                        .asString());
    }

    /**
     * RO-Crate Metadata Specification 1.1.3 (P. Sefton et al., 2023), from memory of its sections "RO-Crate Structure",
     * "Root Data Entity", "Data Entities" and "Contextual Entities": what it says MUST be.
     */
    @Test
    void itIsAnRoCrate() {
        TestKit kit = TestKit.of(kit("?revision=1").body());
        JsonNode document = mapper().readTree(kit.text("ro-crate-metadata.json"));
        assertThat(document.get("@context").toString())
                .as("Structure: JSON-LD with the context of the version")
                .contains("\"https://w3id.org/ro/crate/1.1/context\"");
        Map<String, JsonNode> graph = new HashMap<>();
        document.get("@graph").forEach(e -> {
            assertThat(e.get("@type")).as("every entity has a type").isNotNull();
            assertThat(graph.put(e.get("@id").asString(), e))
                    .as("flattened: each once")
                    .isNull();
        });
        JsonNode descriptor = in(graph, "ro-crate-metadata.json");
        assertThat(descriptor.get("@type").asString()).isEqualTo("CreativeWork");
        assertThat(descriptor.get("about").get("@id").asString()).isEqualTo("./");
        assertThat(descriptor.get("conformsTo").get("@id").asString()).isEqualTo("https://w3id.org/ro/crate/1.1");
        JsonNode root = in(graph, "./");
        assertThat(root.get("@type").asString()).as("Root Data Entity").isEqualTo("Dataset");
        for (String each : List.of("name", "description", "license", "author", "datePublished")) {
            assertThat(root.get(each)).as(each).isNotNull();
        }
        assertThat(Instant.parse(root.get("datePublished").asString())).isBefore(Instant.now());
        Set<String> parts = new HashSet<>();
        root.get("hasPart").forEach(p -> parts.add(p.get("@id").asString()));
        Set<String> expected = new HashSet<>(kit.files().keySet());
        expected.remove("ro-crate-metadata.json");
        assertThat(parts).as("Data Entities: every file, linked from the root").isEqualTo(expected);
        for (String part : parts) {
            JsonNode file = in(graph, part);
            assertThat(file.get("@type").asString()).isEqualTo("File");
            assertThat(file.get("encodingFormat").asString()).matches("[a-z]+/[a-z0-9.+-]+(;.*)?");
            for (String reference : List.of("author", "license", "publisher")) {
                if (file.has(reference)) {
                    assertThat(graph)
                            .as("no reference leads nowhere")
                            .containsKey(file.get(reference).get("@id").asString());
                }
            }
        }
        assertThat(in(graph, root.get("author").get("@id").asString())
                        .get("@type")
                        .asString())
                .as("Contextual Entities: people are entities of their own")
                .isEqualTo("Person");
        assertThat(root.get("license").get("@id").asString())
                .isEqualTo("https://creativecommons.org/publicdomain/zero/1.0/");
    }

    private static JsonNode in(Map<String, JsonNode> graph, String id) {
        return Objects.requireNonNull(graph.get(id), id);
    }

    /** Made anew each time, not sent as it was kept. */
    @Test
    void theSameRevisionGivesTheSameBytesInAnyZoneAndLanguage() throws IOException {
        byte[] here = made("here.zip");
        assertThat(kit("?revision=1").body()).isEqualTo(here);
        TimeZone zone = TimeZone.getDefault();
        Locale locale = Locale.getDefault();
        try {
            TimeZone.setDefault(TimeZone.getTimeZone("Pacific/Chatham"));
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(made("there.zip")).isEqualTo(here);
        } finally {
            TimeZone.setDefault(zone);
            Locale.setDefault(locale);
        }
    }

    private byte[] made(String name) throws IOException {
        Kits kits = context().getBean(Kits.class);
        Path file = directory.resolve(name);
        kits.write(kits.plan(LAYOUT.substring("/layouts/".length()), 1, null), file, JobProgress.UNSEEN);
        return Files.readAllBytes(file);
    }

    @Test
    void aMemberHasItMadeAsAJobThatGivesTheSameBytes() {
        SignedIn member = signIn(Role.MEMBER);
        assertThat(member.page(LAYOUT, 200).select("form[action$=/kit] button")).hasSize(1);
        HttpResponse<String> started = member.postForm(LAYOUT + "/kit", Map.of("revision", "1"));
        assertThat(started.statusCode()).isEqualTo(303);
        String job = started.headers().firstValue("location").orElseThrow().replaceFirst("^https?://[^/]*", "");
        Awaitility.await("the kit is made")
                .until(() -> member.page(job, 200).select("main").text().contains("It is done."));
        assertThat(member.page(job, 200).select("a[href$=/file]").text())
                .startsWith("low-wing-pairs-over-the-taper-r1-kit.zip");
        assertThat(member.file(job + "/file").body())
                .isEqualTo(kit("?revision=1").body());
        assertThat(signIn(Role.MEMBER).get(job).statusCode()).isEqualTo(404);
        assertThat(newVisitor().page(LAYOUT, 200).select("form[action$=/kit]")).isEmpty();
    }

    @Test
    void partsOfItAreSentToo() {
        byte[] whole = kit("?revision=1").body();
        HttpResponse<byte[]> part = kit("?revision=1", "Range", "bytes=1000-1999");
        assertThat(part.statusCode()).isEqualTo(206);
        assertThat(part.body()).isEqualTo(Arrays.copyOfRange(whole, 1000, 2000));
    }

    @Test
    void nothingInItIsCompressed() {
        byte[] zip = kit("?revision=1").body();
        TestKit kit = TestKit.of(zip);
        long sum = kit.files().values().stream().mapToLong(b -> b.length).sum();
        assertThat((long) zip.length).isGreaterThan(sum);
        kit.files().forEach((name, bytes) -> {
            if (name.endsWith(".pdf")) {
                assertThat(new String(bytes, java.nio.charset.StandardCharsets.ISO_8859_1))
                        .as(name)
                        .doesNotContain("/FlateDecode");
            }
            if (name.endsWith(".3mf")) {
                long inner = TestKit.of(bytes).files().values().stream()
                        .mapToLong(b -> b.length)
                        .sum();
                assertThat((long) bytes.length).as(name).isGreaterThan(inner);
            }
        });
    }

    @Test
    void otherProgramsReadIt() throws Exception {
        Path zip = Files.write(directory.resolve("kit.zip"), kit("?revision=1").body());
        String program = "import sys,zipfile,hashlib\n"
                + "z=zipfile.ZipFile(sys.argv[1])\n"
                + "assert z.testzip() is None\n"
                + "for l in z.read('manifest-sha256.txt').decode().splitlines():\n"
                + "  assert hashlib.sha256(z.read(l[66:])).hexdigest()==l[:64], l\n"
                + "print(len(z.namelist()))\n";
        String count = Tools.run("/usr/bin/python3", "-c", program, zip.toString());
        TestKit kit = TestKit.of(Files.readAllBytes(zip));
        assertThat(count.strip()).isEqualTo(String.valueOf(kit.files().size()));
        String name = "layouts/low-wing-pairs-over-the-taper-r1/template-left-a4.pdf";
        Path pdf = Files.write(directory.resolve("template.pdf"), kit.files().get(name));
        assertThat(Tools.run("qpdf", "--check", pdf.toString())).contains("No syntax or stream encoding errors");
        assertThat(Tools.run("pdftotext", pdf.toString(), "-")).contains("low-wing-pairs-over-the-taper");
    }

    @Test
    void theAddressNamesTheResults() {
        HttpResponse<byte[]> now = kit("?revision=1");
        String fixed = now.headers().firstValue("content-location").orElseThrow();
        assertThat(fixed).startsWith(LAYOUT + "/kit.zip?revision=1&results=").contains(CAMPAIGN + ".1");
        HttpResponse<byte[]> same = newVisitor().file(fixed);
        assertThat(same.body()).isEqualTo(now.body());
        String etag = now.headers().firstValue("etag").orElseThrow();
        assertThat(same.headers().firstValue("etag")).contains(etag);
        assertThat(etag).startsWith("\"");
        assertThat(newVisitor().file(fixed, "If-None-Match", etag).statusCode()).isEqualTo(304);
        HttpResponse<byte[]> none = kit("?revision=1&results=none");
        assertThat(none.headers().firstValue("etag")).isNotEqualTo(now.headers().firstValue("etag"));
        assertThat(TestKit.of(none.body()).files().keySet()).noneMatch(n -> n.contains("campaigns/"));
    }

    @Test
    void whatCannotBeInAKitIsRefusedByName() {
        for (String results : List.of("x", "x.0", CAMPAIGN + ".9", "nobody.1", CAMPAIGN + ".1,", "../x.1")) {
            HttpResponse<byte[]> refused = kit("?revision=1&results=" + results, "Accept", "application/problem+json");
            assertThat(refused.statusCode()).as(results).isEqualTo(400);
        }
        assertThat(kit("?revision=99").statusCode()).isEqualTo(404);
        assertThat(kit("?revision=x").statusCode()).isEqualTo(400);
        assertThat(newVisitor().file("/layouts/nothing/kit.zip").statusCode()).isEqualTo(404);
    }

    @Test
    void thePageOffersIt() {
        assertThat(page(LAYOUT, 200).select("a[href*=kit.zip]").attr("href")).isEqualTo(LAYOUT + "/kit.zip?revision=1");
        assertThat(signIn(Role.MEMBER).page("/layouts", 200).select("a[href=/kits/import]"))
                .hasSize(1);
    }
}
