/**
 * Forms of any depth, kept as typed. A field is named by the path of the property it sets in the published document, so
 * that a refusal of the rules finds its field.
 */
@NullMarked
package org.vanewright.platform.form;

import org.jspecify.annotations.NullMarked;
