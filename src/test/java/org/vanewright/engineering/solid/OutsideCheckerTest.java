package org.vanewright.engineering.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;
import static org.assertj.core.api.Assertions.withinPercentage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An independent mesh checker, Anthony D. Martin's admesh, reads the STL files. */
class OutsideCheckerTest {
    private static final SolidLabel LABEL = new SolidLabel("Test piece", "Test piece", 1, "00");

    @Test
    void admeshFindsOnePartAndNothingToRepair(@TempDir Path folder) throws Exception {
        List<DeviceDesign> designs = new RandomDesigns(99).valid(24);
        for (int i = 0; i < designs.size(); i++) {
            Mesh mesh = SolidBuilder.build(designs.get(i));
            Path stl = Files.write(folder.resolve(i + ".stl"), StlWriter.write(mesh, LABEL));
            String report = admesh(stl);
            String what = designs.get(i) + "\n" + report;
            assertThat(number(report, "Number of parts")).as(what).isEqualTo(1);
            assertThat(number(report, "Degenerate facets")).as(what).isZero();
            assertThat(number(report, "Edges fixed")).as(what).isZero();
            assertThat(number(report, "Facets removed")).as(what).isZero();
            assertThat(number(report, "Facets added")).as(what).isZero();
            assertThat(number(report, "Facets reversed")).as(what).isZero();
            assertThat(number(report, "Backwards edges")).as(what).isZero();
            assertThat(number(report, "Total disconnected facets")).as(what).isZero();
            double volume = MeshCheck.of(mesh).signedVolumeMm3();
            assertThat(decimal(report, "Volume")).as(what).isCloseTo(volume, withinPercentage(0.01));
        }
    }

    private static int number(String report, String name) {
        return (int) decimal(report, name);
    }

    /** The first number after a name in the report. */
    private static double decimal(String report, String name) {
        Matcher m =
                Pattern.compile(Pattern.quote(name) + "\\s*:\\s*(-?[0-9.]+)").matcher(report);
        assertThat(m.find()).as("%s in:%n%s", name, report).isTrue();
        return Double.parseDouble(m.group(1));
    }

    private static String admesh(Path stl) throws InterruptedException {
        try {
            Process process = new ProcessBuilder("admesh", stl.toString())
                    .redirectErrorStream(true)
                    .start();
            String report = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(process.waitFor()).as(report).isZero();
            return report;
        } catch (IOException e) {
            return fail("this test runs the program admesh; install the Debian package admesh", e);
        }
    }
}
