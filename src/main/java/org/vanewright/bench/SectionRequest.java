package org.vanewright.bench;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.section.SectionSpec;

/**
 * Places on the skin of a section.
 *
 * @param section a NACA number or coordinates
 * @param stations x/c of each place, 1 to {@value SectionCalculation#MOST_STATIONS}
 */
public record SectionRequest(
        @Nullable SectionSpec section, @Nullable List<@Nullable Double> stations) {}
