package org.vanewright.layout.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.parser.Parser;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.account.Role;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;

/** Layout pages as a browser without scripts meets them. */
class LayoutPagesTest extends ServerTest {
    private static final String DEMO = "/layouts/low-wing-pairs-over-the-taper";

    private @Nullable SignedIn signedIn;

    private SignedIn member() {
        if (signedIn == null) {
            signedIn = signIn(Role.MEMBER);
        }
        return signedIn;
    }

    private static String location(HttpResponse<String> response) {
        assertThat(response.statusCode()).as(response.body()).isEqualTo(303);
        return URI.create(response.headers().firstValue("Location").orElseThrow())
                .getPath();
    }

    /** What a browser would send of the form on a page. */
    private static Map<String, String> fields(Document page) {
        Map<String, String> fields = new LinkedHashMap<>();
        Element form = page.expectFirst("form[data-live]");
        for (Element field : form.select("input[name], textarea[name], select[name]")) {
            if (!field.is("[type=checkbox]:not([checked])")) {
                fields.put(field.attr("name"), field.tagName().equals("select") ? selected(field) : field.val());
            }
        }
        return fields;
    }

    private static String selected(Element select) {
        Element option = select.selectFirst("option[selected]");
        return option == null ? "" : option.val();
    }

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

    private String saved(String name) {
        return location(member().postForm("/layouts/new", soundForm(name)));
    }

    private String published(String name) {
        return publishing().publish(member().person(), saved(name));
    }

    private String edited(String path) {
        return location(member().postForm(path + "/edit", Map.of()));
    }

