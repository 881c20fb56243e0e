/** Why a row sits where it sits: the flow over the wing at one flight condition, beside what others recommend. */
@NullMarked
package org.vanewright.study;

import org.jspecify.annotations.NullMarked;
