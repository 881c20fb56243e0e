package org.vanewright.engineering.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.engineering.geometry.Point2;
import org.vanewright.engineering.input.InvalidInputException;
import org.vanewright.testing.Tools;

class SvgWriterTest {
    /** CSS Values and Units Level 3, W3C 2024, section 6.2: 1 in = 96 px = 25.4 mm. */
    private static final double PIXELS_PER_MM = 96 / 25.4;

    @TempDir
    Path directory;

    @Test
    void aFileOpensAtItsTrueSize() throws IOException {
        Path svg = file("all.svg", SvgWriter.write(Samples.everything()));
        Path png = directory.resolve("all.png");
        Tools.run("rsvg-convert", svg.toString(), "-o", png.toString());
        var image = ImageIO.read(png.toFile());
        Bounds bounds = Bounds.of(Samples.everything()).grown(1);
        assertThat((double) image.getWidth()).isCloseTo(bounds.widthMm() * PIXELS_PER_MM, within(1.0));
        assertThat((double) image.getHeight()).isCloseTo(bounds.heightMm() * PIXELS_PER_MM, within(1.0));
    }

    @Test
    void isWellFormedAndEscapesLettering() {
        String svg = SvgWriter.write(Samples.everything());
        Tools.run("xmllint", "--noout", file("all.svg", svg).toString());
        assertThat(svg)
                .contains("<title id=\"drawing-title\">All &quot;kinds&quot; &lt;of&gt; &amp; shapes</title>")
                .contains("upright &amp; &lt;b&gt;bold&lt;/b&gt;")
                .contains("<g id=\"cut\"", "<g id=\"fold\"", "<g id=\"mark\"", "<g id=\"text\"", "role=\"img\"")
                .doesNotContain("<b>", "\u0007");
    }

    @Test
    void anInlineDrawingLeavesColoursToTheStyleSheet() {
        String svg = SvgWriter.inline(Samples.everything(), "drawing plan", "wing-1");
        Tools.run("xmllint", "--noout", file("inline.svg", svg).toString());
        assertThat(svg)
                .contains("class=\"drawing plan\"", "width=\"100%\"", "viewBox=")
                .contains("aria-labelledby=\"wing-1-title wing-1-desc\"", "id=\"wing-1-title\"")
                .contains("layer-mark pen-thick fill-accent", "layer-fold pen-dashed", "non-scaling-stroke")
                .doesNotContain("style=", "stroke=", "fill=", "#", "height=");
    }

    @Test
    void numbersDoNotFollowTheMachinesLanguage() {
        Locale before = Locale.getDefault();
        String expected = SvgWriter.write(Samples.everything());
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(SvgWriter.write(Samples.everything())).isEqualTo(expected);
            assertThat(DxfWriter.write(Samples.everything())).doesNotContainPattern("\\d,\\d");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void refusesWhatItCannotDraw() {
        Drawing empty = new Drawing("empty", "nothing", List.of());
        assertThatThrownBy(() -> SvgWriter.write(empty)).isInstanceOf(InvalidInputException.class);
        Drawing broken = new Drawing(
                "broken",
                "not a number",
                List.of(Shape.line(Layer.MARK, Pen.THIN, Point2.ORIGIN, new Point2(Double.NaN, 1))));
        assertThatThrownBy(() -> SvgWriter.write(broken)).isInstanceOf(InvalidInputException.class);
        assertThatThrownBy(() -> SvgWriter.inline(Samples.everything(), "drawing", "a\" onload=\"x"))
                .isInstanceOf(IllegalArgumentException.class);
    }

    private Path file(String name, String content) {
        return Tools.file(directory, name, content.getBytes(StandardCharsets.UTF_8));
    }
}
