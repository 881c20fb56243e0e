/** Pages and API of inspections. */
@NullMarked
package org.vanewright.inspection.web;

import org.jspecify.annotations.NullMarked;
