/** Pages and API of drafts, reviews, histories and people. */
@NullMarked
package org.vanewright.review.web;

import org.jspecify.annotations.NullMarked;
