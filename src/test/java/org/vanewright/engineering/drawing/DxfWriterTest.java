package org.vanewright.engineering.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.vanewright.testing.Tools;

class DxfWriterTest {
    private static final String AUDIT = """
            import sys, ezdxf
            doc = ezdxf.readfile(sys.argv[1])
            audit = doc.audit()
            print('version', doc.dxfversion)
            print('errors', len(audit.errors), 'fixes', len(audit.fixes))
            for e in doc.modelspace():
                line = [e.dxftype(), e.dxf.layer, e.dxf.get('linetype', 'BYLAYER')]
                if e.dxftype() == 'CIRCLE':
                    line += ['%.3f' % e.dxf.center.x, '%.3f' % e.dxf.center.y, '%.3f' % e.dxf.radius]
                if e.dxftype() == 'POLYLINE':
                    line += [len(e.vertices), 'closed' if e.is_closed else 'open']
                if e.dxftype() == 'TEXT':
                    line += [e.dxf.text]
                print(*line)
            print('layers', *[l.dxf.name for l in doc.layers])
            """;

    @TempDir
    Path directory;

    @Test
    void anIndependentReaderFindsNothingToRepair() {
        String report = audit(DxfWriter.write(Samples.everything()));
        assertThat(report)
                .contains("version AC1009", "errors 0 fixes 0")
                .contains("POLYLINE CUT BYLAYER 4 closed", "LINE FOLD DASHED", "POLYLINE MARK CENTER 3 open")
                .contains("CIRCLE MARK BYLAYER 30.000 30.000 10.000")
                .contains("TEXT TEXT BYLAYER Units: mm, scale 1:1");
        assertThat(report.lines().filter(l -> l.startsWith("layers")).findFirst())
                .hasValueSatisfying(l -> assertThat(l).contains("CUT", "FOLD", "MARK", "TEXT"));
    }

    @Test
    void aLongStripIsClean() {
        assertThat(audit(DxfWriter.write(Samples.strip(2500, 400, 60)))).contains("errors 0 fixes 0");
    }

    @Test
    void letteringIsAscii() {
        String dxf = DxfWriter.write(Samples.everything());
        assertThat(dxf.chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 127)))
                .isTrue();
        assertThat(dxf).contains("Angle 15%%d %%p 0.5%%d, m2, 50 % % %d, naive AEro - \"fillet\" \\U+6F22 bell");
        assertThat(dxf).contains("Units: millimetres");
    }

    private String audit(String dxf) {
        Path file = Tools.file(directory, "drawing.dxf", dxf.getBytes(StandardCharsets.US_ASCII));
        return Tools.run("/usr/bin/python3", "-c", AUDIT, file.toString());
    }
}
