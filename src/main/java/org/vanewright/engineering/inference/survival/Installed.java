package org.vanewright.engineering.inference.survival;

import java.util.List;

/**
 * Things that share a fate: the devices of one installation, put on by the same hands on the same day.
 *
 * @param spans one for each device, at least one
 */
public record Installed(List<Span> spans) {
    public Installed {
        spans = List.copyOf(spans);
    }
}
