package org.vanewright.campaign.web;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.net.http.HttpResponse;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.springframework.jdbc.core.simple.JdbcClient;
import org.vanewright.account.AccessTokens;
import org.vanewright.account.Acting;
import org.vanewright.account.Role;
import org.vanewright.account.TokenScope;
import org.vanewright.campaign.log.Reading;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Recorded logs from the file to the test point, on pages and as programs meet them. */
class LogPagesTest extends ServerTest {
    private static final String API = "/api/v1/campaigns";

    private String draft(SignedIn member, String name) {
        ObjectNode document = (ObjectNode) json(get(API + "/clean-stall-with-pairs-over-the-taper/revisions/1"), 200)
                .get("content");
        document.put("name", name).remove(List.of("points", "handling", "provenance"));
        JsonNode created = json(postJson(API, document.toString(), "Authorization", bearer(member.person())), 201);
        return "/campaigns/drafts/" + created.get("id").asString();
    }

    /** Ten times a second: level, a stall at 45 kt after a slowing of 1 kt/s, level again; three times. */
    static String table(String firstColumn) {
        StringBuilder text = new StringBuilder(firstColumn + ",IAS_kt,Alt (ft),Nz,OAT\n");
        double altitude = 4000;
        for (int i = 0; i < 1800; i++) {
            double within = i % 600 / 10.0;
            double speed = within < 20 ? 65 : within < 40 ? 65 - (within - 20) : Math.min(65, 45 + 3 * (within - 40));
            double load = within > 40 && within < 41.5 ? 1 - 0.4 * Math.sin(Math.PI * (within - 40) / 1.5) : 1;
            altitude += within > 40 && within < 45 ? -2.5 : within > 46 && within < 56 ? 1.25 : 0;
            text.append(String.format(Locale.ROOT, "%.1f,%.2f,%.1f,%.3f,8%n", i / 10.0, speed, altitude, load));
        }
        return text.append("oops,1,2,3,4\n").toString();
    }

    private String sent(SignedIn member, String draft, String content) {
        HttpResponse<String> sent = member.postFile(draft + "/logs", Map.of(), "file", content.getBytes(UTF_8));
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        return sent.headers().firstValue("Location").orElseThrow();
    }

