/** Placement studies as pages and JSON. */
@NullMarked
package org.vanewright.study.web;

import org.jspecify.annotations.NullMarked;
