package org.vanewright.campaign.web;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.net.http.HttpResponse;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.zip.CRC32;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.vanewright.account.Role;
import org.vanewright.engineering.tuft.SyntheticTufts;
import org.vanewright.engineering.tuft.TuftMark;
import org.vanewright.engineering.tuft.TuftSurvey;
import org.vanewright.testing.Pictures;
import org.vanewright.testing.ServerTest;
import org.vanewright.testing.SignedIn;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.ObjectNode;

/** Still frames from the files to the states that a person has gone through. */
class TuftFramePagesTest extends ServerTest {
    private static final String API = "/api/v1/campaigns";
    private static final int WIDTH = 320;
    private static final int HEIGHT = 240;

    private final Map<SignedIn, String> tokens = new HashMap<>();

    private String token(SignedIn member) {
        return tokens.computeIfAbsent(member, m -> bearer(m.person()));
    }

    /** A draft with six tufts on one wing; gives the address of its grid. */
    private String grid(SignedIn member, String name) {
        ObjectNode document = (ObjectNode) json(get(API + "/clean-stall-with-pairs-over-the-taper/revisions/1"), 200)
                .get("content");
        document.put("name", name).remove(List.of("points", "handling", "provenance", "tufts"));
        JsonNode created = json(postJson(API, document.toString(), "Authorization", token(member)), 201);
        String tufts = "/campaigns/drafts/" + created.get("id").asString() + "/tufts";
        Map<String, String> grid = Map.of(
                "surface",
                "Wing",
                "side",
                "UPPER",
                "wings",
                "RIGHT",
                "stationsMm",
                "1000 2000 3000",
                "chordPercent",
                "40 80");
        assertThat(member.postForm(tufts, grid).statusCode()).isEqualTo(303);
        return member.page(tufts, 200).select("a.button[href*=/tufts/]").attr("href");
    }

    private JsonNode content(SignedIn member, String grid) {
        String id = grid.split("/")[3];
        return json(get("/api/v1/drafts/" + id, "Authorization", token(member)), 200)
                .get("content");
    }

    private static SyntheticTufts picture(long seed) {
        return new SyntheticTufts(WIDTH, HEIGHT, seed).grid(2, 3);
    }

    private static List<byte[]> frames(SyntheticTufts picture, int count, String format) {
        return IntStream.range(0, count)
                .mapToObj(i -> Pictures.encoded(Pictures.grey(picture.frame(0.7 * i, -0.4 * i, 1, 2)), format))
                .toList();
    }

    private static Map<String, String> typed(List<TuftMark> marks) {
        Map<String, String> typed = new LinkedHashMap<>();
        typed.put("configuration", "B");
        typed.put("indicatedAirspeedKt", "52");
        typed.put(
                "marks",
                IntStream.range(0, marks.size())
                        .mapToObj(i -> String.format(
                                Locale.ROOT,
                                "%d %.1f %.1f %.1f %.1f",
                                i + 1,
                                marks.get(i).rootX(),
                                marks.get(i).rootY(),
                                marks.get(i).tipX(),
                                marks.get(i).tipY()))
                        .collect(Collectors.joining("\n")));
        return typed;
    }

