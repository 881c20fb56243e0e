package org.vanewright.record.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.vanewright.airframe.AirframeDocument;
import org.vanewright.airframe.KeepOutDocument;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.record.check.TextFinding.Kind;
import org.vanewright.record.photograph.PhotographUse;
import org.vanewright.record.provenance.FigureOrigin;
import org.vanewright.record.provenance.Origin;

class TextChecksTest {
    private static List<Kind> kinds(String text) {
        return TextChecks.of("description", text).stream()
                .map(TextFinding::kind)
                .toList();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "a@example.org",
                "Write to First.Last+vanes@mail.example.co.uk.",
                "(first_last@example.org)",
                "first (at) example (dot) org",
                "first [at] example.org",
                "mailto:first@example.org"
            })
    void eMailAddressesAreFound(String text) {
        assertThat(kinds(text)).containsExactly(Kind.EMAIL_ADDRESS);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "+49 30 1234567",
                "+44 (0)20 7946 0958",
                "+1-202-555-0143",
                "+33 1 99 00 12 34",
                "0049 30 1234567",
                "(202) 555-0143",
                "202-555-0143",
                "202.555.0143",
                "1-202-555-0143",
                "030 1234567",
                "0171/1234567",
                "020 7946 0958",
                "(020) 7946 0958",
                "Tel. 123456",
                "phone: 555 0143 22",
                "ask me, mobile 0151 23456789, in the evening"
            })
    void phoneNumbersAreFound(String text) {
        assertThat(kinds(text)).containsExactly(Kind.PHONE_NUMBER);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "NACA 23012",
                "NACA 0012 and NACA 4412, chord 1200",
                "1200 x 45",
                "1200 x 45 x 0.8 mm",
                "stations 200 300 1500 1800",
                "2026-05-17",
                "2026-05-17T10:15:30Z",
                "17.05.2026",
                "05/17/2026",
                "P/N 0450-12345-02",
                "serial 00123-4567",
                "S/N: 202-555-0143",
                "part no. 0171 2345678",
                "AN3-5A bolts, MS20470AD4-6",
                "ISBN 978-0-486-60586-9",
                "DOI 10.2514/3.45678",
                "NACA TN 4363, pp. 1021-1054",
                "1947-1950",
                "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08",
                "0123456789012345678901234567890123456789012345678901234567890123",
                "+12.5 mm, -0.25 mm",
                "+12.34567890",
                "0.035 in by 0.025 in",
                "1/4-28 UNF",
                "Re 1 500 000 to 2 500 000",
                "rows @ 60 mm",
                "quillmere-high-wing@2",
                "12:30 to 14:45",
                "600 kg at 1500 ft, 105 kt, 29.92 inHg"
            })
    void whatTheTradeWritesIsNeither(String text) {
        assertThat(kinds(text)).isEmpty();
    }

    @Test
    void numbersAndAddressesAreFoundWhereverTheyStand() {
        String[] words = {
            "Flown", "with", "vanes", "at", "60 mm", "NACA 4412", "on 2026-05-17,", "(see note)", "1200 x 45"
        };
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            String phone = String.format(
                    Locale.ROOT,
                    "+%d %d %d",
                    20 + random.nextInt(70),
                    100 + random.nextInt(900),
                    100000 + random.nextInt(900000));
            String mail = "p" + random.nextInt(10_000) + "@club" + random.nextInt(100) + ".example";
            String before = words[random.nextInt(words.length)] + " ";
            String after = " " + words[random.nextInt(words.length)];

            assertThat(kinds(before + phone + after)).as(before + phone + after).containsExactly(Kind.PHONE_NUMBER);
            assertThat(kinds(before + mail + after)).as(before + mail + after).containsExactly(Kind.EMAIL_ADDRESS);
        }
    }

    @Test
    void measuresOfAnyKindAreNoPhoneNumbers() {
        Random random = new Random(13);
        String[] patterns = {
            "%d x %d mm",
            "%d–%d mm",
            "NACA %05d",
            "%d.%d mm",
            "%d, %d and %d",
            "%d kg",
            "Vs %d kt",
            "%d/%d",
            "S/N %d-%d"
        };
        for (int i = 0; i < 5000; i++) {
            String text = String.format(
                    Locale.ROOT,
                    patterns[random.nextInt(patterns.length)],
                    random.nextInt(5000),
                    random.nextInt(5000),
                    random.nextInt(5000));

            assertThat(kinds(text)).as(text).isEmpty();
        }
    }

    @Test
    void everyTextOfADocumentIsReadAndNamesAreNot() {
        SurfaceDocument wing = new SurfaceDocument(
                "Wing", null, List.of(), List.of(new KeepOutDocument(1.0, 2.0, null, "call 0171 2345678")));
        FigureOrigin origin =
                new FigureOrigin("masses", Origin.MEASURED, "a@example.org", "2026-05-17", "scales", null, null);
        AirframeDocument document = new AirframeDocument(
                "Name",
                "Two of them: a@example.org, b@example.org",
                null,
                null,
                null,
                null,
                List.of(wing),
                false,
                List.of(origin),
                List.of(new PhotographUse("0".repeat(30) + "171234567" + "0".repeat(25), null, "The wing")));

        assertThat(TextChecks.of(document))
                .extracting(TextFinding::field)
                .containsExactly("description", "description", "surfaces[0].keepOuts[0].reason", "provenance[0].by");
    }

    @Test
    void theExcerptShowsThePlaceAndNotTheWholeText() {
        TextFinding found = TextChecks.of("description", "x ".repeat(500) + "a@example.org" + " y".repeat(500))
                .get(0);

        assertThat(found.excerpt())
                .startsWith("…")
                .endsWith("…")
                .contains("a@example.org")
                .hasSizeLessThan(60);
    }

    @Test
    void longHostileTextsAreReadToTheirEnd() {
        for (String part : List.of("a.", "a@", "1 ", "+1", "0-", "a-", "(0", "tel ", "1@a.")) {
            assertThat(TextChecks.of("description", part.repeat(20_000))).hasSizeLessThan(20_000);
        }
    }
}
