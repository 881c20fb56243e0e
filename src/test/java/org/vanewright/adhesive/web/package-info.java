@NullMarked
package org.vanewright.adhesive.web;

import org.jspecify.annotations.NullMarked;
