@NullMarked
package org.vanewright.record.web;

import org.jspecify.annotations.NullMarked;
