package org.vanewright.photograph;

import static java.nio.charset.StandardCharsets.ISO_8859_1;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.vanewright.testing.Pictures.decoded;
import static org.vanewright.testing.Pictures.encoded;
import static org.vanewright.testing.Pictures.quarters;
import static org.vanewright.testing.Pictures.withExif;

import java.awt.image.BufferedImage;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.vanewright.engineering.input.InvalidInputException;

class PictureMakerTest {
    private static String refusal(byte[] content) {
        InvalidInputException refused =
                catchThrowableOfType(InvalidInputException.class, () -> PictureMaker.make(content));
        assertThat(refused).isNotNull();
        assertThat(refused.problems())
                .singleElement()
                .satisfies(p -> assertThat(p.field()).isEqualTo("photographs"));
        return refused.problems().get(0).allowed();
    }

    /** The letter of the quarter's colour: R, G, B or W. */
    private static String quarter(BufferedImage picture, int column, int row) {
        int rgb = picture.getRGB(picture.getWidth() * (1 + 2 * column) / 4, picture.getHeight() * (1 + 2 * row) / 4);
        boolean red = (rgb >> 16 & 0xFF) > 128;
        boolean green = (rgb >> 8 & 0xFF) > 128;
        boolean blue = (rgb & 0xFF) > 128;
        return red && green && blue ? "W" : red ? "R" : green ? "G" : blue ? "B" : "?";
    }

    /** By the definition of the eight codes: which quarter of the stored picture is shown where. */
    @ParameterizedTest
    @CsvSource({"1,RGBW", "2,GRWB", "3,WBGR", "4,BWRG", "5,RBGW", "6,BRWG", "7,WGBR", "8,GWRB", "0,RGBW", "9,RGBW"})
    void aPictureIsTurnedAsItsCameraWasHeld(int orientation, String quarters) {
        byte[] file = withExif(encoded(quarters(160, 80), "jpeg"), orientation);

        BufferedImage made = decoded(PictureMaker.make(file).large());

        assertThat(quarter(made, 0, 0) + quarter(made, 1, 0) + quarter(made, 0, 1) + quarter(made, 1, 1))
                .isEqualTo(quarters);
        assertThat(made.getWidth()).isEqualTo(orientation >= 5 && orientation <= 8 ? 80 : 160);
    }

    @Test
    void whereAndWithWhatItWasTakenIsGone() {
        byte[] file = withExif(encoded(quarters(64, 64), "jpeg"), 6);
        assertThat(new String(file, ISO_8859_1)).contains("Exif", "Invented camera");

        Picture made = PictureMaker.make(file);

        for (byte[] picture : new byte[][] {made.large(), made.small()}) {
            assertThat(new String(picture, ISO_8859_1)).doesNotContain("Exif", "Invented");
            assertThat(markers(picture))
                    .as("no application's segment but JFIF's own")
                    .doesNotContain(0xE1, 0xE2, 0xED, 0xFE);
        }
    }

    private static List<Integer> markers(byte[] jpeg) {
        List<Integer> found = new ArrayList<>();
        int at = 2;
        while ((jpeg[at + 1] & 0xFF) != 0xDA) {
            found.add(jpeg[at + 1] & 0xFF);
            at += 2 + ((jpeg[at + 2] & 0xFF) << 8 | jpeg[at + 3] & 0xFF);
        }
        return found;
    }

    @Test
    void whatStandsBehindThePictureIsGone() {
        byte[] jpeg = encoded(quarters(64, 64), "jpeg");
        byte[] page = "<script>alert(1)</script>".getBytes(ISO_8859_1);
        byte[] both = Arrays.copyOf(jpeg, jpeg.length + page.length);
        System.arraycopy(page, 0, both, jpeg.length, page.length);

        assertThat(new String(PictureMaker.make(both).large(), ISO_8859_1)).doesNotContain("<script>");
    }

    @Test
    void largePicturesAreMadeSmallerAndSmallOnesAreNotMadeLarger() {
        Picture large = PictureMaker.make(encoded(quarters(6000, 1500), "jpeg"));
        Picture small = PictureMaker.make(encoded(quarters(100, 50), "png"));

        assertThat(decoded(large.large()).getWidth()).isEqualTo(2400);
        assertThat(decoded(large.large()).getHeight()).isEqualTo(600);
        assertThat(decoded(large.small()).getWidth()).isEqualTo(480);
        assertThat(decoded(small.large()).getWidth()).isEqualTo(100);
        assertThat(decoded(small.small()).getWidth()).isEqualTo(100);
    }

    @Test
    void whatIsTransparentBecomesWhite() {
        byte[] png = encoded(new BufferedImage(20, 20, BufferedImage.TYPE_INT_ARGB), "png");

        assertThat(decoded(PictureMaker.make(png).large()).getRGB(10, 10)).isEqualTo(0xFFFFFFFF);
    }

