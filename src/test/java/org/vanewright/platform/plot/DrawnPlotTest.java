package org.vanewright.platform.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.IntStream;
import org.jsoup.Jsoup;
import org.jsoup.select.Elements;
import org.junit.jupiter.api.Test;

class DrawnPlotTest {
    @Test
    void aCurveIsThinnedToThirtyRowsFromItsFirstToItsLastPoint() {
        List<PlotPoint> points = IntStream.range(0, 200)
                .mapToObj(i -> new PlotPoint(i, i % 7 == 3 ? Double.NaN : i / 8.0))
                .toList();
        Curve curve = new Curve("Up <script>& down", points, Curve.Look.LINE);
        DrawnPlot drawn = DrawnPlot.at(
                "/plot.svg",
                new CurvePlot("Thin", PlotAxis.of("Across"), PlotAxis.of("Up"), List.of(curve), List.of()),
                "Thinned");
        Elements rows = Jsoup.parse("<table>" + drawn.rows(curve) + "</table>").select("tr");
        assertThat(rows).hasSize(30);
        assertThat(rows.eachText())
                .startsWith("Up <script>& down 0 0")
                .endsWith("Up <script>& down 198 24.75")
                .doesNotHaveDuplicates();
        assertThat(rows.select("th[scope=row].words")).hasSize(30);
    }

    /** As the platform's formatter writes four significant digits, without zeros at the end. */
    @Test
    void figuresHaveFourDigits() {
        Random random = new Random(7);
        for (int i = 0; i < 20_000; i++) {
            double value = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(16) - 8);
            String expected = String.format(Locale.ROOT, "%.4g", value);
            if (!expected.contains("e") && expected.contains(".")) {
                expected = expected.replaceAll("[.]?0+$", "");
            }
            assertThat(DrawnPlot.digits(value)).as(Double.toString(value)).isEqualTo(expected);
        }
        assertThat(DrawnPlot.digits(0)).isEqualTo("0");
        assertThat(DrawnPlot.digits(1200)).isEqualTo("1200");
        assertThat(DrawnPlot.digits(9999.6)).isEqualTo("1.000e+04");
    }
}
