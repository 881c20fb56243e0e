package org.vanewright.airframe.web;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.vanewright.airframe.AirframeRules;
import org.vanewright.airframe.KeepOutSide;
import org.vanewright.airframe.SurfaceDocument;
import org.vanewright.engineering.input.FieldProblem;
import org.vanewright.engineering.section.SectionSpec.TrailingEdge;
import org.vanewright.platform.form.Form;

/** The buttons that add and remove surfaces, panels and keep-outs: {@code add surfaces[0].panels}, {@code remove …[1]}. */
final class AirframeFormLists {
    private static final String LIST = "surfaces(?:\\[\\d{1,2}]\\.(?:panels|keepOuts))?";
    private static final Pattern ADD = Pattern.compile("add (" + LIST + ")");
    private static final Pattern REMOVE = Pattern.compile("remove (" + LIST + ")\\[(\\d{1,2})]");

    private AirframeFormLists() {}

    /** Cuts lists to the length the rules allow. */
    static void limit(Form form) {
        form.limit("surfaces", AirframeRules.MAX_SURFACES);
        for (int i = 0; i < form.size("surfaces"); i++) {
            form.limit("surfaces[" + i + "].panels", AirframeRules.MAX_PANELS);
            form.limit("surfaces[" + i + "].keepOuts", AirframeRules.MAX_KEEP_OUTS);
        }
    }

    /** Does what the button says; anything else is left alone. */
    static void apply(Form form, String action) {
        Matcher add = ADD.matcher(action);
        if (add.matches()) {
            add(form, add.group(1));
        }
        Matcher remove = REMOVE.matcher(action);
        if (remove.matches()) {
            form.remove(remove.group(1), Integer.parseInt(remove.group(2)));
        }
    }

    private static void add(Form form, String list) {
        int most = list.endsWith("panels")
                ? AirframeRules.MAX_PANELS
                : list.endsWith("keepOuts") ? AirframeRules.MAX_KEEP_OUTS : AirframeRules.MAX_SURFACES;
        int size = form.size(list);
        if (size >= most) {
            form.refuse(new FieldProblem(list, String.valueOf(size + 1), "at most " + most));
        } else if (list.endsWith("panels")) {
            addPanel(form, list.substring(0, list.lastIndexOf('.')));
        } else if (list.endsWith("keepOuts")) {
            form.put(list + "[" + size + "].fromMm", "")
                    .put(list + "[" + size + "].toMm", "")
                    .put(list + "[" + size + "].side", KeepOutSide.UPPER.name())
                    .put(list + "[" + size + "].reason", "");
        } else {
            form.put("surfaces[" + size + "].name", "")
                    .put("surfaces[" + size + "].kind", SurfaceDocument.Kind.HORIZONTAL_STABILISER.name());
            addPanel(form, "surfaces[" + size + "]");
        }
    }

    /** The new panel goes on where the last one ends. */
    static void addPanel(Form form, String surface) {
        int size = form.size(surface + ".panels");
        String at = surface + ".panels[" + size + "]";
        String before = surface + ".panels[" + (size - 1) + "]";
        form.put(at + ".innerStationMm", form.value(before + ".outerStationMm"))
                .put(at + ".outerStationMm", "")
                .put(at + ".innerChordMm", form.value(before + ".outerChordMm"))
                .put(at + ".outerChordMm", "")
                .put(at + ".innerLeadingEdgeMm", form.value(before + ".outerLeadingEdgeMm"))
                .put(at + ".innerSection.kind", size == 0 ? SectionFields.NACA : SectionFields.SAME)
                .put(at + ".innerSection.trailingEdge", TrailingEdge.BLUNT)
                .put(at + ".outerSection.kind", SectionFields.SAME)
                .put(at + ".outerSection.trailingEdge", TrailingEdge.BLUNT);
    }
}
