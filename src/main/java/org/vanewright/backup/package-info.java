/**
 * Everything a service keeps, as one file for either database, and a service made from it again. Commands of the machine, not
 * of the service: whoever runs them holds the database anyway.
 */
@NullMarked
package org.vanewright.backup;

import org.jspecify.annotations.NullMarked;
