package org.vanewright.airframe.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.engineering.section.Section;
import org.vanewright.engineering.section.Sections;
import org.vanewright.engineering.section.SkinPoint;
import org.vanewright.engineering.section.SurfaceSide;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.Caller;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Airframe pages as a browser without scripts meets them. */
class AirframePagesTest extends ServerTest {
    private static final String DEMO = "/airframes/quillmere-tapered-low-wing";

    private @Nullable SignedIn signedIn;

    private SignedIn member() {
        if (signedIn == null) {
            signedIn = signIn(Role.MEMBER);
        }
        return signedIn;
    }

    /** What a browser would send of the form on a page. */
    private static Map<String, String> fields(Document page) {
        Map<String, String> fields = new LinkedHashMap<>();
        Element form = page.expectFirst("form[enctype]");
        for (Element field : form.select("input[name], textarea[name], select[name]")) {
            boolean unchecked = field.attr("type").matches("radio|checkbox") && !field.hasAttr("checked");
            if (!unchecked && !field.attr("type").equals("file")) {
                fields.put(field.attr("name"), field.tagName().equals("select") ? selected(field) : field.val());
            }
        }
        return fields;
    }

    private static String selected(Element select) {
        Element option = select.selectFirst("option[selected]");
        return option == null ? "" : option.val();
    }

    /** The address of a draft that a member starts from the demonstration. */
    private String started() {
        return location(member().postForm(DEMO + "/revisions/1/start", Map.of()));
    }

    private Map<String, String> soundForm(String name) {
        Map<String, String> fields = fields(member().page(started(), 200));
        fields.remove("version");
        fields.put("name", name);
        fields.put("action", "save");
        return fields;
    }

    /** A saved draft of that name. */
    private String saved(String name) {
        return location(member().postForm("/airframes/new", soundForm(name)));
    }

    private String published(String name) {
        return publishing().publish(member().person(), saved(name));
    }

    /** The address of a draft of the next revision. */
    private String edited(String path) {
        return location(member().postForm(path + "/edit", Map.of()));
    }

    @Test
    void thePageShowsTheWingDrawnAndInNumbers() {
        Document page = page(DEMO, 200);
        assertThat(page.title()).isEqualTo("Quillmere tapered low wing – Vanewright");
        assertThat(page.select(".invented")).hasSize(1);
        Element plan = page.expectFirst("svg.plan");
        assertThat(plan.select("title").text()).isEqualTo("Wing in plan");
        assertThat(plan.select("desc").text()).contains("2 panels a side", "950 mm at the tip", "5 keep-outs");
        assertThat(plan.select("path.fill-tint")).hasSize(4);
        assertThat(plan.select("text").eachText()).contains("Walkway", "Pitot tube", "25 %", "4250 mm");
        assertThat(page.expectFirst("svg.section desc").text()).contains("15.0 % thick");
        assertThat(page.expectFirst("table").text()).contains("1500 mm – 950 mm", "NACA 23015", "unrolls exactly");
        assertThat(page.select(".history a").eachText()).contains("Revision 1");
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }

    @Test
    void noPageHoldsAStyleOrScriptOfItsOwn() {
        for (String path : new String[] {"/", "/airframes", DEMO, started(), "/airframes/new", "/nowhere"}) {
            Document page = member().page(path, path.equals("/nowhere") ? 404 : 200);
            assertThat(page.select("style, [style], script:not([src]):not([type$=json]), [onclick]"))
                    .as(path)
                    .isEmpty();
            assertThat(page.select("main")).as(path).hasSize(1);
            assertThat(page.select("h1")).as(path).hasSize(1);
            assertThat(page.select(".caution-line").text()).as(path).contains("licensed engineer");
        }
    }

    @Test
    void theChosenUnitsAreKeptInACookieAndShown() {
        HttpResponse<String> chosen = postForm("/units", Map.of("system", "us", "back", DEMO));
        assertThat(chosen.statusCode()).isEqualTo(303);
        assertThat(chosen.headers().firstValue("Location")).contains(DEMO);
        String cookie = chosen.headers().firstValue("Set-Cookie").orElseThrow();
        assertThat(cookie).contains("SameSite=Lax", "HttpOnly");
        Document page = parsed(get(DEMO, "Cookie", "units=us"), 200);
        assertThat(page.expectFirst("table").text()).contains("59.06 in – 37.4 in");
        assertThat(page.select(".facts").text()).contains("1323 lb");
    }

