@NullMarked
package org.vanewright.review.web;

import org.jspecify.annotations.NullMarked;
