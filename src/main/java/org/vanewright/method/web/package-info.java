/** The page about methods and their errors. */
@NullMarked
package org.vanewright.method.web;

import org.jspecify.annotations.NullMarked;
