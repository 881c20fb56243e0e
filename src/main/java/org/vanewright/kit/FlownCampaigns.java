package org.vanewright.kit;

import java.util.List;
import org.vanewright.record.RevisionRef;

/** Knows which campaigns fly a layout. Whoever records flights gives one. */
public interface FlownCampaigns {
    /** Published campaigns that name exactly that revision of the layout. */
    List<RevisionRef> flying(RevisionRef layout);
}