    @Test
    void aTableBecomesTestPointsOnlyWhenAPersonAcceptsThem() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "From a log");
        String log = sent(member, draft, table("Time (s) accepted"));
        Document columns = member.page(log, 200);
        assertThat(columns.select("h1").text()).isEqualTo("What are its columns?");
        assertThat(columns.select("select[name=airspeed] option[selected]").text())
                .isEqualTo("2: IAS_kt");
        assertThat(columns.select("select[name=loadFactor] option[selected]").text())
                .isEqualTo("4: Nz");
        HttpResponse<String> refused =
                member.postForm(log + "/columns", Map.of("time", "0", "airspeed", "2", "airspeedUnit", "FT"));
        assertThat(parsed(refused, 422).select("#form-problems").text()).isNotEmpty();
        Map<String, String> chosen = new LinkedHashMap<>();
        columns.select("select")
                .forEach(s ->
                        chosen.put(s.attr("name"), s.select("option[selected]").attr("value")));
        assertThat(member.postForm(log + "/columns", chosen).statusCode()).isEqualTo(303);
        Reading.finish(context());

        Document read = member.page(log, 200);
        assertThat(read.select("#rows-title").text()).isEqualTo("1801 rows, 1 of them left out");
        assertThat(read.select("details li").text()).contains("Row 1802: time is oops");
        assertThat(read.select("svg.plot")).hasSize(2);
        List<String> stalls = read.select(".events li").eachText().stream()
                .filter(t -> t.startsWith("Stall"))
                .toList();
        assertThat(stalls).hasSize(3);
        assertThat(stalls.get(0))
                .contains("45.4 kt indicated")
                .contains("kt/s entry")
                .contains("normal acceleration");
        assertThat(member.page(draft + "/points", 200).select(".recorded li"))
                .as("nothing unseen")
                .isEmpty();

        String look = read.select(".events li:contains(Stall) a").attr("href");
        Document point = member.page(look, 200);
        Map<String, String> fields = new LinkedHashMap<>();
        point.select("form input[name], form textarea[name], form select[name]")
                .forEach(f -> fields.put(f.attr("name"), f.tagName().equals("select") ? "A" : f.val()));
        assertThat(Double.parseDouble(fields.get("entryRateKtPerS"))).isBetween(0.9, 1.1);
        assertThat(fields.get("remark")).contains("photo.php").contains("found by a drop of normal acceleration");
        Document missing = parsed(member.postForm(look.replaceFirst("\\?.*", ""), fields), 422);
        assertThat(missing.select("#form-problems").text()).contains("mass");
        fields.put("massKg", "556");
        fields.put("startS", "20.5");
        fields.put("endS", "19");
        assertThat(parsed(member.postForm(look.replaceFirst("\\?.*", ""), fields), 422)
                        .text())
                .contains("no earlier than");
        fields.put("endS", "21");
        assertThat(parsed(member.postForm(look.replaceFirst("\\?.*", ""), fields), 422)
                        .select("#endS-error")
                        .text())
                .contains("2 to 600 s after the beginning");
        fields.put("endS", "36.2");
        Document moved = parsed(member.postForm(look.replaceFirst("\\?.*", ""), fields), 200);
        assertThat(moved.select("[role=status]").text()).contains("Measured again");
        assertThat(moved.select("#massKg").val()).as("typed, not measured").isEqualTo("556");
        assertThat(Double.parseDouble(moved.select("#indicatedAirspeedKt").val()))
                .as("the lowest speed until then, of one second")
                .isBetween(48.8, 49.7);
        assertThat(moved.select("textarea[name=remark]").text())
                .contains("00:00:36.2")
                .contains("a person gave");
        assertThat(member.page(draft + "/points", 200).select(".recorded li"))
                .as("seen first")
                .isEmpty();
        fields.put("startS", "900");
        fields.put("endS", "990");
        assertThat(parsed(member.postForm(look.replaceFirst("\\?.*", ""), fields), 422)
                        .select("#startS-error")
                        .text())
                .contains("the log holds");
        fields.put("startS", "20.5");
        fields.put("endS", "40.2");
        Document last = parsed(member.postForm(look.replaceFirst("\\?.*", ""), fields), 200);
        last.select("form[action$=/point] input[name], form[action$=/point] textarea[name]")
                .forEach(f -> fields.put(f.attr("name"), f.val()));
        assertThat(member.postForm(look.replaceFirst("\\?.*", ""), fields).statusCode())
                .isEqualTo(303);
        assertThat(member.postForm(look.replaceFirst("\\?.*", ""), fields).statusCode())
                .as("twice")
                .isEqualTo(303);
        assertThat(member.page(draft + "/points", 200).select(".recorded li a").eachText())
                .hasSize(1)
                .allMatch(t -> t.contains("from a recorded log") && t.contains("556 kg"));
        assertThat(member.page(log, 200).select(".events li:contains(accepted)").text())
                .contains("00:00:20.5 to 00:00:40.2");
        String second = read.select(".events li:contains(Stall) input").get(1).val();
        assertThat(member.postForm(log + "/events", Map.of("action", "drop", "event", second))
                        .statusCode())
                .isEqualTo(303);
        assertThat(member.page(log, 200).select(".events li:contains(dropped)")).hasSize(1);

        SignedIn other = signIn(Role.MEMBER);
        String next = sent(other, draft(other, "The next one"), table("Time (s) accepted"));
        assertThat(other.page(next, 200)
                        .select("select[name=loadFactor] option[selected]")
                        .text())
                .isEqualTo("4: Nz");
        assertThat(member.postForm(log + "/remove", Map.of()).statusCode()).isEqualTo(303);
        assertThat(member.get(log).statusCode()).isEqualTo(404);
        assertThat(member.page(draft + "/points", 200).select(".recorded li")).hasSize(1);
    }

    @Test
    void aDraftThatIsGivenUpTakesItsLogsWithIt() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Given up");
        String log = sent(member, draft, table("t given up"));
        String logId = log.substring(log.lastIndexOf('/') + 1);
        JdbcClient jdbc = context().getBean(JdbcClient.class);
        assertThat(parts(jdbc, logId)).isPositive();
        String id = draft.substring(draft.lastIndexOf('/') + 1);
        assertThat(member.postForm("/drafts/" + id + "/discard", Map.of()).statusCode())
                .isEqualTo(302);
        assertThat(member.get(log).statusCode()).isEqualTo(404);
        assertThat(parts(jdbc, logId)).isZero();
    }

    private static int parts(JdbcClient jdbc, String logId) {
        return jdbc.sql("select count(*) from flight_log_part where log_id = :id")
                .param("id", logId)
                .query(Integer.class)
                .single();
    }

    @Test
    void whatIsBeyondTheBoundIsSaidClearly() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Many events");
        StringBuilder text = new StringBuilder("t of many,GS,Track\n");
        for (int i = 0; i < 505 * 45; i++) {
            // forty seconds one way, five of nothing
            boolean leg = i % 45 < 40;
            text.append(i)
                    .append(leg ? ",80," + (i / 45 % 2 == 0 ? 90 : 270) : ",,")
                    .append('\n');
        }
        String log = sent(member, draft, text.toString());
        assertThat(member.postForm(
                                log + "/columns",
                                Map.of(
                                        "time",
                                        "1",
                                        "timeUnit",
                                        "SECONDS",
                                        "groundSpeed",
                                        "2",
                                        "groundSpeedUnit",
                                        "KT",
                                        "track",
                                        "3",
                                        "trackUnit",
                                        "DEG"))
                        .statusCode())
                .isEqualTo(303);
        Reading.finish(context());
        Document read = member.page(log, 200);
        assertThat(read.select(".events li")).hasSize(500);
        assertThat(read.select(".note").text())
                .contains("Only the first 500 events are kept, and this log holds 5 more")
                .contains("06:14");
        assertThat(read.text()).contains("a stall with load on is found where it falls to 0.8 g or less");
    }

    @Test
    void legsOfATrackBecomeOneCalibration() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "From a track");
        StringBuilder gpx = new StringBuilder("<?xml version=\"1.0\"?><gpx version=\"1.1\"><trk><trkseg>");
        double lat = 50;
        double lon = 8;
        for (int s = 0; s < 240; s++) {
            double track = Math.toRadians(s / 60 * 90);
            lat += Math.cos(track) / 3600;
            lon += Math.sin(track) / 3600 / Math.cos(Math.toRadians(50));
            gpx.append(String.format(
                    Locale.ROOT,
                    "<trkpt lat=\"%.7f\" lon=\"%.7f\"><ele>900</ele><time>2026-05-02T09:%02d:%02dZ</time></trkpt>",
                    lat,
                    lon,
                    s / 60,
                    s % 60));
        }
        String log = sent(member, draft, gpx + "</trkseg></trk></gpx>");
        Reading.finish(context());
        Document read = member.page(log, 200);
        List<String> numbers = read.select(".events li:contains(GPS leg) input").eachAttr("value");
        assertThat(numbers).hasSize(4);
        String query = "event=" + String.join("&event=", numbers);
        Document point = member.page(log + "/point?" + query, 200);
        assertThat(point.select("input[name='legs[1].trackDeg']").val()).isEqualTo("90");
        assertThat(point.select("input[name='legs[3].groundSpeedKt']").val()).startsWith("60");
        assertThat(point.select("input[name=at]").val()).isEqualTo("2026-05-02T09:00:00Z");
    }

    @Test
    void programsSendALogAndAskHowFarItIs() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "By program");
        String bearer = "Bearer "
                + Acting.as(
                        member.person(),
                        () -> context()
                                .getBean(AccessTokens.class)
                                .create("Logger", Set.of(TokenScope.READ, TokenScope.SUBMIT), 30)
                                .secret());
        HttpResponse<String> sent = member.postMultipartWithoutToken(
                "/api/v1" + draft + "/logs", Map.of(), Map.of("file", table("t by program")), "Authorization", bearer);
        JsonNode added = json(sent, 202);
        String address = sent.headers().firstValue("Location").orElseThrow();
        assertThat(added.get("state").asString()).isEqualTo("UPLOADED");
        assertThat(added.get("header")).hasSize(5);
        String mapping =
                "{\"columns\":[{\"quantity\":\"TIME\",\"column\":0,\"unit\":\"SECONDS\"},{\"quantity\":\"AIRSPEED\",\"column\":1,\"unit\":\"KT\"},{\"quantity\":\"LOAD_FACTOR\",\"column\":3,\"unit\":\"G\"}]}";
        assertThat(member.call(
                                "PUT",
                                address + "/mapping",
                                mapping,
                                "Content-Type",
                                "application/json",
                                "Authorization",
                                bearer)
                        .statusCode())
                .isEqualTo(202);
        assertThat(member.call(
                                "PUT",
                                address + "/mapping",
                                "{\"columns\":[]}",
                                "Content-Type",
                                "application/json",
                                "Authorization",
                                bearer)
                        .statusCode())
                .isEqualTo(400);
        Reading.finish(context());
        JsonNode read = json(get(address, "Authorization", bearer), 200);
        assertThat(read.get("state").asString()).isEqualTo("READ");
        assertThat(read.get("percent").asInt()).isEqualTo(100);
        assertThat(read.get("open").asInt()).isEqualTo(3);
        assertThat(read.get("badRows").asInt()).isEqualTo(1);
    }

    @Test
    void hostileFilesAreRefusedWithReasonsAndLeaveNothing() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Hostile");
        Map<String, String> hostile = Map.of(
                "\u0000\u0001\u0002binary",
                "no text",
                "x".repeat(400_000),
                "64 KiB",
                "a" + ",b".repeat(20_000) + "\n",
                "20001 columns",
                " \n",
                "an empty file");
        hostile.forEach((content, reason) -> {
            HttpResponse<String> refused = member.postFile(draft + "/logs", Map.of(), "file", content.getBytes(UTF_8));
            assertThat(parsed(refused, 422).select("[role=alert]").text()).contains(reason);
        });
        assertThat(member.page(draft + "/logs", 200).select(".logs li")).isEmpty();
        for (String xml : List.of(
                "<!DOCTYPE gpx [<!ENTITY x SYSTEM \"file:///etc/passwd\">]><gpx><trk><name>&x;</name></trk></gpx>",
                "<!DOCTYPE l [<!ENTITY a \"ha\"><!ENTITY b \"&a;&a;\">]><gpx>&b;</gpx>",
                "<gpx><trk>")) {
            String log = sent(member, draft, xml);
            Reading.finish(context());
            Document failed = member.page(log, 200);
            assertThat(failed.select("[role=alert]").text()).contains("The log could not be read");
            assertThat(failed.text()).doesNotContain("root:");
        }
        for (int i = 3; i < 10; i++) {
            sent(member, draft, "t,v\n1,2\n");
        }
        HttpResponse<String> eleventh =
                member.postFile(draft + "/logs", Map.of(), "file", "t,v\n1,2\n".getBytes(UTF_8));
        assertThat(parsed(eleventh, 422).select("[role=alert]").text()).contains("at most 10 logs");
    }

    @Test
    void largeFormsAreTakenWhereLogsAreSentOnly() {
        SignedIn member = signIn(Role.MEMBER);
        String draft = draft(member, "Large");
        byte[] large = ("t,v\n" + "1,2\n".repeat(8_500_000)).getBytes(UTF_8);
        assertThat(large.length).isGreaterThan(31 * 1024 * 1024);
        assertThat(member.postFile(draft + "/import", Map.of(), "file", large).statusCode())
                .isEqualTo(413);
        HttpResponse<String> sent = member.postFile(draft + "/logs", Map.of(), "file", large);
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        assertThat(member.page(draft + "/logs", 200).select(".logs li")).hasSize(1);
    }
}