    @ParameterizedTest
    @ValueSource(strings = {"https://evil.example/", "//evil.example", "/\\evil.example"})
    void theUnitSwitchNeverLeadsElsewhere(String back) {
        HttpResponse<String> response = postForm("/units", Map.of("system", "us", "back", back));
        assertThat(response.headers().firstValue("Location")).contains("/");
    }

    @Test
    void anAirframeTypedInInchesAndPoundsIsStoredInMillimetres() {
        member().postForm("/units", Map.of("system", "us", "back", DEMO));
        Map<String, String> fields = soundForm("Typed in inches");
        assertThat(fields).containsEntry("units", "us").containsEntry("surfaces[0].panels[0].innerChordMm", "59.05512");
        fields.put("surfaces[0].panels[1].outerChordMm", "37,5");
        publishing().publish(member().person(), location(member().postForm("/airframes/new", fields)));
        String json = get("/api/v1/airframes/typed-in-inches").body();
        assertThat(json).contains("\"outerChordMm\":952.5", "\"innerChordMm\":1500.0", "\"maximumKg\":600.0");
    }

    @Test
    void savingWhatWasNotChangedGivesTheSameDocument() {
        Map<String, String> typed = soundForm("Twice the same");
        typed.put("surfaces[1].panels[0].innerSection.kind", "COORDINATES");
        typed.put("surfaces[1].panels[0].innerSection.coordinates", coordinates());
        String path = publishing().publish(member().person(), location(member().postForm("/airframes/new", typed)));
        String draft = edited(path);
        Map<String, String> fields = fields(member().page(draft, 200));
        assertThat(fields.get("surfaces[1].panels[0].innerSection.title")).isEqualTo("Club section");
        fields.put("action", "save");
        assertThat(location(member().postForm(draft, fields))).isEqualTo(draft);
        publishing().publish(member().person(), draft);
        String first = json(get("/api/v1/airframes/twice-the-same/revisions/1"), 200)
                .get("sha256")
                .asString();
        String second = json(get("/api/v1/airframes/twice-the-same/revisions/2"), 200)
                .get("sha256")
                .asString();
        assertThat(second).isEqualTo(first);
        assertThat(page(path + "/revisions/1", 200).select(".note").text()).contains("later revision");
    }

    @Test
    void errorsStandBesideTheirFieldsAndNothingTypedIsLost() {
        Map<String, String> fields = soundForm("");
        fields.put("surfaces[0].panels[1].innerStationMm", "1520 or so");
        fields.put("speeds.vneKt", "40");
        Document page = parsed(member().postForm("/airframes/new", fields), 422);
        Element station = page.expectFirst("#surfaces-0-panels-1-innerStationMm");
        assertThat(station.val()).isEqualTo("1520 or so");
        assertThat(station.attr("aria-invalid")).isEqualTo("true");
        assertThat(page.expectFirst("#" + station.attr("aria-describedby")).text())
                .contains("a number such as 12.5");
        assertThat(page.expectFirst("#speeds-vneKt-error").text()).contains("more than the stall speed Vs1");
        assertThat(page.expectFirst("#speeds-vneKt").attr("aria-invalid"))
                .as("it could be saved")
                .isEmpty();
        assertThat(page.select("#form-problems").text()).contains("One thing cannot be read", "Nothing is saved");
        assertThat(page.select("#form-problems a").eachAttr("href")).contains("#name", "#" + station.id());
        for (String link : page.select("#form-problems a").eachAttr("href")) {
            assertThat(page.getElementById(link.substring(1))).as(link).isNotNull();
        }
    }

    @Test
    void anIncompleteDraftIsSavedAndSaysWhatIsMissing() {
        Map<String, String> fields = fields(member().page("/airframes/new", 200));
        fields.put("speeds.vneKt", "40");
        fields.put("surfaces[0].panels[0].innerSection.kind", "COORDINATES");
        fields.put("surfaces[0].panels[0].innerSection.title", "Still to be measured");
        fields.put("action", "save");
        HttpResponse<String> response = member().postForm("/airframes/new", fields);
        String next = response.headers().firstValue("Location").orElseThrow();
        Document page = member().page(next, 200);
        assertThat(page.select("[role=status]").text()).contains("Saved");
        assertThat(page.select("#form-problems").text()).contains("Before it can be submitted", "Name");
        assertThat(page.select("h1").text()).isEqualTo("A new airframe");
        assertThat(fields(page))
                .containsEntry("speeds.vneKt", "40")
                .containsEntry("surfaces[0].panels[0].innerSection.kind", "COORDINATES")
                .containsEntry("surfaces[0].panels[0].innerSection.title", "Still to be measured")
                .containsEntry("version", "1");
    }

