/**
 * Every published comparison of every campaign, looked at together: which can stand beside each other, what they come to
 * where they can, and why they cannot where they do not.
 */
@NullMarked
package org.vanewright.evidence;

import org.jspecify.annotations.NullMarked;
