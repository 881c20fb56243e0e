@NullMarked
package org.vanewright.campaign.reduction;

import org.jspecify.annotations.NullMarked;
