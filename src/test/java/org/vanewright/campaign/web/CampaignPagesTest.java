package org.vanewright.campaign.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Campaigns on pages, in files and as programs meet them. */
class CampaignPagesTest extends ServerTest {
    private static final String DEMO = "/campaigns/clean-stall-with-pairs-over-the-taper";
    private static final String API = "/api/v1/campaigns";
    private static final Map<String, String> STALL = Map.of(
            "kind", "STALL",
            "configuration", "A",
            "sortie", "1",
            "indicatedAirspeedKt", "46,5",
            "pressureAltitudeFt", "4000",
            "outsideAirTemperatureC", "8",
            "massKg", "556",
            "entryRateKtPerS", "0.9");

    private ObjectNode document(String name) {
        ObjectNode content = (ObjectNode) json(get(API + DEMO.substring("/campaigns".length()) + "/revisions/1"), 200)
                .get("content");
        return content.put("name", name);
    }

    /** A draft of that member with the plan of the demonstration and nothing recorded; gives its address. */
    private String draft(SignedIn member, String name) {
        ObjectNode document = document(name);
        document.remove("points");
        document.remove("handling");
        document.remove("provenance");
        JsonNode created = json(postJson(API, document.toString(), "Authorization", bearer(member.person())), 201);
        assertThat(created.get("problems")).isEmpty();
        return "/campaigns/drafts/" + created.get("id").asString();
    }

    @Test
    void everySentenceOfTheClaimOpensToTheNumbersBehindIt() {
        Document page = page(DEMO, 200);
        assertThat(page.select(".claim")).hasSize(1);
        Element claim = page.select(".claim").get(0);
        assertThat(claim.select("summary span").text())
                .matches(
                        "Stall speed lower by 2\\.\\d kt \\(95 % interval \\d\\.\\d to \\d\\.\\d, 6 and 6 blocks\\)\\.");
        assertThat(claim.select("dt").eachText())
                .contains("Difference of means", "95 % interval", "t", "Degrees of freedom", "Test points");
        assertThat(page.select("#points tbody tr")).hasSizeGreaterThanOrEqualTo(24);
        assertThat(page.select("table").eachText())
                .anyMatch(t -> t.contains("Warning comes before by")
                        && t.matches("(?s).*A: Unmodified 12 \\d\\.\\d kt \\(\\d.* 12 \\d+\\.\\d° .*"));
        assertThat(page.select(".invented")).isNotEmpty();
        assertThat(page.select("#claims-title ~ .caution")).isNotEmpty();
        assertThat(page.select("svg.plot")).hasSizeGreaterThanOrEqualTo(4);
        assertThat(page.text())
                .contains("extrapolated")
                .contains("complete blocks")
                .doesNotContain("NaN");
    }

    @Test
    void theLayoutShowsWhatFlightsSayAndAnotherSaysNotFlown() {
        Document flown = page("/layouts/low-wing-pairs-over-the-taper", 200);
        assertThat(flown.select("#flown-title ~ ul").text()).contains("Stall speed lower by");
        assertThat(flown.select("#flown-title ~ ul a").eachAttr("href")).contains(DEMO + "/revisions/1");
        assertThat(page("/layouts/high-wing-one-row-co-rotating", 200)
                        .select(".facts")
                        .text())
                .contains("not flown");
        assertThat(page("/campaigns", 200).select("h1").text()).isEqualTo("Campaigns");
    }

