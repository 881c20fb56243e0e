package org.vanewright.kit;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.account.Acting;
import org.vanewright.account.Role;
import org.vanewright.platform.Downloads;
import org.vanewright.record.Records;
import org.vanewright.record.Revision;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.Caller;
import org.vanewright.testing.Pictures;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;

/** Kits that come in, made from a demonstration layout's and changed. */
class KitImportTest extends ServerTest {
    private static final String LAYOUT = "high-wing-one-row-co-rotating";
    private static final String DEVICE = "rectangular-vane-8-by-20";
    private static final String EXIF_REFUSED = "a picture with more than its pixels";

    private static byte[] made = {};
    private TestKit kit = new TestKit();

    @BeforeEach
    void takeApart() {
        if (made.length == 0) {
            made = newVisitor()
                    .file("/layouts/" + LAYOUT + "/kit.zip?revision=1&results=none")
                    .body();
        }
        kit = TestKit.of(made);
    }

    private static String send(Caller caller, TestKit kit) {
        HttpResponse<String> sent = caller.postFile("/kits/import", Map.of(), "file", kit.zip());
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        return sent.headers().firstValue("location").orElseThrow().replaceFirst("^https?://[^/]*", "");
    }

    private static String keep(Caller caller, TestKit kit) {
        HttpResponse<String> kept = caller.postForm(send(caller, kit) + "/keep", Map.of());
        assertThat(kept.statusCode()).as(kept.body()).isEqualTo(303);
        return kept.headers().firstValue("location").orElseThrow().replaceFirst("^https?://[^/]*", "");
    }

    /** With a device of another height under the name of the one that is here. */
    private TestKit withAnotherDevice(String height) {
        kit.change(
                kit.document("devices"), text -> text.replaceFirst("\"heightMm\":[0-9.]+", "\"heightMm\":" + height));
        return kit.rehash();
    }

    @Test
    void whatIsHereAlreadyIsRecognised() {
        SignedIn member = signIn(Role.MEMBER);
        long before = rows();
        Document preview = member.page(send(member, kit), 200);
        assertThat(preview.text()).contains("All of it is here already", "3 revisions, 0 new here");
        assertThat(preview.select("form[action$=/keep]")).isEmpty();
        assertThat(preview.select("main svg")).isNotEmpty();
        assertThat(rows()).isEqualTo(before);
    }

    @Test
    void anotherRecordOfTheSameNameStandsBesideWhatIsHere() {
        SignedIn member = signIn(Role.MEMBER);
        String original = newVisitor().page("/layouts/" + LAYOUT, 200).outerHtml();
        TestKit changed = withAnotherDevice("8.125");
        Document preview = member.page(send(member, changed), 200);
        assertThat(preview.text()).contains("another record has its name here");
        String path = keep(member, changed);
        assertThat(path).matches("/layouts/" + LAYOUT + "-[0-9]+/revisions/1");

        Document page = member.page(path, 200);
        Document there = newVisitor().page("/layouts/" + LAYOUT, 200);
        assertThat(page.select(".revision-line .hash").attr("title"))
                .as("the same text has the same hash")
                .isEqualTo(there.select(".revision-line .hash").attr("title"));
        assertThat(page.select(".row-block a[href*=" + DEVICE + "-]").attr("href"))
                .as("but names the device that came with it")
                .matches("/devices/" + DEVICE + "-[0-9]+/revisions/1");
        assertThat(newVisitor().page("/layouts/" + LAYOUT, 200).outerHtml()).isEqualTo(original);
        assertThat(newVisitor().get(path).statusCode()).isEqualTo(404);
        assertThat(json(member.get("/api/v1" + path + "/verify", "Authorization", bearer(member.person())), 200)
                        .get("matches")
                        .asBoolean())
                .isTrue();
        distinctInCaches(path);
        theSameIsNotDoubled(changed, path);
        theKitOfItIsTheKitThatCame(member, changed, path);
        startFrom(member, path);
    }

