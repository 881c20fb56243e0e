package org.vanewright.platform.plot;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.StringReader;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

class PlotFilesTest {
    /** A file has no style sheet beside it: whatever its drawing names must be in it. */
    @Test
    void aFileBringsItsColoursForLightAndDark() throws Exception {
        CurvePlot plot = new CurvePlot(
                "Points < and > lines",
                PlotAxis.of("Across"),
                PlotAxis.of("Up"),
                List.of(
                        new Curve("A", List.of(new PlotPoint(1, 2), new PlotPoint(2, 3)), Curve.Look.POINTS),
                        new Curve("B", List.of(new PlotPoint(1, 3), new PlotPoint(2, 2)), Curve.Look.LINE)),
                List.of(new PlotMark("here", 1.5, 2.5)));
        String svg = PlotFiles.svg(plot);
        DocumentBuilderFactory factory = DocumentBuilderFactory.newInstance();
        factory.setNamespaceAware(true);
        assertThat(factory.newDocumentBuilder()
                        .parse(new InputSource(new StringReader(svg)))
                        .getDocumentElement()
                        .getNamespaceURI())
                .isEqualTo("http://www.w3.org/2000/svg");
        Matcher used = Pattern.compile("var\\((--[a-z0-9-]+)\\)").matcher(svg);
        assertThat(used.results().map(m -> m.group(1)).distinct().toList())
                .contains("--ink", "--curve-1", "--curve-2", "--accent", "--sheet")
                .allSatisfy(
                        name -> assertThat(svg.split(name + ": #", -1)).as(name).hasSizeGreaterThanOrEqualTo(3));
    }
}