    @Test
    void framesProposeWhatAPersonThenGoesThrough() {
        SignedIn member = signIn(Role.MEMBER);
        String grid = grid(member, "Tufts from frames");
        Document blank = member.page(grid + "/frames", 200);
        assertThat(blank.select("[data-place]")).hasSize(6);
        assertThat(blank.text()).contains("What this can tell, and what it cannot");
        SyntheticTufts picture = picture(8);
        Map<String, String> typed = typed(picture.marks());
        typed.put("id", blank.select("input[name=id]").val());
        HttpResponse<String> sent = member.postFiles(grid + "/frames", typed, "frames", frames(picture, 9, "png"));
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        String survey = sent.headers().firstValue("Location").orElseThrow();

        JsonNode kept = content(member, grid).get("tufts").get(0).get("surveys").get(0);
        assertThat(kept.get("states").asString()).as("nothing counts yet").isEqualTo("------");
        assertThat(kept.get("frames").get("proposed").asString()).isEqualTo(TuftSurvey.letters(picture.states()));
        assertThat(kept.get("frames").get("frames")).hasSize(9);
        assertThat(kept.get("frames").get("frames").get(8).get("rightPx").asDouble())
                .isBetween(5.0, 6.2);
        assertThat(kept.get("frames").get("tufts")).hasSize(6);
        assertThat(kept.has("photographs")).isFalse();

        Document form = member.page(survey, 200);
        assertThat(form.select(".from-frames .note").text()).contains("A proposal");
        assertThat(form.select(".from-frames table").get(0).select("tbody tr")).hasSize(6);
        assertThat(form.text()).doesNotContain("NaN");
        String shown = form.select(".tuft-row input[checked]").eachAttr("value").stream()
                .collect(Collectors.joining());
        assertThat(shown).isEqualTo(TuftSurvey.letters(picture.states()));
        String list = grid.substring(0, grid.lastIndexOf('/'));
        assertThat(member.page(list, 200).text()).contains("9 still frames, not gone through yet");
        assertThat(member.page(list, 200).select(".tufts table td").eachText()).contains("–");

        Map<String, String> confirmed = new LinkedHashMap<>();
        form.select("form[data-tufts] input[type=hidden], form[data-tufts] input[type=radio][checked]")
                .forEach(i -> confirmed.put(i.attr("name"), i.val()));
        confirmed.put("configuration", "B");
        confirmed.put("indicatedAirspeedKt", "52");
        confirmed.put("right[0].row[0]", "U");
        confirmed.put("action", "save");
        assertThat(member.postForm(grid, confirmed).statusCode()).isEqualTo(303);
        JsonNode saved = content(member, grid).get("tufts").get(0).get("surveys");
        assertThat(saved).hasSize(1);
        assertThat(saved.get(0).get("states").asString())
                .isEqualTo("U" + TuftSurvey.letters(picture.states()).substring(1));
        assertThat(saved.get(0).get("frames").get("proposed").asString())
                .as("what was proposed stays beside what was seen")
                .isEqualTo(TuftSurvey.letters(picture.states()));
        assertThat(member.page(list, 200).text()).contains("9 still frames, gone through by a person");
        assertThat(member.page(survey, 200).select(".from-frames .note")).isEmpty();

        HttpResponse<String> again = member.postFiles(grid + "/frames", typed, "frames", frames(picture, 9, "png"));
        assertThat(parsed(again, 422).select("#form-problems").text())
                .as("the same form sent twice must not undo what somebody saw")
                .contains("a new survey");
        assertThat(member.page(grid + "/frames", 200)
                        .select("textarea[name=marks]")
                        .text())
                .as("marked once")
                .startsWith("1 ");
    }