    @Test
    void buttonsAddAndRemoveRowsWithoutScripts() {
        Map<String, String> fields = new HashMap<>(fields(member().page("/airframes/new", 200)));
        fields.put("surfaces[0].panels[0].outerStationMm", "2000");
        fields.put("surfaces[0].panels[0].outerChordMm", "1200");
        fields.put("action", "add surfaces[0].panels");
        Document two = parsed(member().postForm("/airframes/new", fields), 200);
        assertThat(fields(two))
                .containsEntry("surfaces[0].panels[1].innerStationMm", "2000")
                .containsEntry("surfaces[0].panels[1].innerChordMm", "1200")
                .containsEntry("surfaces[0].panels[1].innerSection.kind", "SAME");
        assertThat(two.select(".error").text()).isBlank();
        Map<String, String> more = fields(two);
        more.put("action", "remove surfaces[0].panels[0]");
        assertThat(fields(parsed(member().postForm("/airframes/new", more), 200)))
                .containsEntry("surfaces[0].panels[0].innerStationMm", "2000")
                .doesNotContainKey("surfaces[0].panels[1].innerStationMm");
    }

    @Test
    void whoSavesSecondSeesBothVersionsAndMergesThem() {
        String draft = saved("Edited by two");
        Map<String, String> mine = fields(member().page(draft, 200));
        Map<String, String> theirs = new LinkedHashMap<>(mine);
        theirs.put("description", "Theirs.");
        theirs.put("action", "save");
        location(member().postForm(draft, theirs));

        mine.put("description", "Mine.");
        mine.put("masses.emptyKg", "350");
        mine.put("action", "save");
        Document conflict = parsed(member().postForm(draft, mine), 409);
        assertThat(conflict.select(".conflict table").text()).contains("Description", "Theirs.", "Mine.", "350");
        Map<String, String> again = fields(conflict);
        assertThat(again).containsEntry("description", "Mine.").containsEntry("version", "2");
        again.put("action", "save");
        location(member().postForm(draft, again));
        assertThat(fields(member().page(draft, 200)))
                .containsEntry("description", "Mine.")
                .containsEntry("masses.emptyKg", "350")
                .containsEntry("version", "3");
    }

    @Test
    void whatWasPublishedMeanwhileIsShownAndTakenIn() {
        String path = published("Overtaken");
        String mine = edited(path);
        SignedIn other = signIn(Role.MEMBER);
        String theirs = location(other.postForm(path + "/edit", Map.of()));
        Map<String, String> fields = fields(other.page(theirs, 200));
        assertThat(fields).containsEntry("base", "1");
        fields.put("description", "Theirs.");
        fields.put("action", "save");
        location(other.postForm(theirs, fields));
        publishing().publish(other.person(), theirs);

        Document page = member().page(mine, 200);
        assertThat(page.select(".conflict").text()).contains("Revision 2 by " + other.name(), "Theirs.");
        Map<String, String> merged = fields(page);
        assertThat(merged).containsEntry("base", "2").containsEntry("version", "1");
        merged.put("description", "Theirs, and mine.");
        merged.put("action", "save");
        location(member().postForm(mine, merged));
        assertThat(member().page(mine, 200).select(".conflict")).isEmpty();
        publishing().publish(member().person(), mine);
        assertThat(page(path, 200).select(".revision-line").text()).startsWith("Revision 3");
        assertThat(page(path, 200).select(".lede").text()).contains("Theirs, and mine.");
    }

    @Test
    void aSubmittedDraftIsReadAndNotChanged() {
        String draft = saved("Waits for its review");
        Map<String, String> fields = fields(member().page(draft, 200));
        publishing().submit(member().person(), draft);
        Document closed = member().page(draft, 200);
        assertThat(closed.select("form[enctype]")).isEmpty();
        assertThat(closed.select("main").text()).contains("waits for a review");
        assertThat(closed.select("main a").eachAttr("href")).contains("/airframes/waits-for-its-review/revisions/1");
        fields.put("description", "Too late, but not lost.");
        fields.put("action", "save");
        Document refused = parsed(member().postForm(draft, fields), 409);
        assertThat(refused.select("[role=alert]").text()).contains("submitted", "not saved");
        assertThat(refused.select("#description").val()).isEqualTo("Too late, but not lost.");
    }

