package org.vanewright.installation.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.net.URI;
import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.vanewright.account.Role;
import org.vanewright.record.RevisionRef;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Installations and inspections on pages and as programs meet them. */
class InstallationPagesTest extends ServerTest {
    private static final String SLUG = "pairs-over-the-taper-put-on-in-spring";

    private ObjectNode demo(String plural, String slug, String name) {
        JsonNode revision = json(get("/api/v1/" + plural + "/" + slug + "/revisions/1"), 200);
        return ((ObjectNode) revision.get("content")).put("name", name);
    }

    private String installed(String name) {
        return shipped("installations", demo("installations", SLUG, name));
    }

    private static void about(ObjectNode inspection, String installation, String on, double hours) {
        inspection.putObject("installation").put("slug", installation).put("revision", 1);
        inspection.put("inspectedOn", on).put("hoursFlown", hours);
        inspection.remove("provenance");
        inspection.putArray("losses");
    }

    @Test
    void theDemonstrationShowsMeasuredAgainstNominal() {
        Document page = page("/installations/" + SLUG, 200);
        assertThat(page.select("#measured-title ~ .note").text()).startsWith("2 devices are off");
        assertThat(page.text())
                .contains("136 devices fitted: 28 in Centre panel, 108 in Tapered panel")
                .contains("Wing, right 34 (Tapered panel)")
                .contains("Foam tape 30 pound pack, revision 1");
        assertThat(page.select("table").eachText())
                .anyMatch(t -> t.contains("Measured less nominal") && t.contains("Position along the skin 8 +0.6"));
        assertThat(page.select("#inspections-title").parents().select("tbody tr"))
                .hasSizeGreaterThanOrEqualTo(3);
        assertThat(page.select(".invented")).isNotEmpty();
        assertThat(page("/inspections/" + SLUG + "-inspection-3", 200).text())
                .contains("51.5 h flown: 1 missing, 1 loose")
                .contains("Wing, right 5 Missing Heat");
    }

    @Test
    void aDraftIsRecordedByFormAndKeepsWhatWasTyped() {
        SignedIn member = signIn(Role.MEMBER);
        Document blank = member.page("/installations/new?layout=low-wing-pairs-over-the-taper", 200);
        assertThat(blank.select("select[name='samples[0].at'] option[selected]").val())
                .isEqualTo("LEFT 1 Wing");
        assertThat(blank.select("select[name='samples[3].at'] option[selected]").val())
                .isEqualTo("RIGHT 68 Wing");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("name", "Typed");
        fields.put("layout", "low-wing-pairs-over-the-taper@1");
        fields.put("adhesiveClass", "Foam tape");
        fields.put("material", "ABS");
        fields.put("installedOn", "2026-04-18");
        fields.put("doneBy", "Owner");
        fields.put("conditions.skinTemperatureC", "18,5");
        fields.put("conditions.surfaceFinish", "GEL_COAT");
        fields.put("leftOff[0]", "LEFT 7 Wing");
        fields.put("samples[0].at", "LEFT 1 Wing");
        fields.put("samples[0].angleDeg", "fifteen");
        fields.put("action", "save");
        Document refused = parsed(member.postForm("/installations/new", fields), 422);
        assertThat(refused.select("#samples-0-angleDeg-error").text()).contains("a number such as 12.5");
        assertThat(refused.select("#samples-0-angleDeg").val()).isEqualTo("fifteen");
        fields.put("samples[0].angleDeg", "-15");
        HttpResponse<String> saved = member.postForm("/installations/new", fields);
        assertThat(saved.statusCode()).isEqualTo(303);
        String draft =
                URI.create(saved.headers().firstValue("Location").orElseThrow()).getPath();
        Document shown = member.page(draft, 200);
        assertThat(shown.select("#form-problems li")).isEmpty();
        assertThat(shown.select("#preview").text()).contains("135 devices fitted, 1 of the layout left off");
        fields.put("action", "add leftOff");
        fields.put("version", "1");
        Document more = parsed(member.postForm(draft, fields), 200);
        assertThat(more.select("select[name='leftOff[1]']")).hasSize(1);
        fields.put("action", "remove samples[0]");
        assertThat(parsed(member.postForm(draft, fields), 200).select("select[name='samples[0].at']"))
                .isEmpty();
    }

