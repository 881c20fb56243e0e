@NullMarked
package org.vanewright.campaign.log;

import org.jspecify.annotations.NullMarked;