    @Test
    void aReturnedDraftOpensWithTheReason() {
        String draft = saved("Comes back");
        publishing()
                .giveBack(
                        "airframes",
                        publishing().submit(member().person(), draft).ref(),
                        "The tip chord looks too long.");
        Document page = member().page(draft, 200);
        assertThat(page.select(".note").text()).contains("Returned by", "The tip chord looks too long.");
        assertThat(fields(page)).containsEntry("name", "Comes back");
        Document shown = member().page("/airframes/comes-back/revisions/1", 200);
        assertThat(shown.select(".revision-line").text()).contains("returned, not published");
        assertThat(get("/airframes/comes-back/revisions/1").statusCode()).isEqualTo(404);
        assertThat(signIn(Role.MEMBER).get("/airframes/comes-back/revisions/1").statusCode())
                .isEqualTo(404);
    }

    @Test
    void aWithdrawnAirframeStaysReadableWithItsReason() {
        String path = published("Withdrawn wing");
        publishing().withdraw("airframes", new RevisionRef("withdrawn-wing", 1), "The sections were measured wrongly.");
        Document page = page(path, 200);
        assertThat(page.select(".withdrawn").text()).contains("Do not build", "measured wrongly");
        assertThat(page.select(".revision-line").text()).contains("withdrawn");
        assertThat(page("/airframes", 200).select(".card").text()).doesNotContain("Withdrawn wing");
        assertThat(member().page(path, 200).select(".steps button").eachText()).contains("Edit");
    }

    @Test
    void draftsAreForTheirAuthors() {
        String draft = saved("Nobody else's");
        assertThat(signIn(Role.MEMBER).get(draft).statusCode()).isEqualTo(404);
        assertThat(signIn(Role.MAINTAINER).get(draft).statusCode()).isEqualTo(404);
        for (String path : new String[] {draft, "/airframes/new"}) {
            HttpResponse<String> visitor = get(path, "Accept", "text/html");
            assertThat(visitor.statusCode()).as(path).isEqualTo(303);
            assertThat(visitor.headers().firstValue("Location").orElseThrow()).startsWith("/sign-in?back=");
        }
        assertThat(page(DEMO, 200).select(".steps")).isEmpty();
        assertThat(member().page(DEMO, 200).select(".steps button").eachText())
                .containsExactly("Edit", "Start from this");
    }

    @Test
    void whatIsStartedFromAnotherRemembersItAndStaysInvented() {
        Document page = member().page(started(), 200);
        assertThat(page.select(".revision-line").text()).contains("started from quillmere-tapered-low-wing");
        assertThat(fields(page)).containsEntry("invented", "true");
        Map<String, String> real = soundForm("A real one");
        real.remove("invented");
        String draft = location(member().postForm("/airframes/new", real));
        assertThat(member().page(draft, 200).select(".invented")).isEmpty();
    }

    @Test
    void savingAndSubmittingLeadsOnToTheSubmission() {
        String draft = saved("On to the submission");
        Map<String, String> fields = fields(member().page(draft, 200));
        fields.put("action", "submit");
        assertThat(location(member().postForm(draft, fields)))
                .isEqualTo("/drafts/" + draft.replace("/airframes/drafts/", "") + "/submit");
    }

    @Test
    void whatWasTypedBeforeSigningInIsShownAgainAndNotSavedByItself() {
        String draft = saved("Typed too late");
        Map<String, String> fields = fields(member().page(draft, 200));
        fields.put("description", "Typed while the session ended.");
        fields.put("action", "save");
        Caller visitor = newVisitor();
        HttpResponse<String> response = visitor.postForm(draft, fields);
        assertThat(response.headers().firstValue("Location").orElseThrow()).startsWith("/sign-in");
        assertThat(visitor.postForm(
                                "/sign-in",
                                Map.of(
                                        "email",
                                        member().person().email(),
                                        "password",
                                        member().person().password()))
                        .statusCode())
                .isEqualTo(303);
        Document page = visitor.page(draft, 200);
        assertThat(page.select("#description").val()).isEqualTo("Typed while the session ended.");
        assertThat(page.select("[role=status]").text()).contains("not saved yet");
        assertThat(member().page(draft, 200).select("#description").val())
                .isNotEqualTo("Typed while the session ended.");
    }

