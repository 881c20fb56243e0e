/** Pages, forms, files and JSON of flight campaigns. */
@NullMarked
package org.vanewright.campaign.web;

import org.jspecify.annotations.NullMarked;
