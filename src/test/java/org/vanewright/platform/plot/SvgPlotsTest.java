package org.vanewright.platform.plot;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.Collections;
import java.util.List;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.parser.Parser;
import org.junit.jupiter.api.Test;

class SvgPlotsTest {
    private static Curve curve(String name) {
        return new Curve(
                name,
                IntStream.range(0, 50)
                        .mapToObj(i -> new PlotPoint(i / 50.0, i == 25 ? Double.NaN : Math.sin(i / 10.0)))
                        .toList(),
                Curve.Look.LINE);
    }

    private static CurvePlot plot(List<Curve> curves) {
        return new CurvePlot(
                "Speed <b>along</b> the chord",
                PlotAxis.of("x/c", 0, 1),
                PlotAxis.of("Speed ratio"),
                curves,
                List.of(new PlotMark("device", 0.08, null), new PlotMark("now", 0.5, 0.2)));
    }

    private static Document parsed(String svg) {
        return Jsoup.parse(svg, "", Parser.xmlParser());
    }

    @Test
    void curvesStandInAPageWithTheirWordsAndThePagesColours() {
        String svg = SvgPlots.svg(plot(List.of(curve("Upper"), curve("Upper"))), "speed", 640, 360);
        Document drawn = parsed(svg);

        assertThat(drawn.select("svg[role=img] > title").text()).isEqualTo("Speed <b>along</b> the chord");
        assertThat(drawn.select("text").eachText()).contains("x/c", "Speed ratio", "Upper", "device", "⊕", "now");
        assertThat(drawn.select("[style], style, script")).isEmpty();
        assertThat(svg).contains("var(--curve-1)", "var(--curve-2)", "var(--ink)", "var(--accent)");
        assertThat(svg).doesNotContain("rgb(1,1,1)", "rgb(11,11,11)");
        assertThat(drawn.select("[id]").eachAttr("id")).allMatch(id -> id.startsWith("speed"));
        assertThat(drawn.select("[id]").eachAttr("id")).doesNotHaveDuplicates();
    }

    @Test
    void aMapColoursItsCellsAndLeavesOutWhereThereIsNoValue() {
        double[] xs = {0.1, 0.2, 0.3};
        double[] ys = {5, 10};
        double[][] values = {{0.1, 0.6, 1.2}, {Double.NaN, 0.6, 2}};
        MapPlot map = new MapPlot(
                "Height over thickness",
                PlotAxis.of("x/c", 0, 0.4),
                PlotAxis.of("Height", 0, 15),
                "h/δ",
                xs,
                ys,
                values,
                List.of(0.5, 1.0),
                List.of());
        String svg = SvgPlots.svg(map, "map", 640, 360);

        assertThat(svg)
                .contains("var(--step-1)", "var(--step-2)", "var(--step-3)")
                .doesNotContain("var(--step-4)");
        assertThat(parsed(svg).select("rect[fill='var(--step-2)'], [fill='var(--step-2)'] > rect"))
                .as("one above the other in the middle")
                .hasSize(2);
        DrawnMap drawn = DrawnMap.of(map, "map", "Caption");
        assertThat(drawn.key()).containsExactly("below 0.5", "0.5 to 1", "above 1");
        assertThat(drawn.columns()).containsExactly("0.1", "0.2", "0.3");
        assertThat(drawn.rows().get(1).cells()).containsExactly("–", "0.6", "2");
    }

    @Test
    void neighboursOfOneColourAreOneBox() {
        double[] steps = {0.5, 1, 1.5, 2};
        MapPlot map = new MapPlot(
                "Rows alike",
                PlotAxis.of("x", 0, 3),
                PlotAxis.of("y", 0, 3),
                "v",
                steps,
                new double[] {1, 2},
                new double[][] {{0, 0.4, 0.6, 0.7}, {Double.NaN, 0, 0, Double.NaN}},
                List.of(0.5),
                List.of());

        assertThat(MapRun.of(map))
                .containsExactly(new MapRun(0, 0, 1, 0), new MapRun(0, 2, 3, 1), new MapRun(1, 1, 2, 0));
    }

    @Test
    void noMoreIsDrawnThanCanBeToldApart() {
        assertThatIllegalArgumentException().isThrownBy(() -> plot(Collections.nCopies(7, curve("One too many"))));
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new MapPlot(
                        "Map",
                        PlotAxis.of("x"),
                        PlotAxis.of("y"),
                        "v",
                        new double[2],
                        new double[2],
                        new double[2][2],
                        List.of(1.0, 2.0, 3.0, 4.0, 5.0),
                        List.of()));
    }
}