    private void distinctInCaches(String path) {
        Revision<?> imported = Acting.as(newPerson(Role.MEMBER), () -> revision(path));
        Revision<?> original = revision("/layouts/" + LAYOUT + "/revisions/1");
        assertThat(imported.sha256()).isEqualTo(original.sha256());
        assertThat(imported.contentKey()).isNotEqualTo(original.contentKey());
    }

    private Revision<?> revision(String path) {
        return context()
                .getBean(Records.class)
                .ofPlural("layouts")
                .orElseThrow()
                .exactly(new RevisionRef(path.split("/")[2], 1));
    }

    private void theSameIsNotDoubled(TestKit changed, String path) {
        SignedIn other = signIn(Role.MEMBER);
        Document preview = other.page(send(other, changed), 200);
        assertThat(preview.text()).contains("0 new here");
        assertThat(preview.select("a[href=" + path + "]")).isNotEmpty();
    }

    private void theKitOfItIsTheKitThatCame(SignedIn member, TestKit changed, String path) {
        String slug = path.split("/")[2];
        TestKit again = TestKit.of(
                member.file("/layouts/" + slug + "/kit.zip?revision=1").body());
        for (String plural : List.of("airframes", "devices", "layouts")) {
            assertThat(again.text(again.document(plural))).isEqualTo(changed.text(changed.document(plural)));
        }
        for (int i = 0; i < 3; i++) {
            JsonNode entry = again.index().get("revisions").get(i);
            JsonNode came = changed.index().get("revisions").get(i);
            for (String part :
                    List.of("slug", "revision", "sha256", "url", "contributor", "createdAt", "publishedAt")) {
                assertThat(entry.get(part)).as(part).isEqualTo(came.get(part));
            }
        }
        String drawn = "layouts/" + LAYOUT + "-r1/template-left-a4.pdf";
        assertThat(again.files().get(drawn)).isEqualTo(changed.files().get(drawn));
    }

    private void startFrom(SignedIn member, String path) {
        HttpResponse<String> started = member.postForm(path + "/start", Map.of());
        String draft = started.headers().firstValue("location").orElseThrow().replaceFirst("^https?://[^/]*", "");
        assertThat(member.get(draft).body()).contains(DEVICE + "-");
    }

    @Test
    void aMaintainerAcceptsWhatItNamesFirst() {
        SignedIn member = signIn(Role.MEMBER);
        String layout = keep(member, withAnotherDevice("8.25"));
        String device = member.page(layout, 200)
                .select(".row-block a[href*=" + DEVICE + "-]")
                .attr("href");
        SignedIn maintainer = signIn(Role.MAINTAINER);
        assertThat(maintainer
                        .page("/review", 200)
                        .select(".queue li:has(a[href*=" + layout.split("/")[2] + "/])")
                        .text())
                .contains("imported from Vanewright", "passed");
        Document review = maintainer.page(review(layout), 200);
        assertThat(review.text()).contains("nobody here has reviewed it");
        HttpResponse<String> early = maintainer.postForm(review(layout) + "/publish", Map.of());
        assertThat(early.statusCode()).as("its device is not public").isEqualTo(422);
        for (String step :
                List.of(review(device) + "/claim", review(device) + "/publish", review(layout) + "/publish")) {
            assertThat(maintainer.postForm(step, Map.of()).statusCode())
                    .as(step)
                    .isEqualTo(302);
        }
        Document page = newVisitor().page(layout.replaceFirst("/revisions/1$", ""), 200);
        assertThat(page.select(".imported h2").text()).isEqualTo("Imported from Vanewright");
        assertThat(page.select(".revision-line").text())
                .doesNotContain("not reviewed")
                .contains("published by");
        JsonNode provenance = json(newVisitor().get(layout + "/provenance.json"), 200);
        assertThat(provenance.get("alternateOf").toString()).contains("origin:layouts/" + LAYOUT + "/revisions/1");
        JsonNode body = json(newVisitor().get("/api/v1" + layout), 200);
        assertThat(body.get("origin").get("slug").asString()).isEqualTo(LAYOUT);
        assertThat(body.get("origin").get("url").asString()).isEqualTo(origin());
        assertThat(member.postForm(review(layout) + "/publish", Map.of()).statusCode())
                .as("members decide nothing")
                .isEqualTo(403);
    }