    @Test
    void aPictureThatPacksBadlyKeepsWithinTheBytes() {
        BufferedImage noise = new BufferedImage(1400, 1400, BufferedImage.TYPE_INT_RGB);
        Random random = new Random(3);
        for (int i = 0; i < 1400 * 1400; i++) {
            noise.setRGB(i % 1400, i / 1400, random.nextInt());
        }

        assertThat(PictureMaker.make(encoded(noise, "png")).large()).hasSizeLessThanOrEqualTo(PictureMaker.MOST_BYTES);
    }

    @Test
    void theSameFileGivesTheSamePicture() {
        byte[] file = encoded(quarters(90, 60), "png");

        assertThat(PictureMaker.make(file).large())
                .isEqualTo(PictureMaker.make(file).large());
    }

    static Stream<Arguments> others() {
        return Stream.of(
                Arguments.of("nothing", new byte[0]),
                Arguments.of("GIF", "GIF89a\1\0\1\0\0\0\0;".getBytes(ISO_8859_1)),
                Arguments.of("SVG", "<svg xmlns='http://www.w3.org/2000/svg'/>".getBytes(ISO_8859_1)),
                Arguments.of("page", "<!DOCTYPE html><script>alert(1)</script>".getBytes(ISO_8859_1)),
                Arguments.of("BMP", encoded(quarters(8, 8), "bmp")),
                Arguments.of("mark of a JPEG", new byte[] {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}),
                Arguments.of("mark of a JPEG and a page", ("\u00FF\u00D8\u00FF<script>").getBytes(ISO_8859_1)),
                Arguments.of("mark of a PNG and a page", "\u0089PNG\r\n\u001A\n<script>".getBytes(ISO_8859_1)),
                Arguments.of("half a PNG", Arrays.copyOf(encoded(quarters(50, 50), "png"), 60)));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("others")
    void everythingElseIsRefused(String name, byte[] content) {
        assertThat(refusal(content)).contains("a JPEG");
    }

    @ParameterizedTest
    @CsvSource({"60000,60000", "12001,10", "10,12001", "8000,5001", "2147483647,2147483647"})
    void aPictureThatUnpacksTooLargeIsRefusedByItsHeader(int width, int height) {
        byte[] png = encoded(quarters(8, 8), "png");
        ByteBuffer.wrap(png).putInt(16, width).putInt(20, height);
        CRC32 sum = new CRC32();
        sum.update(png, 12, 17);
        ByteBuffer.wrap(png).putInt(29, (int) sum.getValue());

        assertThat(refusal(png)).isEqualTo("at most 40 megapixels and 12000 pixels a side");
    }

    @Test
    void aJpegThatUnpacksTooLargeIsRefusedByItsHeader() {
        byte[] jpeg = encoded(quarters(8, 8), "jpeg");
        for (int i = 2; i < jpeg.length - 9; i++) {
            if (jpeg[i] == (byte) 0xFF && jpeg[i + 1] == (byte) 0xC0) {
                ByteBuffer.wrap(jpeg).putShort(i + 5, (short) 65_000).putShort(i + 7, (short) 65_000);
                break;
            }
        }

        assertThat(refusal(jpeg)).isEqualTo("at most 40 megapixels and 12000 pixels a side");
    }

    @Test
    void aFileThatIsTooLongIsRefusedUnread() {
        byte[] jpeg = encoded(quarters(8, 8), "jpeg");

        assertThat(refusal(Arrays.copyOf(jpeg, PictureFile.MOST_BYTES + 1))).isEqualTo("a file of at most 8 MiB");
    }

    @Test
    void aJpegOfVeryManyScansIsRefused() {
        byte[] jpeg = encoded(quarters(8, 8), "jpeg");
        byte[] many = Arrays.copyOf(jpeg, jpeg.length + 400);
        for (int i = jpeg.length; i < many.length; i += 2) {
            many[i] = (byte) 0xFF;
            many[i + 1] = (byte) 0xDA;
        }

        assertThat(refusal(many)).isEqualTo("a JPEG as cameras write it");
    }

    @Test
    void damagedFilesAreMadeOrRefusedAndNothingElse() {
        Random random = new Random(5);
        byte[][] sound = {withExif(encoded(quarters(40, 30), "jpeg"), 6), encoded(quarters(40, 30), "png")};
        int refused = 0;
        for (int i = 0; i < 600; i++) {
            byte[] damaged = sound[i % 2].clone();
            for (int j = random.nextInt(6); j >= 0; j--) {
                damaged[random.nextInt(damaged.length)] = (byte) random.nextInt();
            }
            try {
                assertThat(PictureMaker.make(damaged).large()).isNotEmpty();
            } catch (InvalidInputException e) {
                refused++;
            }
        }
        assertThat(refused).isBetween(50, 599);
    }
}
