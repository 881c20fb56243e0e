package org.vanewright.security;

import org.vanewright.testing.OnPostgres;

@OnPostgres
class PostgresPageWalkTest extends PageWalkCases {}
