package org.vanewright.engineering.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.Random;
import java.util.concurrent.Callable;
import org.junit.jupiter.api.Test;
import org.vanewright.engineering.input.InvalidInputException;

/** Whatever is uploaded ends in a usable section or in named problems. */
class HostileCoordinateFileTest {
    private static final String GOOD =
            "Title\n" + CoordinateFileTest.lines(SplinedSectionTest.sampled("4412", 30), 1, " ");
    private static final String ALPHABET = "0123456789.,;-+eE \t\n\r#NaNinf\u00e9\u0660\u2028\ud83d";

    @Test
    void randomBytesAreRefused() {
        Random random = new Random(41);
        for (int round = 0; round < 300; round++) {
            byte[] bytes = new byte[random.nextInt(3000)];
            random.nextBytes(bytes);
            assertThat(outcome(() -> CoordinateFile.parse(bytes))).isEqualTo(Outcome.REFUSED);
        }
    }

    @Test
    void aDamagedFileIsReadOrRefused() {
        Random random = new Random(42);
        int read = 0;
        for (int round = 0; round < 1500; round++) {
            StringBuilder text = new StringBuilder(GOOD);
            for (int i = random.nextInt(4); i >= 0; i--) {
                damage(text, random);
            }
            if (outcome(() -> CoordinateFile.parse(text.toString())) == Outcome.READ) {
                read++;
            }
        }
        assertThat(read).isBetween(100, 1400);
    }

    @Test
    void randomNumbersAreReadOrRefused() {
        Random random = new Random(43);
        int refused = 0;
        for (int round = 0; round < 500; round++) {
            StringBuilder text = new StringBuilder();
            int points = 5 + random.nextInt(60);
            for (int i = 0; i < points; i++) {
                double angle = 2 * Math.PI * i / points;
                double noise = random.nextInt(3) * 0.1;
                text.append(0.5 + 0.5 * Math.cos(angle) + noise * random.nextGaussian())
                        .append(' ')
                        .append(0.1 * Math.sin(angle) + noise * random.nextGaussian())
                        .append(random.nextInt(50) == 0 ? "\n\n" : "\n");
            }
            if (outcome(() -> CoordinateFile.parse(text.toString())) == Outcome.REFUSED) {
                refused++;
            }
        }
        assertThat(refused).isBetween(50, 499);
    }

    @Test
    void binaryFilesUnderATextNameAreRefused() {
        byte[] zip = Arrays.copyOf("PK\u0003\u0004".getBytes(StandardCharsets.ISO_8859_1), 400);
        byte[] latin = ("Profil \u00e9pais\n" + GOOD.substring(6)).getBytes(StandardCharsets.ISO_8859_1);
        byte[] wide = GOOD.getBytes(StandardCharsets.UTF_16);
        for (byte[] bytes : new byte[][] {zip, latin, wide}) {
            InvalidInputException refused =
                    catchThrowableOfType(InvalidInputException.class, () -> CoordinateFile.parse(bytes));
            assertThat(refused.problems())
                    .singleElement()
                    .satisfies(p -> assertThat(p.allowed()).isEqualTo("file: plain text in UTF-8"));
        }
    }

    private enum Outcome {
        READ,
        REFUSED
    }

    private static Outcome outcome(Callable<SectionSpec> parser) {
        SectionSpec spec;
        try {
            spec = parser.call();
        } catch (InvalidInputException e) {
            assertThat(e.problems()).isNotEmpty().allSatisfy(p -> {
                assertThat(p.field()).isEqualTo("coordinates");
                assertThat(p.allowed()).matches("(?s)(line [0-9]+|file): .+");
                assertThat(p.value()).hasSizeLessThanOrEqualTo(60);
            });
            return Outcome.REFUSED;
        } catch (Exception e) {
            throw new AssertionError("neither a section nor a named problem", e);
        }
        Section section = Sections.of(spec);
        for (SurfaceSide side : SurfaceSide.values()) {
            assertThat(section.arcLength(side)).isFinite().isPositive();
            SkinPoint p = section.atX(side, 0.5 * section.maximumX(side));
            assertThat(p.y()).isFinite();
        }
        return Outcome.READ;
    }

    private static void damage(StringBuilder text, Random random) {
        int at = random.nextInt(text.length());
        switch (random.nextInt(4)) {
            case 0 -> text.setCharAt(at, ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            case 1 -> text.insert(at, ALPHABET.charAt(random.nextInt(ALPHABET.length())));
            case 2 -> text.delete(at, Math.min(text.length(), at + 1 + random.nextInt(30)));
            default -> text.insert(at, text.substring(at, Math.min(text.length(), at + random.nextInt(80))));
        }
    }
}
