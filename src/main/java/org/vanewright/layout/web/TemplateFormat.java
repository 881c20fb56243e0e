package org.vanewright.layout.web;

import java.util.Locale;
import org.springframework.http.MediaType;

/** The kinds of file a template is written as. */
enum TemplateFormat {
    PDF("application/pdf"),
    SVG("image/svg+xml;charset=UTF-8"),
    /** DXF names no unit in Release 12, so the file's name does. */
    DXF("image/vnd.dxf");

    private final String type;

    TemplateFormat(String type) {
        this.type = type;
    }

    MediaType type() {
        return MediaType.parseMediaType(type);
    }

    /** Whether it goes onto sheets of paper; otherwise it is one drawing. */
    boolean paged() {
        return this == PDF;
    }

    /** What follows the layout's name and revision. */
    String fileName(TemplateRequest asked) {
        String unit = this == DXF ? "-mm" : "";
        String paper = paged() ? "-" + asked.paper() : "";
        return ("template-" + asked.wing() + paper + unit + "." + this).toLowerCase(Locale.ROOT);
    }
}