    private static String review(String path) {
        String[] parts = path.split("/");
        return "/review/" + parts[1] + "/" + parts[2] + "/" + parts[4];
    }

    @Test
    void whatWasRefusedStaysRefused() {
        SignedIn member = signIn(Role.MEMBER);
        TestKit changed = withAnotherDevice("8.375");
        String layout = keep(member, changed);
        String device = member.page(layout, 200)
                .select(".row-block a[href*=" + DEVICE + "-]")
                .attr("href");
        SignedIn maintainer = signIn(Role.MAINTAINER);
        maintainer.postForm(review(device) + "/return", Map.of("reason", "It is too high for any of our wings."));
        assertThat(member.page(device, 200).text()).contains("Not published here: refused", "too high for any");
        SignedIn other = signIn(Role.MEMBER);
        assertThat(other.get(device).statusCode()).isEqualTo(404);
        assertThat(other.get(layout).statusCode())
                .as("what builds on it went with it")
                .isEqualTo(404);
        assertThat(member.page(layout, 200).text())
                .contains("Not published here: refused", "builds on devices/" + DEVICE + "-", "too high for any");
        assertThat(refusal(other, changed)).contains("refused here by", "too high for any of our wings");
    }

    @Test
    void documentsThatAreNotWhatTheySayAreRefusedAndNothingIsKept() {
        SignedIn member = signIn(Role.MEMBER);
        long before = rows();
        String layout = kit.document("layouts");
        String device = kit.document("devices");
        Map<String, TestKit> hostile = new LinkedHashMap<>();
        hostile.put("canonical JSON", changed(device, t -> t.replaceFirst("\\{", "{ ")));
        hostile.put("a document of the kind device", changed(device, t -> "[1,2"));
        hostile.put("as this version of the service knows it", changed(device, t -> "{\"aaa\":1," + t.substring(1)));
        hostile.put(
                "rows[0].chordFraction",
                changed(layout, t -> t.replaceFirst("\"chordFraction\":[0-9.]+", "\"chordFraction\":5")));
        hostile.put(
                "every revision that a document names",
                changed(layout, t -> t.replace("\"slug\":\"" + DEVICE, "\"slug\":\"other-" + DEVICE)));
        hostile.put(
                "the name in the document", index(t -> t.replaceFirst("\"name\":\"[^\"]+\"", "\"name\":\"Another\"")));
        hostile.put(
                "airframes, devices, layouts and campaigns",
                index(t -> t.replaceFirst("\"plural\":\"devices\"", "\"plural\":\"people\"")));
        hostile.put("as in kit.json", wrongIndexHash());
        hostile.put("as in ro-crate-metadata.json", wrongCrateHash());
        hostile.put(
                "names of documents that stand before it",
                index(t -> t.replaceFirst(
                        "\"references\":\\[\\{\"path\":\"[^\"]+\"", "\"references\":[{\"path\":\"records/x.json\"")));
        hostile.put(
                "a name of small letters",
                index(t -> t.replaceFirst("\"slug\":\"" + LAYOUT, "\"slug\":\"../" + LAYOUT)));
        hostile.put(
                "the address of an instance",
                index(t -> t.replaceAll("\"url\":\"[^\"]+\"", "\"url\":\"javascript:alert(1)\"")));
        hostile.put(
                "CC-BY-4.0, CC-BY-SA-4.0 or CC0-1.0",
                index(t -> t.replaceFirst("\"licence\":\"[^\"]+\"", "\"licence\":\"NONE\"")));
        hostile.put(
                "characters on one line", index(t -> t.replaceFirst("\"contributor\":\"", "\"contributor\":\"\\\\n")));
        hostile.put(
                "the path of a layout's document",
                index(t -> t.replaceFirst("\"layout\":\"[^\"]+\"", "\"layout\":\"" + device + "\"")));
        hostile.put("format vanewright-kit, version 1", index(t -> t.replace("\"version\":1", "\"version\":2")));
        hostile.put(
                "kit.json, which cannot be read", changed("kit.json", t -> "{").described());
        hostile.put(
                "an RO-Crate",
                TestKit.of(made).put("ro-crate-metadata.json", "{}").sealedOnly());
        hostile.put(
                "does not describe", TestKit.of(made).put("more.txt", "more").sealedOnly());
        hostile.forEach(
                (reason, bad) -> assertThat(refusal(member, bad)).as(reason).contains(reason));
        assertThat(rows()).isEqualTo(before);
    }

