package org.vanewright.layout.web;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.drawing.Drawing;
import org.vanewright.engineering.drawing.SvgWriter;
import org.vanewright.engineering.gauge.Gauge;
import org.vanewright.engineering.gauge.RowGauges;
import org.vanewright.engineering.placement.Wing;
import org.vanewright.engineering.solid.Mesh;
import org.vanewright.engineering.view.SolidView;

/**
 * The gauges of one row and hand for their page.
 *
 * @param row as planned
 * @param svg picture of the first gauge; null where there is none
 */
public record GaugeView(RowGauges row, @Nullable String svg) {
    /** @param mesh of the first gauge on the wing */
    static String picture(Mesh mesh, RowGauges row, String id) {
        String what = String.format(
                Locale.ROOT,
                "Gauge of row %d, %s, on its own: seen from ahead, from port and from above. The shell is bent round the"
                        + " nose; a slot at its rear holds the base.",
                row.row() + 1,
                row.wing() == Wing.LEFT ? "left" : "right");
        Drawing drawing = SolidView.isometric(mesh, "Gauge, row " + (row.row() + 1), what);
        return SvgWriter.inline(drawing, "drawing still", id);
    }

    public String title() {
        return String.format(
                Locale.ROOT,
                "Row %d, %s: %s, %s side",
                row.row() + 1,
                row.name(),
                hand(),
                row.side().name().toLowerCase(Locale.ROOT));
    }

    public String hand() {
        return row.wing() == Wing.LEFT ? "left" : "right";
    }

    /** Numbers of devices as people write them: 1 to 6, 8. */
    public String numbers(List<Integer> devices) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < devices.size(); i++) {
            int end = i;
            while (end + 1 < devices.size() && devices.get(end + 1) == devices.get(end) + 1) {
                end++;
            }
            text.append(text.isEmpty() ? "" : ", ").append(devices.get(i));
            if (end > i) {
                text.append(end == i + 1 ? ", " : " to ").append(devices.get(end));
            }
            i = end;
        }
        return text.toString();
    }

    /** Span station at which the inboard face stands when the gauge is at its innermost unit. */
    public double faceMm(Gauge gauge) {
        return gauge.fromMm() - gauge.inboardMm();
    }
}
