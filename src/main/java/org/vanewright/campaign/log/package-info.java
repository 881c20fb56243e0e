/** Recorded logs of a campaign's draft: kept in pieces, read in the background, what is found in them to be accepted. */
@NullMarked
package org.vanewright.campaign.log;

import org.jspecify.annotations.NullMarked;