    private TestKit changed(String name, UnaryOperator<String> how) {
        TestKit fresh = TestKit.of(made).change(name, how);
        return name.equals("kit.json") ? fresh : fresh.rehash();
    }

    private TestKit index(UnaryOperator<String> how) {
        return TestKit.of(made).change("kit.json", how).rehash();
    }

    private TestKit wrongIndexHash() {
        return TestKit.of(made)
                .change("kit.json", t -> t.replaceFirst("\"sha256\":\"[0-9a-f]{8}", "\"sha256\":\"00000000"))
                .described();
    }

    private TestKit wrongCrateHash() {
        return TestKit.of(made)
                .change(
                        "ro-crate-metadata.json",
                        t -> t.replaceFirst("\"sha256\":\"[0-9a-f]{8}", "\"sha256\":\"00000000"))
                .sealedOnly();
    }

    private String refusal(Caller caller, TestKit bad) {
        return parsed(caller.postFile("/kits/import", Map.of(), "file", bad.zip()), 422)
                .select(".problems")
                .text();
    }

    private long rows() {
        JdbcClient jdbc = context().getBean(JdbcClient.class);
        long sum = 0;
        for (String table :
                List.of("airframe_revision", "device_revision", "layout_revision", "kit_provenance", "photograph")) {
            sum += jdbc.sql("select count(*) from " + table).query(Long.class).single();
        }
        return sum;
    }

    @Test
    void photographsComeAsTheyAreOrNotAtAll() {
        SignedIn member = signIn(Role.MEMBER);
        byte[] plain = Pictures.encoded(Pictures.quarters(61, 40), "jpeg");
        assertThat(refusal(member, withPhotograph(Pictures.withExif(plain, 6), true)))
                .contains(EXIF_REFUSED);
        assertThat(refusal(member, withPhotograph(Arrays.copyOf(plain, plain.length + 9), true)))
                .contains(EXIF_REFUSED);
        assertThat(refusal(member, withPhotograph("<svg/>".getBytes(StandardCharsets.UTF_8), true)))
                .contains(EXIF_REFUSED);
        assertThat(refusal(member, withPhotograph(plain, false))).contains("a photograph that is kept here");
        String layout = keep(member, withPhotograph(plain, true));
        String device = member.page(layout, 200)
                .select(".row-block a[href*=" + DEVICE + "-]")
                .attr("href");
        assertThat(member.page(device, 200).select("img[src*=" + Downloads.sha256(plain) + "]"))
                .isNotEmpty();
        assertThat(member.file("/photographs/" + Downloads.sha256(plain) + ".jpg")
                        .body())
                .isEqualTo(plain);
        assertThat(newVisitor()
                        .get("/photographs/" + Downloads.sha256(plain) + ".jpg")
                        .statusCode())
                .isEqualTo(404);
        TestKit again = TestKit.of(member.file("/layouts/" + layout.split("/")[2] + "/kit.zip?revision=1")
                .body());
        assertThat(again.files().get("photographs/" + Downloads.sha256(plain) + ".jpg"))
                .isEqualTo(plain);
    }

