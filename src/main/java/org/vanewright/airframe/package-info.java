/** Aircraft as a club describes them: records, rules, and the service that keeps their revisions. */
@NullMarked
package org.vanewright.airframe;

import org.jspecify.annotations.NullMarked;
