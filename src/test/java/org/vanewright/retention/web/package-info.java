/** Tests of the page of retention. */
@NullMarked
package org.vanewright.retention.web;

import org.jspecify.annotations.NullMarked;