    private TestKit withPhotograph(byte[] jpeg, boolean included) {
        String sha256 = Downloads.sha256(jpeg);
        TestKit fresh = TestKit.of(made);
        fresh.change(
                fresh.document("devices"),
                t -> t.replaceFirst(
                        "(\"provenance\":|\"vane\":)",
                        "\"photographs\":[{\"alt\":\"Four quarters\",\"sha256\":\"" + sha256 + "\"}],$1"));
        if (included) {
            String path = "photographs/" + sha256 + ".jpg";
            fresh.files().put(path, jpeg);
            String entry = "{\"path\":\"" + path + "\",\"sha256\":\"" + sha256 + "\"}";
            fresh.change("kit.json", t -> t.replace("\"photographs\":[]", "\"photographs\":[" + entry + "]"));
            fresh.change(
                    "ro-crate-metadata.json",
                    t -> t.replaceFirst(
                            "\"@graph\":\\[",
                            "\"@graph\":[{\"@id\":\"" + path + "\",\"@type\":\"File\",\"sha256\":\"" + sha256
                                    + "\"},"));
        }
        return fresh.rehash();
    }

    @Test
    void nobodyElseSeesOrDecidesOnWhatWasSent() {
        SignedIn member = signIn(Role.MEMBER);
        String path = send(member, withAnotherDevice("8.5"));
        SignedIn other = signIn(Role.STEWARD);
        assertThat(other.get(path).statusCode()).isEqualTo(404);
        assertThat(other.postForm(path + "/keep", Map.of()).statusCode()).isEqualTo(404);
        assertThat(other.postForm(path + "/discard", Map.of()).statusCode()).isEqualTo(404);
        assertThat(newVisitor().get("/kits/import").statusCode()).isEqualTo(303);
        assertThat(member.postForm(path + "/discard", Map.of()).statusCode()).isEqualTo(303);
        assertThat(member.get(path).statusCode()).isEqualTo(404);
        String second = send(member, kit);
        assertThat(member.postForm(second + "/keep", Map.of()).statusCode()).isEqualTo(303);
        assertThat(member.postForm(second + "/keep", Map.of()).statusCode())
                .as("once")
                .isEqualTo(409);
        assertThat(member.page(second, 200).text()).contains("Kept on");
        assertThat(parsed(member.postForm("/kits/import", Map.of()), 422).text())
                .contains("missing");
    }

    @Test
    void programsSendKitsToo() {
        SignedIn member = signIn(Role.MEMBER);
        String bearer = bearer(member.person());
        TestKit changed = withAnotherDevice("8.625");
        JsonNode sent = json(newVisitor().sendFile("/api/v1/kits/imports", "file", changed.zip(), bearer), 201);
        assertThat(sent.get("fresh").asInt()).isEqualTo(2);
        assertThat(sent.get("layout").get("localSlug").asString()).startsWith(LAYOUT + "-");
        assertThat(sent.has("keptAt")).isFalse();
        String at = "/api/v1/kits/imports/" + sent.get("id").asString();
        assertThat(json(newVisitor().call("POST", at + "/keep", "", "Authorization", bearer), 200)
                        .has("keptAt"))
                .isTrue();
        assertThat(newVisitor().call("DELETE", at, "", "Authorization", bearer).statusCode())
                .as("what is kept is not given up")
                .isEqualTo(409);
        JsonNode refused =
                json(newVisitor().sendFile("/api/v1/kits/imports", "file", new byte[] {1, 2, 3}, bearer), 400);
        assertThat(refused.get("errors").toString()).contains("another kind of file");
    }
}