    @Test
    void thePageShowsTheLayoutDrawnInNumbersAndAsFiles() {
        Document page = page(DEMO, 200);
        assertThat(page.title()).isEqualTo("Low wing, pairs over the taper – Vanewright");
        assertThat(page.select(".invented")).hasSize(1);
        Element plan = page.expectFirst("img.plan");
        assertThat(plan.attr("alt")).contains("devices, both sides together");
        assertThat(svg(plan).select("desc").text()).contains("devices, both sides together");
        assertThat(page.select("img.close-up")).hasSize(2);
        for (Element closeUp : page.select("img.close-up")) {
            assertThat(closeUp.attr("alt"))
                    .isEqualTo(svg(closeUp).select("desc").text());
        }
        assertThat(page.expectFirst("img.close-up").attr("alt"))
                .contains("counter-rotating pairs, common flow down", "toe-out 16.0 degrees");
        assertThat(page.select("main").text())
                .contains(
                        "Toe-in means the leading edge is turned", "unrolls exactly", "gave way", "licensed engineer");
        assertThat(page.select(".download-list a").eachAttr("href"))
                .anyMatch(h -> h.contains("template.pdf?") && h.contains("revision=1") && h.contains("side=LEFT"))
                .anyMatch(h -> h.contains("template.dxf?") && h.contains("side=RIGHT"))
                .anyMatch(h -> h.contains("stations.csv?"));
        for (String link : page.select(".download-list a, .row-block a").eachAttr("href")) {
            assertThat(get(link).statusCode()).as(link).isEqualTo(200);
        }
        int devices = page.select("table.figures tbody tr").size();
        assertThat(page.select(".facts").text()).contains(devices + " in all");
        assertThat(page.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }

    private Document svg(Element image) {
        HttpResponse<String> file = get(image.attr("src"));
        assertThat(file.headers().firstValue("cache-control").orElseThrow()).contains("immutable");
        return Jsoup.parse(file.body(), Parser.xmlParser());
    }

    @Test
    void planAndCloseUpsOfWhatIsNotThereAreNotFound() {
        assertThat(get(DEMO + "/revisions/1/plans/1-us.svg").body()).contains("ft</text>");
        assertThat(get(DEMO + "/revisions/1/plans/1-metric.svg").body()).contains("\u00a0mm</text>");
        for (String file :
                List.of("plans/0-us", "plans/9-us", "plans/1-feet", "plans/x-us", "rows/0", "rows/3", "rows/-1")) {
            assertThat(get(DEMO + "/revisions/1/" + file + ".svg").statusCode())
                    .as(file)
                    .isEqualTo(404);
        }
    }

    @Test
    void onlyDemonstrationLayoutsAreCalledInvented() {
        assertThat(member().page("/layouts/new", 200).select(".invented")).isEmpty();
        assertThat(member().page(started(), 200).select(".invented")).hasSize(1);
        Map<String, String> fields = soundForm("A real one");
        fields.remove("invented");
        String path = publishing().publish(member().person(), location(member().postForm("/layouts/new", fields)));
        assertThat(page(path, 200).select(".invented")).isEmpty();
        assertThat(member().page(edited(path), 200).select(".invented")).isEmpty();
    }

    @Test
    void everyDemonstrationLayoutIsListedAndShown() {
        List<String> names = new ArrayList<>();
        // Other tests have published layouts, too: the demonstration's may be on a later page.
        for (String next = "/layouts"; !next.isEmpty(); ) {
            Document list = page(next, 200);
            assertThat(list.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
            names.addAll(list.select(".card h2").eachText());
            next = list.select("a[rel=next]").attr("href");
        }
        assertThat(names)
                .contains(
                        "High wing, one row co-rotating",
                        "Low wing, pairs over the taper",
                        "Low wing, underside of the stabiliser");
        for (String slug : List.of(
                "high-wing-one-row-co-rotating",
                "low-wing-pairs-over-the-taper",
                "low-wing-underside-of-the-stabiliser")) {
            assertThat(page("/layouts/" + slug, 200).select("img.plan"))
                    .as(slug)
                    .isNotEmpty();
        }
    }

    @Test
    void theHomePageTellsOfALayoutJustPublished() {
        String path = published("Told of on the first page");
        assertThat(page("/", 200).select(".news a").eachAttr("href")).contains(path);
    }

    @Test
    void noPageHoldsAStyleOrScriptOfItsOwn() {
        for (String path : new String[] {"/layouts", DEMO, DEMO + "/revisions/1", started(), "/layouts/new"}) {
            Document page = member().page(path, 200);
            assertThat(page.select("style, [style], script:not([src]):not([type$=json]), [onclick]"))
                    .as(path)
                    .isEmpty();
            assertThat(page.select("main")).as(path).hasSize(1);
            assertThat(page.select("h1")).as(path).hasSize(1);
            assertThat(page.select(".caution-line, .caution").text()).as(path).contains("licensed engineer");
        }
    }

    @Test
    void stationsAndFormFollowTheChosenUnits() {
        Document page = parsed(get(DEMO, "Cookie", "units=us"), 200);
        assertThat(page.expectFirst("table.figures tbody tr").text()).contains(" in");
        member().postForm("/units", Map.of("system", "us", "back", DEMO));
        Map<String, String> fields = soundForm("Typed in inches");
        fields.put("rows[0].pitchMm", "3.75");
        publishing().publish(member().person(), location(member().postForm("/layouts/new", fields)));
        assertThat(get("/api/v1/layouts/typed-in-inches").body()).contains("\"pitchMm\":95.25", "\"toMm\":1440.0");
    }

    @Test
    void savingWhatWasNotChangedGivesTheSameDocument() {
        String path = published("Twice the same");
        String template = path + "/template.pdf?revision=1";
        String before = get(template).body();
        String draft = edited(path);
        Map<String, String> fields = fields(member().page(draft, 200));
        fields.put("action", "save");
        location(member().postForm(draft, fields));
        publishing().publish(member().person(), draft);
        String api = "/api/v1/layouts/twice-the-same/revisions/";
        assertThat(json(get(api + 2), 200).get("sha256"))
                .isEqualTo(json(get(api + 1), 200).get("sha256"));
        assertThat(page(path + "/revisions/1", 200).select(".note").text()).contains("later revision");
        assertThat(page(path, 200).select(".revision-line").text()).startsWith("Revision 2");
        assertThat(get(template).body()).as("the same sheet as before").isEqualTo(before);
        assertThat(page(path, 200).select(".licence a").text()).isEqualTo("CC BY-SA 4.0");
        assertThat(get(path + "/template.svg").body()).contains("CC BY-SA 4.0").doesNotContain("not published");
    }

    @Test
    void aTemplateOfWhatIsNotPublishedSaysSoAndIsKeptByNobody() {
        String draft = saved("Waiting layout");
        publishing().submit(member().person(), draft);
        String template = "/layouts/waiting-layout/template.svg?revision=1";
        assertThat(get(template).statusCode()).isEqualTo(404);
        HttpResponse<String> own = member().get(template);
        assertThat(own.body()).contains("not published");
        assertThat(own.headers().firstValue("Cache-Control").orElseThrow()).contains("no-store", "private");
    }

    @Test
    void errorsStandBesideTheirFieldsAndNothingTypedIsLost() {
        Map<String, String> fields = soundForm("");
        fields.put("rows[0].pitchMm", "sixty");
        fields.put("rows[1].chordFraction", "9");
        fields.put("rows[1].device", "no-such-device@1");
        Document page = parsed(member().postForm("/layouts/new", fields), 422);
        Element pitch = page.expectFirst("#rows-0-pitchMm");
        assertThat(pitch.val()).isEqualTo("sixty");
        assertThat(pitch.attr("aria-invalid")).isEqualTo("true");
        assertThat(page.expectFirst("#rows-0-pitchMm-error").text()).contains("a number such as 12.5");
        assertThat(page.expectFirst("#rows-1-chordFraction").val()).isEqualTo("9");
        for (String link : page.select("#form-problems a").eachAttr("href")) {
            assertThat(page.getElementById(link.substring(1))).as(link).isNotNull();
        }
        assertThat(page.select("#form-problems a").eachAttr("href")).contains("#name", "#rows-0-pitchMm");
    }

    @Test
    void basesThatOverlapAreReportedAtTheirRow() {
        Map<String, String> fields = soundForm("Overlapping");
        fields.keySet().removeIf(k -> k.startsWith("rows[1]"));
        Map<String, String> doubled = new LinkedHashMap<>(fields);
        fields.forEach((k, v) -> doubled.put(k.replace("rows[0]", "rows[1]"), v));
        String draft = location(member().postForm("/layouts/new", doubled));
        Document page = member().page(draft, 200);
        assertThat(page.select("#form-problems").text()).contains("bases that do not overlap");
        assertThat(page.expectFirst("#rows-1-error").text()).contains("bases that do not overlap");
        for (String link : page.select("#form-problems a").eachAttr("href")) {
            assertThat(page.getElementById(link.substring(1))).as(link).isNotNull();
        }
    }

    @Test
    void buttonsAddAndRemoveRowsWithoutScripts() {
        Map<String, String> fields = fields(member().page("/layouts/new", 200));
        assertThat(fields.get("airframe")).matches("[a-z0-9-]+@[0-9]+");
        fields.put("rows[0].pitchMm", "72.5");
        fields.put("action", "add rows");
        Document two = parsed(member().postForm("/layouts/new", fields), 200);
        assertThat(fields(two))
                .containsEntry("rows[0].pitchMm", "72.5")
                .containsEntry("rows[1].pitchMm", "72.5")
                .containsEntry("rows[1].name", "Row 2")
                .containsEntry("rows[1].fromMm", "");
        assertThat(two.select(".error").text()).as("nobody is told off yet").isBlank();
        Map<String, String> more = fields(two);
        more.put("action", "remove rows[0]");
        assertThat(fields(parsed(member().postForm("/layouts/new", more), 200)))
                .containsEntry("rows[0].name", "Row 2")
                .doesNotContainKey("rows[1].name");
    }

    @Test
    void theFormStartsWithTheAirframeAskedFor() {
        assertThat(fields(member().page("/layouts/new?airframe=quillmere-strut-braced-high-wing", 200)))
                .containsEntry("airframe", "quillmere-strut-braced-high-wing@1");
        assertThat(member().get("/layouts/new?airframe=no-such-airframe").statusCode())
                .isIn(200, 404);
        assertThat(member().get("/layouts/new?airframe=%3Cscript%3E").statusCode())
                .isIn(200, 400, 404);
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
        mine.put("rows[1].pitchMm", "120");
        mine.put("action", "save");
        Document conflict = parsed(member().postForm(draft, mine), 409);
        assertThat(conflict.select(".conflict table").text()).contains("Theirs.", "Mine.", "120");
        Map<String, String> again = fields(conflict);
        assertThat(again)
                .containsEntry("description", "Mine.")
                .containsEntry("rows[1].pitchMm", "120")
                .containsEntry("version", "2");
        again.put("action", "save");
        location(member().postForm(draft, again));
        assertThat(fields(member().page(draft, 200))).containsEntry("description", "Mine.");
    }

    @Test
    void namesAreTextNeverMarkup() {
        String hostile = "<script>alert(1)</script> \"&' layout";
        Map<String, String> fields = soundForm(hostile);
        fields.put("rows[0].name", "</text><script>alert(2)</script>");
        fields.put("description", "<img src=x onerror=alert(3)>");
        String draft = location(member().postForm("/layouts/new", fields));
        String path = publishing().publish(member().person(), draft);
        for (String url : new String[] {path, edited(path), "/layouts", "/"}) {
            Document page = member().page(url, 200);
            assertThat(page.select("script:not([src]):not([type$=json]), img[onerror]"))
                    .as(url)
                    .isEmpty();
            assertThat(page.text()).as(url).doesNotContain("&lt;script");
        }
        assertThat(page(path, 200).select("h1").text()).isEqualTo(hostile);
        assertThat(member().postForm("/layouts/preview", fields).body()).doesNotContain("<script>");
    }

    @ParameterizedTest
    @ValueSource(strings = {"NaN", "1e308", "999999999999999999999", "-1", "0x1F", "1,5,0"})
    void absurdNumbersAreRefusedInTheForm(String number) {
        for (String field : new String[] {"fromMm", "toMm", "pitchMm", "pairGapMm"}) {
            Map<String, String> fields = soundForm("Absurd");
            fields.put("rows[0]." + field, number);
            fields.put("action", "check");
            Document page = parsed(member().postForm("/layouts/new", fields), 200);
            assertThat(page.expectFirst("#rows-0-" + field + "-error").text()).startsWith("Must be");
            assertThat(page.expectFirst("#rows-0-" + field).val()).isEqualTo(number);
        }
    }

    @Test
    void endlessIndexesAndStrangeActionsChangeNothing() {
        Map<String, String> fields = fields(member().page("/layouts/new", 200));
        fields.put("rows[99].pitchMm", "1");
        fields.put("rows[100000000].name", "x");
        fields.put("rows[-1].name", "x");
        fields.put("action", "remove rows[98]; drop");
        Document page = parsed(member().postForm("/layouts/new", fields), 200);
        assertThat(page.select("#form-problems").text()).contains("at most 20 entries");
        assertThat(page.select("section.surface").size()).isLessThanOrEqualTo(20);
    }

    @Test
    void theDrawingFollowsTheFormWithoutSaving() {
        Map<String, String> fields = soundForm("Preview only");
        HttpResponse<String> preview = member().postForm("/layouts/preview", fields);
        assertThat(preview.statusCode()).isEqualTo(200);
        assertThat(preview.body()).contains("<svg", "Everything is in order").doesNotContain("<html");
        fields.put("rows[0].pitchMm", "");
        assertThat(member().postForm("/layouts/preview", fields).body()).contains("data-field=\"rows-0-pitchMm\"");
        assertThat(get("/layouts/preview-only").statusCode()).isEqualTo(404);
        assertThat(member().postForm("/layouts/preview", Map.of()).statusCode()).isEqualTo(200);
        assertThat(member().postForm("/layouts/new", Map.of("action", "save")).statusCode())
                .as("a draft may be empty")
                .isEqualTo(303);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "/layouts/nowhere",
                "/layouts/%2e%2e",
                "/layouts/UPPER",
                "/layouts/a/revisions/0",
                "/layouts/low-wing-pairs-over-the-taper/revisions/99",
                "/layouts/low-wing-pairs-over-the-taper/revisions/9999999999",
                "/layouts?cursor=nonsense",
                "/layouts/..%2f..%2fetc%2fpasswd",
                "/layouts/%00"
            })
    void whatIsNotThereIsRefusedOrNotFound(String path) {
        assertThat(get(path, "Accept", "text/html").statusCode()).isIn(400, 404);
    }
}
