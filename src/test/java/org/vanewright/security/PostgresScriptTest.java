package org.vanewright.security;

import org.vanewright.testing.OnPostgres;

@OnPostgres
class PostgresScriptTest extends ScriptCases {}