    @Test
    void aTestCardSaysWhatToFlyAndDefersToTheAircraftsLimits() throws Exception {
        byte[] all = bytes(DEMO + "/test-card.pdf?revision=1");
        try (var pdf = Loader.loadPDF(all)) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(12);
        }
        try (var pdf = Loader.loadPDF(bytes(DEMO + "/test-card.pdf?revision=1&sortie=2"))) {
            assertThat(pdf.getNumberOfPages()).isEqualTo(1);
            String text = new PDFTextStripper().getText(pdf).replaceAll("\\s+", " ");
            assertThat(text)
                    .contains("Flight 2 of 12")
                    .contains("configuration B")
                    .contains("low-wing-pairs-over-the-taper, revision 1")
                    .contains("own operating limitations hold")
                    .contains("Vne 138 kt")
                    .contains("maximum mass 600 kg")
                    .contains("no more than 1 kt in a second")
                    .contains("Stop and land when")
                    .contains("stall warning was set for the wing without devices")
                    .contains("AC 90-89B")
                    .contains("INVENTED");
        }
        Document refused = page(DEMO + "/test-card.pdf?sortie=13", 400);
        assertThat(refused.text()).contains("1 to 12");
    }

    private byte[] bytes(String path) {
        assertThat(get(path).headers().firstValue("Content-Type")).contains("application/pdf");
        return raw(path);
    }

    private byte[] raw(String path) {
        try {
            return URI.create(origin() + path).toURL().openStream().readAllBytes();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }

    @Test
    void resultsComeAsATableWithRawBesideReduced() {
        HttpResponse<String> csv = get(DEMO + "/results.csv?revision=1");
        assertThat(csv.headers().firstValue("Content-Type")).contains("text/csv;charset=UTF-8");
        List<String> lines = csv.body().lines().toList();
        assertThat(lines).hasSize(32);
        assertThat(lines.get(0)).startsWith("number,kind,configuration,sortie,block,at,indicated_airspeed_kt");
        assertThat(lines.get(8)).startsWith("8,STALL,A,1,1,2026-05-02T09:10:00Z,45.5,4200.0,9.0,554.0,1.0,0.8,");
    }

    @Test
    void aTestPointIsRecordedByFormAndTheNextOneGoesOn() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Recorded by form");
        Document form = member.page(draft + "/record", 200);
        assertThat(form.select("select[name=configuration] option").eachText()).contains("A: Unmodified");
        Map<String, String> fields = new LinkedHashMap<>(STALL);
        fields.put("id", form.select("input[name=id]").attr("value"));
        HttpResponse<String> saved = member.postForm(draft + "/record", fields);
        assertThat(saved.statusCode()).isEqualTo(303);
        assertThat(saved.headers().firstValue("Location")).contains(draft + "/record?kind=STALL&saved");
        assertThat(member.postForm(draft + "/record", fields).statusCode())
                .as("sent twice")
                .isEqualTo(303);
        Document next = member.page(draft + "/record?kind=STALL&saved", 200);
        assertThat(next.select("[role=status]").text()).contains("One test point is recorded");
        assertThat(next.select("input[name=massKg]").attr("value")).isEqualTo("556");
        assertThat(next.select("input[name=indicatedAirspeedKt]").attr("value")).isEmpty();
        Document list = member.page(draft + "/points", 200);
        assertThat(list.select(".recorded li")).hasSize(1);
        assertThat(list.select(".recorded li a").text())
                .contains("46.5 kt indicated")
                .contains("typed");
    }

    @Test
    void whatIsWrongStandsBesideItsFieldAndNothingIsLost() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Refused");
        Map<String, String> fields = new LinkedHashMap<>(STALL);
        fields.put("id", "mine");
        fields.put("indicatedAirspeedKt", "fast");
        fields.put("remark", "kept <all the same>");
        Document refused = parsed(member.postForm(draft + "/record", fields), 422);
        assertThat(refused.select("#indicatedAirspeedKt-error").text()).contains("a number such as 12.5");
        assertThat(refused.select("textarea[name=remark]").text()).isEqualTo("kept <all the same>");
        fields.put("indicatedAirspeedKt", "4600");
        fields.put("configuration", "Z");
        Document outside = parsed(member.postForm(draft + "/record", fields), 422);
        assertThat(outside.select("#indicatedAirspeedKt-error").text()).contains("5 kt to 350 kt");
        assertThat(outside.select("#configuration-error").text()).contains("A, B");
        assertThat(member.page(draft + "/points", 200).select(".recorded li")).isEmpty();
    }

    @Test
    void aTestPointIsChangedAndRemoved() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Changed");
        Map<String, String> fields = new LinkedHashMap<>(STALL);
        fields.put("id", "mine");
        member.postForm(draft + "/record", fields);
        fields.put("indicatedAirspeedKt", "47");
        assertThat(member.postForm(draft + "/points/mine", fields).statusCode()).isEqualTo(303);
        assertThat(member.page(draft + "/points/mine", 200)
                        .select("input[name=indicatedAirspeedKt]")
                        .attr("value"))
                .isEqualTo("47");
        assertThat(member.postForm(draft + "/points/other", fields).statusCode())
                .isEqualTo(404);
        assertThat(member.postForm(draft + "/points/mine/remove", Map.of()).statusCode())
                .isEqualTo(303);
        assertThat(member.get(draft + "/points/mine").statusCode()).isEqualTo(404);
    }

    @Test
    void aTableIsReadFirstAndTakenOverOnlyWhenAccepted() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "From a table");
        String table = get("/campaigns/example.csv").body() + "STALL,Q,1,46,4000,8,,,,,,,,,,,,\n";
        Document read = parsed(member.postForm(draft + "/import", Map.of("action", "read", "table", table)), 200);
        assertThat(read.select("#read-title").text()).isEqualTo("3 of 6 rows make test points that can be taken over");
        assertThat(read.select("section.note li").eachText()).anyMatch(l -> l.startsWith("Row 6: configuration is Q"));
        assertThat(member.page(draft + "/points", 200).select(".recorded li")).isEmpty();
        String text = read.select("textarea[name=table]").get(0).wholeText();
        for (int twice = 0; twice < 2; twice++) {
            HttpResponse<String> taken = member.postForm(draft + "/import", Map.of("action", "accept", "table", text));
            assertThat(taken.statusCode()).isEqualTo(303);
            assertThat(member.page(draft + "/points", 200).select(".recorded li"))
                    .hasSize(3);
        }
        Document bad = parsed(member.postForm(draft + "/import", Map.of("table", "a,b\n1,2")), 422);
        assertThat(bad.select("[role=alert]").text()).contains("a header with the column kind");
    }

    @Test
    void aFileIsReadLikeATable() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "From a file");
        HttpResponse<String> read = member.postMultipart(
                draft + "/import",
                Map.of("action", "read"),
                Map.of("file", get("/campaigns/example.csv").body()));
        assertThat(parsed(read, 200).select("#read-title").text()).startsWith("3 of 5 rows");
    }

    @Test
    void aRatingMustAgreeWithTheAnswers() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Rated");
        Map<String, String> fields = new LinkedHashMap<>(
                Map.of("configuration", "A", "task", "A turn", "adequate", "NO", "rating", "4", "controllable", "YES"));
        assertThat(parsed(member.postForm(draft + "/handling", fields), 422)
                        .select("#rating-error")
                        .text())
                .contains("7 to 10");
        fields.put("rating", "8");
        assertThat(member.postForm(draft + "/handling", fields).statusCode()).isEqualTo(303);
        fields.put("rating", "11");
        assertThat(member.postForm(draft + "/handling", fields).statusCode()).isEqualTo(422);
        assertThat(member.page(draft + "/handling", 200).select(".recorded li").text())
                .contains("rating 8");
        assertThat(member.postForm(draft + "/handling/remove", Map.of("number", "5"))
                        .statusCode())
                .isEqualTo(400);
        assertThat(member.postForm(draft + "/handling/remove", Map.of("number", "0"))
                        .statusCode())
                .isEqualTo(303);
        assertThat(member.page(draft + "/handling", 200).select(".recorded li")).isEmpty();
    }

    @Test
    void ratingsAreShownAsMediansAndCounts() {
        assertThat(page(DEMO, 200).select("#handling-title ~ .scroll").text())
                .contains("4 (twice)")
                .contains("between 3 and 4");
    }

    @Test
    void theEditorKeepsWhatIsRecordedAndShowsWhatFollowsFromThePlan() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Kept by the editor");
        Map<String, String> point = new LinkedHashMap<>(STALL);
        point.put("id", "kept");
        member.postForm(draft + "/record", point);
        Document editor = member.page(draft, 200);
        assertThat(editor.select("#preview").text()).contains("9 stalls of each configuration find a change of 1.2 kt");
        assertThat(editor.select("#preview table").text()).contains("12 6 B 2");
        Map<String, String> fields = new LinkedHashMap<>();
        editor.select("main form [name]").forEach(field -> {
            if (!field.is("button, [type=checkbox]:not([checked]), [type=file]")) {
                String value = field.is("select")
                        ? field.select("option[selected]").attr("value")
                        : field.is("textarea") ? field.text() : field.attr("value");
                fields.put(field.attr("name"), value);
            }
        });
        fields.put("action", "save");
        fields.put("name", "Kept and renamed");
        assertThat(member.postForm(draft, fields).statusCode()).isEqualTo(303);
        assertThat(member.page(draft + "/points", 200).select(".recorded li")).hasSize(1);
        assertThat(member.page(draft, 200).select("h1").text()).isEqualTo("Kept and renamed");
    }

    @Test
    void aPlanAboveTheMaximumMassOrWithAnotherAircraftsLayoutCannotBeSubmitted() {
        ObjectNode document = document("Too heavy");
        ObjectNode plan = (ObjectNode) document.get("plan");
        ((ObjectNode) plan.get("conditions")).put("standardMassKg", 620);
        ((ObjectNode) plan.get("configurations").get(1).get("layout")).put("slug", "high-wing-one-row-co-rotating");
        JsonNode problems = json(sendAsMember(API, document.toString()), 201).get("problems");
        assertThat(problems.findValuesAsString("field"))
                .containsExactlyInAnyOrder("plan.conditions.standardMassKg", "plan.configurations[1].layout");
        assertThat(problems.toString()).contains("at most the aircraft's maximum mass of 600.0 kg");
    }

    @Test
    void testPointsAreResources() {
        String bearer = bearer(newPerson(Role.MEMBER));
        ObjectNode document = document("By a program");
        document.remove("points");
        String id = json(postJson(API, document.toString(), "Authorization", bearer), 201)
                .get("id")
                .asString();
        String points = API + "/drafts/" + id + "/points";
        String point = """
                {"id":"p1","kind":"STALL","configuration":"B","sortie":3,"indicatedAirspeedKt":44.5,
                 "pressureAltitudeFt":4000,"outsideAirTemperatureC":8,"massKg":555}""";
        assertThat(json(postJson(points, point, "Authorization", bearer), 201)).hasSize(1);
        assertThat(json(postJson(points, point, "Authorization", bearer), 201))
                .as("sent twice")
                .hasSize(1);
        JsonNode refused =
                json(postJson(points, point.replace("44.5", "-1").replace("p1", "p2"), "Authorization", bearer), 400);
        assertThat(refused.get("errors").get(0).get("field").asString()).isEqualTo("indicatedAirspeedKt");
        assertThat(json(get(points, "Authorization", bearer), 200)
                        .get(0)
                        .get("configuration")
                        .asString())
                .isEqualTo("B");
        assertThat(json(get(API + "/clean-stall-with-pairs-over-the-taper/points"), 200))
                .hasSize(31);
        assertThat(get(points).statusCode()).isEqualTo(401);
        assertThat(new String(raw(DEMO + "/results.csv"), StandardCharsets.UTF_8))
                .contains("compared");
    }
}
