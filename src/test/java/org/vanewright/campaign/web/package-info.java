@NullMarked
package org.vanewright.campaign.web;

import org.jspecify.annotations.NullMarked;
