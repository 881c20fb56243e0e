/** Tests of installations' pages and API. */
@NullMarked
package org.vanewright.installation.web;

import org.jspecify.annotations.NullMarked;
