@NullMarked
package org.vanewright.catalogue.web;

import org.jspecify.annotations.NullMarked;