    @Test
    void namesAreTextNeverMarkup() {
        String hostile = "<script>alert(1)</script> \"&' wing";
        Map<String, String> fields = soundForm(hostile);
        fields.put("surfaces[0].name", "<b>Wing</b>");
        fields.put("surfaces[0].keepOuts[0].reason", "</text><script>alert(2)</script>");
        String draft = location(member().postForm("/airframes/new", fields));
        String path = publishing().publish(member().person(), draft);
        for (String url : new String[] {path, draft, edited(path), "/airframes", "/"}) {
            Document page = member().page(url, 200);
            assertThat(page.select("script:not([src]):not([type$=json])"))
                    .as(url)
                    .isEmpty();
            assertThat(page.text()).as(url).doesNotContain("&lt;script");
        }
        assertThat(page(path, 200).select("h1").text()).isEqualTo(hostile);
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "1e308", "999999999999999999999", "-1", "0x1F", "1,5,0"})
    void absurdNumbersAreRefusedInTheForm(String number) {
        Map<String, String> fields = soundForm("Absurd");
        fields.put("surfaces[0].panels[0].innerChordMm", number);
        fields.put("action", "check");
        Document page = parsed(member().postForm("/airframes/new", fields), 200);
        assertThat(page.expectFirst("#surfaces-0-panels-0-innerChordMm-error").text())
                .startsWith("Must be");
        assertThat(page.expectFirst("#surfaces-0-panels-0-innerChordMm").val()).isEqualTo(number);
    }

    @Test
    void endlessIndexesAndStrangeActionsChangeNothing() {
        Map<String, String> fields = new HashMap<>(fields(member().page("/airframes/new", 200)));
        fields.put("surfaces[99].panels[99].innerChordMm", "1");
        fields.put("surfaces[100000000].name", "x");
        fields.put("action", "remove surfaces[98]; drop");
        Document page = parsed(member().postForm("/airframes/new", fields), 200);
        assertThat(page.select("#form-problems").text()).contains("at most 6 entries");
    }

    @Test
    void theDrawingFollowsTheFormWithoutSaving() {
        Map<String, String> fields = soundForm("Preview only");
        HttpResponse<String> preview = member().postForm("/airframes/preview", fields);
        assertThat(preview.statusCode()).isEqualTo(200);
        assertThat(preview.body()).contains("<svg").doesNotContain("<html");
        fields.put("surfaces[0].panels[0].innerChordMm", "");
        String broken = member().postForm("/airframes/preview", fields).body();
        assertThat(broken).contains("data-field=\"surfaces-0-panels-0-innerChordMm\"");
        assertThat(get("/airframes/preview-only").statusCode()).isEqualTo(404);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/airframes/nowhere",
                "/airframes/%2e%2e",
                "/airframes/UPPER",
                "/airframes/a/revisions/0",
                "/airframes/quillmere-tapered-low-wing/revisions/99",
                "/airframes?cursor=nonsense",
                "/airframes?cursor=%ff%fe"
            })
    void whatIsNotThereIsAPageThatSaysSo(String path) {
        HttpResponse<String> response = get(path, "Accept", "text/html");
        assertThat(response.statusCode()).isIn(400, 404);
        Document page = parsed(response, response.statusCode());
        assertThat(page.select("h1")).hasSize(1);
        assertThat(page.select("nav a")).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"/airframes/..%2f..%2fetc%2fpasswd", "/airframes/%00", "/css/..%2f..%2fapplication.yml"})
    void pathsThatClimbAreRefused(String path) {
        assertThat(get(path, "Accept", "text/html").statusCode()).isIn(400, 404);
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return java.net
                .URI
                .create(response.headers().firstValue("Location").orElseThrow())
                .getPath();
    }

    /** A symmetric section of 41 points under a title. */
    private static String coordinates() {
        Section section = Sections.naca("0012");
        StringBuilder text = new StringBuilder("Club section\n");
        for (int i = -20; i <= 20; i++) {
            SurfaceSide side = i < 0 ? SurfaceSide.UPPER : SurfaceSide.LOWER;
            SkinPoint p = section.atArcLength(side, section.arcLength(side) * Math.abs(i) / 20.0);
            text.append(String.format(Locale.ROOT, "%.5f %.5f\n", p.x(), p.y()));
        }
        return text.toString();
    }
}