    @Test
    void whatTheLayoutDoesNotHaveIsNamed() {
        ObjectNode document = demo("installations", SLUG, "Wrong number");
        document.putArray("leftOff")
                .addObject()
                .put("surface", "Wing")
                .put("wing", "LEFT")
                .put("device", 500);
        JsonNode problems = json(sendAsMember("/api/v1/installations", document.toString()), 201)
                .get("problems");
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).get("field").asString()).isEqualTo("leftOff[0]");
        document = demo("installations", SLUG, "No such adhesive");
        document.putObject("adhesive").put("slug", "nothing").put("revision", 4);
        problems = json(sendAsMember("/api/v1/installations", document.toString()), 201)
                .get("problems");
        assertThat(problems.get(0).get("field").asString()).isEqualTo("adhesive");
    }

    @ParameterizedTest
    @CsvSource({
        "2026-05-20, 5, at least the 20.0 h",
        "2026-05-05, 25, at most the 20.0 h",
        "2026-04-01, 5, no day before the installation"
    })
    void hoursNeverRunBackwards(String on, double hours, String allowed) {
        String path = installed("Hours " + on);
        String slug = path.substring(path.lastIndexOf('/') + 1);
        ObjectNode first = demo("inspections", SLUG + "-inspection-1", "First of " + on);
        about(first, slug, "2026-05-10", 20);
        shipped("inspections", first);
        ObjectNode next = demo("inspections", SLUG + "-inspection-1", "Next of " + on);
        about(next, slug, on, hours);
        JsonNode problems =
                json(sendAsMember("/api/v1/inspections", next.toString()), 201).get("problems");
        assertThat(problems.toString()).contains(allowed);
        about(next, slug, "2026-05-20", 20);
        assertThat(json(sendAsMember("/api/v1/inspections", next.toString()), 201)
                        .get("problems"))
                .as("no flight in between")
                .isEmpty();
    }

    @Test
    void anInspectionNamesOnlyDevicesThatAreThere() {
        ObjectNode document = demo("inspections", SLUG + "-inspection-1", "Ghost");
        document.putArray("losses")
                .addObject()
                .put("state", "LOOSE")
                .put("cause", "KNOCKED")
                .putObject("at")
                .put("surface", "Wing")
                .put("wing", "LEFT")
                .put("device", 69);
        JsonNode problems = json(sendAsMember("/api/v1/inspections", document.toString()), 201)
                .get("problems");
        assertThat(problems).hasSize(1);
        assertThat(problems.get(0).get("field").asString()).isEqualTo("losses[0].at");
        assertThat(json(sendAsMember("/api/v1/inspections", "{\"hoursFlown\":\"ten\"}"), 400)
                        .at("/errors/0/field")
                        .asString())
                .isEqualTo("hoursFlown");
        assertThat(json(sendAsMember("/api/v1/inspections", "{\"losses\":[{\"cause\":\"GREMLINS\"}]}"), 400)
                        .at("/errors/0/field")
                        .asString())
                .contains("cause");
    }

    @Test
    void theNextInspectionIsPrefilled() {
        SignedIn member = signIn(Role.MEMBER);
        String path = installed("Prefilled");
        String slug = path.substring(path.lastIndexOf('/') + 1);
        assertThat(member.page(path, 200).select("a[href='/inspections/new?installation=" + slug + "']"))
                .hasSize(1);
        Document form = member.page("/inspections/new?installation=" + slug, 200);
        assertThat(form.select("#name").val()).isEqualTo("Prefilled, inspection 1");
        assertThat(form.select("#installation option[selected]").val()).isEqualTo(slug + "@1");
        assertThat(form.select("#inspectedOn").val()).matches("\\d{4}-\\d\\d-\\d\\d");
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("installation", slug + "@1");
        fields.put("losses[0].at", "LEFT 9 Nowhere' or 1=1 --");
        fields.put("action", "add losses");
        Document more = parsed(member.postForm("/inspections/new", fields), 200);
        assertThat(more.select("select[name='losses[1].cause'] option").eachText())
                .contains("Ice or wash");
        assertThat(more.select("select[name='losses[0].at'] option[selected]").val())
                .as("nothing typed is lost")
                .startsWith("LEFT 9 Nowhere");
    }

    @Test
    void aPublishedOneIsPinnedByRevision() {
        String path = installed("Pinned");
        RevisionRef ref = new RevisionRef(path.substring(path.lastIndexOf('/') + 1), 1);
        JsonNode verify = json(get("/api/v1/installations/" + ref.slug() + "/revisions/1/verify"), 200);
        assertThat(
                        verify.get("matches") == null
                                ? verify.toString()
                                : verify.get("matches").toString())
                .contains("true");
        assertThat(get(path + "/revisions/1/provenance.json").body())
                .contains("layouts/low-wing-pairs-over-the-taper/revisions/1")
                .contains("adhesives/foam-tape-30-pound-pack/revisions/1");
    }
}