    @Test
    void aCameraThatWasHeldOtherwiseIsTurnedUpright() {
        SignedIn member = signIn(Role.MEMBER);
        String grid = grid(member, "Turned frames");
        SyntheticTufts picture = picture(9);
        List<byte[]> turned = new ArrayList<>();
        for (byte[] upright : frames(picture, 6, "png")) {
            BufferedImage image = Pictures.decoded(upright);
            BufferedImage upsideDown = new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB);
            for (int i = 0; i < WIDTH * HEIGHT; i++) {
                upsideDown.setRGB(WIDTH - 1 - i % WIDTH, HEIGHT - 1 - i / WIDTH, image.getRGB(i % WIDTH, i / WIDTH));
            }
            turned.add(Pictures.withExif(Pictures.encoded(upsideDown, "jpeg"), 3));
        }
        HttpResponse<String> sent = member.postFiles(grid + "/frames", typed(picture.marks()), "frames", turned);
        assertThat(sent.statusCode()).as(sent.body()).isEqualTo(303);
        JsonNode kept = content(member, grid).get("tufts").get(0).get("surveys").get(0);
        assertThat(kept.get("frames").get("proposed").asString()).isEqualTo(TuftSurvey.letters(picture.states()));
        assertThat(kept.toString()).doesNotContain("Invented camera");
    }

    @Test
    void hostileFilesAreRefusedWithReasonsAndLeaveNothing() {
        SignedIn member = signIn(Role.MEMBER);
        String grid = grid(member, "Hostile frames");
        SyntheticTufts picture = picture(10);
        List<byte[]> good = frames(picture, 5, "png");
        byte[] small = Pictures.encoded(Pictures.quarters(160, 120), "png");
        byte[] black = Pictures.encoded(new BufferedImage(WIDTH, HEIGHT, BufferedImage.TYPE_INT_RGB), "png");
        Map<String, List<byte[]>> hostile = new LinkedHashMap<>();
        hostile.put("5 to 60 frames", good.subList(0, 4));
        hostile.put("5 to 60 frames.", Collections.nCopies(61, small));
        hostile.put(
                "a JPEG or PNG; frame 6 is another kind of file",
                with(good, "no picture".getBytes(StandardCharsets.UTF_8)));
        hostile.put("at most 40 megapixels", with(good, huge()));
        hostile.put("frame 6 is a picture that cannot be decoded", with(good, Arrays.copyOf(good.get(0), 400)));
        hostile.put("as the first; frame 6 has 160 × 120 pixels", with(good, small));
        hostile.put("frame 6 has 8388609 bytes", with(good, Arrays.copyOf(good.get(0), 8 * 1024 * 1024 + 1)));
        hostile.put("1 of 6 fit together", Collections.nCopies(6, black));
        hostile.forEach((reason, files) -> {
            Map<String, String> typed = typed(picture.marks());
            HttpResponse<String> refused = member.postFiles(grid + "/frames", typed, "frames", files);
            assertThat(refused.statusCode()).as(reason).isEqualTo(422);
            Document page = Jsoup.parse(refused.body());
            assertThat(page.select("#frames-error").text()).as(reason).contains(reason.replaceAll("\\.$", ""));
            assertThat(page.select("textarea[name=marks]").text())
                    .as("nothing typed is lost")
                    .startsWith("1 ");
        });
        assertThat(content(member, grid).get("tufts").get(0).has("surveys")).isFalse();
    }

    private static List<byte[]> with(List<byte[]> good, byte[] bad) {
        List<byte[]> files = new ArrayList<>(good);
        files.add(bad);
        return files;
    }

    /** A small PNG whose header says that it unpacks to 60,000 pixels a side. */
    private static byte[] huge() {
        byte[] png = Pictures.encoded(Pictures.quarters(8, 8), "png");
        ByteBuffer.wrap(png).putInt(16, 60_000).putInt(20, 60_000);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());
        return png;
    }

    @Test
    void marksThatCannotBeStandBesideTheirField() {
        SignedIn member = signIn(Role.MEMBER);
        String grid = grid(member, "Marks refused");
        SyntheticTufts picture = picture(11);
        List<byte[]> files = frames(picture, 5, "png");
        Map<String, String> wrong = new LinkedHashMap<>();
        wrong.put("", "at least one tuft");
        wrong.put("1 10 10 20", "Line 1");
        wrong.put("1 10 10 20 20\n1 10 10 20 20", "Line 2");
        wrong.put("7 10 10 20 20", "from 1 to 6");
        wrong.put("1 10 10 <script> 20", "Line 1");
        wrong.put("1 10 10 5000 20", "within the first frame");
        wrong.put("2 10 10 11 10", "at least 6 pixels apart");
        wrong.forEach((marks, reason) -> {
            Map<String, String> typed = typed(List.of());
            typed.put("marks", marks);
            HttpResponse<String> refused = member.postFiles(grid + "/frames", typed, "frames", files);
            assertThat(parsed(refused, 422).select("#marks-error").text())
                    .as(marks)
                    .contains(reason);
            assertThat(refused.body()).doesNotContain("<script> 20");
        });
        Map<String, String> condition = typed(picture.marks());
        condition.put("configuration", "Z");
        condition.put("indicatedAirspeedKt", "900");
        condition.put("id", "../../x");
        Document page = parsed(member.postFiles(grid + "/frames", condition, "frames", files), 422);
        assertThat(page.select("#form-problems li")).hasSize(3);
        assertThat(content(member, grid).get("tufts").get(0).has("surveys")).isFalse();
        assertThat(member.page(grid.replaceFirst("/[^/]+$", "/unknown/frames"), 404)
                        .text())
                .doesNotContain("Exception");
    }
}
