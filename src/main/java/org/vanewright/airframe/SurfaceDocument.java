package org.vanewright.airframe;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.record.Lists;

/**
 * A lifting surface, described for the right-hand side; the left mirrors it. A fin stands alone.
 *
 * @param name as people call it, unique within the airframe
 * @param kind what it is
 * @param panels from the root outboard, each beginning where the one before ends
 * @param keepOuts where no device may sit
 */
public record SurfaceDocument(
        @Nullable String name, @Nullable Kind kind, List<PanelDocument> panels, List<KeepOutDocument> keepOuts) {
    @SuppressWarnings("NullAway") // lists may be absent in a document that arrives
    public SurfaceDocument {
        panels = Lists.present(panels);
        keepOuts = Lists.present(keepOuts);
    }

    /** What a surface is. */
    public enum Kind {
        WING("Wing"),
        HORIZONTAL_STABILISER("Horizontal stabiliser"),
        FIN("Fin");

        private final String label;

        Kind(String label) {
            this.label = label;
        }

        public String label() {
            return label;
        }

        /** True when there is a left one that mirrors the right one. */
        public boolean mirrored() {
            return this != FIN;
        }
    }

    /** The name, or what it is where it has none yet. */
    public String label() {
        if (name != null && !name.isBlank()) {
            return name;
        }
        return kind == null ? "Surface" : kind.label();
    }
}
