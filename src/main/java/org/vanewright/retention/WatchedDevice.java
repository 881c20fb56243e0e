package org.vanewright.retention;

import org.jspecify.annotations.Nullable;
import org.vanewright.engineering.inference.survival.Span;
import org.vanewright.inspection.InspectionDocument;
import org.vanewright.inspection.LossDocument;
import org.vanewright.installation.DeviceAt;
import org.vanewright.record.Revision;

/**
 * One device with what inspections say of it.
 *
 * @param at which one
 * @param row name of its row
 * @param span hours flown between which it was lost, or after which it was last seen in place
 * @param loss as it was found; null where it never was
 * @param found the inspection that found it so
 */
public record WatchedDevice(
        DeviceAt at,
        String row,
        Span span,
        @Nullable LossDocument loss,
        @Nullable Revision<InspectionDocument> found) {}
