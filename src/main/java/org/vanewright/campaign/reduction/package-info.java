/** From test points as they were read to a comparison with its interval, each step open to be looked at. */
@NullMarked
package org.vanewright.campaign.reduction;

import org.jspecify.annotations.NullMarked;
