/** How far long work has come, for people and programs. */
@NullMarked
package org.vanewright.platform.job.web;

import org.jspecify.annotations.NullMarked;
